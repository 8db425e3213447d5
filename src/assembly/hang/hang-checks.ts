import { add, half, inch, type Length, subtract } from "../../lengths/index.ts";
import { angleOf, KILOGRAMS_PER_POUND, type WireTriangle } from "./statics.ts";
import type { FramedWork, FramePlace, HangCheck, Hanging, HangingHabits } from "./hanging.ts";

/** Flatter than this a wire pulls more than 1.93 times the weight at each ring. Common practice, no source. */
const FLAT = 15;
/** Up to here a nail or hook may do, from here on a closed hanger in a stud: 20 lb (Earthquake Country Alliance, securing your space). */
const INTO_FRAME = 20 * KILOGRAMS_PER_POUND;
/** A licensed hand from here on: 50 lb (the same). */
const HEAVY = 50 * KILOGRAMS_PER_POUND;
/** Leading edges above 27 in and up to 80 in may stand out 4 in at most (2010 ADA Standards, 307.2). */
const PUBLIC = { above: inch(27), upTo: inch(80), most: inch(4) };

/** What the checks of a hanging work look at, beside the work itself. */
export interface FoundHanging {
  readonly triangle: WireTriangle | null;
  /** Of the taut wire; null where there is none. */
  readonly rise: Length | null;
  readonly nail: Length;
  readonly top: Length;
}

/** All that is wrong with one work on its hooks, or must be known by the hand that hangs it. */
export function* hangChecks(
  work: FramedWork,
  frame: FramePlace,
  found: FoundHanging,
  habits: HangingHabits,
): Generator<HangCheck> {
  const { hanging } = work;
  if (hanging.kind === "wire") yield* wireChecks(hanging, found);
  yield* fittingChecks(work);
  if ((hanging.kind !== "wire" || found.rise !== null) && found.nail >= found.top)
    yield { level: "warn", code: "nail-shows", above: subtract(found.nail, found.top) };
  yield* weightChecks(work, habits);
  yield* placeChecks(work, frame, habits);
}

function* fittingChecks({ hanging, width, height }: FramedWork): Generator<HangCheck> {
  // The frame stands on it: at the very edge there is nothing to screw into.
  if (hanging.apart >= width)
    yield {
      level: "stop",
      code: "fitting-past-frame",
      direction: "width",
      at: hanging.apart,
      size: width,
    };
  if (hanging.below >= height)
    yield {
      level: "stop",
      code: "fitting-past-frame",
      direction: "height",
      at: hanging.below,
      size: height,
    };
  else if (hanging.below * 2 > height)
    yield { level: "warn", code: "leans-out", below: hanging.below, half: half(height, "nearest") };
}

function* wireChecks(
  { wire, below, apart, hooksApart }: Extract<Hanging, { readonly kind: "wire" }>,
  { triangle, rise }: FoundHanging,
): Generator<HangCheck> {
  if (hooksApart > apart) yield { level: "stop", code: "hooks-past-rings", hooksApart, apart };
  if (triangle === null || rise === null) {
    yield { level: "stop", code: "wire-short", length: "length" in wire ? wire.length : apart, apart };
    return;
  }
  if (rise >= below) yield { level: "stop", code: "wire-shows", rise, below };
  const angle = angleOf(triangle);
  if (angle < FLAT)
    yield { level: "warn", code: "wire-flat", angle, times: triangle.slope / triangle.rise / 2 };
}

function* weightChecks({ mass, hanging }: FramedWork, { wall, shakes }: HangingHabits): Generator<HangCheck> {
  if (mass === null) yield { level: "note", code: "weight-unknown" };
  else if (mass >= HEAVY) yield { level: "warn", code: "heavy", mass };
  else if (mass >= INTO_FRAME && (wall === "plasterboard" || wall === "lath"))
    yield { level: "warn", code: "into-frame", mass };
  if (!shakes || (mass !== null && mass >= HEAVY)) return;
  const oneHook = hanging.kind === "wire" && hanging.hooks === 1;
  const light = mass !== null && mass < INTO_FRAME;
  yield { level: "warn", code: "shakes", light, oneHook };
}

function* placeChecks(
  { width, depth }: FramedWork,
  frame: FramePlace,
  { publicWay, floor, seats }: HangingHabits,
): Generator<HangCheck> {
  const edge = subtract(frame.y, floor);
  const standsOut = publicWay && depth !== null && depth > PUBLIC.most;
  if (standsOut && edge > PUBLIC.above && edge <= PUBLIC.upTo)
    yield { level: "warn", code: "projects", depth, most: PUBLIC.most };
  const right = add(frame.x, width);
  for (const { name, x, width: wide } of seats)
    if (frame.x < add(x, wide) && x < right) yield { level: "warn", code: "over-people", name };
}
