import { add, mm, subtract, sum } from "../../lengths/index.ts";
import { NBSP, type Speech, sizeRuns } from "../../words/index.ts";
import { blankFor, boardLabelsTitle, LABELS } from "../../words/labels.ts";
import { type Block, block, placed, stack } from "../block.ts";
import { type Desk, part, points } from "../paper.ts";
import { printableAll } from "../printable.ts";
import { ringBlock } from "../tags.ts";
import { paragraph, shortened } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { LabelsJob } from "./job.ts";
import { BETWEEN, cropped, inTwos, pagesOfRows, sheetTitle } from "./sheet.ts";

/** Pages of slips, one for every blank: its number in a ring on a bar, what it becomes, of which work, its size. */
export function blankRows(desk: Desk, job: LabelsJob): readonly Block[] {
  const speech: Speech = { ruler: job.ruler, language: job.language };
  const width = part(subtract(desk.paper.content.width, BETWEEN), 0.5);
  const texts = job.blanks.map((blank) =>
    printableAll({ title: blank.title, board: blank.board }, desk.typeface),
  );
  const missing = texts.reduce((all, text) => all + text.missing, 0);
  const title = sheetTitle(desk, boardLabelsTitle(job.blanks.length), LABELS.boards, missing);
  const cells = job.blanks.map((blank, index) => {
    const { title: name = "", board = "" } = texts[index]?.texts ?? {};
    const ringed = ringBlock(desk, String(blank.number), "white", mm(7.5));
    const left = sum([mm(4), ringed.width, mm(4.5)]);
    const inner = subtract(width, add(left, mm(4)));
    const text = stack(
      [
        paragraph(desk, sizeRuns(blank.size, job.ruler), BLANK_SIZE, inner),
        paragraph(
          desk,
          blankFor(blank.becomes, blank.mats, speech),
          { ...TYPE.words, weight: "bold" },
          inner,
        ),
        paragraph(desk, shortened(desk, name, TYPE.fact, inner), TYPE.fact, inner),
        paragraph(
          desk,
          `${board}${board === "" ? "" : ` ·${NBSP}`}plan${NBSP}${job.plan.number}`,
          TYPE.caption,
          inner,
        ),
      ],
      mm(1.4),
    );
    const height = mm(36);
    return cropped(
      block(width, height, [
        ...placed(ringed, mm(4), part(subtract(height, ringed.height), 0.5)),
        ...placed(text, left, part(subtract(height, text.height), 0.5)),
      ]),
    );
  });
  return pagesOfRows(desk, title, inTwos(cells));
}

const BLANK_SIZE: TextStyle = { ...TYPE.line, figures: { whole: points(20), stacked: points(21) } };
