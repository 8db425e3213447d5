import { readingsOf } from "../../assembly/index.ts";
import { type Length, mm, subtract } from "../../lengths/index.ts";
import { HANGING_SHEET, ratedWords, upFrom } from "../../words/hanging-sheet.ts";
import { kilograms, newtonsWords } from "../../words/weights.ts";
import { bare, strong } from "../../words/index.ts";
import { beside, type Block, block, stack, restOf } from "../block.ts";
import { points } from "../paper.ts";
import { SET_FIGURE, setFigure } from "../set-figure.ts";
import { type Column, type Flowing, tableHead, tableRow } from "../table.ts";
import { ringBlock, tickBox } from "../tags.ts";
import { paragraph, textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { HangingDesk, LetteredHook } from "./desk.ts";

const BETWEEN = mm(3);
/** Figures that are read beside the large ones. */
export const PROOF: TextStyle = {
  size: points(15),
  weight: "semibold",
  leading: points(17),
  figures: { whole: points(15), stacked: points(17) },
};
const LETTER: TextStyle = { size: points(19), weight: "bold", leading: points(20) };

function columnsOf({ job }: HangingDesk, width: Length): readonly Column[] {
  const [hook, up, check, work] = [mm(17), mm(42), mm(34), mm(38)];
  const across = restOf(width, BETWEEN, [hook, up, check, work]);
  return [
    { name: HANGING_SHEET.hook, width: hook, align: "start" },
    { name: strong(HANGING_SHEET.across), width: across, align: "start" },
    { name: strong(upFrom(job.level !== null)), width: up, align: "start" },
    { name: HANGING_SHEET.check, width: check, align: "start" },
    { name: HANGING_SHEET.work, width: work, align: "end" },
  ];
}

/** One row for each of some hooks: its letter to tick, two tape measures, a third that proves the first, and what it carries. */
export function hookRows(
  desk: HangingDesk,
  hooks: readonly LetteredHook[],
  width: Length,
): readonly Flowing[] {
  if (hooks.length === 0) return [];
  const columns = columnsOf(desk, width);
  const head = tableHead(desk, columns, BETWEEN);
  const rows = hooks.map((hook) =>
    tableRow(columns, cellsOf(desk, hook, columns), BETWEEN, {
      above: mm(1),
      below: mm(1),
      line: "rule-thin",
    }),
  );
  return [{ block: head, withNext: true }, ...rows.map((row) => ({ block: row, again: head }))];
}

function cellsOf(desk: HangingDesk, hook: LetteredHook, columns: readonly Column[]): readonly Block[] {
  const { ruler, measuring, safety } = desk.job;
  const { across, up, back } = readingsOf(hook, measuring, ruler.graduation);
  return [
    beside([tickBox(), textLine(desk, hook.letter, LETTER)], mm(2.4), "middle"),
    textLine(desk, setFigure(across, ruler), SET_FIGURE),
    textLine(desk, setFigure(up, ruler), SET_FIGURE),
    textLine(desk, bare(back, ruler), PROOF),
    beside(
      [
        ringBlock(desk, String(hook.number), "white"),
        hook.load === null ? block(mm(0), mm(0)) : carries(desk, hook.load, safety, columns),
      ],
      mm(4),
      "middle",
    ),
  ];
}

function carries(desk: HangingDesk, load: number, safety: number, columns: readonly Column[]): Block {
  const width = subtract(columns[4]?.width ?? mm(40), mm(9.4));
  return stack([
    paragraph(desk, [strong(kilograms(load)), ` (${newtonsWords(load)})`], TYPE.line, width, "end"),
    paragraph(desk, ratedWords(load, safety), TYPE.caption, width, "end"),
  ]);
}
