import type { PlacedPrint } from "../../assembly/index.ts";
import { CORNERS } from "../../geometry/index.ts";
import { add, type Length, mm, ZERO } from "../../lengths/index.ts";
import { BENCH_SHEET, CORNER_WORDS } from "../../words/bench-sheet.ts";
import { bare, flat, NBSP } from "../../words/index.ts";
import { type Block, block, gap, stack } from "../block.ts";
import { part, points } from "../paper.ts";
import { ruledHead } from "../tags.ts";
import { textAt } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { BenchDesk } from "./desk.ts";

/** The largest pocket that stays hidden, corner by corner, rounded down. */
export function pocketsPanel(desk: BenchDesk, print: PlacedPrint, width: Length): Block {
  const half = part(width, 0.5);
  const style: TextStyle = { ...TYPE.line, figures: { whole: points(15), stacked: points(17) } };
  const row = mm(8.6);
  const cells = CORNERS.map((corner) =>
    flat([
      bare(print.pockets[corner], desk.speech.ruler, "down"),
      `${NBSP}${desk.speech.ruler.unit}${NBSP} ${CORNER_WORDS[corner]}`,
    ]),
  );
  return stack([
    ruledHead(desk, BENCH_SHEET.pocketsHidden, width),
    gap(mm(0.6)),
    block(
      width,
      add(row, row),
      cells.map((cell, index) =>
        textAt(index % 2 === 0 ? ZERO : half, index < 2 ? mm(6.2) : add(row, mm(6.2)), cell, style),
      ),
    ),
  ]);
}
