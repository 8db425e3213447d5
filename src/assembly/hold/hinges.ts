import type { Size } from "../../geometry/index.ts";
import {
  add,
  half,
  type Length,
  scale,
  smaller,
  subtract,
  times,
  toGraduation,
  toMillimetres,
} from "../../lengths/index.ts";
import type { Ruler } from "../../lengths/index.ts";
import { HOLD_FIGURES, type HoldHabits } from "./facts.ts";

export type HingeKind = "T" | "V" | "pass-through";

/** Hinges at the head: the only edge that is ever pasted. */
export interface HeldHinges {
  readonly kind: HingeKind;
  /** Each hinge's middle, from the sheet's left corner along its head. */
  readonly at: readonly Length[];
  /** From the sheet's corner to the first tab. */
  readonly inset: Length;
  readonly tab: Size;
  readonly pasted: Length;
  /** T: without paste between the sheet's edge and the cross-piece. */
  readonly bare: Length;
  /** T and pass-through: the larger piece that crosses the tab, on the mount's front or back. */
  readonly cross: Size;
  /** Pass-through: the slit, from the sheet's head down, and how long it is. */
  readonly slit: { readonly down: Length; readonly length: Length };
}

/** Grams a square metre: at 140 lb a ream of 22 × 30 in a sheet has 298. Under the first it counts as light, from the second on as heavy. Common practice, no source. */
const LIGHT = 200;
const HEAVY = 400;

/**
 * How many hinges a sheet hangs from: two at least, and as many that neighbours stand no farther apart
 * than its weight allows. Counts for 22 × 30 in at 140 lb as C. A. Paschke has them: three upright, four landscape.
 */
export function hingeCount(width: Length, grammage: number | null, inset: Length, ruler: Ruler): number {
  const { apart } = HOLD_FIGURES[ruler.unit];
  const most =
    grammage === null || (grammage >= LIGHT && grammage < HEAVY)
      ? apart.usual
      : grammage < LIGHT
        ? apart.light
        : apart.heavy;
  return Math.max(2, Math.ceil(subtract(width, times(inset, 2)) / most) + 1);
}

/** How far the first hinge stays from the corner: the habit's, on a narrow sheet a fifth of its width. */
export function hingeInset(width: Length, habits: HoldHabits, ruler: Ruler): Length {
  return times(habits.inset, 4) <= width ? habits.inset : fifth(width, ruler);
}

const fifth = (width: Length, { graduation }: Ruler): Length =>
  toGraduation(scale(width, 1n, 5n, "down"), graduation, "down");

/** The hinges of a sheet so wide, each in its place. Places are the same from both corners. */
export function hingesOf(
  kind: HingeKind,
  width: Length,
  grammage: number | null,
  raisedBy: Length,
  habits: HoldHabits,
  ruler: Ruler,
): HeldHinges {
  const inset = hingeInset(width, habits, ruler);
  const count = hingeCount(width, grammage, inset, ruler);
  const tab = {
    width: smaller(habits.tab.width, larger1(fifth(width, ruler), ruler)),
    height: habits.tab.height,
  };
  const first = add(inset, half(tab.width, "down"));
  const span = subtract(width, times(first, 2));
  const from = (index: number): Length =>
    toGraduation(
      add(first, scale(span, BigInt(index), BigInt(count - 1), "nearest")),
      ruler.graduation,
      "nearest",
    );
  const at = Array.from({ length: count }, (_, index) => {
    if (2 * index === count - 1) return half(width, "nearest");
    return 2 * index < count - 1 ? from(index) : subtract(width, from(count - 1 - index));
  });
  const rest = subtract(tab.height, add(habits.pasted, kind === "T" ? habits.bare : habits.slit));
  return {
    kind,
    at,
    inset,
    tab,
    pasted: habits.pasted,
    bare: habits.bare,
    cross: { width: times(tab.width, 2), height: rest },
    slit: { down: add(raisedBy, habits.slit), length: add(tab.width, habits.bare) },
  };
}

/** A tab is never nothing. */
const larger1 = (length: Length, { graduation }: Ruler): Length =>
  length > graduation ? length : graduation;

/** A T-hinge's room above the sheet: what is bare, and the cross-piece. */
export const roomAboveHinge = ({ bare, cross }: HeldHinges): Length => add(bare, cross.height);

/** What a sheet weighs, grams. */
export const gramsOf = ({ width, height }: Size, grammage: number): number =>
  (toMillimetres(width) / 1000) * (toMillimetres(height) / 1000) * grammage;

/** From so many grams a square metre on a V-hinge, which is the weaker, is not trusted. Common practice, no source. */
const HEAVY_FOR_V = 300;

/** A V-hinge is folded behind the sheet and peels where a T pulls. */
export const tooHeavyForV = (sheet: Size, grammage: number | null, { unit }: Ruler): boolean =>
  Math.max(sheet.width, sheet.height) > HOLD_FIGURES[unit].longestOnV || (grammage ?? 0) >= HEAVY_FOR_V;
