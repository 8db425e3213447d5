import { figureOf, isWholeIn, type Ruler, ticks } from "../lengths/index.ts";
import { shortDate } from "./dates.ts";
import { bare, NBSP, type Phrase, runs } from "./runs.ts";

/** The words that stand on every paper. */
export const EVERY_PAPER = {
  measureMe:
    "MEASURE ME, both ways: 150 mm, 6 in. Wrong: do not measure from this paper. The written figures still hold.",
  measureMeShort: "MEASURE ME",
  millimetres: `150${NBSP}mm`,
  inches: `6${NBSP}in`,
  nought: "0",
  head: "HEAD",
  foot: "FOOT",
  out: "OUT",
  leftHand: "LEFT HAND",
  rightHand: "RIGHT HAND",
  thisWayUp: "this way up",
  makesVoid: "makes void",
} as const;

/** `page 1 of 2: cut`; what is on the page is told where there is more than one. */
export const pageOf = (page: number, pages: number, tells: string | null): string =>
  `page ${page} of ${pages}${tells === null || pages === 1 ? "" : `: ${tells}`}`;

/** Signs that the type lacks print as a square; this says so and what to do. */
export const missingSigns = (signs: number): string =>
  signs === 1
    ? "One sign is not in this paper’s type: □. Write it in by hand."
    : `${signs} signs are not in this paper’s type: □. Write them in by hand.`;

/** `plan 3 · 25 Nov 2026`. */
export const planWords = (number: number, date: string): string => `plan ${number} · ${date}`;

/** "inches, to 1/16", "whole mm", "mm, to 0.5". */
export function unitWords(ruler: Ruler): Phrase {
  if (ruler.unit === "in") return runs`inches, to ${bare(ruler.graduation, ruler)}`;
  return figureOf(ruler.graduation, ruler).whole === "1" && isWholeIn(ruler.graduation, ticks(80_000))
    ? "whole mm"
    : runs`mm, to ${bare(ruler.graduation, ruler)}`;
}

/** The plan that a paper makes void, and what to do with it. */
export const voidWords = (makesVoid: { readonly number: number; readonly date: string }): string =>
  `plan ${makesVoid.number} of ${shortDate(makesVoid.date)}: tear it up`;
