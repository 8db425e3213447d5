import type { Mark } from "../../drawings/index.ts";
import { add, type Length, mm, smaller, subtract, sum, ZERO } from "../../lengths/index.ts";
import { HANGING_SHEET, partSeen, wallSeen } from "../../words/hanging-sheet.ts";
import { bare, NBSP, type Phrase } from "../../words/index.ts";
import { type Block, block, cornersOf } from "../block.ts";
import { dimensionLine, extensionLine } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { HangingDesk } from "./desk.ts";
import { frameMarks, isLegible, obstacleMarks } from "./frames.ts";
import { type Drawn, drawView, viewRound, wholeWall } from "./view.ts";

const ABOVE = mm(2);
const BELOW = mm(7);
const SIDE = mm(5);
/** What the lines' names take at an end of the wall. */
const NAMES = mm(24);
const DIMENSION: TextStyle = { size: points(15), weight: "semibold", leading: points(16) };

const viewOfWall = (desk: HangingDesk, width: Length, height: Length): Drawn => {
  const room = { width: subtract(width, add(SIDE, SIDE)), height: subtract(height, add(ABOVE, BELOW)) };
  return drawView(desk, wholeWall(desk), room, width, ABOVE);
};

/** Whether every work's number and letters can be read on a wall drawn so large. */
export const wallIsLegible = (desk: HangingDesk, width: Length, height: Length): boolean =>
  isLegible(viewOfWall(desk, width, height));

/** The wall as it is seen from the room, to scale, as large as `width` by `height` allow. */
export function elevation(desk: HangingDesk, width: Length, height: Length): Block {
  const at = viewOfWall(desk, width, height);
  const all = new Set(desk.job.works.keys());
  return block(width, add(add(ABOVE, at.height), BELOW), [
    ...wallMarks(at, width),
    ...obstacleMarks(at),
    ...lines(at),
    ...frameMarks(at, all),
    ...ends(at),
  ]);
}

/** What letters over the uppermost frames of a part take. */
const PART_ABOVE = mm(6);

/** Some works of the wall, larger: their neighbours stand thin beside them. */
export function partElevation(
  desk: HangingDesk,
  works: readonly number[],
  width: Length,
  height: Length,
): Block | null {
  const view = viewRound(desk, works);
  if (view === null) return null;
  const room = { width, height: subtract(height, add(PART_ABOVE, BELOW)) };
  const at = drawView(desk, view, room, width, PART_ABOVE);
  const low = add(add(PART_ABOVE, at.height), mm(5));
  return block(width, add(add(PART_ABOVE, at.height), BELOW), [
    ...obstacleMarks(at),
    ...eyeLineOf(at),
    ...frameMarks(at, new Set(works)),
    textAt(ZERO, low, partSeen(view.left, view.right, at.over, desk.job.ruler), TYPE.caption),
  ]);
}

/** The eye line, where a part shows it. */
function eyeLineOf({ desk, view, left, width, y }: Drawn): readonly Mark[] {
  const { eyeLine } = desk.job.job;
  if (eyeLine < view.foot || eyeLine > view.top) return [];
  const height = y(eyeLine);
  return [
    { kind: "line", from: { x: left, y: height }, to: { x: add(left, width), y: height }, line: "centre" },
  ];
}

function wallMarks({ desk, over, x, y, left: begins, width }: Drawn, room: Length): readonly Mark[] {
  const { wall, floor: foot } = desk.job.job;
  const [left, right] = [x(ZERO), x(wall.width)];
  const [top, floor] = [y(add(foot, wall.height)), y(foot)];
  const [low, last] = [add(floor, mm(5.4)), smaller(add(begins, width), room)];
  const words = [HANGING_SHEET.floor, wallSeen(over)].map((said) => widthOf(desk, said, TYPE.caption));
  const taken = sum([...words, mm(4)]);
  return [
    {
      kind: "area",
      points: cornersOf({ left, top, width: subtract(right, left), height: subtract(floor, top) }),
      fill: "none",
      line: "thin",
    },
    { kind: "line", from: { x: left, y: floor }, to: { x: right, y: floor }, line: "outline" },
    {
      kind: "area",
      points: cornersOf({ left, top: floor, width: subtract(right, left), height: mm(1.6) }),
      fill: "hatch-floor",
      line: null,
    },
    ...(taken > subtract(last, left) ? [] : [textAt(left, low, HANGING_SHEET.floor, TYPE.caption)]),
    textAt(last, low, wallSeen(over), TYPE.caption, "end"),
  ];
}

/** Eye line and level line, chain, with their names at the wall's left, or its right where the left is taken. */
function lines({ desk, x, y }: Drawn): readonly Mark[] {
  const { eyeLine, wall } = desk.job.job;
  const [left, right] = [x(ZERO), x(wall.width)];
  const across = (height: Length): Mark => ({
    kind: "line",
    from: { x: subtract(left, mm(3)), y: height },
    to: { x: add(right, mm(3)), y: height },
    line: "centre",
  });
  const free = desk.job.job.avoid.every((box) => x(box.x) > add(left, NAMES));
  const name = (baseline: Length, words: string, style: TextStyle): Mark =>
    free
      ? textAt(add(left, mm(1.6)), baseline, words, style, "start", { halo: true })
      : textAt(subtract(right, mm(1.6)), baseline, words, style, "end", { halo: true });
  const eye = y(eyeLine);
  const level = desk.job.level === null ? null : y(ZERO);
  return [
    across(eye),
    name(subtract(eye, mm(1.2)), HANGING_SHEET.eyeLine, TYPE.caption),
    ...(level === null ? [] : [across(level), name(add(level, mm(4)), HANGING_SHEET.levelLine, TYPE.fact)]),
  ];
}

/** How far the group stands from both corners, along the top of the wall. */
function ends({ desk, x, y }: Drawn): readonly Mark[] {
  const { gaps } = desk.job.plan;
  const [first, last] = [gaps[0], gaps.at(-1)];
  if (first === undefined || last === undefined || gaps.length < 2) return [];
  const { wall, floor } = desk.job.job;
  const level = add(y(add(floor, wall.height)), mm(5));
  const [left, right] = [x(ZERO), x(wall.width)];
  const [begins, ending] = [x(first), x(subtract(wall.width, last))];
  if (first < 0 || last < 0) return [];
  return [[left, begins, first, begins] as const, [ending, right, last, ending] as const].flatMap(
    ([from, to, length, along]) => {
      const dimension = endDimension(desk, from, to, level, length);
      return dimension.length === 0
        ? []
        : [...dimension, extensionLine("x", along, add(level, mm(6)), level)];
    },
  );
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
