import { type Length, subtract } from "../lengths/index.ts";
import type { Box, Point, RealBox, RealPoint, Side, Size } from "./types.ts";

/** Whether one upright rectangle lies wholly within another; touching edges are within. */
export const withinBox = (inner: RealBox, outer: RealBox): boolean =>
  inner.left >= outer.left &&
  inner.top >= outer.top &&
  inner.left + inner.width <= outer.left + outer.width &&
  inner.top + inner.height <= outer.top + outer.height;

/** A point of a board `width` wide, on the other side of it: turned over like a page, x goes to width - x. Twice is the same point. */
export const mirroredPoint = (point: Point, width: Length): Point => ({
  x: subtract(width, point.x),
  y: point.y,
});

/** A box on the other side of a board `width` wide: its left becomes width - left - its own width. Twice is the same box. */
export const mirroredBox = (box: Box, width: Length): Box => ({
  ...box,
  left: subtract(subtract(width, box.left), box.width),
});

/** Real points on the other side of a board `width` wide. They then go round the other way. */
export const mirroredOutline = (points: readonly RealPoint[], width: number): readonly RealPoint[] =>
  points.map(({ x, y }) => ({ x: width - x, y }));

/** In the order in which borders are told. */
export const SIDES: readonly Side[] = ["head", "left", "right", "foot"];

/** A size lying where it stood, and standing where it lay. */
export const quarterTurned = ({ width, height }: Size): Size => ({ width: height, height: width });
