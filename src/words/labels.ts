import type { Design, HoldPlan, LabelCheck, LabelHeight, LabelLimits } from "../assembly/index.ts";
import type { Size } from "../geometry/index.ts";
import type { Ruler } from "../lengths/index.ts";
import type { Speech } from "./checks.ts";
import { wholeWords, countedTitle } from "./figures.ts";
import { wayName } from "./held.ts";
import { bare, type Phrase, runs, sentence, sizeRuns, withUnit } from "./runs.ts";
import { VOCABULARY } from "./vocabulary.ts";
import { sayMass } from "./weights.ts";

export const LABELS = {
  back: "BACK LABELS",
  wall: "WALL LABELS",
  board: "BOARD LABELS",
  onTheBack:
    "Cut from mark to mark. On the backing board or dust cover, never on the print or its mount. Permanent paper.",
  boards: "Cut from mark to mark. Lay each on its blank, number up; pencil the same number on the back.",
  touches: "What touches it",
  held: "How it is held",
  release: "To release it",
  before: "Glazing",
  weight: "Weight",
  wholeWeight: "all of it, as it hangs",
} as const;

/** "Two back labels". */
export const backLabelsTitle = (labels: number): string => countedTitle(labels, "back label");
export const wallLabelsTitle = (labels: number): string => countedTitle(labels, "wall label");

/** How high a wall label hangs; the height is an accessibility page's that follows the Smithsonian's guidance. */
export const wallLine = ({ from, to, best }: LabelHeight, ruler: Ruler): Phrase =>
  runs`Cut from mark to mark. Middle ${bare(from, ruler)} to ${withUnit(to, ruler)} above the floor, ${withUnit(best, ruler)} best (second-hand).`;

/** What a label's text breaks, as a caution with its figure and the published limit. */
export function labelCaution(
  title: string,
  check: LabelCheck,
  { label, sentence: one }: LabelLimits,
): string {
  switch (check.code) {
    case "label-long":
      return `${title}: ${check.words} words. At most ${label.most}, better ${label.better}.`;
    case "sentence-long":
      return `${title}: a sentence of ${check.words} words. At most ${one.most}, better ${one.better}.`;
  }
}

/** The same for a list of checks: what it is and the way out. */
export function sayLabelCheck(check: LabelCheck, { label, sentence: one, source }: LabelLimits): string {
  switch (check.code) {
    case "label-long":
      return `The wall label has ${check.words} words; at most ${label.most}, better ${label.better} (${source}). Say less.`;
    case "sentence-long":
      return `A sentence of the wall label has ${check.words} words; at most ${one.most}, better ${one.better} (${source}). Part it.`;
  }
}

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

/** What holds the print, as far as it touches it. */
function holdsWith({ way }: HoldPlan): string {
  switch (way) {
    case null:
      return "nothing holds it";
    case "pockets":
      return "corner pockets of neutral paper";
    case "strips":
      return "edge strips of neutral paper";
    case "T":
    case "V":
    case "pass-through":
      return "Japanese tissue, starch paste";
  }
}

/** Every material that lies against the print; `plan` null: a mat without a print. */
export function touchesWords(design: Design, plan: HoldPlan | null, { language }: Speech): string {
  const word = VOCABULARY[language];
  const [lowest] = design.mats;
  const board = lowest?.board ?? "";
  const mount = design.mount === "" ? word.mount : `${word.mount} of ${design.mount}`;
  const boards =
    board === design.mount && board !== ""
      ? `${word.mat} and ${word.mount} of ${board}`
      : `${word.mat}${board === "" ? "" : ` of ${board}`}, ${mount}`;
  if (plan === null) return `${boards}.`;
  if (plan.bed.kind === "raised") return `the riser; ${holdsWith(plan)}.`;
  const sink =
    plan.bed.kind === "sink" ? `, sink of ${plan.bed.board === "" ? "the same" : plan.bed.board}` : "";
  return `${boards}${sink}; ${holdsWith(plan)}.`;
}

/** How it is held, with the figures that tell what to look for behind the mat. */
export function heldWords({ way, pockets, hinges, bed }: HoldPlan, { ruler, language }: Speech): Phrase {
  const word = VOCABULARY[language];
  const to = bed.kind === "raised" ? "riser" : word.mount;
  switch (way) {
    case null:
      return "not held: nothing that is allowed holds it.";
    case "pockets":
      return pockets === null
        ? "four corner pockets. Nothing is stuck to the print."
        : runs`four corner pockets, leg ${withUnit(pockets.leg, ruler, "down")}. Nothing is stuck to the print.`;
    case "strips":
      return "edge strips at both sides and the foot. Nothing is stuck to the print.";
    case "T":
    case "V":
    case "pass-through":
      return runs`${wholeWords(hinges.at.length)} ${wayName(way)} at the head, to the ${to}. Sides and foot are free.`;
  }
}

export function releaseWords({ way, bed }: HoldPlan, { language }: Speech): string {
  const { mat, mount } = VOCABULARY[language];
  const open = bed.kind === "raised" ? "Lift off the spacers." : `Open the ${mat}.`;
  switch (way) {
    case null:
      return "Nothing holds it. Lift it on a sheet of card.";
    case "pockets":
      return `${open} Bend a pocket back, slide that corner out, then the next. Do not pull.`;
    case "strips":
      return `${open} Bend the strips back, slide the print out at the head. Do not pull.`;
    case "T":
    case "V":
      return `${open} Lift the foot, never fold. Slit the hinges between print and ${bed.kind === "raised" ? "riser" : mount}; leave the rest to a conservator.`;
    case "pass-through":
      return `${open} Slit each tab where it leaves the print, behind its head; leave the rest to a conservator.`;
  }
}

/** What stands before the print. */
export const beforeIt = (glazing: string, kind: "glass" | "acrylic"): string =>
  kind === "acrylic"
    ? `${glazing}. Rubbed dry it draws dust.`
    : `${glazing}. It breaks: tape it before it travels.`;

/** "1.6 kg (4 lb), all of it, as it hangs". */
export const weightWords = (kilograms: number): string => `${sayMass(kilograms)}, ${LABELS.wholeWeight}.`;

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
