import type { PaperName } from "../paper-names.ts";
import { wholeWords } from "../figures.ts";
import { capital } from "./capital.ts";

/** What is said where papers are printed. */

export const PRINTING = {
  line: "Each is drawn as it will lie on the table, at a quarter of its size.",
  size: "Paper size",
  works: "Which works",
  all: "All works",
  some: "Some of them",
  choose: "Works to print",
  looking: "The papers are being laid out.",
  none: "Choose a work, and its papers stand here.",
  leftOut: "What cannot be printed, and why",
  print: "Print it",
  again: "Lay them out again",
  noAnswer:
    "The papers cannot be shown: Margent's server does not answer. Nothing is lost; try again when it runs.",
} as const;

export const printThis = (title: string): string => `Print ${title.toLowerCase()}`;
export const firstPageOf = (title: string): string => `First page of ${title.toLowerCase()}`;

export const papersHead = (papers: number): string =>
  papers === 0 ? "Papers" : `${capital(wholeWords(papers))} ${papers === 1 ? "paper" : "papers"} to print`;
/** Which plan the papers say they are of, and whose. */
export const planLine = (plan: number, works: number): string =>
  `Plan ${plan}, of ${works === 1 ? "one work" : `${wholeWords(works)} works`}. A paper of an earlier day is void once a figure has changed.`;

interface PaperWords {
  readonly title: string;
  /** What it is for. */
  readonly use: string;
  readonly covers: string;
}

const EACH = "A sheet for each work.";
const TOGETHER = "All works together.";

/** Every paper, as one speaks of it. */
export const PAPER_WORDS: Readonly<Record<PaperName, PaperWords>> = {
  "bench-sheets": {
    title: "Bench sheets",
    use: "Lies beside the cutter: what is set and cut, in order, as the hand sees the board.",
    covers: EACH,
  },
  "mounting-sheets": {
    title: "Mounting sheets",
    use: "How each print is held: where pockets, hinges or strips go.",
    covers: "A sheet for each work that has a print.",
  },
  "frame-sheets": {
    title: "Frame sheets",
    use: "The stack, layer by layer, and what its frame must take.",
    covers: "A sheet for each work that is framed.",
  },
  "cut-plan": {
    title: "Cut plan",
    use: "How each board is cut up, cut by cut, with the fence’s setting.",
    covers: "A plan for each kind of board.",
  },
  "chop-list": {
    title: "Chop list",
    use: "Every stick of a frame, by long and short points.",
    covers: "A list for each length that frames are made of.",
  },
  "shopping-list": {
    title: "Shopping list",
    use: "What is bought before anything is cut.",
    covers: TOGETHER,
  },
  hanging: {
    title: "Hanging sheets",
    use: "Each wall with every nail on two tapes.",
    covers: "A sheet for each wall.",
  },
  light: { title: "Light", use: "Until when each work may hang, and how long it rests.", covers: TOGETHER },
  "bench-order": {
    title: "Bench order",
    use: "Works in the order in which the fence moves least.",
    covers: TOGETHER,
  },
  labels: {
    title: "Board labels",
    use: "Stick to each blank, so that none is taken for another.",
    covers: "A label for each blank.",
  },
  "back-labels": {
    title: "Back labels",
    use: "Stick to the back of each frame.",
    covers: "A label for each work.",
  },
  "wall-labels": { title: "Wall labels", use: "Hang beside each work.", covers: "A label for each work." },
  "packing-list": { title: "Packing list", use: "What goes into which crate.", covers: TOGETHER },
  "loan-list": { title: "Loan list", use: "Goes with works that are lent.", covers: TOGETHER },
  "condition-notes": {
    title: "Condition notes",
    use: "Filled in by hand when a work comes and goes.",
    covers: EACH,
  },
  quote: { title: "Quote", use: "What it costs, and what having it done would.", covers: TOGETHER },
};
