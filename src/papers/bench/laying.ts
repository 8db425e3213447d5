import type { PlacedPrint } from "../../assembly/index.ts";
import type { Mark } from "../../drawings/index.ts";
import { CORNERS, type RealPoint, type Side, type Sides, SIDES } from "../../geometry/index.ts";
import {
  add,
  type Length,
  larger,
  mm,
  negate,
  smaller,
  subtract,
  sum,
  times,
  ZERO,
} from "../../lengths/index.ts";
import { BENCH_SHEET, CORNER_WORDS } from "../../words/bench-sheet.ts";
import { bold, bare, flat, NBSP } from "../../words/index.ts";
import { type Block, block, cornersOf, gap, placed, stack } from "../block.ts";
import { part, points } from "../paper.ts";
import { headArrow, tickLine } from "../tags.ts";
import { paragraph, textAt, widthOf } from "../text.ts";
import { towards } from "../towards.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { drawn, fittingScale } from "../scale.ts";
import { type BenchDesk, nearestTick } from "./desk.ts";
import { drawnPoint } from "./front.ts";

const LIST_WIDTH = mm(29);
const FIGURE_STYLE: TextStyle = { size: points(18), weight: "bold", leading: points(18) };
const LEAST_ROW = mm(8.2);

/** How far each side's paper reaches, least first; of a float how far it stands clear of the window. */
function reaches(desk: BenchDesk, cover: Sides): readonly { readonly side: Side; readonly by: Length }[] {
  const float = desk.job.composition.design.window.show === "sheet";
  return SIDES.map((side) => ({ side, by: float ? negate(cover[side]) : cover[side] })).toSorted(
    (a, b) => a.by - b.by,
  );
}

/**
 * What the paper reaches under the mat, from the front: window, sheet and pockets drawn, the sides
 * listed least first with a bar along the least, four corners to look at and tick. `high` is the room
 * for the drawing and its list.
 */
export function layingPanel(desk: BenchDesk, print: PlacedPrint, width: Length, high: Length): Block {
  const float = desk.job.composition.design.window.show === "sheet";
  const title = block(width, mm(4.6), [
    textAt(ZERO, mm(3.7), float ? BENCH_SHEET.standsClear : BENCH_SHEET.reachesUnder, TYPE.band),
    textAt(width, mm(3.7), BENCH_SHEET.seenFromFront, TYPE.caption, "end"),
  ]);
  const room = larger(high, LEAST_LAYING);
  const picture = layingPicture(desk, print, subtract(width, add(LIST_WIDTH, mm(3))), room);
  const listed = reachList(desk, print.cover, picture.height);
  const pictureHigh = larger(picture.height, listed.height);
  return stack([
    title,
    gap(mm(1.2)),
    block(width, pictureHigh, [...picture.marks, ...placed(listed, subtract(width, LIST_WIDTH), ZERO)]),
    gap(mm(1.4)),
    cornerTicks(desk, float, width),
  ]);
}

/** The least room a laying panel takes. */
export const LEAST_LAYING = mm(35);

/** Four corners to tick, two and two; of a float its four edges. */
function cornerTicks(desk: BenchDesk, float: boolean, width: Length): Block {
  const half = part(width, 0.5);
  const line = paragraph(
    desk,
    float ? BENCH_SHEET.floatLookedAt : BENCH_SHEET.cornersLookedAt,
    TYPE.line,
    width,
  );
  const named = float ? SIDES : CORNERS.map((corner) => CORNER_WORDS[corner]);
  const ticks = named.map((name) => tickLine(desk, name, TYPE.line, half));
  const row = mm(5.8);
  return stack([
    line,
    gap(mm(1.2)),
    block(
      width,
      add(row, mm(4.4)),
      ticks.flatMap((tick, index) => placed(tick, index % 2 === 0 ? ZERO : half, index < 2 ? ZERO : row)),
    ),
  ]);
}

function reachList(desk: BenchDesk, cover: Sides, high: Length): Block {
  const { ruler } = desk.speech;
  const all = reaches(desk, cover);
  const figures = all.map(({ by }) =>
    flat([
      bold(bare(by, ruler, "down")),
      { kind: "text", text: `${NBSP}${ruler.unit}`, weight: "regular", size: points(10.5) },
    ]),
  );
  const wide = figures.reduce((most, runs) => larger(most, widthOf(desk, runs, FIGURE_STYLE)), ZERO);
  const names = add(wide, mm(1.8));
  const row = smaller(larger(LEAST_ROW, part(subtract(high, mm(2)), 0.25)), mm(10.5));
  const alike = all.every(({ by }) => by === all[0]?.by);
  return block(
    LIST_WIDTH,
    add(times(row, all.length), mm(2)),
    all.flatMap(({ side }, index) => {
      const baseline = add(times(row, index), mm(7.6));
      return [
        ...(index === 0 && !alike
          ? [textAt(names, subtract(baseline, mm(4.4)), BENCH_SHEET.least, TYPE.wordsBeside)]
          : []),
        textAt(wide, baseline, figures[index] ?? [], FIGURE_STYLE, "end"),
        textAt(names, baseline, side, index === 0 && !alike ? TYPE.fact : TYPE.line),
      ];
    }),
  );
}

function layingPicture(desk: BenchDesk, print: PlacedPrint, width: Length, high: Length): Block {
  const { composition } = desk.job;
  const lowest = composition.mats[0];
  if (lowest === undefined) return block(width, ZERO);
  const { borders, back } = lowest;
  const sheet = print.sheetOutline ?? print.sheetCorners;
  const xs = [...sheet.map(({ x }) => x), borders.left, borders.left + back.width];
  const ys = [...sheet.map(({ y }) => y), borders.head, borders.head + back.height];
  const [left, top] = [nearestTick(Math.min(...xs)), nearestTick(Math.min(...ys))];
  const size = {
    width: subtract(nearestTick(Math.max(...xs)), left),
    height: subtract(nearestTick(Math.max(...ys)), top),
  };
  const arrow = headArrow(desk, mm(4.2));
  const above = add(arrow.height, mm(1.6));
  const over = fittingScale(
    size.width,
    size.height,
    subtract(width, mm(4)),
    subtract(high, add(above, mm(1.6))),
  );
  const wide = drawn(size.width, over);
  const offset = { x: part(subtract(width, wide), 0.5), y: above };
  const toPicture = (point: RealPoint): { x: Length; y: Length } => {
    const { x, y } = drawnPoint({ x: point.x - left, y: point.y - top }, over);
    return { x: add(x, offset.x), y: add(y, offset.y) };
  };
  const windowCorner = toPicture({ x: borders.left, y: borders.head });
  const window = {
    left: windowCorner.x,
    top: windowCorner.y,
    width: drawn(back.width, over),
    height: drawn(back.height, over),
  };
  const outline = sheet.map(toPicture);
  return block(width, sum([above, drawn(size.height, over), mm(1.6)]), [
    ...placed(arrow, add(offset.x, part(subtract(wide, arrow.width), 0.35)), ZERO),
    { kind: "area", points: outline, fill: "none", line: "hidden" },
    { kind: "area", points: cornersOf(window), fill: "none", line: "edge" },
    ...pocketLines(desk, print, toPicture),
    ...leastBar(desk, print, toPicture),
  ]);
}

/** Pockets by their folded edges, dashed: what lies under the mat. */
function pocketLines(
  desk: BenchDesk,
  print: PlacedPrint,
  toPicture: (point: RealPoint) => { x: Length; y: Length },
): readonly Mark[] {
  const { held } = desk;
  if (held?.way !== "pockets" || held.pockets === null) return [];
  const { leg } = held.pockets;
  const [a, b, c, d] = print.sheetCorners;
  return [
    [d, a, b],
    [a, b, c],
    [b, c, d],
    [c, d, a],
  ].map(
    ([before, corner, after]): Mark => ({
      kind: "line",
      from: toPicture(towards(corner ?? a, before ?? a, leg)),
      to: toPicture(towards(corner ?? a, after ?? a, leg)),
      line: "hidden",
    }),
  );
}

/** A bar along the side that reaches least: the one to look at first. None where all reach alike. */
function leastBar(
  desk: BenchDesk,
  print: PlacedPrint,
  toPicture: (point: RealPoint) => { x: Length; y: Length },
): readonly Mark[] {
  const [a, b, c, d] = print.sheetCorners;
  const edges: Readonly<Record<Side, readonly [RealPoint, RealPoint]>> = {
    head: [a, b],
    right: [b, c],
    foot: [c, d],
    left: [d, a],
  };
  const all = reaches(desk, print.cover);
  if (all.every(({ by }) => by === all[0]?.by)) return [];
  const least = all[0]?.side ?? "head";
  const [from, to] = edges[least].map(toPicture);
  const off = mm(1.1);
  const push = {
    head: [ZERO, negate(off)],
    foot: [ZERO, off],
    left: [negate(off), ZERO],
    right: [off, ZERO],
  } as const;
  const [dx, dy] = push[least];
  const moved = (point: { x: Length; y: Length } | undefined): { x: Length; y: Length } => ({
    x: add(point?.x ?? ZERO, dx),
    y: add(point?.y ?? ZERO, dy),
  });
  return [{ kind: "line", from: moved(from), to: moved(to), line: "heavy" }];
}
