import { type Length, larger, mm, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import { dateWords, type Phrase, type Speech, weighted } from "../../words/index.ts";
import {
  beforeIt,
  closedWords,
  heldWords,
  LABELS,
  makerLine,
  processLine,
  releaseWords,
  sizesLine,
  touchesWords,
  weightWords,
} from "../../words/labels.ts";
import { neverWords } from "../../words/mounting-sheet.ts";
import { EVERY_PAPER } from "../../words/papers.ts";
import { aligned, type Block, beside, block, gap, placed, rule, stack } from "../block.ts";
import { type Desk, part, points } from "../paper.ts";
import { caution, headArrow } from "../tags.ts";
import { brokenLines, paragraph, shortened, textAt } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { LabelledWork, LabelsJob } from "./job.ts";
import { PADDING } from "./sheet.ts";

const TITLES: readonly TextStyle[] = [19, 17, 15, 13].map((size) => ({
  size: points(size),
  weight: "semibold",
  leading: points(size * 1.18),
}));
const BODY: TextStyle = {
  size: points(11),
  weight: "regular",
  leading: points(14),
  figures: { whole: points(14), stacked: points(15) },
};

/** Labels of a sheet look alike: the foot of one with little to say stands no higher than this. */
const LEAST_TEXT = mm(90);

/** The whole title, at the largest size at which it keeps to a few lines: this is where it is never cut. */
function wholeTitle(desk: Desk, title: string, width: Length): Block {
  const style =
    TITLES.find((each) => brokenLines(desk, title, each, width).length <= 3) ?? TITLES.at(-1) ?? TYPE.title;
  return paragraph(desk, title, style, width);
}

/** Which way up, what it is, what touches it, how it is held and how it is released, when it was closed. */
export function backLabel(
  desk: Desk,
  own: LabelledWork,
  { plan, house, language }: LabelsJob,
  width: Length,
): Block {
  const inner = subtract(width, times(PADDING, 2));
  const { design, outer } = own.composition;
  const speech: Speech = { ruler: design.ruler, language };
  const up = beside(
    [headArrow(desk, mm(5.4)), paragraph(desk, EVERY_PAPER.thisWayUp, TYPE.line, mm(30))],
    mm(2),
    "foot",
  );
  const section = (name: string, words: Phrase): readonly Block[] => [
    gap(mm(2.4)),
    paragraph(desk, [weighted("bold", `${name}: `), words], BODY, inner),
  ];
  const line = (text: string): readonly Block[] =>
    text === "" ? [] : [gap(mm(1.2)), paragraph(desk, text, BODY, inner)];
  const { work, held, glazing, weight } = own;
  const text = stack([
    aligned(up, inner, "middle"),
    gap(mm(3)),
    wholeTitle(desk, work.title, inner),
    ...line(makerLine(work.maker, work.year)),
    ...line(processLine(work.process, work.edition)),
    gap(mm(1.6)),
    paragraph(desk, sizesLine(design.print?.sheet ?? null, outer, speech), BODY, inner),
    gap(mm(2.4)),
    rule(inner, "rule-thin"),
    ...section(LABELS.touches, touchesWords(design, held, speech)),
    ...(held === null
      ? []
      : [
          ...section(LABELS.held, heldWords(held, speech)),
          ...section(LABELS.release, releaseWords(held, speech)),
          ...(held.never.length === 0 ? [] : [gap(mm(2.4)), caution(desk, neverWords(held.never), inner)]),
        ]),
    ...(glazing === null ? [] : section(LABELS.before, beforeIt(glazing.board, glazing.kind))),
    ...(weight === null ? [] : section(LABELS.weight, weightWords(weight))),
  ]);
  const footHeight = mm(11);
  const foot = block(inner, footHeight, [
    ...rule(inner, "rule-thin").marks,
    textAt(ZERO, mm(6.4), own.mark, { ...TYPE.head, weight: "bold" }),
    textAt(inner, mm(4.4), closedWords(dateWords(plan.date), plan.number), TYPE.caption, "end"),
    textAt(
      inner,
      mm(8.6),
      shortened(desk, house.studio, TYPE.caption, part(inner, 0.6)),
      TYPE.caption,
      "end",
    ),
  ]);
  const footTop = larger(LEAST_TEXT, sum([text.height, mm(6.4)]));
  return block(width, sum([footTop, footHeight, mm(1.5)]), [
    ...placed(text, PADDING, mm(4)),
    ...placed(foot, PADDING, footTop),
  ]);
}
