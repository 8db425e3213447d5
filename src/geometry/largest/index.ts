import { ticks } from "../../lengths/index.ts";
import { outlineHolds } from "../contains.ts";
import { extentOf } from "../polygon.ts";
import type { Box, Extent, Outline, RealPoint } from "../types.ts";
import { searchLargest } from "./search.ts";

export interface LargestRectangle {
  /** Truly inside the outline; null when none of a whole tick each way was found. */
  readonly box: Box | null;
  /** No upright rectangle inside the outline, on whole ticks or not, has a larger area than this, in square ticks. */
  readonly atMost: number;
  /** Whether the search went to its end, so that nothing larger than a tick's rounding was missed. */
  readonly proven: boolean;
}

/**
 * Enough for every outline that comes off paper, with two orders of magnitude to spare: a rough edge
 * of 2,000 points takes some 30,000. It is counted and not timed, so that the same outline always
 * gives the same rectangle; spending it all takes about a second.
 */
const USUAL_EFFORT = 10_000_000;

/** Doubles may have put a side that lies on a whole tick this far beside it; the exact test decides whether it does. */
const DOUBT = 1e-3;

/**
 * The upright rectangle of largest area wholly inside a simple polygon, touching allowed, in whole
 * ticks; null when there is none of at least one tick each way. Found from the polygon itself: its
 * corners may lie anywhere along the edges. Points may go round either way.
 *
 * Guaranteed: it lies inside, decided in exact arithmetic; none of its sides can be moved out by a
 * tick; and let out by one tick on every side it is larger than any rectangle inside, on whole ticks
 * or not. Of an outline of whole points with only level and upright edges it is the largest itself
 * (to one part in 10^15 of the area). The same points give the same rectangle, wherever the list
 * starts and whichever way it goes round, also when several are equally large. A real coordinate
 * within a millionth of a tick of a whole one is that whole one.
 *
 * Bounded work: the last guarantee of size falls away when an outline, of tens of thousands of long
 * slanted edges, spends all of the effort; the rectangle found by then still lies inside and cannot
 * be let out. `largestUprightRectangleWithin` tells. Of an outline that crosses itself (`outlineFault`)
 * the rectangle lies where `placeOf` says inside, and need not be the largest.
 */
export const largestUprightRectangle = (outline: Outline | readonly RealPoint[]): Box | null =>
  largestUprightRectangleWithin(outline).box;

/** The same within a given effort, about one for each edge looked at, with what is certain about its size. */
export function largestUprightRectangleWithin(
  outline: Outline | readonly RealPoint[],
  effort: number = USUAL_EFFORT,
): LargestRectangle {
  const points = outline.map(({ x, y }) => ({ x: settled(x), y: settled(y) }));
  if (!points.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y)) || points.length < 3) {
    return { box: null, atMost: 0, proven: true };
  }
  const extent = extentOf(points);
  const origin = { x: Math.floor(extent.left), y: Math.floor(extent.top) };
  const { found, bound } = searchLargest(points, origin, effort);
  if (found === null) return { box: null, atMost: bound, proven: bound === 0 };
  const sides: Extent = {
    left: found.left + origin.x,
    top: found.top + origin.y,
    right: found.right + origin.x,
    bottom: found.bottom + origin.y,
  };
  const box = onWholeTicks(sides, points);
  return { box: box && letOut(box, points), atMost: bound, proven: bound === found.area };
}

function settled(value: number): number {
  const near = Math.round(value);
  return Math.abs(value - near) < 1e-6 ? near : value;
}

/** Rounded inward, and further inward by as little as it takes to lie inside exactly. */
function onWholeTicks(sides: Extent, points: readonly RealPoint[]): Box | null {
  for (let inset = -DOUBT; ; inset = inset < 0 ? DOUBT : inset < 1 ? 1 : inset * 2) {
    const box = boxOf({
      left: Math.ceil(sides.left + inset),
      top: Math.ceil(sides.top + inset),
      right: Math.floor(sides.right - inset),
      bottom: Math.floor(sides.bottom - inset),
    });
    if (box.width <= 0 || box.height <= 0) return null;
    if (outlineHolds(points, box)) return box;
  }
}

/** Every side moved out as far as the outline lets it, one after another. */
function letOut(box: Box, points: readonly RealPoint[]): Box {
  let sides: Extent = {
    left: box.left,
    top: box.top,
    right: box.left + box.width,
    bottom: box.top + box.height,
  };
  for (const side of ["left", "right", "top", "bottom"] as const) {
    const way = side === "left" || side === "top" ? -1 : 1;
    const moved = (by: number): Extent => ({ ...sides, [side]: sides[side] + way * by });
    let by = 0;
    let step = 1;
    for (; outlineHolds(points, boxOf(moved(by + step))); step *= 2) by += step;
    for (; step >= 1; step /= 2) if (outlineHolds(points, boxOf(moved(by + step)))) by += step;
    sides = moved(by);
  }
  return boxOf(sides);
}

const boxOf = ({ left, top, right, bottom }: Extent): Box => ({
  left: ticks(left),
  top: ticks(top),
  width: ticks(right - left),
  height: ticks(bottom - top),
});
