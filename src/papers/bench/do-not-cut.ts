import type { Check } from "../../assembly/index.ts";
import type { Mark } from "../../drawings/index.ts";
import { FRACTION_DOWN, FRACTION_UP } from "../../drawings/index.ts";
import type { Side } from "../../geometry/index.ts";
import { add, type Length, larger, mm, subtract, ZERO } from "../../lengths/index.ts";
import {
  BENCH_SHEET,
  failingSheets,
  failsAt,
  matName,
  type StopCode,
  stopReason,
} from "../../words/bench-sheet.ts";
import { cautionWords } from "../../words/cautions.ts";
import { bold, bare, flat, NBSP } from "../../words/index.ts";
import { type Block, block, gap, placed, rule, stack } from "../block.ts";
import { part, points } from "../paper.ts";
import { furtherReason, stopPanel } from "../stop-panel.ts";
import { flow } from "../table.ts";
import { handTag } from "../tags.ts";
import { paragraph, textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { BenchDesk } from "./desk.ts";
import { failure } from "./failure.ts";
import { type Reason, reasonsOf, shortBy, sideOf } from "./stop-reasons.ts";

const FIGURE_COLUMN = mm(34);
const FIGURE: TextStyle = { size: points(34), weight: "bold", leading: points(34) };
const TEXT: TextStyle = { ...TYPE.step, leading: points(17) };

/**
 * Takes the place of everything that is set, read or ticked: a black panel, the reason in capitals,
 * then for each reason side, figure, hand and ways out. No setting of a stop, no reading of a scale
 * and no tick is printed anywhere on such a sheet. `first` is the room under the head, `next` that of
 * each further page.
 */
export function doNotCut(desk: BenchDesk, width: Length, first: Length, next: Length): readonly Block[] {
  const reasons = reasonsOf(desk);
  const named = [...new Set(reasons.map(({ code }) => stopReason(code, desk.speech)))];
  const top = stack([
    gap(mm(3)),
    stopPanel(BENCH_SHEET.doNotCut, named[0] ?? "", width),
    ...named.slice(1).map((reason) => furtherReason(reason, width)),
    gap(mm(2)),
  ]);
  const again = stack([gap(mm(3)), stopPanel(BENCH_SHEET.doNotCut, named[0] ?? "", width), gap(mm(2))]);
  const pages = flow(
    [
      { block: top, withNext: true },
      ...reasons.map((reason) => ({
        block: stack([reasonRow(desk, reason, width), rule(width, "rule-thin")]),
        again,
      })),
      {
        block: stack([
          gap(mm(2.4)),
          paragraph(desk, BENCH_SHEET.waysOut, { ...TYPE.words, weight: "bold" }, width),
          gap(mm(3)),
        ]),
        again,
      },
    ],
    first,
    next,
  );
  return pages.map((page, index) => {
    const left = subtract(index === 0 ? first : next, page.height);
    return index < pages.length - 1 || left < mm(60)
      ? page
      : stack([page, rule(width, "rule"), failure(desk, reasons, width, left)]);
  });
}

function reasonRow(desk: BenchDesk, { check, code, sheets }: Reason, width: Length): Block {
  const { ruler } = desk.speech;
  const by = shortBy(check);
  const textWidth = subtract(width, FIGURE_COLUMN);
  const words = paragraph(desk, cautionWords(check, desk.speech), TEXT, textWidth);
  const side = sideOf(check);
  const where = side === null ? block(ZERO, ZERO) : sideLine(desk, check, code, side);
  const listed =
    sheets.length === 0 ? [] : [paragraph(desk, failingSheets(sheets), TYPE.line, textWidth), gap(mm(1.2))];
  const text = stack([where, gap(mm(1.2)), ...listed, words]);
  const figureHeight = part(FIGURE.size, FRACTION_UP + FRACTION_DOWN);
  const height = add(larger(text.height, by === null ? ZERO : figureHeight), mm(6));
  const figure: readonly Mark[] =
    by === null
      ? []
      : [
          textAt(
            mm(2),
            add(mm(3), part(FIGURE.size, FRACTION_UP)),
            flat([
              bold(bare(by, ruler, "up")),
              { kind: "text", text: `${NBSP}${ruler.unit}`, weight: "regular", size: points(14) },
            ]),
            FIGURE,
          ),
        ];
  return block(width, height, [...figure, ...placed(text, FIGURE_COLUMN, mm(3))]);
}

/** Side as the front names it, which mat of several, and the hand at which it lies. */
function sideLine(desk: BenchDesk, check: Check, code: StopCode, side: Side): Block {
  const { mats } = desk.job.composition;
  const mat = "mat" in check && mats.length > 1 ? matName(check.mat, mats.length, desk.speech) : null;
  const style: TextStyle = { ...TYPE.words, size: points(12.5) };
  const words = failsAt(code, side, mat);
  const line = textAt(ZERO, mm(4), words, style);
  if (side === "head" || side === "foot") return block(ZERO, mm(5.4), [line]);
  const tag = handTag(desk, side === "left" ? "right" : "left");
  const after = add(widthOf(desk, words, style), mm(2.4));
  return block(add(after, tag.width), mm(5.4), [line, ...placed(tag, after, mm(0.2))]);
}
