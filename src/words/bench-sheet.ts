import type { Holding } from "../assembly/index.ts";
import type { Run } from "../drawings/index.ts";
import type { Side, Size } from "../geometry/index.ts";
import { figureOf, isWholeIn, type Length, type Ruler, TICKS_PER_INCH, ticks } from "../lengths/index.ts";
import { shortDate } from "./dates.ts";
import { andList, ordinal, wholeWords } from "./figures.ts";
import { bare, count, flat, NBSP, type Phrase, runs, sizeRuns, strong, withUnit } from "./runs.ts";
import type { Speech } from "./checks.ts";
import { VOCABULARY } from "./vocabulary.ts";

/** What a bench sheet says, phrase by phrase. Cautions: the act first, at most twelve words a sentence. */
export const BENCH_SHEET = {
  paper: "BENCH SHEET",
  backView: "BACK VIEW",
  cut: "cut",
  steps: "steps",
  scaleReads: "scale reads",
  scaleUntested: "not tested",
  pastTheLine: "Past the line, both ends",
  turn: "Turn it like a page",
  front: "front",
  backUp: "back, up",
  sidesEqual: "Here both sides are equal.",
  widerSide: "The wider side goes to your",
  rail: "rail",
  border: "border",
  blade: "blade",
  freeHand: "Free hand behind the blade, never in its path.",
  freeHandShort: "Free hand behind the blade.",
  setCut: "Set the stop, cut its edges, set the next.",
  cornerHolds: "A corner still holds: free it with a loose blade, from the back.",
  tapeOutBack: "Put OUT back, flush; tape it. It stays until all are cut.",
  reachesUnder: "Paper reaches under",
  standsClear: "Paper stands clear",
  seenFromFront: "seen from the FRONT",
  least: "least",
  cornersLookedAt: "Close it. Look at each corner; tick it.",
  floatLookedAt: "Level? Look along each edge; tick it.",
  onTheBench: "On the bench",
  pocketsHidden: "Pockets stay hidden up to",
  tapeBackIn: "tape back in",
  toTheRack: "to the rack",
  keepIt: "keep it",
  printTitle: "Print",
  printWord: "print",
  whereItFails: "Where it fails",
  testCuts: "scrap for test cuts",
  noPrint: "No print is given: this is a mat by itself.",
  doNotCut: "DO NOT CUT",
  waysOut: "Then print this sheet again.",
} as const;

export const CORNER_WORDS = {
  topLeft: "top left",
  topRight: "top right",
  bottomLeft: "bottom left",
  bottomRight: "bottom right",
} as const;

/** A side as the front names it: the hand is added by a tag. */
export const sideWords = (side: Side): string =>
  side === "head" || side === "foot" ? side : `front’s ${side}`;

export const AWAY = { head: "away from you", foot: "next to you" } as const;

/** `1 : 4` */
export const scaleWords = (over: number): string => `1${NBSP}:${NBSP}${over}`;

export const frontAtScale = (over: number): string => `front, ${scaleWords(over)}`;
export const backViewAtScale = (over: number): string => `back view, ${scaleWords(over)}`;

/** How far to run past the line, where the cuts stand alone on their page. */
export const overrunLine = (overrun: Length, { ruler }: Speech): Phrase =>
  runs`past the line, both ends: ${withUnit(overrun, ruler)}`;

export const stopName = (number: number): string => `${ordinal(number)} stop`;

/** "inches, to 1/16", "whole mm", "mm, to 0.5". */
export function unitWords(ruler: Ruler): Phrase {
  if (ruler.unit === "in") return runs`inches, to ${bare(ruler.graduation, ruler)}`;
  return figureOf(ruler.graduation, ruler).whole === "1" && isWholeIn(ruler.graduation, ticks(80_000))
    ? "whole mm"
    : runs`mm, to ${bare(ruler.graduation, ruler)}`;
}

export const handednessWords = (hand: "left" | "right"): string => `${hand}-handed`;

export const voidWords = (makesVoid: { readonly number: number; readonly date: string }): string =>
  `plan ${makesVoid.number} of ${shortDate(makesVoid.date)}: tear it up`;

export const FACTS = {
  unit: "unit",
  bench: "bench",
  bevel: "bevel",
  tested: "scale tested",
  makesVoid: "makes void",
  make: "make",
} as const;

export const boardFactName = (mats: number, speech: Speech): string =>
  `${VOCABULARY[speech.language].mat} ${mats === 1 ? "board" : "boards"}`;

/** "white rag, 1/16" or "2, white rag, 1.5 mm". */
export function boardFact(
  boards: readonly { readonly board: string; readonly thickness: Length }[],
  { ruler }: Speech,
): Phrase {
  const number = boards.length === 1 ? "" : `${boards.length}, `;
  const names = [...new Set(boards.map(({ board }) => board))].join(", ");
  const thick = [...new Set(boards.map(({ thickness }) => thickness))].map((thickness, index) =>
    flat([index === 0 ? "" : " and ", thicknessRuns(thickness, ruler)]),
  );
  return runs`${number}${names}, ${flat(thick)}${NBSP}${ruler.unit}`;
}

/** A board's thickness, finer than the ruler's marks: to 1/64 in or 0.1 mm. */
const thicknessRuns = (thickness: Length, ruler: Ruler): readonly Run[] =>
  bare(thickness, {
    unit: ruler.unit,
    graduation: ruler.unit === "in" ? ticks(TICKS_PER_INCH / 64) : ticks(8000),
  });

export const degreesWords = (bevels: readonly number[]): string =>
  [...new Set(bevels)].map((bevel) => `${Number(bevel.toFixed(1))}°`).join(", ");

/** Title line's second: maker, year; process, edition, sheet; the blanks it is cut from. */
export function workLine(
  work: { readonly maker: string; readonly year: string; readonly process: string; readonly edition: string },
  sheet: Size | null,
  blanks: { readonly numbers: readonly number[]; readonly cutPlan: number } | null,
  { ruler }: Speech,
): Phrase {
  const who = [work.maker, work.year].filter((word) => word !== "").join(", ");
  const what = [work.process, work.edition].filter((word) => word !== "").join(", ");
  const size =
    sheet === null ? "" : runs`${what === "" ? "Sheet" : ", sheet"}${NBSP}${sizeRuns(sheet, ruler)}`;
  const made = what === "" && sheet === null ? "" : runs`${what}${size}.`;
  const from =
    blanks === null || blanks.numbers.length === 0
      ? ""
      : `${blanks.numbers.length === 1 ? "Blank" : "Blanks"}${NBSP}${andList(blanks.numbers.map(String))} of cut plan${NBSP}${blanks.cutPlan}.`;
  const parts: Phrase[] = [who === "" ? "" : `${who}.`, made, from].filter(
    (phrase) => flat(phrase).length > 0,
  );
  return parts.map((phrase, index) => (index === 0 ? phrase : [" ", phrase]));
}

/** What a mat is called among several, from the top down: TOP MAT, MIDDLE MAT, LOWER MAT. */
export function matName(mat: number, mats: number, { language }: Speech): string {
  const { mat: word } = VOCABULARY[language];
  if (mats === 1) return `the ${word}`;
  if (mat === mats - 1) return `top ${word}`;
  if (mat === 0) return mats === 2 ? `lower ${word}` : `lowest ${word}`;
  return mats === 3 ? `middle ${word}` : `${word} ${mat + 1}`;
}

const ORDER = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth"];
export const cutOrder = (fromTop: number): string => `cut ${ORDER[fromTop] ?? ordinal(fromTop + 1)}`;

/** What becomes of a drop-out; null for the lowest where nothing is said on the drawing. */
export function outBecomes(blank: number | null, staysIn: boolean): string {
  if (staysIn) return BENCH_SHEET.tapeBackIn;
  return blank === null ? BENCH_SHEET.toTheRack : `this is blank ${blank}: keep`;
}

export const railTitle = (hand: "left" | "right"): string =>
  `Window to the ${hand === "right" ? "RIGHT" : "LEFT"} of the rail`;

export const railCaption = (bevel: number): string =>
  bevel === 90 ? "end view: a square cut stands upright" : "end view: the tip leans under the rail";

export const scrapCaption = (tested: string | null): string =>
  tested === null ? "true size; try it in scrap" : `true size; scrap of ${shortDate(tested)}`;

/** Everything that must lie at hand before the first mark. */
export function onTheBench(
  boards: {
    readonly mats: number;
    readonly size: Size;
    readonly numbers: readonly number[];
    /** What the print is mounted on; null where there is no print. */
    readonly mount: string | null;
  },
  holding: Holding | null,
  { ruler, language }: Speech,
): Phrase {
  const word = VOCABULARY[language];
  const named =
    boards.numbers.length === 0
      ? `${wholeWords(boards.mats)} ${boards.mats === 1 ? word.mat : word.mats}`
      : `blank${boards.numbers.length === 1 ? "" : "s"} ${andList(boards.numbers.map(String))}`;
  const held: Readonly<Record<Holding, string>> = {
    pockets: "four pockets, ",
    hinges: "tissue hinges, paste, blotters, ",
    strips: "edge strips, ",
  };
  const things = holding === null ? "" : `${held[holding]}linen tape, a weight, `;
  const mount =
    boards.mount === null ? "" : ` and a ${word.mount}${boards.mount === "" ? "" : ` of ${boards.mount}`}`;
  return runs`${named}${mount}, ${sizeRuns(boards.size, ruler)}; ${things}a fresh blade, a hard pencil, scrap.`;
}

/** Squareness before anything else. `apart` is what two diagonals may differ by. */
export const blankStep = (
  boards: number,
  size: Size,
  diagonal: Length,
  apart: Length,
  { ruler }: Speech,
): Phrase =>
  runs`${boards === 1 ? "Blank" : `${capital(wholeWords(boards))} blanks`} ${sizeRuns(size, ruler)}, both diagonals ${withUnit(diagonal, ruler)}. More than ${withUnit(apart, ruler)} apart: mark from the head and one side only.`;

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

export const pocketsTooSmall = (hidden: Length, least: Length, { ruler }: Speech): Phrase =>
  runs`No pockets: hidden only up to ${withUnit(hidden, ruler, "down")}, they need ${withUnit(least, ruler, "up")}. Hinge it at the head.`;

export const hingesStep = (hinges: number, inset: Length, { ruler }: Speech): Phrase =>
  runs`${capital(wholeWords(hinges))} paste hinges at the head, ${withUnit(inset, ruler)} in from the corners. Foot and sides stay free.`;

export const stripsStep = (least: Length, { ruler }: Speech): Phrase =>
  runs`Edge strips along both sides and the foot, narrower than ${withUnit(least, ruler, "down")}. Leave the paper room to move.`;

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
  { ruler }: Speech,
): Phrase =>
  runs`Lay the print face up, turned ${strong(`${angleText(degrees)}${NBSP}${degrees < 0 ? "anticlockwise" : "clockwise"}`)}: its top left corner ${withUnit(first.left, ruler)} from the left, ${withUnit(first.head, ruler)} from the head; its top right ${withUnit(second.left, ruler)} from the left, ${withUnit(second.head, ruler)} from the head.`;

const angleText = (degrees: number): string => `${Number(Math.abs(degrees).toFixed(2))}°`;

/** A float: the riser first, then the sheet on it. */
export const riserStep = (size: Size, left: Length, head: Length, { ruler, language }: Speech): Phrase =>
  runs`Riser ${sizeRuns(size, ruler, "down")}: fix it to the ${VOCABULARY[language].mount}, ${withUnit(left, ruler)} from the left, ${withUnit(head, ruler)} from the head.`;

export const floatStep = (hinges: number, left: Length, head: Length, { ruler }: Speech): Phrase =>
  runs`Hinge the sheet to it, ${wholeWords(hinges)} hinges hidden behind its head: ${withUnit(left, ruler)} from the left, ${withUnit(head, ruler)} from the head.`;

export const floatCaution = "Spacers must stand higher than riser and sheet together.";

/** Board to board at the head; the millimetre between them is the hinge's own room. */
export const tapeBoards = (between: Length, { ruler, language }: Speech): Phrase => {
  const word = VOCABULARY[language];
  return runs`Tape ${word.mat} to ${word.mount} at the head, ${withUnit(between, { ...ruler, graduation: between })} apart.`;
};

export const editionTitle = (sheets: number): string =>
  `${capital(wholeWords(sheets))} sheets share this window: lay each by its own figures`;

export const EDITION_COLUMNS = {
  sheet: "sheet",
  left: "from the left",
  head: "from the head",
  least: "reaches under, least",
} as const;

export const firstSheet = "this one";

export const sectionTitle = (mats: number, scale: number): string =>
  `The ${wholeWords(mats)} together, ${scale}${NBSP}:${NBSP}1`;

export const sectionLayer = (mat: number, mats: number): string =>
  mat === mats - 1 ? "top" : mat === 0 ? (mats === 2 ? "lower" : "lowest") : "middle";

/** The strip as it comes out, where the ruler's marks have moved it; `of` names the mat it belongs to where there are several strips. */
export function stripAsCut(of: string | null, asked: Length, cut: Length, { ruler }: Speech): Phrase {
  const strip = of === null ? "Strip" : `Strip of the ${of}`;
  return asked === cut
    ? runs`${strip}: ${fineRuns(cut, ruler)}, as asked.`
    : runs`${strip}: asked ${fineRuns(asked, ruler)}, comes out at ${fineRuns(cut, ruler)} on this ruler.`;
}

/** Finer than the ruler's marks: to 1/64 in or 0.1 mm, with its unit. */
export const fineRuns = (length: Length, ruler: Ruler): readonly Run[] =>
  flat([thicknessRuns(length, ruler), `${NBSP}${ruler.unit}`]);

/** What the lines of the drawing beside DO NOT CUT are. */
export const failureLegend = "Solid: the window. Long dash and dots: the paper. Heavy: where it fails.";

/** The reason in capitals, for the panel that takes the place of the stops. */
export const STOP_REASONS = {
  "paper-ends": "PAPER ENDS BEFORE THE WINDOW",
  "hold-short": "THE MAT DOES NOT HOLD THE PAPER",
  "border-negative": "THE WINDOW PASSES THE BOARD",
  "window-gone": "NOTHING IS LEFT OF THE WINDOW",
  "reveal-gone": "THE UPPER MAT HIDES THE STRIP",
  "no-size": "NO LISTED SIZE IS LARGE ENOUGH",
  "sheet-past-board": "THE SHEET IS LARGER THAN THE BOARD",
} as const;

/** Where it fails: the front's name, then the hand, which a tag completes for left and right. */
export function shortWords(side: Side, mat: string | null): string {
  const of = mat === null ? "" : `${mat}: `;
  return side === "head" || side === "foot"
    ? `${of}short at the ${side}, ${AWAY[side]}`
    : `${of}short at the ${sideWords(side)}, at your`;
}

/** Which sheets of an edition fail there; the figure beside it is the worst of them. */
export const failingSheets = (sheets: readonly string[]): string =>
  `${sheets.length === 1 ? "Sheet" : "Sheets"} ${andList(sheets)}.`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const copies = (quantity: number): Phrase => [count(quantity), `${NBSP}alike`];
