import { larger, type Length, mm, subtract, sum, times } from "../../lengths/index.ts";
import type { PlannedSheet } from "../../plans/cutting/index.ts";
import {
  blanksOff,
  boardsWords,
  CUT_PLAN,
  joined,
  keepOff,
  theOut,
  theSheet,
  wasteOff,
} from "../../words/cut-plan.ts";
import { type Phrase, strong } from "../../words/index.ts";
import { beside, type Block, block, placed } from "../block.ts";
import { part, points } from "../paper.ts";
import { SET_FIGURE, setFigure } from "../set-figure.ts";
import { type Column, type Flowing, tableHead, tableRow } from "../table.ts";
import { ringBlock, tickBox } from "../tags.ts";
import { paragraph, textLine, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { CuttingDesk } from "./desk.ts";
import { type Boards, type FenceSetting, fenceSettings } from "./fence.ts";

const BETWEEN = mm(3);
const TICK_STEP = mm(11.6);
const BODY: TextStyle = { ...TYPE.line, figures: { whole: points(12), stacked: points(14) } };

/** Most settings make a cut or two: the column of cuts is as wide as the longest row needs, up to four of them. */
function columnsOf(width: Length, widest: Length, most: number): readonly Column[] {
  const [fence, cuts] = [larger(mm(27), widest), times(TICK_STEP, Math.min(4, Math.max(2, most)))];
  const rest = subtract(width, sum([fence, cuts, times(BETWEEN, 3)]));
  const into = part(rest, 0.46);
  return [
    { name: CUT_PLAN.fence, width: fence, align: "start" },
    { name: CUT_PLAN.cuts, width: cuts, align: "start" },
    { name: CUT_PLAN.goesIn, width: into, align: "start" },
    { name: CUT_PLAN.comesOff, width: subtract(rest, into), align: "start" },
  ];
}

/**
 * One row for each setting of the fence, in order: the figure large, its cuts with their ticks, what
 * goes in and what comes off. `open`: no rule under the last.
 */
export function fenceRows(
  desk: CuttingDesk,
  sheet: PlannedSheet,
  numbers: readonly number[],
  width: Length,
  open = false,
): readonly Flowing[] {
  const settings = fenceSettings(sheet);
  const columns = columnsOf(
    width,
    settings.reduce<Length>(
      (most, { set }) => larger(most, widthOf(desk, setFigure(set, desk.speech.ruler), SET_FIGURE)),
      mm(0),
    ),
    settings.reduce((most, { cuts }) => Math.max(most, cuts.length), 0),
  );
  const head = tableHead(desk, columns, BETWEEN);
  const rows = settings.map((setting, index) =>
    tableRow(columns, cellsOf(desk, sheet, numbers, setting, index === 0, columns), BETWEEN, {
      above: mm(1),
      below: mm(1),
      line: open && index === settings.length - 1 ? null : "rule-thin",
    }),
  );
  return [{ block: head, withNext: true }, ...rows.map((row) => ({ block: row, again: head }))];
}

function cellsOf(
  desk: CuttingDesk,
  sheet: PlannedSheet,
  numbers: readonly number[],
  setting: FenceSetting,
  first: boolean,
  columns: readonly Column[],
): readonly Block[] {
  const widthAt = (index: number): Length => columns[index]?.width ?? mm(0);
  return [
    textLine(desk, setFigure(setting.set, desk.speech.ruler), SET_FIGURE),
    cutTicks(desk, setting.cuts, widthAt(1)),
    paragraph(desk, goesIn(desk, sheet, setting, first), BODY, widthAt(2)),
    paragraph(desk, strong(comesOff(desk, numbers, setting)), BODY, widthAt(3)),
  ];
}

/** A box to tick and the cut's number, as many to a line as there is room for. */
function cutTicks(desk: CuttingDesk, cuts: readonly number[], width: Length): Block {
  const pieces = cuts.map((cut) =>
    beside([tickBox(), ringBlock(desk, String(cut), "black")], mm(0.8), "middle"),
  );
  const line = mm(7);
  const perLine = Math.max(1, Math.floor((width + mm(1)) / TICK_STEP));
  const marks = pieces.flatMap((piece, index) =>
    placed(piece, times(TICK_STEP, index % perLine), times(line, Math.floor(index / perLine))),
  );
  return block(width, sum([times(line, Math.ceil(cuts.length / perLine) - 1), mm(5.4)]), marks);
}

function goesIn(desk: CuttingDesk, sheet: PlannedSheet, setting: FenceSetting, first: boolean): Phrase {
  const { ruler } = desk.speech;
  const [cut] = sheet.cuts;
  if (first && cut !== undefined) {
    const edge = cut.across === "x" ? sheet.size.height : sheet.size.width;
    return sheet.from.kind === "stock" ? theSheet(edge, ruler) : theOut(edge, ruler);
  }
  return sizes(desk, setting.goesIn);
}

function comesOff(desk: CuttingDesk, numbers: readonly number[], { comesOff: off }: FenceSetting): Phrase {
  const phrases: Phrase[] = [];
  if (off.pieces.length > 0) {
    phrases.push(blanksOff(off.pieces.map((placement) => numbers[placement] ?? 0).toSorted((a, b) => a - b)));
  }
  if (off.boards.length > 0) phrases.push(sizes(desk, off.boards));
  if (off.keep.length > 0) phrases.push(keepOff(sizes(desk, off.keep)));
  if (off.waste > 0) phrases.push(wasteOff(off.waste));
  return joined(phrases, "; ");
}

const sizes = (desk: CuttingDesk, all: readonly Boards[]): Phrase =>
  joined(
    all.map((boards) => boardsWords(boards, desk.speech.ruler)),
    "; ",
  );
