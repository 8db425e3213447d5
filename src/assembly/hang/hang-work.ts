import { absolute, add, fromReal, half, type Length, subtract, times, ZERO } from "../../lengths/index.ts";
import { minus, number, operand, plus, quotient, type Sum, valueOf } from "../reckoning.ts";
import { hangChecks } from "./hang-checks.ts";
import type {
  FramedWork,
  FramePlace,
  Hanging,
  HangingHabits,
  HangStep,
  HookPlace,
  HungWork,
} from "./hanging.ts";
import {
  angleOf,
  type Loads,
  sharedLoads,
  STANDARD_GRAVITY,
  triangleOfLength,
  triangleOfRise,
  type WireTriangle,
  wireLoads,
  wireOf,
} from "./statics.ts";

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
  const found = { triangle: taut?.triangle ?? null, rise: taut?.rise ?? null, nail, top };
  return {
    frame,
    hooks,
    wire: taut === null ? null : { rise: taut.rise, length: taut.length, angle: angleOf(taut.triangle) },
    loads: loadsOf(work, taut),
    checks: [...hangChecks(work, frame, found, habits)],
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
