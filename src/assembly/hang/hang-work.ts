import {
  absolute,
  add,
  fromReal,
  half,
  inch,
  type Length,
  subtract,
  times,
  ZERO,
} from "../../lengths/index.ts";
import { minus, number, operand, plus, quotient, type Sum, valueOf } from "../reckoning.ts";
import type { FramedWork, FramePlace, HangCheck, Hanging, HangStep, HookPlace, HungWork } from "./hanging.ts";
import {
  angleOf,
  KILOGRAMS_PER_POUND,
  type Loads,
  sharedLoads,
  STANDARD_GRAVITY,
  triangleOfLength,
  triangleOfRise,
  type WireTriangle,
  wireLoads,
  wireOf,
} from "./statics.ts";

/** What the wall and its hooks are like, for every work on it. */
export interface HangingHabits {
  /** From where a hook bears up to its nail. */
  readonly hookDrop: Length;
  /** People pass close by: what stands out is held against the rule for public ways. */
  readonly publicWay: boolean;
  /** The floor's height in the coordinates of the wall, for that rule. */
  readonly floor: Length;
}

/** Flatter than this a wire pulls more than 1.93 times the weight at each ring. Common practice, no source. */
const FLAT = 15;
/** A licensed hand from here on: 50 lb (Earthquake Country Alliance, securing your space). */
const HEAVY = 50 * KILOGRAMS_PER_POUND;
/** Leading edges above 27 in and up to 80 in may stand out 4 in at most (2010 ADA Standards, 307.2). */
const PUBLIC = { above: inch(27), upTo: inch(80), most: inch(4) };

/**
 * Hooks, loads and checks of one work whose frame stands at `frame`. Places are to the nearest tick;
 * loads are real. Where a wire can never be taut, hooks are placed as though it lay level, no load is
 * given, and a check of level "stop" says so. Never throws.
 */
export function hangWork(work: FramedWork, frame: FramePlace, habits: HangingHabits): HungWork {
  const taut = work.hanging.kind === "wire" ? tautWire(work.hanging) : null;
  const top = add(frame.y, work.height);
  const bearing = bearingOf(work.hanging, taut);
  const bear = subtract(top, bearing);
  const up = nailAbove(work.hanging, habits.hookDrop);
  const nail = add(bear, up);
  const middle = add(frame.x, half(work.width, "nearest"));
  const hooks = offsets(work.hanging).map((offset): HookPlace => ({ x: add(middle, offset), bear, nail }));
  return {
    frame,
    hooks,
    wire: taut === null ? null : { rise: taut.rise, length: taut.length, angle: angleOf(taut.triangle) },
    loads: loadsOf(work, taut),
    checks: checksOf(work, frame, { taut, nail, top }, habits),
    reckoning: reckoningOf(work.hanging, taut, { top, bear, up, nail }),
  };
}

interface TautWire {
  readonly triangle: WireTriangle;
  readonly rise: Length;
  readonly length: Length;
}

type Wire = Extract<Hanging, { readonly kind: "wire" }>;

function tautWire({ wire, apart, hooksApart }: Wire): TautWire | null {
  if ("drop" in wire) {
    if (wire.drop <= 0) return null;
    const triangle = triangleOfRise(wire.drop, apart, hooksApart);
    return { triangle, rise: wire.drop, length: fromReal(wireOf(triangle, hooksApart), "nearest") };
  }
  const triangle = triangleOfLength(wire.length, apart, hooksApart);
  return triangle && { triangle, rise: fromReal(triangle.rise, "nearest"), length: wire.length };
}

/** From the top of the frame down to where it bears. */
const bearingOf = (hanging: Hanging, taut: TautWire | null): Length =>
  subtract(hanging.below, taut?.rise ?? ZERO);

/** From where it bears up to the nail or screw; below nought for a cleat, whose screws stand lower. */
function nailAbove(hanging: Hanging, hookDrop: Length): Length {
  switch (hanging.kind) {
    case "wire":
    case "rings":
      return hookDrop;
    case "plates":
      return ZERO;
    case "cleat":
      return subtract(ZERO, hanging.down);
  }
}

/** Every hook's place across, from the frame's middle; left to right. */
function offsets(hanging: Hanging): readonly Length[] {
  switch (hanging.kind) {
    case "wire":
      return hanging.hooks === 1 ? [ZERO] : pair(hanging.hooksApart);
    case "rings":
    case "plates":
      return pair(hanging.apart);
    case "cleat":
      return spread(hanging.apart, hanging.screws);
  }
}

/** Two places so far apart, to the tick. */
function pair(apart: Length): readonly [Length, Length] {
  const left = half(apart, "down");
  return [subtract(ZERO, left), subtract(apart, left)];
}

function spread(apart: Length, count: number): readonly Length[] {
  if (count === 1) return [ZERO];
  const [from] = pair(apart);
  return Array.from({ length: count }, (_, index) =>
    add(from, fromReal((apart * index) / (count - 1), "nearest")),
  );
}

function loadsOf({ mass, hanging }: FramedWork, taut: TautWire | null): Loads | null {
  if (mass === null) return null;
  const weight = mass * STANDARD_GRAVITY;
  if (hanging.kind === "wire") return taut && wireLoads(weight, taut.triangle, hanging.hooks);
  return sharedLoads(weight, hanging.kind === "cleat" ? hanging.screws : 2);
}

interface Found {
  readonly taut: TautWire | null;
  readonly nail: Length;
  readonly top: Length;
}

function checksOf(
  work: FramedWork,
  frame: FramePlace,
  found: Found,
  { publicWay, floor }: HangingHabits,
): readonly HangCheck[] {
  const { hanging, width, height, mass, depth } = work;
  const checks: HangCheck[] = hanging.kind === "wire" ? [...wireChecks(hanging, found.taut)] : [];
  // The frame stands on it: at the very edge there is nothing to screw into.
  if (hanging.apart >= width)
    checks.push({
      level: "stop",
      code: "fitting-past-frame",
      direction: "width",
      at: hanging.apart,
      size: width,
    });
  if (hanging.below >= height)
    checks.push({
      level: "stop",
      code: "fitting-past-frame",
      direction: "height",
      at: hanging.below,
      size: height,
    });
  else if (hanging.below * 2 > height)
    checks.push({ level: "warn", code: "leans-out", below: hanging.below, half: half(height, "nearest") });
  const wireStands = hanging.kind !== "wire" || found.taut !== null;
  if (wireStands && found.nail >= found.top)
    checks.push({ level: "warn", code: "nail-shows", above: subtract(found.nail, found.top) });
  if (mass === null) checks.push({ level: "note", code: "weight-unknown" });
  else if (mass >= HEAVY) checks.push({ level: "warn", code: "heavy", mass });
  const edge = subtract(frame.y, floor);
  const standsOut = publicWay && depth !== null && depth > PUBLIC.most;
  if (standsOut && edge > PUBLIC.above && edge <= PUBLIC.upTo)
    checks.push({ level: "warn", code: "projects", depth, most: PUBLIC.most });
  return checks;
}

function* wireChecks({ wire, below, apart, hooksApart }: Wire, taut: TautWire | null): Generator<HangCheck> {
  if (hooksApart > apart) yield { level: "stop", code: "hooks-past-rings", hooksApart, apart };
  if (taut === null) {
    yield { level: "stop", code: "wire-short", length: "length" in wire ? wire.length : apart, apart };
    return;
  }
  if (taut.rise >= below) yield { level: "stop", code: "wire-shows", rise: taut.rise, below };
  const angle = angleOf(taut.triangle);
  if (angle < FLAT)
    yield { level: "warn", code: "wire-flat", angle, times: taut.triangle.slope / taut.triangle.rise / 2 };
}

interface Heights {
  readonly top: Length;
  readonly bear: Length;
  readonly up: Length;
  readonly nail: Length;
}

function reckoningOf(
  hanging: Hanging,
  taut: TautWire | null,
  { top, bear, up, nail }: Heights,
): readonly HangStep[] {
  const steps: HangStep[] = [];
  const step = (name: HangStep["name"], sum: Sum, is: Length): void => {
    steps.push({ name, sum, is, makes: valueOf(sum), rounded: null });
  };
  if (hanging.kind === "wire" && taut !== null) wireStep(hanging, taut, step);
  const down: Sum =
    taut === null ? operand(hanging.below) : minus(operand(hanging.below), operand(taut.rise));
  step("bear", minus(operand(top), down), bear);
  if (up !== 0) step("nail", (up > 0 ? plus : minus)(operand(bear), operand(absolute(up))), nail);
  return steps;
}

/** Both legs doubled, so that no half stands in the sum: what hooks apart take off wire and rings is taken off first. */
function wireStep(
  { wire, apart, hooksApart }: Wire,
  taut: TautWire,
  step: (name: HangStep["name"], sum: Sum, is: Length) => void,
): void {
  const level = square(subtract(apart, hooksApart));
  if ("length" in wire) {
    const slopes = square(subtract(wire.length, hooksApart));
    step("rise", quotient(root(minus(slopes, level)), number("2")), taut.rise);
    return;
  }
  const slopes = root(plus(square(times(wire.drop, 2)), level));
  step("wire", hooksApart === 0 ? slopes : plus(operand(hooksApart), slopes), taut.length);
}

const root = (of: Sum): Sum => ({ kind: "root", of });
const square = (length: Length): Sum => ({ kind: "square", length });
