import type { Hand } from "../assembly/index.ts";
import type { Side, Size } from "../geometry/index.ts";
import type { Ruler } from "../lengths/index.ts";
import { BENCH_SHEET, sideWords } from "./bench-sheet.ts";
import { andList, ordinal, wholeWords } from "./figures.ts";
import { EVERY_PAPER } from "./papers.ts";
import { NBSP, type Phrase, runs, sentence, sizeRuns } from "./runs.ts";

/** Words that stand on a day's bench order. */
export const BENCH_ORDER_PAPER = {
  paper: "BENCH ORDER",
  title: "The day at the bench",
  unit: "unit",
  bench: "bench",
  tested: "scale tested",
  blanks: "1  Blanks, by size",
  marking: "2  Marking: alike ones in one go",
  cutting: "3  Cutting, by the stop",
  size: "size",
  board: "board",
  numbers: "tick each as it is cut",
  markedNumbers: "tick each as it is marked",
  marked: "marked alike",
  byItself: "each by itself, from its own sheet",
  eachBySheet:
    "The borders stand on the bench sheet of each. Mark the backs before the first cut; a blank out of an OUT, when it has fallen.",
  stop: "stop",
  scaleReads: "scale reads",
  cuts: "lay in, cut, tick",
  freeHand: "Free hand behind the blade, never in its path.",
  layAside: "Cut each at this figure and lay it aside; the next figure comes for all.",
} as const;

/** "14 works, 28 mats. The stop is set 9 times: no order sets it fewer. Work by work it would be 41." */
export function dayLine(works: number, mats: number, set: number, bound: number, oneByOne: number): string {
  const claim =
    bound === set ? "no order sets it fewer times" : `no order sets it fewer than ${wholeWords(bound)} times`;
  const saved = oneByOne > set ? ` Work by work it would be ${timesWord(oneByOne)}.` : "";
  return `${sentence(wholeWords(works))} work${works === 1 ? "" : "s"}, ${wholeWords(mats)} mat${mats === 1 ? "" : "s"}. The stop is set ${timesWord(set)}: ${claim}.${saved}`;
}

const timesWord = (times: number): string =>
  times === 1 ? "once" : times === 2 ? "twice" : `${wholeWords(times)} times`;

/** "3rd of 9" */
export const runName = (run: number, of: number): string => `${ordinal(run)} of ${of}`;
export const runGoesOn = (run: number): string => `${ordinal(run)} stop, goes on`;

/** Blanks that come only when a window has fallen. */
export const comesLater = (all: readonly { readonly blank: number; readonly host: number }[]): string =>
  `Later: ${all.map(({ blank, host }) => `${blank} out of the OUT of${NBSP}${host}`).join(", ")}.`;

/** The works that are marked alike, as many as there is room to name. */
export const alikeWords = (titles: readonly string[]): string =>
  titles.length <= MOST_TITLES
    ? andList(titles)
    : `${titles.slice(0, MOST_TITLES).join(", ")} and ${titles.length - MOST_TITLES} more`;
const MOST_TITLES = 4;

/** Where to cut, as the front names it: both sides in one word. */
export function sidesLine(sides: readonly Side[]): string {
  const both = sides.includes("left") && sides.includes("right");
  if (sides.length === 4) return "all four sides";
  return andList([
    ...(sides.includes("head") ? ["head"] : []),
    ...(sides.includes("foot") ? ["foot"] : []),
    ...(both
      ? ["both sides"]
      : sides.filter((side) => side === "left" || side === "right").map((side) => sideWords(side))),
  ]);
}

/** The hand that must be told: where only one of the two sides is cut. */
export function handToTell(sides: readonly Side[], hands: readonly Hand[]): "left" | "right" | null {
  if (sides.includes("left") && sides.includes("right")) return null;
  const hand = hands.find((one) => one === "left" || one === "right");
  return hand === "left" || hand === "right" ? hand : null;
}

/** An upper mat's window, once it is cut all round. */
export const outBack = `${EVERY_PAPER.out}: ${BENCH_SHEET.tapeBackIn}`;

/** What to do with a blank that has just fallen out. */
export const cutItNow = (blank: number, size: Size, ruler: Ruler): Phrase =>
  runs`Blank${NBSP}${String(blank)} is ${sizeRuns(size, ruler)}: cut it, number it, mark it now.`;
