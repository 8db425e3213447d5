import type { Mark } from "../../drawings/index.ts";
import { add, type Length, larger, mm, smaller, subtract, ZERO } from "../../lengths/index.ts";
import { HANGING_SHEET, wallSeen } from "../../words/hanging-sheet.ts";
import { bare, NBSP, type Phrase } from "../../words/index.ts";
import { drawn, fittingScale } from "../scale.ts";
import { type Block, block, cornersOf, placed } from "../block.ts";
import { dimensionLine, extensionLine } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { ring } from "../tags.ts";
import { textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { HangingDesk } from "./desk.ts";

const ABOVE = mm(2);
const BELOW = mm(7);
const SIDE = mm(5);
/** What the lines' names take at an end of the wall. */
const NAMES = mm(24);
const DIMENSION: TextStyle = { size: points(15), weight: "semibold", leading: points(16) };
const LETTER: TextStyle = { size: points(11), weight: "bold", leading: points(12) };

interface Wall {
  readonly desk: HangingDesk;
  readonly over: number;
  readonly left: Length;
  readonly top: Length;
  readonly width: Length;
  readonly height: Length;
  /** Where a place of the wall lies on the paper. */
  readonly x: (across: Length) => Length;
  readonly y: (up: Length) => Length;
}

/** The wall as it is seen from the room, to scale, as large as `width` by `height` allow. */
export function elevation(desk: HangingDesk, width: Length, height: Length): Block {
  const { wall } = desk.job.job;
  const room = { width: subtract(width, add(SIDE, SIDE)), height: subtract(height, add(ABOVE, BELOW)) };
  const over = fittingScale(wall.width, wall.height, room.width, room.height);
  const [wide, high] = [drawn(wall.width, over), drawn(wall.height, over)];
  const left = part(subtract(width, wide), 0.5);
  const floor = add(ABOVE, high);
  const level = desk.job.level ?? ZERO;
  const at: Wall = {
    desk,
    over,
    left,
    top: ABOVE,
    width: wide,
    height: high,
    x: (across) => add(left, drawn(across, over)),
    y: (up) => subtract(floor, drawn(add(up, level), over)),
  };
  return block(width, add(floor, BELOW), [
    ...wallMarks(at, width),
    ...obstacles(at),
    ...lines(at),
    ...frames(at),
    ...ends(at),
  ]);
}

function wallMarks({ left, top, width, height, over }: Wall, room: Length): readonly Mark[] {
  const floor = add(top, height);
  const right = add(left, width);
  return [
    { kind: "area", points: cornersOf({ left, top, width, height }), fill: "none", line: "thin" },
    { kind: "line", from: { x: left, y: floor }, to: { x: right, y: floor }, line: "outline" },
    {
      kind: "area",
      points: cornersOf({ left, top: floor, width, height: mm(1.6) }),
      fill: "hatch-floor",
      line: null,
    },
    textAt(left, add(floor, mm(5.4)), HANGING_SHEET.floor, TYPE.caption),
    textAt(smaller(right, room), add(floor, mm(5.4)), wallSeen(over), TYPE.caption, "end"),
  ];
}

/** What must stay free: hatched, with its name where there is room. */
function obstacles({ desk, over, x, y }: Wall): readonly Mark[] {
  const level = desk.job.level ?? ZERO;
  return desk.job.job.avoid.flatMap((box): readonly Mark[] => {
    const [width, height] = [drawn(box.width, over), drawn(box.height, over)];
    const [left, top] = [x(box.x), y(add(box.y, box.height))];
    const room = widthOf(desk, box.name, TYPE.caption);
    const named = box.name !== "" && room + mm(3) <= width && height >= mm(7) && level >= 0;
    const middle = add(left, part(width, 0.5));
    const base = add(top, part(height, 0.5));
    return [
      { kind: "area", points: cornersOf({ left, top, width, height }), fill: "hatch-waste", line: "thin" },
      ...(named
        ? [clearField(middle, base, room), textAt(middle, add(base, mm(1)), box.name, TYPE.caption, "middle")]
        : []),
    ];
  });
}

const clearField = (middle: Length, base: Length, wide: Length): Mark => ({
  kind: "area",
  points: cornersOf({
    left: subtract(middle, add(part(wide, 0.5), mm(1))),
    top: subtract(base, mm(2.6)),
    width: add(wide, mm(2)),
    height: mm(5),
  }),
  fill: "paper",
  line: null,
});

/** Eye line and level line, chain, with their names at the wall's left, or its right where the left is taken. */
function lines({ desk, left, width, x, y }: Wall): readonly Mark[] {
  const { eyeLine } = desk.job.job;
  const across = (height: Length): Mark => ({
    kind: "line",
    from: { x: subtract(left, mm(3)), y: height },
    to: { x: add(add(left, width), mm(3)), y: height },
    line: "centre",
  });
  const free = desk.job.job.avoid.every((box) => x(box.x) > add(left, NAMES));
  const name = (baseline: Length, words: string, style: TextStyle): Mark =>
    free
      ? textAt(add(left, mm(1.6)), baseline, words, style, "start", { halo: true })
      : textAt(subtract(add(left, width), mm(1.6)), baseline, words, style, "end", { halo: true });
  const eye = y(eyeLine);
  const level = desk.job.level === null ? null : y(ZERO);
  return [
    across(eye),
    name(subtract(eye, mm(1.2)), HANGING_SHEET.eyeLine, TYPE.caption),
    ...(level === null ? [] : [across(level), name(add(level, mm(4)), HANGING_SHEET.levelLine, TYPE.fact)]),
  ];
}

/** Frames with their numbers and hooks; letters above them where frames stand in one row. */
function frames(at: Wall): readonly Mark[] {
  const { desk, over, x, y } = at;
  const { job, plan } = desk.job;
  const row = job.rule.kind === "gap" || job.rule.kind === "spread";
  const boxes = job.frames.flatMap((frame, index): readonly Mark[] => {
    const place = plan.places[index];
    if (place === undefined) return [];
    const [width, height] = [drawn(frame.width, over), drawn(frame.height, over)];
    const [left, top] = [x(place.x), y(add(place.y, frame.height))];
    const radius = larger(mm(1.8), smaller(mm(2.7), part(smaller(width, height), 0.32)));
    const middle = { x: add(left, part(width, 0.5)), y: add(top, part(height, 0.6)) };
    const number = String(desk.numbers[index] ?? 0);
    return [
      { kind: "area", points: cornersOf({ left, top, width, height }), fill: "paper", line: "outline" },
      ...placed(block(ZERO, ZERO, ring(desk, number, "white", radius)), middle.x, middle.y),
    ];
  });
  const dots = desk.hooks.map(
    ({ x: across, nail }): Mark => ({
      kind: "circle",
      centre: { x: x(across), y: y(nail) },
      radius: mm(0.6),
      fill: "ink",
      line: null,
    }),
  );
  return [...boxes, ...dots, ...(row ? letters(at) : [])];
}

/** Over each frame of a row the letters of its hooks, where they do not meet those before. */
function letters({ desk, x, y }: Wall): readonly Mark[] {
  const { job, plan } = desk.job;
  let before = Number.NEGATIVE_INFINITY;
  return plan.order.flatMap((work): readonly Mark[] => {
    const own = desk.hooks.filter((hook) => hook.work === work);
    const [place, frame] = [plan.places[work], job.frames[work]];
    if (own.length === 0 || place === undefined || frame === undefined) return [];
    const said = own.map(({ letter }) => letter).join(" ");
    const middle = x(add(place.x, part(frame.width, 0.5)));
    const half = widthOf(desk, said, LETTER) / 2;
    if (middle - half < before + mm(0.8)) return [];
    before = middle + half;
    const top = own.reduce((highest, { nail }) => smaller(highest, y(nail)), y(add(place.y, frame.height)));
    return [textAt(middle, subtract(top, mm(1.6)), said, LETTER, "middle", { halo: true })];
  });
}

/** How far the group stands from both corners, along the top of the wall. */
function ends({ desk, left, top, width, x }: Wall): readonly Mark[] {
  const { gaps } = desk.job.plan;
  const [first, last] = [gaps[0], gaps.at(-1)];
  if (first === undefined || last === undefined || gaps.length < 2) return [];
  const level = add(top, mm(5));
  const right = add(left, width);
  const begins = x(first);
  const ending = subtract(right, subtract(x(last), left));
  return [
    ...endDimension(desk, left, begins, level, first),
    ...endDimension(desk, ending, right, level, last),
    ...[begins, ending].map((along) => extensionLine("x", along, add(level, mm(6)), level)),
  ];
}

/** Its figure stands in a clear field on the line; left out where the group is too near the corner for it. */
function endDimension(
  desk: HangingDesk,
  from: Length,
  to: Length,
  level: Length,
  length: Length,
): readonly Mark[] {
  const figure: Phrase = [bare(length, desk.job.ruler), `${NBSP}${desk.job.ruler.unit}`];
  const wide = widthOf(desk, figure, DIMENSION);
  if (length <= 0 || wide + mm(8) > to - from) return [];
  return [
    ...dimensionLine("x", from, to, level),
    textAt(part(add(from, to), 0.5), add(level, mm(1.8)), figure, DIMENSION, "middle", { halo: true }),
  ];
}
