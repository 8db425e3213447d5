import type { Composition } from "../../assembly/index.ts";
import type { RealPoint } from "../../geometry/index.ts";
import type { Length } from "../../lengths/index.ts";
import type { Drawing, Mark } from "../marks.ts";
import { type Shortened, shorten } from "./breaks.ts";
import { fitted } from "./extent.ts";
import { type Layer, layersOf, type Mount } from "./layers.ts";
import { leaderMarks } from "./leaders.ts";
import {
  area,
  group,
  groupOf,
  line,
  type Pen,
  penFor,
  place,
  polyline,
  scaleOf,
  type ViewOptions,
} from "./pen.ts";
import { sectionFigures } from "./section-figures.ts";
import { clipPolygon } from "./shapes.ts";
import { INSIDE, placesOf, type Stack, stackOf } from "./stack.ts";
import { breakMarks, innerBreak } from "./zigzag.ts";

export interface SectionOptions extends ViewOptions {
  /** How many times the scale of the other views this one has, said beside the drawing; where absent 4, or as much as the thinnest mat needs to be seen. */
  readonly times?: number;
  /** The widest the drawing may be: the border is broken where it would be wider. */
  readonly width?: Length;
  readonly mount?: Mount;
}

export interface SectionView extends Drawing {
  /** Named beside the drawing, by the numbers of its leaders. */
  readonly layers: readonly Layer[];
  readonly times: number;
  /** Whether a border is drawn shorter than it is. */
  readonly broken: boolean;
}

// In pixels.
const MARGIN = 8;
/** Leaders, numbers and both margins: what the drawing needs beside the stack itself. */
const BESIDE_STACK = 66 + 2 * MARGIN;
/** What stays of a stretch on both sides of a break. */
const LEAST_SPAN = 44;
/** As thick as a mat has to be drawn for its fill to be seen between its outlines. */
const LEAST_MAT = 5;

const LEAST_TIMES = 4;
const MOST_TIMES = 64;

/**
 * A cut through the foot, face up, the outer edge at the right: window mats with their true bevels, the
 * print as far as it reaches, the mount. Its scale is a stated multiple of the other views'. Throws
 * RangeError for a scale that is not above nought.
 */
export function sectionView(composition: Composition, options: SectionOptions): SectionView {
  const pen = penFor(options);
  const times = options.times ?? timesFor(composition, options.scale, pen);
  const scale = scaleOf(options.scale * times);
  const layers = layersOf(composition, options.mount);
  const stack = stackOf(composition, pen, scale, layers);
  const room = options.width === undefined ? Infinity : options.width - (BESIDE_STACK + INSIDE) * pen.pixel;
  const short = shorten(placesOf(stack), room, LEAST_SPAN * pen.pixel);
  const drawing = fitted(
    sectionMarks(composition, pen, stack, short, layers),
    place(MARGIN * pen.pixel),
    pen.measure,
  );
  const { width, height, marks } = drawing;
  return { width, height, marks, layers, times, broken: short.breaks.length > 0 };
}

/** Four times, or doubled until the thinnest mat is seen between its outlines. */
function timesFor(composition: Composition, scale: number, pen: Pen): number {
  const thinnest = Math.min(...composition.mats.map((mat) => mat.thickness));
  let times = LEAST_TIMES;
  while (times < MOST_TIMES && thinnest * scale * times < LEAST_MAT * pen.pixel) times *= 2;
  return times;
}

function sectionMarks(
  composition: Composition,
  pen: Pen,
  stack: Stack,
  short: Shortened,
  layers: readonly Layer[],
): Mark[] {
  const { inner, mount } = stack;
  const { map } = short;
  const outer = map(stack.outer);
  return [
    group("mount", [
      area(box(inner, mount.top, outer, mount.bottom), "mount"),
      // Open at the left, where the drawing breaks off and the board goes on.
      polyline(box(inner, mount.top, outer, mount.bottom), "edge"),
    ]),
    ...groupOf(
      "paper",
      stack.print ? [area(box(inner, stack.print.top, map(stack.print.end), stack.print.bottom), "ink")] : [],
    ),
    ...stack.mats.flatMap((_, index) => matMarks(stack, map, index)),
    ...groupOf("break", [
      ...innerBreak(pen, stack),
      ...short.breaks.flatMap((at) => breakMarks(pen, stack, at)),
    ]),
    ...leaderMarks(pen, layers, leaderTargets(pen, stack, map), inner),
    ...sectionFigures(composition, pen, stack, map),
  ];
}

const box = (left: number, top: number, right: number, bottom: number): RealPoint[] => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
];

/** A mat's cut face with its true lean; what would lie past the outer edge is not there, and its edge stands dashed. */
function matMarks(stack: Stack, map: (x: number) => number, index: number): Mark[] {
  const mat = stack.mats[index];
  if (!mat) return [];
  const outer = stack.outer;
  const right = Math.max(outer, mat.face);
  const whole: RealPoint[] = [
    { x: mat.face, y: mat.top },
    { x: right, y: mat.top },
    { x: right, y: mat.bottom },
    { x: mat.back, y: mat.bottom },
  ];
  const mapped = (points: readonly RealPoint[]): RealPoint[] => points.map(({ x, y }) => ({ x: map(x), y }));
  const there = clipPolygon(whole, { left: -Infinity, right: outer, top: mat.top, bottom: mat.bottom });
  const fill = index === stack.mats.length - 1 ? "mat" : "mat-lower";
  const gone = mat.face > outer;
  return [
    group(`mat-${index}`, [
      ...(there.length === 0 ? [] : [area(mapped(there), fill, "edge")]),
      ...(gone ? [line(map(mat.back), mat.bottom, map(mat.face), mat.top, "hidden")] : []),
    ]),
  ];
}

/** Where each leader's dot stands, from the face down: in a mat behind its bevel, in print and mount near the inner end. */
function leaderTargets(pen: Pen, stack: Stack, map: (x: number) => number): RealPoint[] {
  const px = (count: number): number => count * pen.pixel;
  const near = stack.inner + px(8);
  const mats = stack.mats.map((mat) => {
    const edge = map(Math.max(mat.back, mat.face));
    const outer = map(stack.outer);
    const x = outer > edge ? Math.min(edge + px(12), (edge + outer) / 2) : edge;
    return { x, y: (mat.top + mat.bottom) / 2 };
  });
  mats.reverse();
  return [
    ...mats,
    ...(stack.print ? [{ x: near, y: (stack.print.top + stack.print.bottom) / 2 }] : []),
    { x: near, y: (stack.mount.top + stack.mount.bottom) / 2 },
  ];
}
