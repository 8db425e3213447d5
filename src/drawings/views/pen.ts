import type { Point, RealPoint } from "../../geometry/index.ts";
import { fromReal, type Length, type Ruler, TICKS_PER_INCH } from "../../lengths/index.ts";
import { estimateText } from "../lettering.ts";
import type { Anchor, Fill, LineKind, Mark, MeasureText, Run, Weight } from "../marks.ts";

/**
 * A drawing's own space is worked in reals of ticks, from the package's top-left corner, and taken to
 * whole ticks only when a mark is made: a tick is a thousandth of the finest line.
 */

/** One pixel of the page, 1/96 in, in ticks. Lettering, arrows and gaps are counted in it and do not scale. */
export const PIXEL = TICKS_PER_INCH / 96;

/** What every view draws with. */
export interface Pen {
  /** Ticks to one pixel of lettering and gaps; `PIXEL`, or more on a drawing that is read from afar. */
  readonly pixel: number;
  readonly ruler: Ruler;
  readonly measure: MeasureText;
}

/** What all views take: the length on the drawing per real length (0.25 for 1 : 4), and the hand's ruler. */
export interface ViewOptions {
  readonly scale: number;
  readonly ruler: Ruler;
  /** The font's own measure where there is a font; else a close estimate. */
  readonly measure?: MeasureText;
  /** How large a pixel of lettering and gaps is; 1/96 in where absent. */
  readonly pixel?: Length;
}

export const penFor = (options: Omit<ViewOptions, "scale">): Pen => ({
  pixel: options.pixel ?? PIXEL,
  ruler: options.ruler,
  measure: options.measure ?? estimateText,
});

/** Throws RangeError when a scale is not a number above nought: there is no such drawing. */
export function scaleOf(scale: number): number {
  if (!Number.isFinite(scale) || scale <= 0) throw new RangeError(`${scale} is no scale to draw at`);
  return scale;
}

/** The whole tick nearest to a place on the drawing. */
export const place = (value: number): Length => fromReal(value, "nearest");
export const spot = (x: number, y: number): Point => ({ x: place(x), y: place(y) });
export const spots = (points: readonly RealPoint[]): Point[] => points.map((point) => spot(point.x, point.y));

export const line = (x1: number, y1: number, x2: number, y2: number, kind: LineKind): Mark => ({
  kind: "line",
  from: spot(x1, y1),
  to: spot(x2, y2),
  line: kind,
});

export const polyline = (points: readonly RealPoint[], kind: LineKind): Mark => ({
  kind: "polyline",
  points: spots(points),
  line: kind,
});

export const area = (points: readonly RealPoint[], fill: Fill, kind: LineKind | null = null): Mark => ({
  kind: "area",
  points: spots(points),
  fill,
  line: kind,
});

export const group = (name: string, marks: readonly Mark[]): Mark => ({ kind: "group", name, marks });

/** The same under a name, or nothing where there is nothing to name. */
export const groupOf = (name: string, marks: readonly Mark[]): Mark[] =>
  marks.length === 0 ? [] : [group(name, marks)];

interface Lettered {
  readonly size: number;
  readonly weight?: Weight;
  readonly anchor?: Anchor;
  readonly degrees?: number;
  readonly halo?: boolean;
}

/** Text on its baseline; `size` in pixels. */
export const lettering = (pen: Pen, x: number, y: number, runs: readonly Run[], how: Lettered): Mark => ({
  kind: "text",
  at: spot(x, y),
  runs,
  size: place(how.size * pen.pixel),
  weight: how.weight ?? "regular",
  anchor: how.anchor ?? "middle",
  ...(how.degrees === undefined ? {} : { degrees: how.degrees }),
  ...(how.halo === undefined ? {} : { halo: how.halo }),
});

export const textRun = (text: string): Run => ({ kind: "text", text });
