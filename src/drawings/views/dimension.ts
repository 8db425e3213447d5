import { figureOf, inch, type Length, mm, type Rounding, type Ruler } from "../../lengths/index.ts";
import { widthOfRuns } from "../figures.ts";
import type { Mark, Run } from "../marks.ts";
import { group, line, lettering, type Pen, place, spot, textRun } from "./pen.ts";

/**
 * Dimensions after ISO 129-1: thin lines, filled arrowheads, the figure above its line, read from the
 * foot of the drawing or from its right. All sizes in pixels of lettering; they do not scale.
 */
export const FIGURE_SIZE = 14;
/** A figure with a fraction, so that its smaller digits stay above 8 pt. */
const FRACTION_SIZE = 16;
const ARROW = 9;
/** Under this the arrows stand outside and point inwards. */
const ROOM_FOR_ARROWS = 34;
const TAIL = 16;
/** Extension lines start this far off the outline and pass the dimension line by that much. */
const OFF = 3;
const PAST = 4;
/** Baseline above the line: a stacked fraction reaches below its baseline and must not touch it. */
const FIGURE_ABOVE = 5;
const FRACTION_ABOVE = 7;
const FIGURE_GAP = 7;
const DOT = 1.6;

/** One stretch to be dimensioned: where it begins and ends along the line, and the length that stands there. */
export interface Stretch {
  /** The group that its marks are put in, such as "border-left". */
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly length: Length;
  /** How a length that nobody sets on a ruler is read: more closely, and a maximum rounded down. */
  readonly read?: Reading;
}

/** Read on the hand's own ruler, or on a closer one where it falls between two marks. */
export interface Reading {
  readonly on: "ruler" | "closer";
  readonly rounding: Rounding;
}

const ON_THE_RULER: Reading = { on: "ruler", rounding: "nearest" };

/** The line that stretches are set on: a row above or below, or a column, whose figures are turned to read from the right. */
export interface DimensionLine {
  readonly along: "x" | "y";
  /** Where the line lies, across its own direction. */
  readonly at: number;
  /** From which side the extension lines come: the outline lies below (or left of) the line, or above it. */
  readonly outline: number;
}

export interface Dimensions {
  readonly marks: readonly Mark[];
  /** The places along the line from which an extension line must come. */
  readonly extensions: readonly number[];
  /** From where to where lines and figures reach along the line. */
  readonly low: number;
  readonly high: number;
}

const CLOSER: Readonly<Record<Ruler["unit"], Ruler>> = {
  in: { unit: "in", graduation: inch(1, 64) },
  mm: { unit: "mm", graduation: mm(0.1) },
};

/**
 * A length on the hand's ruler as runs: `≈` first where it is not exact, a true minus, a stacked
 * fraction. `pixel` is what sizes are counted in.
 */
export function figureRuns(
  length: Length,
  pen: Pick<Pen, "ruler" | "pixel">,
  read: Reading = ON_THE_RULER,
): Run[] {
  const own = figureOf(length, pen.ruler, read.rounding);
  const closer = read.on === "closer" && own.approximate;
  const figure = closer ? figureOf(length, CLOSER[pen.ruler.unit], read.rounding) : own;
  const sign = `${figure.approximate ? "≈ " : ""}${figure.negative ? "−" : ""}`;
  const whole = figure.decimals === "" ? figure.whole : `${figure.whole}.${figure.decimals}`;
  return [
    ...(sign === "" ? [] : [textRun(sign)]),
    {
      kind: "fraction",
      whole,
      numerator: figure.numerator,
      denominator: figure.denominator,
      ...(figure.numerator === "" ? {} : { size: place(FRACTION_SIZE * pen.pixel) }),
    },
  ];
}

interface Set {
  readonly stretch: Stretch;
  readonly low: number;
  readonly high: number;
  readonly inside: boolean;
  readonly runs: readonly Run[];
  readonly width: number;
}

/** Sets stretches that follow one another on one line: the lines, arrowheads and figures, each under its stretch's name. */
export function dimension(pen: Pen, on: DimensionLine, stretches: readonly Stretch[]): Dimensions {
  const px = (count: number): number => count * pen.pixel;
  const sets = stretches.map((stretch): Set => {
    const runs = figureRuns(stretch.length, pen, stretch.read);
    const size = place(px(FIGURE_SIZE));
    return {
      stretch,
      low: Math.min(stretch.from, stretch.to),
      high: Math.max(stretch.from, stretch.to),
      inside: stretch.to - stretch.from >= px(ROOM_FOR_ARROWS),
      runs,
      width: widthOfRuns(runs, size, "regular", pen.measure),
    };
  });
  const centres = figureCentres(pen, sets);
  let [low, high] = [Infinity, -Infinity];
  const marks = sets.map((set, index) => {
    const centre = centres[index] ?? 0;
    const [reachLow, reachHigh] = lineEnds(pen, set, centre, sets[index - 1], sets[index + 1]);
    low = Math.min(low, reachLow, centre - set.width / 2);
    high = Math.max(high, reachHigh, centre + set.width / 2);
    return group(set.stretch.name, [
      along(on, reachLow, reachHigh),
      ...ends(pen, on, set, sets[index - 1], sets[index + 1]),
      figureMark(pen, on, set, centre),
    ]);
  });
  return { marks, extensions: sets.flatMap((set) => [set.low, set.high]), low, high };
}

/**
 * Where the figures' middles lie along the line. One that is wider than its stretch goes outside at the
 * ends of the line, and figures that would touch are moved apart from the middle one outwards.
 */
function figureCentres(pen: Pen, sets: readonly Set[]): number[] {
  const gap = FIGURE_GAP * pen.pixel;
  const tail = TAIL * pen.pixel;
  const centres = sets.map((set, index) => {
    const middle = (set.low + set.high) / 2;
    if (set.width + gap / 2 <= set.high - set.low || sets.length === 1) return middle;
    if (index === 0) return set.low - tail - set.width / 2;
    if (index === sets.length - 1) return set.high + tail + set.width / 2;
    return middle;
  });
  const anchor = Math.floor((sets.length - 1) / 2);
  const apart = (a: number, b: number): number => ((sets[a]?.width ?? 0) + (sets[b]?.width ?? 0)) / 2 + gap;
  for (let index = anchor + 1; index < sets.length; index += 1) {
    const least = (centres[index - 1] ?? 0) + apart(index - 1, index);
    centres[index] = Math.max(centres[index] ?? 0, least);
  }
  for (let index = anchor - 1; index >= 0; index -= 1) {
    const most = (centres[index + 1] ?? 0) - apart(index, index + 1);
    centres[index] = Math.min(centres[index] ?? 0, most);
  }
  return centres;
}

/** A stretch's line runs through it, over the tails of arrows that stand outside, and under a figure that was moved out. */
function lineEnds(
  pen: Pen,
  set: Set,
  centre: number,
  before: Set | undefined,
  after: Set | undefined,
): readonly [number, number] {
  const tail = TAIL * pen.pixel;
  const low = set.inside || meets(set.low, before) ? set.low : set.low - tail;
  const high = set.inside || meets(set.high, after) ? set.high : set.high + tail;
  const [figureLow, figureHigh] = [centre - set.width / 2, centre + set.width / 2];
  const away = figureHigh < set.low || figureLow > set.high;
  return away ? [Math.min(low, figureLow), Math.max(high, figureHigh)] : [low, high];
}

const meets = (at: number, neighbour: Set | undefined): boolean =>
  neighbour !== undefined && (neighbour.low === at || neighbour.high === at);

/** Arrowheads at both ends; a dot where two narrow stretches meet and neither has room for one. */
function ends(
  pen: Pen,
  on: DimensionLine,
  set: Set,
  before: Set | undefined,
  after: Set | undefined,
): Mark[] {
  const crowded = (at: number, neighbour: Set | undefined): boolean =>
    !set.inside && meets(at, neighbour) && neighbour?.inside === false;
  return [
    crowded(set.low, before) ? dot(pen, on, set.low) : arrow(pen, on, set.low, !set.inside),
    crowded(set.high, after) ? dot(pen, on, set.high) : arrow(pen, on, set.high, set.inside),
  ];
}

const across = (on: DimensionLine, at: number) => (on.along === "x" ? spot(at, on.at) : spot(on.at, at));

const along = (on: DimensionLine, from: number, to: number): Mark =>
  on.along === "x" ? line(from, on.at, to, on.at, "thin") : line(on.at, from, on.at, to, "thin");

function arrow(pen: Pen, on: DimensionLine, at: number, onwards: boolean): Mark {
  const turn = on.along === "x" ? 0 : 90;
  return {
    kind: "arrowhead",
    at: across(on, at),
    degrees: onwards ? turn : turn + 180,
    size: place(ARROW * pen.pixel),
  };
}

const dot = (pen: Pen, on: DimensionLine, at: number): Mark => ({
  kind: "circle",
  centre: across(on, at),
  radius: place(DOT * pen.pixel),
  fill: "ink",
  line: null,
});

/** Above its line, or left of it and turned to read from the right; the ground behind it is cleared. */
function figureMark(pen: Pen, on: DimensionLine, set: Set, centre: number): Mark {
  const stacked = set.runs.some((run) => run.kind === "fraction" && run.numerator !== "");
  const base = on.at - (stacked ? FRACTION_ABOVE : FIGURE_ABOVE) * pen.pixel;
  return on.along === "x"
    ? lettering(pen, centre, base, set.runs, { size: FIGURE_SIZE, halo: true })
    : lettering(pen, base, centre, set.runs, { size: FIGURE_SIZE, halo: true, degrees: -90 });
}

/**
 * The extension lines of all dimension lines on one side of an outline, each drawn once, out to the
 * furthest line that needs it.
 */
export function extensionLines(
  pen: Pen,
  lines: readonly { readonly on: DimensionLine; readonly set: Dimensions }[],
): Mark[] {
  const furthest = new Map<number, DimensionLine>();
  for (const { on, set } of lines) {
    for (const at of set.extensions) {
      const known = furthest.get(at);
      if (!known || Math.abs(on.at - on.outline) > Math.abs(known.at - known.outline)) furthest.set(at, on);
    }
  }
  return [...furthest].map(([at, on]) => {
    const way = on.at < on.outline ? -1 : 1;
    const from = on.outline + way * OFF * pen.pixel;
    const to = on.at + way * PAST * pen.pixel;
    return on.along === "x" ? line(at, from, at, to, "thin") : line(from, at, to, at, "thin");
  });
}
