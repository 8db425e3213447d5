import { fromReal, subtract } from "../lengths/index.ts";
import { turnOf } from "./exact.ts";
import type { Box, Extent, Outline, RealPoint } from "./types.ts";

/** How far some points reach each way, as exact as they are. Throws RangeError when there are none or one has no position. */
export function extentOf(points: readonly RealPoint[]): Extent {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  // One coordinate that is no number makes its sum none; without points the two infinities do.
  if (!Number.isFinite(left + right) || !Number.isFinite(top + bottom)) {
    throw new RangeError("bounds are of at least one point, and of points that have a position");
  }
  return { left, top, right, bottom };
}

/**
 * The smallest upright rectangle that holds all of an outline, in whole ticks, rounded outward: exact
 * for whole points, less than a tick larger on each side for real ones. A real coordinate within a
 * millionth of a tick of a whole one is that whole one. Throws RangeError when there are no points or
 * one has no position.
 */
export function smallestUprightRectangle(outline: Outline | readonly RealPoint[]): Box {
  const extent = extentOf(outline);
  const left = fromReal(extent.left, "down");
  const top = fromReal(extent.top, "down");
  return {
    left,
    top,
    width: subtract(fromReal(extent.right, "up"), left),
    height: subtract(fromReal(extent.bottom, "up"), top),
  };
}

/**
 * Where a point lies to an outline; exact for all finite coordinates. Of an outline that crosses
 * itself, inside is what an odd number of its edges parts from afar.
 */
export function placeOf(
  point: RealPoint,
  outline: Outline | readonly RealPoint[],
): "inside" | "edge" | "outside" {
  let inside = false;
  let before = outline.at(-1);
  for (const to of outline) {
    const from = before ?? to;
    before = to;
    const upper = from.y <= to.y ? from : to;
    const lower = upper === from ? to : from;
    if (point.y < upper.y || point.y > lower.y) continue;
    if (upper.y === lower.y) {
      if (between(point.x, from.x, to.x)) return "edge";
      continue;
    }
    const side = turnOf(upper, lower, point);
    if (side === 0) return "edge";
    // The lower end does not count, so that a ray through a corner meets one of its two edges.
    if (point.y < lower.y && side > 0) inside = !inside;
  }
  return inside ? "inside" : "outside";
}

const between = (value: number, a: number, b: number): boolean =>
  value >= Math.min(a, b) && value <= Math.max(a, b);
