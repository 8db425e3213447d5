import { extentOf, type Sides } from "../../geometry/index.ts";
import { absolute, add, fromReal, half, type Length, smaller, subtract } from "../../lengths/index.ts";
import type { Composition } from "../composition.ts";
import type { Design } from "../design.ts";
import { composeInFrame, type InFrame, waysUp } from "./around.ts";
import { planFrame } from "./frame.ts";
import type { FramePlan } from "./frame-plan.ts";

/** How well one work goes into what exists, the way up in which it goes best. */
export interface Fit {
  readonly composition: Composition;
  readonly plan: FramePlan;
  readonly inFrame: InFrame;
  /** Whether it hangs the other way up than it is given in. */
  readonly turned: boolean;
  /** What stops it, and what is warned about, in mats and frame together. */
  readonly stops: number;
  readonly warnings: number;
  /** By how much what is seen at the sides differs from what is seen at head and foot on the average. */
  readonly unlike: Length;
  /** The least that is seen of a border. */
  readonly least: Length;
  /** From the window's edge to the image's on each side: above nought paper shows, below it the image is covered. Null: no print. */
  readonly shown: Sides | null;
}

/**
 * A design put into what exists, whichever way up serves better: fewer stops, fewer warnings, borders more alike, and at last
 * the larger least border. Common practice, no source. Never throws.
 */
export function fitInto(design: Design, one: InFrame): Fit {
  return waysUp(one)
    .map((way, index) => fitOf(design, way, index > 0))
    .reduce((best, fit) => (compareFits(fit, best) < 0 ? fit : best));
}

function fitOf(design: Design, inFrame: InFrame, isTurned: boolean): Fit {
  const composition = composeInFrame(design, inFrame);
  const plan = planFrame(composition, inFrame.frame);
  const { seen } = plan.stands;
  const all = [...composition.checks, ...plan.checks];
  const count = (level: "stop" | "warn"): number => all.filter((check) => check.level === level).length;
  return {
    composition,
    plan,
    inFrame,
    turned: isTurned,
    stops: count("stop"),
    warnings: count("warn"),
    unlike: absolute(half(subtract(add(seen.left, seen.right), add(seen.head, seen.foot)), "nearest")),
    least: [seen.head, seen.left, seen.right, seen.foot].reduce(smaller),
    shown: shownOf(composition),
  };
}

/** Below nought where the first fits better. */
export const compareFits = (a: Fit, b: Fit): number =>
  a.stops - b.stops || a.warnings - b.warnings || a.unlike - b.unlike || b.least - a.least;

const at = (value: number): Length => fromReal(value, "nearest");

/** What of the paper round the image is seen in the window, side by side. */
export function shownOf({ print, mats, outer }: Composition): Sides | null {
  const borders = mats[0]?.borders;
  if (print === null || borders === undefined || print.imageOutline.length === 0) return null;
  const image = extentOf(print.imageOutline);
  return {
    head: at(image.top - borders.head),
    left: at(image.left - borders.left),
    right: at(outer.width - borders.right - image.right),
    foot: at(outer.height - borders.foot - image.bottom),
  };
}

/** The places of works in a list, those first that fit best; of equals the earlier one. */
export const bestFitting = (fits: readonly Fit[]): readonly number[] =>
  fits.map((_, index) => index).toSorted((a, b) => compareOr(fits[a], fits[b]) || a - b);

const compareOr = (a: Fit | undefined, b: Fit | undefined): number =>
  a === undefined || b === undefined ? 0 : compareFits(a, b);
