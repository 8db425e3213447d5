import type { Holding, Way, Why } from "../assembly/index.ts";
import type { Run } from "../drawings/index.ts";
import type { Size } from "../geometry/index.ts";
import { larger, type Length, type Ruler, ZERO } from "../lengths/index.ts";
import type { Speech } from "./checks.ts";
import { andList, wholeWords } from "./figures.ts";
import { holdingName, sayWhy, wayName } from "./held.ts";
import { bare, flat, NBSP, type Phrase, runs, sentence, sizeRuns, strong, withUnit } from "./runs.ts";
import { VOCABULARY } from "./vocabulary.ts";

const blanks = (numbers: readonly number[]): string =>
  `blank${numbers.length === 1 ? "" : "s"} ${andList(numbers.map(String))}`;

/** Everything that must lie at hand before the first mark. */
export function onTheBench(
  boards: {
    /** Mats in all, over every copy. */
    readonly mats: number;
    /** How many are made alike. */
    readonly copies: number;
    readonly size: Size;
    readonly numbers: readonly number[];
    /** What the print is mounted on; null where there is no print. */
    readonly mount: string | null;
    readonly mountNumbers: readonly number[];
  },
  holding: Holding | "float" | null,
  { ruler, language }: Speech,
): Phrase {
  const word = VOCABULARY[language];
  const named =
    boards.numbers.length === 0
      ? `${wholeWords(boards.mats)} ${boards.mats === 1 ? word.mat : word.mats}`
      : blanks(boards.numbers);
  const each = boards.copies === 1 ? "" : " each";
  const held: Readonly<Record<Holding | "float", string>> = {
    pockets: `four pockets${each}, `,
    hinges: "tissue hinges, paste, blotters, ",
    strips: "edge strips, ",
    float: "riser, spacers, tissue hinges, paste, blotters, ",
  };
  const things = holding === null ? "" : `${held[holding]}linen tape, a weight, `;
  const counted = boards.copies === 1 ? `a ${word.mount}` : `${wholeWords(boards.copies)} ${word.mounts}`;
  const mounts = boards.mountNumbers.length === 0 ? counted : `${word.mount} ${blanks(boards.mountNumbers)}`;
  const mount =
    boards.mount === null ? "" : ` and ${mounts}${boards.mount === "" ? "" : ` of ${boards.mount}`}`;
  return runs`${sentence(named)}${mount}, ${sizeRuns(boards.size, ruler)}; ${things}a fresh blade, a hard pencil, scrap.`;
}

/** Squareness before anything else. `apart` is what two diagonals may differ by. */
export const blankStep = (
  boards: number,
  size: Size,
  diagonal: Length,
  apart: Length,
  { ruler }: Speech,
): Phrase =>
  runs`${boards === 1 ? "Blank" : `${sentence(wholeWords(boards))} blanks`} ${sizeRuns(size, ruler)}, both diagonals ${withUnit(diagonal, ruler)}. More than ${withUnit(apart, ruler)} apart: mark from the head and one side only.`;

/** Turn, mark, and the proof of the marks, in the order in which they lie on the back. */
export function markStep(
  wider: { readonly border: Length; readonly hand: "left" | "right" } | null,
  sums: Phrase | null,
  again: boolean,
  { ruler }: Speech,
): Phrase {
  const turn = again ? "Mark four lines" : "Turn. Mark four lines";
  const side =
    wider === null
      ? ""
      : runs`; the wider side, ${bare(wider.border, ruler)}, is at your ${strong(wider.hand.toUpperCase())}`;
  const proof = sums === null ? "" : runs` Add up what you marked: ${sums}.`;
  return runs`${turn}${side}.${proof}`;
}

/** One sum that proves the marks: every figure on it is a whole number of the ruler's marks. */
export const proofSum = (parts: readonly Length[], total: Length, ruler: Ruler): readonly Run[] =>
  flat([
    parts.map((length, index) => [index === 0 ? "" : `${NBSP}+${NBSP}`, bare(length, ruler)]),
    `${NBSP}=${NBSP}`,
    bare(total, ruler),
  ]);

export const cutsStep = (from: number, to: number): Phrase =>
  from === to ? `Cut ${from}.` : `Cuts ${from} to ${to}.`;

export const layLowerBlank = (fromTop: number, { language }: Speech): string => {
  const { mat } = VOCABULARY[language];
  return `Lay the next blank face down on the ${fromTop === 1 ? `top ${mat}` : `last ${mat}`}’s back, heads together, edges flush. Tape the edges.`;
};

/** What a drop-out that becomes a blank squares up to; `of` names the mat where there are several. */
export const outSquares = (of: string | null, size: Size, { ruler }: Speech): Phrase =>
  runs`${outOf(of)} squares up to ${sizeRuns(size, ruler, "down")}.`;

/** The drop-outs that are stock from now on, the upper mat's first. */
export function outsToRack(sizes: readonly Size[], all: boolean, { ruler }: Speech): Phrase {
  const [only] = sizes;
  if (sizes.length === 1 && only !== undefined) {
    return runs`${all ? "OUT" : "The other OUT"} squares up to ${sizeRuns(only, ruler, "down")}: to the rack.`;
  }
  const listed = sizes.map((size, index) => [
    index === 0 ? "" : index === sizes.length - 1 ? " and " : ", ",
    sizeRuns(size, ruler, "down"),
  ]);
  return runs`${all ? "The OUTs square" : "The other OUTs square"} up to ${listed}: to the rack.`;
}

export const outIsBlank = (of: string | null, blank: number): string =>
  `${of === null ? "This OUT" : outOf(of)} is blank ${blank}. Do not throw it away.`;
export const outTooSmall = "OUT is scrap for test cuts.";

const outOf = (of: string | null): string => (of === null ? "OUT" : `The ${of}’s OUT`);

export function pocketsStep(leg: Length, hidden: Length, { ruler }: Speech): Phrase {
  return runs`Four pockets, leg ${withUnit(leg, ruler, "down")}. Hidden up to ${withUnit(hidden, ruler, "down")}.`;
}

/** Why the asked way does not serve, and what to do instead. */
export function insteadOf(asked: Holding, why: Why, way: Way, speech: Speech): Phrase {
  const { ruler } = speech;
  const use = way === "pockets" || way === "strips" ? `Use ${wayName(way)}.` : "Hinge it at the head.";
  switch (why.kind) {
    case "pocket":
      return runs`Pockets show past ${withUnit(why.hidden, ruler, "down")}, and need ${withUnit(why.least, ruler, "up")}. ${use}`;
    case "strip":
      return runs`Edge strips would hold ${withUnit(larger(why.hold, ZERO), ruler, "down")}, and need ${withUnit(why.least, ruler, "up")}. ${use}`;
    default:
      return `No ${holdingName(asked)}: ${sayWhy(why, speech)}. ${use}`;
  }
}

export const hingesStep = (hinges: number, inset: Length, { ruler }: Speech): Phrase =>
  runs`${sentence(wholeWords(hinges))} paste hinges at the head, ${withUnit(inset, ruler)} in from the corners. Foot and sides stay free.`;

export const stripsStep = (reach: Length, { ruler }: Speech): Phrase =>
  runs`Edge strips along both sides and the foot, over the sheet by ${withUnit(reach, ruler, "down")} at most. Leave the paper room to move.`;

/** Where the print lies on its mount, from the mount's own edges. */
export const layStep = (left: Length, head: Length, { ruler }: Speech): Phrase =>
  runs`Lay the print face up, ${withUnit(left, ruler)} from the left, ${withUnit(head, ruler)} from the head.`;

export interface CornerPlace {
  readonly left: Length;
  readonly head: Length;
}

/** A turned sheet is laid by its two head corners: two places are surer than an angle. */
export const layTurnedStep = (
  degrees: number,
  first: CornerPlace,
  second: CornerPlace,
  { ruler, language }: Speech,
): Phrase =>
  runs`Lay the print face up, turned ${strong(`${angleText(degrees)}${NBSP}${degrees < 0 ? VOCABULARY[language].anticlockwise : "clockwise"}`)}: its top left corner ${withUnit(first.left, ruler)} from the left, ${withUnit(first.head, ruler)} from the head; its top right ${withUnit(second.left, ruler)} from the left, ${withUnit(second.head, ruler)} from the head.`;

const angleText = (degrees: number): string => `${Number(Math.abs(degrees).toFixed(2))}°`;

/** A float: the riser first, then the sheet on it. */
export const riserStep = (size: Size, left: Length, head: Length, { ruler, language }: Speech): Phrase =>
  runs`Riser ${sizeRuns(size, ruler, "down")}: fix it to the ${VOCABULARY[language].mount}, ${withUnit(left, ruler)} from the left, ${withUnit(head, ruler)} from the head.`;

export const floatStep = (hinges: number, left: Length, head: Length, { ruler }: Speech): Phrase =>
  runs`Hinge the sheet to it, ${wholeWords(hinges)} hinges hidden behind its head: ${withUnit(left, ruler)} from the left, ${withUnit(head, ruler)} from the head.`;

export const floatCaution = "Spacers must stand higher than riser and sheet together.";

/** Board to board; the millimetre between them is the hinge's own room. */
export const tapeBoards = (side: "head" | "left", between: Length, { ruler, language }: Speech): Phrase => {
  const word = VOCABULARY[language];
  return runs`Tape ${word.mat} to ${word.mount} at the ${side === "head" ? "head" : "left side"}, ${withUnit(between, { ...ruler, graduation: between })} apart.`;
};
