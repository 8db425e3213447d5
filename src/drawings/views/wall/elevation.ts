import { type HungWork, type Measuring, readingsOf } from "../../../assembly/index.ts";
import { type Length, ZERO } from "../../../lengths/index.ts";
import type { WallJob, WallPlan } from "../../../plans/index.ts";
import { widthOfRuns } from "../../figures.ts";
import type { Drawing, Mark } from "../../marks.ts";
import { dimension, type Stretch } from "../dimension.ts";
import {
  area,
  group,
  groupOf,
  line,
  lettering,
  type Pen,
  penFor,
  place,
  polyline,
  spot,
  textRun,
  type ViewOptions,
} from "../pen.ts";
import { corners, type Rect } from "../shapes.ts";
import { zigzagAcross } from "./zigzag-across.ts";
import { frameOnWall, type HangingFront, numberOf } from "./frames.ts";
import { placeWall, type WallPlacing } from "./placing.ts";
import { figuresBelow, figuresBeside, type Read, TAPE, tapeMarks } from "./tapes.ts";

/** What hangs on a wall, beside the frames of its plan. */
export interface WallSeen {
  readonly job: WallJob;
  readonly plan: WallPlan;
  readonly hung: readonly HungWork[];
  readonly fronts: readonly HangingFront[];
  readonly measuring: Measuring;
  readonly seats: readonly { readonly name: string; readonly x: Length; readonly width: Length }[];
  /** Whether heights are counted from a level line. */
  readonly level: boolean;
}

export interface WallViewOptions extends ViewOptions {
  readonly words: { readonly eyeLine: string; readonly levelLine: string; readonly floor: string };
}

/** A wall drawn in two parts of one height, so that the one can slide while the other stays. */
export interface WallView {
  /** One tape up from the floor or the level line, with every nail's height. */
  readonly upright: Drawing;
  readonly wall: Drawing;
  /** Where each frame of the job lies on the drawing of the wall. */
  readonly boxes: readonly Rect[];
  /** A width on the drawing of the wall as a place across it. */
  readonly across: (x: number) => number;
}

/** In pixels: left and right of the wall, over it, between floor and tape. */
const PAD = { side: 12, top: 6, floor: 14 };
const UPRIGHT = 104;
const WORDS = 14;

/**
 * The wall as it is seen from the room, to scale: what must stay free, the eye line, frames with what is
 * seen in them, every nail read on two tapes. Between floor and frames what is blank is left out, and a
 * break says so. Throws RangeError for a scale that is not above nought.
 */
export function wallView(seen: WallSeen, options: WallViewOptions): WallView {
  const pen = penFor(options);
  const px = (count: number): number => count * pen.pixel;
  const { job, plan, hung } = seen;
  const nails = hung.flatMap(({ hooks }) => hooks);
  const heights = nails.map(({ nail }) => nail);
  const left = px(PAD.side);
  const under = placeWall(job, plan, heights, { scale: options.scale, left, pixel: pen.pixel });
  const down = px(PAD.top);
  const at: WallPlacing = {
    ...under,
    y: (up) => under.y(up) + down,
    box: (box) => {
      const { left: from, right, top, bottom } = under.box(box);
      return { left: from, right, top: top + down, bottom: bottom + down };
    },
    band: under.band && { top: under.band.top + down, bottom: under.band.bottom + down },
  };
  const boxes = job.frames.map(({ width, height }, index) =>
    at.box({ x: ZERO, y: ZERO, ...plan.places[index], width, height }),
  );
  const read = nails.map((nail) => ({ nail, ...readingsOf(nail, seen.measuring, pen.ruler.graduation) }));
  const floor = at.y(job.floor);
  const tapeTop = floor + px(PAD.floor);
  const across = figuresBelow(
    pen,
    read.map(({ nail, across: figure }): Read => ({ at: nail.x, figure })),
    at.x,
    tapeTop,
  );
  const height = place(across.bottom + px(4));
  const marks: Mark[] = [
    ...wallMarks(pen, seen, at),
    ...linesOf(pen, seen, at, boxes, options.words),
    ...nails.map(({ x, nail }) => line(at.x(x), at.y(nail), at.x(x), floor, "hidden")),
    ...obstacles(pen, job, at),
    ...boxes.flatMap((box, work) => {
      const front = seen.fronts[work];
      return front === undefined ? [] : [frameOnWall(pen, front, box, at.scale, work)];
    }),
    ...bandMarks(pen, job, at),
    ...gapMarks(pen, seen, at, boxes),
    ...plan.order.flatMap((work, turn) => {
      const box = boxes[work];
      return box === undefined ? [] : numberOf(pen, turn + 1, box, isRow(job));
    }),
    ...nails.flatMap(({ x, nail }) => dot(pen, at.x(x), at.y(nail))),
    ...seatMarks(pen, seen, at),
    ...tapeMarks(pen, { at: at.x, from: 0, to: job.wall.width }, "x", tapeTop, at.scale),
    ...across.marks,
  ];
  const width = at.x(job.wall.width) + px(PAD.side);
  const edge = px(UPRIGHT - 4);
  const upright: Mark[] = [
    ...tapeMarks(
      pen,
      { at: at.y, from: ZERO, to: Math.min(at.top, job.floor + job.wall.height) },
      "y",
      edge,
      at.scale,
    ),
    ...uprightBand(pen, at, edge),
    ...figuresBeside(
      pen,
      read.map(({ nail, up }): Read => ({ at: nail.nail, figure: up })),
      at.y,
      edge,
      { top: 0, bottom: height },
    ),
  ];
  return {
    upright: { width: place(px(UPRIGHT)), height, marks: upright },
    wall: { width: place(width), height, marks },
    boxes,
    across: (x) => (x - left) / at.scale,
  };
}

const isRow = ({ rule }: WallJob): boolean => rule.kind === "gap" || rule.kind === "spread";

const dot = (pen: Pen, x: number, y: number): Mark[] =>
  ([5, 3.4] as const).map(
    (radius, index): Mark => ({
      kind: "circle",
      centre: spot(x, y),
      radius: place(radius * pen.pixel),
      fill: index === 0 ? "paper" : "ink",
      line: null,
    }),
  );

function wallMarks(pen: Pen, { job }: WallSeen, at: WallPlacing): Mark[] {
  const [left, right] = [at.x(0), at.x(job.wall.width)];
  const [top, floor] = [at.y(at.top), at.y(job.floor)];
  const px = (count: number): number => count * pen.pixel;
  return [
    line(left, top, left, floor, "outline"),
    line(right, top, right, floor, "outline"),
    ...(at.ceiling
      ? [line(left, at.y(job.floor + job.wall.height), right, at.y(job.floor + job.wall.height), "outline")]
      : []),
    area(
      corners({ left: left - px(8), right: right + px(8), top: floor, bottom: floor + px(5) }),
      "hatch-floor",
    ),
    line(left - px(8), floor, right + px(8), floor, "outline"),
  ];
}

/** Eye line and level line, long dash and dot, each named where nothing hangs over its name. */
function linesOf(
  pen: Pen,
  { job, level }: WallSeen,
  at: WallPlacing,
  boxes: readonly Rect[],
  words: WallViewOptions["words"],
): Mark[] {
  const [left, right] = [at.x(0), at.x(job.wall.width)];
  const named = (height: number, text: string): Mark[] => {
    const y = at.y(height);
    const runs = [textRun(text)];
    const wide = widthOfRuns(runs, place(WORDS * pen.pixel), "regular", pen.measure);
    const clear = (from: number): boolean =>
      [...boxes, ...job.avoid.map(at.box)].every(
        (box) =>
          box.right < from ||
          box.left > from + wide ||
          box.bottom < y - 20 * pen.pixel ||
          box.top > y + 4 * pen.pixel,
      );
    const ends = [right - wide - 8 * pen.pixel, left + 8 * pen.pixel];
    const from = ends.find(clear) ?? ends[0] ?? left;
    return [
      line(left - 6 * pen.pixel, y, right + 6 * pen.pixel, y, "centre"),
      lettering(pen, from, y - 6 * pen.pixel, runs, { size: WORDS, anchor: "start", halo: true }),
    ];
  };
  return [
    ...groupOf("eye-line", named(job.eyeLine, words.eyeLine)),
    ...(level ? groupOf("level-line", named(ZERO, words.levelLine)) : []),
  ];
}

/** What must stay free, hatched, named in it or over it. */
function obstacles(pen: Pen, { avoid }: WallJob, at: WallPlacing): Mark[] {
  return avoid.map((one, index) => {
    const box = at.box(one);
    const runs = [textRun(one.name)];
    const wide = widthOfRuns(runs, place(WORDS * pen.pixel), "regular", pen.measure);
    const [across, down] = [box.right - box.left, box.bottom - box.top];
    const inside = wide + 12 * pen.pixel < across && down > 24 * pen.pixel;
    const middle = (box.left + box.right) / 2;
    const base = inside ? box.top + Math.min(down / 2, 34 * pen.pixel) : box.top - 7 * pen.pixel;
    return group(`avoid-${index}`, [
      area(corners(box), "hatch-out", "thin"),
      ...(one.name === "" ? [] : [lettering(pen, middle, base, runs, { size: WORDS, halo: true })]),
    ]);
  });
}

/** The stretch that is left out: clear ground between two break lines. */
function bandMarks(pen: Pen, { wall }: WallJob, { band, x }: WallPlacing): Mark[] {
  if (band === null) return [];
  const [left, right] = [x(0) - 8 * pen.pixel, x(wall.width) + 8 * pen.pixel];
  const [upper, lower] = [band.top, band.bottom].map((y) => zigzagAcross(pen, left, right, y));
  if (upper === undefined || lower === undefined) return [];
  return [area([...upper, ...lower.toReversed()], "paper"), polyline(upper, "thin"), polyline(lower, "thin")];
}

function uprightBand(pen: Pen, { band }: WallPlacing, edge: number): Mark[] {
  if (band === null) return [];
  const [left, right] = [edge - (TAPE + 4) * pen.pixel, edge + 4 * pen.pixel];
  return [
    area(corners({ left, right, top: band.top, bottom: band.bottom }), "paper"),
    line(left, band.top, right, band.top, "thin"),
    line(left, band.bottom, right, band.bottom, "thin"),
  ];
}

/** Under a row every gap, the ends included; else how far the group stands from both corners. */
function gapMarks(pen: Pen, { job, plan }: WallSeen, at: WallPlacing, boxes: readonly Rect[]): Mark[] {
  if (boxes.length === 0) return [];
  const foot = Math.max(...boxes.map(({ bottom }) => bottom));
  const level = foot + 30 * pen.pixel;
  const [first, last] = [plan.gaps[0], plan.gaps.at(-1)];
  if (first === undefined || last === undefined) return [];
  const wall = at.x(job.wall.width);
  const row = isRow(job) ? plan.order.map((work) => boxes[work]).filter((box) => box !== undefined) : [];
  const inner = row.slice(1).map(
    (box, index): Stretch => ({
      name: `gap-${index + 1}`,
      from: row[index]?.right ?? box.left,
      to: box.left,
      length: plan.gaps[index + 1] ?? ZERO,
    }),
  );
  const ends: readonly Stretch[] = [
    { name: "gap-first", from: at.x(0), to: at.x(first), length: first },
    ...inner,
    { name: "gap-last", from: at.x(job.wall.width - last), to: wall, length: last },
  ];
  const stretches = ends.filter(({ length }) => length > 0);
  const { marks } = dimension(pen, { along: "x", at: level, outline: foot }, stretches);
  const extensions = stretches.flatMap(({ from, to }) =>
    [from, to]
      .filter((x) => x > at.x(0) && x < wall)
      .map((x) => line(x, nearest(boxes, x, pen) + 3 * pen.pixel, x, level + 4 * pen.pixel, "thin")),
  );
  return [...extensions, ...marks];
}

/** The foot of the lowest frame that has an edge here. */
const nearest = (boxes: readonly Rect[], x: number, { pixel }: Pen): number =>
  boxes.reduce(
    (low, { left, right, bottom }) =>
      Math.abs(left - x) < pixel / 2 || Math.abs(right - x) < pixel / 2 ? Math.max(low, bottom) : low,
    Number.NEGATIVE_INFINITY,
  );

/** Where people sit or lie, over the floor. */
function seatMarks(pen: Pen, { seats, job }: WallSeen, at: WallPlacing): Mark[] {
  const floor = at.y(job.floor);
  return seats.flatMap(({ name, x, width }) => {
    const [left, right] = [at.x(x), at.x(x + width)];
    const top = floor - 8 * pen.pixel;
    return [
      area(corners({ left, right, top, bottom: floor }), "paper", "phantom"),
      lettering(pen, (left + right) / 2, top - 5 * pen.pixel, [textRun(name)], { size: WORDS, halo: true }),
    ];
  });
}
