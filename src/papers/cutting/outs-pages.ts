import { add, type Length, mm, subtract, sum } from "../../lengths/index.ts";
import { CUT_PLAN, needsLine, outOfTitle, outsLine, outsTitle } from "../../words/cut-plan.ts";
import { unitWords } from "../../words/papers.ts";
import { fittingScale } from "../scale.ts";
import { beside, type Block, gap, rule, stack } from "../block.ts";
import { type Body, bodyHeight } from "../frame.ts";
import { part, points } from "../paper.ts";
import { type Flowing, flow } from "../table.ts";
import { paragraph, shortened } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { pageHead, voidFacts } from "../head.ts";
import type { CuttingDesk, DrawnSheet, OutsOf } from "./desk.ts";
import { layoutDrawing } from "./drawing.ts";
import { fenceRows } from "./fence-table.ts";

const TITLE: TextStyle = { size: points(14), weight: "semibold", leading: points(17) };
const LINE: TextStyle = { ...TYPE.line, figures: { whole: points(15), stacked: points(17) } };
const DRAWING = mm(46);

/** A window in which blanks lie, and the blank that it falls out of. */
export interface OutSheet {
  readonly drawn: DrawnSheet;
  readonly host: number;
  readonly hostName: string;
  readonly outsOf: OutsOf;
}

/** Pages for the windows that fall out: each with its layout, its fence and its cuts, since it is cut on another day than its sheet. */
export function outsPages(desk: CuttingDesk, outs: readonly OutSheet[]): readonly Body[] {
  if (outs.length === 0) return [];
  const width = desk.paper.content.width;
  const blanks = outs.reduce((count, { drawn }) => count + drawn.sheet.placements.length, 0);
  const head = pageHead(
    desk,
    {
      title: outsTitle(desk.job.board),
      line: outsLine(blanks),
      facts: [{ name: CUT_PLAN.unit, value: unitWords(desk.speech.ruler) }, ...voidFacts(desk.job.planWords)],
    },
    width,
  );
  const room = subtract(bodyHeight(desk.paper), add(head.height, mm(1.5)));
  const rows: Flowing[] = outs.map((out) => ({ block: outBlock(desk, out, width, room) }));
  return flow(rows, room, room).map((page) => ({
    block: stack([head, gap(mm(1.5)), page]),
    tells: CUT_PLAN.outsTells,
  }));
}

/** One window: its layout at the left, what it must measure and its cuts at the right. */
function outBlock(
  desk: CuttingDesk,
  { drawn, host, hostName, outsOf }: OutSheet,
  width: Length,
  room: Length,
): Block {
  const { sheet, numbers } = drawn;
  const right = subtract(width, add(DRAWING, mm(5)));
  const over = fittingScale(sheet.size.width, sheet.size.height, DRAWING, mm(52));
  const { block: layout } = layoutDrawing(desk, drawn, over, outsOf, host);
  const table = flow(fenceRows(desk, sheet, numbers, right, true), room, room)[0];
  const column = stack([
    paragraph(desk, outOfTitle(host, shortened(desk, hostName, TITLE, part(right, 0.66))), TITLE, right),
    gap(mm(0.8)),
    paragraph(desk, needsLine(sheet.needs, desk.speech.ruler), LINE, right),
    gap(mm(1)),
    ...(sheet.cuts.length === 0 ? [paragraph(desk, CUT_PLAN.noCut, TYPE.line, right)] : []),
    ...(sheet.cuts.length > 0 && table !== undefined ? [table] : []),
  ]);
  const row = beside([stack([layout]), column], sum([subtract(DRAWING, layout.width), mm(5)]));
  return stack([gap(mm(2)), row, gap(mm(2.5)), rule(width, "rule-thin")]);
}
