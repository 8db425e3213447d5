import type { Design, Holding } from "../assembly/index.ts";
import type { Size } from "../geometry/index.ts";
import type { Speech } from "./checks.ts";
import { wholeWords } from "./figures.ts";
import { type Phrase, runs, sentence, sizeRuns } from "./runs.ts";
import { VOCABULARY } from "./vocabulary.ts";

export const LABELS = {
  paper: "LABELS",
  cut: "Cut from mark to mark. Back label: on the backing board or dust cover, never on the print or its mount.",
  boards: "Cut from mark to mark. Lay each on its blank, number up; pencil the same number on the back.",
  touches: "What touches it",
  held: "How it is held",
  release: "To release it",
} as const;

/** "Two works: back labels, wall labels". */
export const labelsTitle = (works: number): string =>
  `${sentence(wholeWords(works))} ${works === 1 ? "work" : "works"}: back ${works === 1 ? "label, wall label" : "labels, wall labels"}`;

export const boardLabelsTitle = (boards: number): string =>
  `${sentence(wholeWords(boards))} ${boards === 1 ? "blank" : "blanks"}: board labels`;

/** Process and edition as one line, begun as a sentence; either may be unknown. */
export const processLine = (process: string, edition: string): string =>
  sentence([process, edition].filter((word) => word !== "").join(", "));

/** Maker and year as one line; either may be unknown. */
export const makerLine = (maker: string, year: string): string =>
  [maker, year].filter((word) => word !== "").join(", ");

/** "Sheet 9 × 11 7/8 in; package 11 × 14 in". */
export const sizesLine = (sheet: Size | null, outer: Size, { ruler }: Speech): Phrase =>
  sheet === null
    ? runs`Package ${sizeRuns(outer, ruler)}`
    : runs`Sheet ${sizeRuns(sheet, ruler)}; package ${sizeRuns(outer, ruler)}`;

const TOUCHING: Readonly<Record<Holding, string>> = {
  pockets: "corner pockets",
  hinges: "paper hinges and paste",
  strips: "edge strips",
};

/** Every material that lies against the print. */
export function touchesWords(design: Design, { language }: Speech): string {
  const word = VOCABULARY[language];
  const [lowest] = design.mats;
  const held = TOUCHING[heldBy(design)];
  if (design.window.show === "sheet") return `the riser, ${held}.`;
  const board = lowest?.board ?? "";
  const mount = design.mount === "" ? word.mount : `${word.mount} of ${design.mount}`;
  const boards =
    board === design.mount && board !== ""
      ? `${word.mat} and ${word.mount} of ${board}`
      : `${word.mat}${board === "" ? "" : ` of ${board}`}, ${mount}`;
  return `${boards}; ${held}.`;
}

/** A float is hinged whatever was asked: anything else would show. */
const heldBy = ({ holding, window }: Design): Holding => (window.show === "sheet" ? "hinges" : holding);

export function heldWords(design: Design, { language }: Speech): string {
  const word = VOCABULARY[language];
  if (design.window.show === "sheet") return "hinges behind its head, to the riser. Sides and foot are free.";
  const words: Readonly<Record<Holding, string>> = {
    pockets: "four corner pockets. Nothing is stuck to the print.",
    hinges: `hinges at the head, to the ${word.mount}. Sides and foot are free.`,
    strips: "edge strips at the sides and foot. Nothing is stuck to the print.",
  };
  return words[design.holding];
}

export function releaseWords(design: Design, { language }: Speech): string {
  const { mat, mount } = VOCABULARY[language];
  const words: Readonly<Record<Holding, string>> = {
    pockets: `Open the ${mat}. Bend a pocket back, slide that corner out, then the next. Do not pull.`,
    hinges: `Open the ${mat}. Lift the foot, never fold. Slit the hinges between print and ${design.window.show === "sheet" ? "riser" : mount}; leave the rest to a conservator.`,
    strips: `Open the ${mat}. Bend the strips back, slide the print out sideways. Do not pull.`,
  };
  return words[heldBy(design)];
}

/** "closed 25 Nov 2026, plan 3". */
export const closedWords = (date: string, plan: number): string => `closed ${date}, plan ${plan}`;

/** What a blank is for: "mat", "lower mat", "mount", "backing". */
export const blankFor = (
  mat: number | "mount" | "backing" | "glazing",
  mats: number,
  { language }: Speech,
): string => {
  const word = VOCABULARY[language];
  if (mat === "mount") return word.mount;
  if (mat === "backing") return word.backing;
  if (mat === "glazing") return "glazing";
  if (mats === 1) return word.mat;
  return mat === mats - 1 ? `top ${word.mat}` : mat === 0 ? `lowest ${word.mat}` : `middle ${word.mat}`;
};
