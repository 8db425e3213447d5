import { TICKS_PER_MILLIMETRE } from "../lengths/index.ts";
import type { Outline, RealBox, RealPoint } from "./types.ts";

/**
 * Areas for reports, in square millimetres, as good as doubles: to about 12 figures for an outline of
 * thousands of points. Where an equality or a sign decides, `twiceSignedArea` is exact.
 */

const SQUARE_MILLIMETRE = TICKS_PER_MILLIMETRE * TICKS_PER_MILLIMETRE;

/** The area inside an outline, either way round, in square millimetres. Where it crosses itself, parts cancel. */
export function area(outline: Outline | readonly RealPoint[]): number {
  const [origin] = outline;
  if (origin === undefined) return 0;
  let twice = 0;
  let from = outline.at(-1) ?? origin;
  for (const to of outline) {
    // Counted from a point of the outline itself: far from it, the small difference of large products would be lost.
    twice += (from.x - origin.x) * (to.y - origin.y) - (to.x - origin.x) * (from.y - origin.y);
    from = to;
  }
  return Math.abs(twice) / 2 / SQUARE_MILLIMETRE;
}

/** The area that an outline and an upright box have in common, in square millimetres. */
export function clippedArea(outline: Outline | readonly RealPoint[], box: RealBox): number {
  let sum = 0;
  let from = outline.at(-1);
  for (const to of outline) {
    if (from !== undefined) sum += areaBeside(from, to, box);
    from = to;
  }
  return Math.abs(sum) / SQUARE_MILLIMETRE;
}

/**
 * The area between the box's head and one edge, inside the box: above nought for an edge that runs to
 * the right. Over a closed outline all but the common part cancels.
 */
function areaBeside(from: RealPoint, to: RealPoint, box: RealBox): number {
  const fromX = from.x - box.left;
  const toX = to.x - box.left;
  const left = within(fromX, box.width);
  const right = within(toX, box.width);
  if (left === right) return 0;
  const fromY = from.y - box.top;
  const toY = to.y - box.top;
  const steepness = (toY - fromY) / (toX - fromX);
  // Where an end lies within the box it counts as it is, not as it comes out of a product.
  const start = left === fromX ? fromY : fromY + (left - fromX) * steepness;
  const end = right === toX ? toY : fromY + (right - fromX) * steepness;
  return (right - left) * meanWithin(start, end, box.height);
}

/** The mean of what runs evenly from `a` to `b`, held between nought and `most`. */
function meanWithin(a: number, b: number, most: number): number {
  const [low, high] = a < b ? [a, b] : [b, a];
  if (low === high) return within(low, most);
  const from = within(low, most);
  const to = within(high, most);
  const above = Math.max(0, high - Math.max(low, most));
  return (((to - from) * (from + to)) / 2 + above * most) / (high - low);
}

const within = (value: number, most: number): number => Math.min(Math.max(value, 0), most);
