import type { LineKind } from "../drawings/index.ts";
import { type Length, mm } from "../lengths/index.ts";
import { EVERY_PAPER, missingSigns, voidWords } from "../words/papers.ts";
import type { Phrase } from "../words/runs.ts";
import { type Block, gap, rule, stack } from "./block.ts";
import type { PlanWords } from "./job.ts";
import type { Desk } from "./paper.ts";
import { type Fact, facts } from "./tags.ts";
import { paragraph, shortened } from "./text.ts";
import { TYPE, type TextStyle } from "./type.ts";

/** The head of a page, under its head line. */
export interface PageHead {
  readonly title: string;
  /** How the title is set; TYPE.title where absent. */
  readonly titleStyle?: TextStyle;
  /** What the page is for, in a line. */
  readonly line: Phrase;
  /** What must be read before anything else. */
  readonly cautions?: readonly Block[];
  readonly facts: readonly Fact[];
  /** The rule under the facts; "rule" where absent. */
  readonly under?: LineKind;
}

/**
 * What is done, in a title and a line, and the facts on which the page's figures stand; signs of its
 * names that the type lacks are told. A title wider than the page is cut at a word.
 */
export function pageHead(
  desk: Desk & { readonly missing: number },
  { title, titleStyle = TYPE.title, line, cautions = [], facts: all, under = "rule" }: PageHead,
  width: Length,
): Block {
  return stack([
    gap(mm(1.2)),
    paragraph(desk, shortened(desk, title, titleStyle, width), titleStyle, width),
    gap(mm(0.6)),
    paragraph(desk, line, TYPE.line, width),
    ...(desk.missing > 0
      ? [gap(mm(0.6)), paragraph(desk, missingSigns(desk.missing), TYPE.fact, width)]
      : []),
    ...cautions.flatMap((one) => [gap(mm(1.2)), one]),
    gap(mm(1.2)),
    rule(width, "rule-thin"),
    gap(mm(0.4)),
    facts(desk, all, width),
    gap(mm(1)),
    rule(width, under),
  ]);
}

/** The plan that a paper's own makes void, where it does. */
export const voidFacts = ({ makesVoid }: PlanWords): readonly Fact[] =>
  makesVoid === null ? [] : [{ name: EVERY_PAPER.makesVoid, value: voidWords(makesVoid) }];
