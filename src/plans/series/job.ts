import type { Sides, Size } from "../../geometry/index.ts";
import type { Length } from "../../lengths/index.ts";

/** A work of the series: what its outer size must hold. */
export interface SeriesWork {
  readonly name: string;
  /** The opening at the back of its lowest mat. */
  readonly window: Size;
  /** How many of it there are, one or more. */
  readonly count: number;
  /** How far its paper reaches past the window on each side: no border may be narrower. */
  readonly reach: Sides;
}

/** An outer size that can be had. */
export interface SeriesSize {
  readonly name: string;
  readonly width: Length;
  readonly height: Length;
  /** What one work of this size costs in board, in the money of the practice, to the ten-thousandth. */
  readonly cost: number;
}

/** Which borders and which lift the eye allows. */
export interface SeriesLimits {
  /** Each of the four borders; `most` null: any. */
  readonly border: { readonly least: Length; readonly most: Length | null };
  /** How far the window is raised above the centre: what is wanted, and how far it may give way. */
  readonly lift: { readonly by: Length; readonly least: Length; readonly most: Length };
  /** Left and head are whole graduations, rounded down, as a work by itself is composed. */
  readonly graduation: Length;
  /** Whether a size may stand either way up. */
  readonly turns: boolean;
}

export interface SeriesJob {
  readonly works: readonly SeriesWork[];
  readonly sizes: readonly SeriesSize[];
  readonly limits: SeriesLimits;
}

/** Past these neither the choice nor its answer is of use. */
export const MOST_WORKS = 20_000;
export const MOST_SIZES = 500;
export const DEAREST = 1e6;

const isLength = (length: number): boolean => Number.isSafeInteger(length) && length >= 0;

/** Refuses a job that cannot be read: sizes, counts and prices that are not of their kind, limits that contradict. Throws RangeError. */
export function requireSoundSeries({ works, sizes, limits }: SeriesJob): void {
  const pieces = works.reduce((sum, { count }) => sum + count, 0);
  if (!(pieces <= MOST_WORKS)) throw new RangeError(`${pieces} works in one series`);
  if (sizes.length > MOST_SIZES) throw new RangeError(`${sizes.length} sizes to choose from`);
  for (const { name, window, count, reach } of works) {
    if (!Number.isSafeInteger(count) || count < 1) throw new RangeError(`work ${name}: count`);
    if (!isLength(window.width) || !isLength(window.height) || window.width * window.height === 0)
      throw new RangeError(`work ${name}: window`);
    if (![reach.head, reach.left, reach.right, reach.foot].every(isLength))
      throw new RangeError(`work ${name}: reach`);
  }
  for (const { name, width, height, cost } of sizes) {
    if (!isLength(width) || !isLength(height) || width * height === 0)
      throw new RangeError(`size ${name}: size`);
    if (!(cost >= 0 && cost <= DEAREST)) throw new RangeError(`size ${name}: cost`);
  }
  const { border, lift, graduation } = limits;
  if (!(graduation > 0 && isLength(graduation))) throw new RangeError("graduation");
  if (!isLength(border.least) || (border.most !== null && !(border.most >= border.least)))
    throw new RangeError("border");
  if (!isLength(lift.least) || !(lift.least <= lift.by && lift.by <= lift.most)) throw new RangeError("lift");
}
