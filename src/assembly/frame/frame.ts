import { type Sides, SIDES, type Size } from "../../geometry/index.ts";
import { fromReal, larger, type Length, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import type { Composition } from "../composition.ts";
import type { HoldPlan } from "../hold/index.ts";
import { minus, operand, plus, type Sum, twice, valueOf } from "../reckoning.ts";
import { frameChecks } from "./checks.ts";
import type { FrameFacts } from "./facts.ts";
import type { FramedGlazing, FrameCheck, FramePlan, FrameStep, Seen, WoodMovement } from "./frame-plan.ts";
import { glazingGrows, USUAL_HUMIDITY } from "./glazings.ts";
import { type FrameSizes, frameSizes, liftOf, lipHides, seenBorders } from "./opening.ts";
import { type Stack, stackOf, stripsRound, stripWidth } from "./stack.ts";
import { massOf } from "./weight.ts";
import { COEFFICIENTS_HOLD, equilibriumMoisture, widthChange } from "./woods.ts";

/**
 * A composed work in a kind of frame: sizes, what is seen under the lip, the stack against the rabbet, glazing and
 * backing to cut, the whole weight, and every problem a record. `held`: how it is held; null: it lies flat, and what its
 * sheet weighs is not known. `process` as it was told, empty where it was not. Never throws.
 */
export function planFrame(
  composition: Composition,
  frame: FrameFacts,
  held: HoldPlan | null = null,
  process = "",
): FramePlan {
  const { outer, design } = composition;
  const sizes = frameSizes(frame, outer);
  const onFoot = seenAs(composition, lipHides(frame, sizes.slack, "foot"));
  const shimmed = seenAs(composition, lipHides(frame, sizes.slack, "shimmed"));
  const stands = frame.seat === "foot" ? onFoot : shimmed;
  const strip = stripWidth(stands.hidden, design.ruler.graduation);
  const stack = stackOf(composition, frame, held?.bed, strip);
  const { profile, habits, backing } = frame;
  const left = profile.depth === null ? null : subtract(profile.depth, stack.depth);
  const plan = {
    frame,
    sizes,
    onFoot,
    shimmed,
    stands,
    stack,
    left,
    glazing: glazingOf(frame, outer, sizes),
    spacers: frame.spacer === 0 ? null : stripsRound(outer, frame.spacer, strip),
    backing: backing === null ? null : lessThan(outer, backing.less),
    dustCover: lessThan(sizes.outer, times(habits.coverInset, 2)),
    mass: massOf(frame, sizes, stack, held?.grams ?? null),
    depth: sum([habits.bumper, profile.lip, larger(profile.depth ?? ZERO, stack.depth)]),
    wood: woodMovement(frame),
    reckoning: reckoningOf(composition, frame, sizes, stands, stack, left),
  };
  return { ...plan, checks: frameChecks(plan, composition, process) };
}

/** What makes a work one that may not be framed so: checks of level "stop". */
export const frameStops = (plan: FramePlan | null): readonly FrameCheck[] =>
  (plan?.checks ?? []).filter(({ level }) => level === "stop");

/** What a wall, and a crate, needs to know of a framed work. */
export interface FramedSize extends Size {
  /** Kilograms, fittings and all, rather too much than too little. */
  readonly mass: number;
  /** From the wall to the frame's face. */
  readonly depth: Length;
}

/** A framed work's outer size, whole weight and depth. */
export const framedSize = ({ sizes, mass, depth }: FramePlan): FramedSize => ({
  ...sizes.outer,
  mass: mass.total,
  depth,
});

const lessThan = ({ width, height }: Size, by: Length): Size => ({
  width: subtract(width, by),
  height: subtract(height, by),
});

const seenAs = (composition: Composition, hidden: Sides): Seen => {
  const seen = seenBorders(composition, hidden);
  return { hidden, seen, lift: liftOf(seen) };
};

function glazingOf({ glazing, air }: FrameFacts, outer: Size, { opening }: FrameSizes): FramedGlazing | null {
  if (glazing === null) return null;
  const { kind, board, thickness } = glazing;
  const size = lessThan(outer, glazing.less);
  const grown = (length: Length): Length => (length > 0 ? glazingGrows(length, kind, air) : ZERO);
  return {
    ...size,
    kind,
    board,
    thickness,
    grows: { width: grown(size.width), height: grown(size.height) },
    room: {
      width: subtract(opening.width, size.width),
      height: subtract(opening.height, size.height),
    },
  };
}

/** Across a flat-sawn rail. Along the grain wood hardly moves, so a mitre between two rails opens by √2 times that. */
function woodMovement({ profile, air }: FrameFacts): WoodMovement | null {
  const coefficient = profile.wood?.tangential ?? null;
  if (coefficient === null) return null;
  const { from, to } = air.humidity ?? USUAL_HUMIDITY;
  const moisture = { from: equilibriumMoisture(from), to: equilibriumMoisture(to) };
  const across = widthChange(profile.overall, coefficient, moisture.from, moisture.to);
  return {
    moisture,
    across: fromReal(across, "up"),
    mitre: fromReal(across * Math.SQRT2, "up"),
    sure: moisture.from >= COEFFICIENTS_HOLD.from && moisture.to <= COEFFICIENTS_HOLD.to,
  };
}

const step = (name: FrameStep["name"], of: Sum, is: Length): FrameStep => ({
  name,
  sum: of,
  makes: valueOf(of),
  rounded: null,
  is,
});

function reckoningOf(
  { outer, mats }: Composition,
  { profile, opening }: FrameFacts,
  sizes: FrameSizes,
  { hidden, seen }: Seen,
  stack: Stack,
  left: Length | null,
): readonly FrameStep[] {
  const beyond = subtract(profile.overall, profile.rabbet);
  const layers = stack.layers.filter(({ within, thickness }) => !within && thickness > 0);
  const [first, ...more] = layers.map(({ thickness }) => operand(thickness));
  const borders = mats[0]?.borders;
  return [
    ...(["width", "height"] as const).flatMap((direction): FrameStep[] => [
      ...(opening === null
        ? [
            step(
              { of: "opening", direction },
              plus(operand(outer[direction]), operand(profile.allowance)),
              sizes.opening[direction],
            ),
          ]
        : []),
      step(
        { of: "rail", direction },
        plus(operand(sizes.opening[direction]), twice(beyond)),
        sizes.outer[direction],
      ),
      step(
        { of: "sight", direction },
        minus(operand(sizes.opening[direction]), twice(profile.rabbet)),
        sizes.sight[direction],
      ),
    ]),
    ...(borders === undefined
      ? []
      : SIDES.map((side) =>
          step({ of: "seen", side }, minus(operand(borders[side]), operand(hidden[side])), seen[side]),
        )),
    ...(first === undefined ? [] : [step({ of: "stack" }, more.reduce(plus, first), stack.depth)]),
    ...(left === null || profile.depth === null
      ? []
      : [step({ of: "left" }, minus(operand(profile.depth), operand(stack.depth)), left)]),
  ];
}
