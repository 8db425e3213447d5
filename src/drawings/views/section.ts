import type { Composition } from "../../assembly/index.ts";
import type { RealPoint } from "../../geometry/index.ts";
import type { Length } from "../../lengths/index.ts";
import type { Drawing, Mark } from "../marks.ts";
import { type Shortened, shorten } from "./breaks.ts";
import { dimension, extensionLines, type Stretch } from "./dimension.ts";
import { fitted } from "./extent.ts";
import { type Layer, layersOf, type Mount } from "./layers.ts";
import { isFloated } from "./layout.ts";
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
import { clipPolygon } from "./shapes.ts";

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

/** Pixels. */
const INSIDE = 76;
const MARGIN = 8;
/** Leaders, numbers and both margins: what the drawing needs beside the stack itself. */
const BESIDE_STACK = 66 + 2 * MARGIN;
const LEAST_SPAN = 44;
/** A print drawn thinner than this would be lost beside the boards' outlines; thin sections are drawn solid (ISO 128-3). */
const THINNEST = 3.6;
const BREAK_HALF = 5;
const LEAST_MAT = 5;
const LEAST_TIMES = 4;
const MOST_TIMES = 64;

/** Where everything lies: x from the lowest mat's edge at its back towards the outer edge, y down from the topmost face. */
interface Stack {
  readonly floated: boolean;
  readonly outer: number;
  readonly inner: number;
  readonly mats: readonly {
    readonly back: number;
    readonly face: number;
    readonly top: number;
    readonly bottom: number;
  }[];
  readonly print: { readonly end: number; readonly top: number; readonly bottom: number } | null;
  readonly mount: { readonly top: number; readonly bottom: number };
}

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

const placesOf = (stack: Stack): number[] => [
  ...stack.mats.flatMap((mat) => [mat.back, mat.face]),
  stack.outer,
  ...(stack.print ? [stack.print.end] : []),
];

function stackOf(composition: Composition, pen: Pen, scale: number, layers: readonly Layer[]): Stack {
  const foot = composition.mats[0]?.borders.foot ?? 0;
  const outer = foot * scale;
  const thick = (layer: Layer | undefined): number => (layer?.thickness ?? 0) * scale;
  const printLayer = layers.find((layer) => layer.kind === "print");
  const mountLayer = layers.find((layer) => layer.kind === "mount");
  // A floated print lies in the opening; the mats lie on the mount itself.
  const floated = isFloated(composition);
  let y = composition.mats.reduce((sum, mat) => sum + mat.thickness * scale, 0);
  const base = y;
  const mats = composition.mats.map((mat) => {
    const back = (foot - mat.borders.foot) * scale;
    const bottom = y;
    y -= mat.thickness * scale;
    return { back, face: back + mat.bevel.plan * scale, top: y, bottom };
  });
  const printHeight = printLayer ? Math.max(thick(printLayer), THINNEST * pen.pixel) : 0;
  const cover = composition.print?.cover.foot;
  const mountTop = floated ? base : base + printHeight;
  const print =
    cover === undefined ? null : { end: cover * scale, top: mountTop - printHeight, bottom: mountTop };
  const places = [outer, ...mats.flatMap((mat) => [mat.back, mat.face]), ...(print ? [print.end] : [])];
  return {
    floated,
    outer,
    inner: Math.min(...places) - INSIDE * pen.pixel,
    mats,
    print,
    mount: { top: mountTop, bottom: mountTop + thick(mountLayer) },
  };
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
    ...dimensionMarks(composition, pen, stack, map),
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

/** The zigzag where the drawing breaks off inside the window. */
function innerBreak(pen: Pen, stack: Stack): Mark[] {
  return [polyline(zigzag(pen, stack, stack.inner, 6), "thin")];
}

/** A strip taken out of the stack: clear ground between two zigzags. */
function breakMarks(pen: Pen, stack: Stack, at: number): Mark[] {
  const half = BREAK_HALF * pen.pixel;
  const left = zigzag(pen, stack, at - half, 5);
  const right = zigzag(pen, stack, at + half, 5);
  return [area([...left, ...right.toReversed()], "paper"), polyline(left, "thin"), polyline(right, "thin")];
}

function zigzag(pen: Pen, stack: Stack, x: number, swing: number): RealPoint[] {
  const px = (count: number): number => count * pen.pixel;
  const top = Math.min(...stack.mats.map((mat) => mat.top), stack.mount.top);
  const middle = (top + stack.mount.bottom) / 2;
  return [
    { x, y: top - px(8) },
    { x, y: middle - px(swing) },
    { x: x - px(swing), y: middle - px(swing / 5) },
    { x: x + px(swing), y: middle + px(swing / 5) },
    { x, y: middle + px(swing) },
    { x, y: stack.mount.bottom + px(8) },
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

const BELOW = { cover: 34, border: 62 };
const ABOVE_STACK = 14;

function dimensionMarks(
  composition: Composition,
  pen: Pen,
  stack: Stack,
  map: (x: number) => number,
): Mark[] {
  const px = (count: number): number => count * pen.pixel;
  const lowest = composition.mats[0];
  if (!lowest) return [];
  const bottom = stack.mount.bottom;
  const outline = bottom + px(2);
  const edge = map(0);
  const cover = composition.print?.cover.foot;
  const coverLine =
    cover === undefined || cover === 0 || stack.floated
      ? []
      : [
          row(pen, bottom + px(BELOW.cover), outline, {
            name: "cover-foot",
            from: edge,
            to: map(stack.print?.end ?? 0),
            length: cover,
            read: { on: "closer", rounding: "down" },
          }),
        ];
  const borderAt = bottom + px(coverLine.length > 0 ? BELOW.border : BELOW.cover);
  const borderLine = row(pen, borderAt, outline, {
    name: "border-foot",
    from: edge,
    to: map(stack.outer),
    length: lowest.borders.foot,
  });
  const top = Math.min(...stack.mats.map((mat) => mat.top));
  const reveals = composition.mats.flatMap((mat, index) => {
    const [lower, upper] = [stack.mats[index - 1], stack.mats[index]];
    if (!lower || !upper || mat.revealAsCut === null) return [];
    const at = top - px(ABOVE_STACK + (index - 1) * 24);
    return [
      row(pen, at, upper.bottom, {
        name: `reveal-${index}`,
        from: map(lower.face),
        to: map(upper.back),
        length: mat.revealAsCut,
        read: { on: "closer", rounding: "nearest" },
      }),
    ];
  });
  return [
    group("extension-lines", [
      ...extensionLines(pen, [...coverLine, borderLine]),
      ...reveals.flatMap((reveal) => extensionLines(pen, [reveal])),
    ]),
    ...[...coverLine, borderLine, ...reveals].flatMap(({ set }) => set.marks),
  ];
}

function row(pen: Pen, at: number, outline: number, stretch: Stretch) {
  const on = { along: "x", at, outline } as const;
  return { on, set: dimension(pen, on, [stretch]) };
}
