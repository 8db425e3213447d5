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

/** An upright rectangle in real ticks. Every `Box` is one. */
export interface RealBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** How far something reaches each way, in real ticks. */
export interface Extent {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** One real figure, in ticks, for each side. */
export type RealSides = Readonly<Record<Side, number>>;

/** A rectangle's corners in the order top-left, top-right, bottom-right, bottom-left before it was turned. */
export type FourCorners = readonly [RealPoint, RealPoint, RealPoint, RealPoint];

/**
 * Why a list of points is not the edge of anything. Edge `n` runs from point `n` to the next one;
 * `points` counts those left after equal neighbours are taken as one.
 */
export type OutlineFault =
  /** The point at this place of the list has no position. */
  | { readonly code: "not-a-point"; readonly point: number }
  | { readonly code: "too-few-points"; readonly points: number }
  /** Two edges meet elsewhere than at a corner that they share. */
  | { readonly code: "crosses-itself"; readonly edges: readonly [number, number] };
