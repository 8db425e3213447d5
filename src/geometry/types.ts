import type { Length } from "../lengths/index.ts";

/** A point on one surface; x to the right, y down, seen from the front unless the surface says otherwise. */
export interface Point {
  readonly x: Length;
  readonly y: Length;
}

export interface Size {
  readonly width: Length;
  readonly height: Length;
}

/** An upright rectangle by its top-left corner and size. */
export interface Box extends Size {
  readonly left: Length;
  readonly top: Length;
}

/** A simple closed polygon; the last point joins the first. Either way round. */
export type Outline = readonly Point[];

/** One figure for each side, always named as seen from the front. */
export interface Sides {
  readonly head: Length;
  readonly left: Length;
  readonly right: Length;
  readonly foot: Length;
}

export type Side = keyof Sides;

/** One figure for each corner, always named as seen from the front. */
export interface Corners {
  readonly topLeft: Length;
  readonly topRight: Length;
  readonly bottomLeft: Length;
  readonly bottomRight: Length;
}

export type Corner = keyof Corners;

/** A real position in ticks, where a turn has taken a point off the whole ticks. */
export interface RealPoint {
  readonly x: number;
  readonly y: number;
}
