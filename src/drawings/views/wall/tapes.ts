import { inch, type Length, mm, type Ruler } from "../../../lengths/index.ts";
import { widthOfRuns } from "../../figures.ts";
import type { Mark, Run } from "../../marks.ts";
import { figureRuns } from "../dimension.ts";
import { area, line, lettering, type Pen, place, polyline, spot, textRun } from "../pen.ts";
import { corners } from "../shapes.ts";

/** A tape along the wall: where it is drawn, and what is read on it. */
export interface Tape {
  /** The axis along which it lies, and where a length of it is drawn. */
  readonly at: (length: number) => number;
  readonly from: number;
  readonly to: number;
}

/** A place that is read on a tape. */
export interface Read {
  /** Where it truly is. */
  readonly at: Length;
  /** What the tape says there. */
  readonly figure: Length;
}

/** How wide a tape is drawn, in pixels, and its figures. */
export const TAPE = 24;
const FIGURE = 14;
const MARK = 8;
/** No two marks nearer, no two numbers. */
const BETWEEN_MARKS = 5;
const BETWEEN_NUMBERS = 38;

const STEPS: Readonly<Record<Ruler["unit"], readonly Length[]>> = {
  in: [1, 2, 3, 6, 12, 24, 48, 96].map((inches) => inch(inches)),
  mm: [10, 20, 50, 100, 200, 500, 1000, 2000].map((millimetres) => mm(millimetres)),
};
const ONE: Readonly<Record<Ruler["unit"], Length>> = { in: inch(1), mm: mm(1) };

const firstOver = (unit: Ruler["unit"], scale: number, least: number): Length =>
  STEPS[unit].find((step) => step * scale >= least) ?? STEPS[unit].at(-1) ?? ONE[unit];

/** A tape's body, its marks and numbers; along x its foot is what it is read at, along y its right edge. */
export function tapeMarks(pen: Pen, tape: Tape, along: "x" | "y", edge: number, scale: number): Mark[] {
  const px = (count: number): number => count * pen.pixel;
  const { unit } = pen.ruler;
  const fine = firstOver(unit, scale, px(BETWEEN_MARKS));
  const named = STEPS[unit].find((step) => step * scale >= px(BETWEEN_NUMBERS) && step % fine === 0) ?? fine;
  const [start, end] = [tape.at(tape.from), tape.at(tape.to)].toSorted((a, b) => a - b) as [number, number];
  const far = along === "x" ? edge + px(TAPE) : edge - px(TAPE);
  const body =
    along === "x"
      ? { left: start, right: end, top: edge, bottom: far }
      : { left: far, right: edge, top: start, bottom: end };
  const marks: Mark[] = [area(corners(body), "paper", "thin")];
  for (let at = Math.ceil(tape.from / fine) * fine; at <= tape.to; at += fine) {
    const spotted = tape.at(at);
    const isNamed = at % named === 0;
    const long = px(isNamed ? TAPE / 2 : 4);
    marks.push(
      along === "x"
        ? line(spotted, edge, spotted, edge + long, "thin")
        : line(edge, spotted, edge - long, spotted, "thin"),
    );
    if (!isNamed || at === 0) continue;
    const runs = [textRun(String(at / ONE[unit]))];
    const half = widthOfRuns(runs, pen.pixel as Length, "regular", pen.measure) * FIGURE * 0.5;
    if (along === "x" && spotted - half > start && spotted - px(3) < end)
      marks.push(lettering(pen, spotted - px(3), edge + px(19), runs, { size: FIGURE, anchor: "end" }));
    if (along === "y" && spotted + px(16) < end)
      marks.push(lettering(pen, edge - px(3), spotted + px(14), runs, { size: FIGURE, anchor: "end" }));
  }
  return marks;
}

interface Figure {
  readonly runs: readonly Run[];
  readonly width: number;
}

const figureOf = (pen: Pen, length: Length): Figure => {
  const runs = figureRuns(length, pen);
  return { runs, width: widthOfRuns(runs, place(FIGURE * pen.pixel * 1.08), "semibold", pen.measure) };
};

const figureMark = (pen: Pen, x: number, y: number, { runs }: Figure, anchor: "middle" | "end"): Mark =>
  lettering(pen, x, y, runs, { size: FIGURE, weight: "semibold", halo: true, anchor });

/** Rows of figures under a tape: each under its own nail, in the first row where it touches no other. */
export function figuresBelow(
  pen: Pen,
  reads: readonly Read[],
  at: (length: number) => number,
  edge: number,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  const px = (count: number): number => count * pen.pixel;
  const ends: number[] = [];
  const [leaders, figures]: [Mark[], Mark[]] = [[], []];
  for (const read of onceEach(reads).toSorted((a, b) => a.at - b.at)) {
    const figure = figureOf(pen, read.figure);
    const x = at(read.at);
    const free = ends.findIndex((end) => x - figure.width / 2 >= end + px(7));
    const row = free < 0 ? ends.length : free;
    ends[row] = x + figure.width / 2;
    const base = edge + px(TAPE + 19 + 21 * row);
    leaders.push(line(x, edge + px(TAPE), x, base - px(14), "thin"), arrow(pen, x, edge - px(1), 90));
    figures.push(figureMark(pen, x, base, figure, "middle"));
  }
  return { marks: [...leaders, ...figures], bottom: edge + px(TAPE + 8 + 21 * ends.length) };
}

/** Places that read the same are said once. */
const onceEach = (reads: readonly Read[]): readonly Read[] => [
  ...new Map(reads.map((read) => [read.figure, read])).values(),
];

const arrow = (pen: Pen, x: number, y: number, degrees: number): Mark => ({
  kind: "arrowhead",
  at: spot(x, y),
  degrees,
  size: place(MARK * pen.pixel),
});

/** A column of figures left of an upright tape: as near to their nails as they have room, a thin line to each. */
export function figuresBeside(
  pen: Pen,
  reads: readonly Read[],
  at: (length: number) => number,
  edge: number,
  room: { readonly top: number; readonly bottom: number },
): Mark[] {
  const px = (count: number): number => count * pen.pixel;
  const once = onceEach(reads).toSorted((a, b) => at(a.at) - at(b.at));
  const spread = apart(
    once.map((read) => at(read.at)),
    px(19),
    room.top + px(8),
    room.bottom - px(6),
  );
  const near = edge - px(TAPE + 1);
  const turn = near - px(MARK + 14);
  return once.flatMap((read, index) => {
    const y = spread[index] ?? at(read.at);
    return [
      polyline(
        [
          { x: turn, y },
          { x: near - px(MARK), y: at(read.at) },
        ],
        "thin",
      ),
      arrow(pen, near, at(read.at), 0),
      figureMark(pen, turn - px(4), y + px(5), figureOf(pen, read.figure), "end"),
    ];
  });
}

/**
 * Places in their order moved as little as can be, in the sense of least squares, until each is `gap` from
 * the next (isotonic regression by pooling neighbours), then within the room as far as it goes.
 */
function apart(wanted: readonly number[], gap: number, from: number, to: number): readonly number[] {
  const pools: { mean: number; count: number }[] = [];
  wanted.forEach((one, index) => {
    let pool = { mean: one - index * gap, count: 1 };
    for (let last = pools.at(-1); last !== undefined && last.mean > pool.mean; last = pools.at(-1)) {
      pools.pop();
      const count = last.count + pool.count;
      pool = { mean: (last.mean * last.count + pool.mean * pool.count) / count, count };
    }
    pools.push(pool);
  });
  const means = pools.flatMap(({ mean, count }) => Array.from({ length: count }, () => mean));
  const latest = to - (wanted.length - 1) * gap;
  return means.map((mean, index) => Math.max(from, Math.min(mean, latest)) + index * gap);
}
