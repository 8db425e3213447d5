import type { Mark } from "../../drawings/index.ts";
import type { Box } from "../../geometry/index.ts";
import { add, type Length, mm, subtract, ZERO } from "../../lengths/index.ts";
import { BENCH_SHEET, failureLegend } from "../../words/bench-sheet.ts";
import { type Block, block, cornersOf, placed } from "../block.ts";
import { part } from "../paper.ts";
import { headArrow } from "../tags.ts";
import { textAt } from "../text.ts";
import { TYPE } from "../type.ts";
import { drawn, fittingScale } from "../scale.ts";
import { type BenchDesk, nearestTick } from "./desk.ts";
import { drawnPoint } from "./front.ts";
import { type Reason, sideOf } from "./stop-reasons.ts";

/** Package, window and paper from the front, with a bar along each side that fails; no figure of a border. */
export function failure(desk: BenchDesk, reasons: readonly Reason[], width: Length, height: Length): Block {
  const { composition } = desk.job;
  const { outer, print } = composition;
  const lowest = composition.mats[0];
  if (lowest === undefined || lowest.back.width <= 0 || lowest.back.height <= 0 || print === null) {
    return block(width, ZERO);
  }
  const above = mm(17);
  const sheet = print.sheetOutline ?? print.sheetCorners;
  const { borders, back } = lowest;
  const xs = [0, outer.width, borders.left, borders.left + back.width, ...sheet.map(({ x }) => x)];
  const ys = [0, outer.height, borders.head, borders.head + back.height, ...sheet.map(({ y }) => y)];
  const reach = {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    foot: Math.max(...ys),
  };
  const real = { width: nearestTick(reach.right - reach.left), height: nearestTick(reach.foot - reach.top) };
  const over = fittingScale(
    real.width,
    real.height,
    subtract(width, mm(70)),
    subtract(height, add(above, mm(4))),
  );
  const shift = { x: part(subtract(width, drawn(real.width, over)), 0.5), y: above };
  const place = (point: { x: number; y: number }): { x: Length; y: Length } => {
    const { x, y } = drawnPoint({ x: point.x - reach.left, y: point.y - reach.top }, over);
    return { x: add(x, shift.x), y: add(y, shift.y) };
  };
  const corner = place({ x: borders.left, y: borders.head });
  const window = {
    left: corner.x,
    top: corner.y,
    width: drawn(back.width, over),
    height: drawn(back.height, over),
  };
  const board = place({ x: 0, y: 0 });
  const arrow = headArrow(desk, mm(5));
  const boardBox = {
    left: board.x,
    top: board.y,
    width: drawn(outer.width, over),
    height: drawn(outer.height, over),
  };
  return block(width, height, [
    textAt(ZERO, mm(6), BENCH_SHEET.whereItFails, TYPE.band),
    textAt(width, mm(6), BENCH_SHEET.seenFromFront, TYPE.caption, "end"),
    textAt(ZERO, mm(10.4), failureLegend, TYPE.caption),
    ...placed(arrow, add(board.x, mm(2)), subtract(above, add(arrow.height, mm(0.6)))),
    {
      kind: "area",
      points: cornersOf({
        left: board.x,
        top: board.y,
        width: drawn(outer.width, over),
        height: drawn(outer.height, over),
      }),
      fill: "none",
      line: "outline",
    },
    { kind: "area", points: cornersOf(window), fill: "none", line: "edge" },
    { kind: "area", points: sheet.map(place), fill: "none", line: "phantom" },
    ...reasons.flatMap((reason) => failingSide(reason, window, boardBox)),
  ]);
}

/** A bar along what fails: the board's own edge where something is too large for it, else the window's. */
function failingSide({ check, code }: Reason, window: Box, board: Box): readonly Mark[] {
  const side = sideOf(check);
  if (side === null) return [];
  const [a, b, c, d] = cornersOf(code === "border-negative" || code === "sheet-past-board" ? board : window);
  const edges = { head: [a, b], right: [b, c], foot: [c, d], left: [d, a] } as const;
  const [from, to] = edges[side];
  return [{ kind: "line", from, to, line: "heavy" }];
}
