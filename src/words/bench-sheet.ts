import type { Run } from "../drawings/index.ts";
import type { Side, Size } from "../geometry/index.ts";
import { type Length, type Ruler, TICKS_PER_INCH, ticks } from "../lengths/index.ts";
import { shortDate } from "./dates.ts";
import { andList, ordinal, wholeWords } from "./figures.ts";
import { bare, count, flat, NBSP, type Phrase, readOff, runs, sentence, sizeRuns } from "./runs.ts";
import type { Speech } from "./checks.ts";
import { makerLine, processLine } from "./labels.ts";
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
  notHeld: "Nothing that is allowed holds it: see its mounting sheet.",
  noPrint: "No print is given: this is a mat by itself.",
  doNotCut: "DO NOT CUT",
  frameReason: "THE FRAME DOES NOT TAKE IT",
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
  runs`past the line, both ends: ${readOff(overrun, ruler)}${NBSP}${ruler.unit}`;

export const stopName = (number: number): string => `${ordinal(number)} stop`;

export const handednessWords = (hand: "left" | "right"): string => `${hand}-handed`;

export const FACTS = {
  unit: "unit",
  bench: "bench",
  bevel: "bevel",
  tested: "scale tested",
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
  const who = makerLine(work.maker, work.year);
  const what = processLine(work.process, work.edition);
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

export const editionTitle = (sheets: number): string =>
  `${sentence(wholeWords(sheets))} sheets share this window: lay each by its own figures`;

export const EDITION_COLUMNS = {
  sheet: "sheet",
  left: "from the left",
  head: "from the head",
  least: "least under",
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

/** What can stop a work, and may therefore take the place of its stops. */
export type StopCode =
  | "paper-ends"
  | "hold-short"
  | "border-negative"
  | "window-gone"
  | "reveal-gone"
  | "no-size"
  | "sheet-past-board";

/** The reason in capitals, for the panel that takes the place of the stops. */
export function stopReason(code: StopCode, { language }: Speech): string {
  const mat = VOCABULARY[language].mat.toUpperCase();
  const reasons: Readonly<Record<StopCode, string>> = {
    "paper-ends": "PAPER ENDS BEFORE THE WINDOW",
    "hold-short": `THE ${mat} DOES NOT HOLD THE PAPER`,
    "border-negative": "THE WINDOW PASSES THE BOARD",
    "window-gone": "NOTHING IS LEFT OF THE WINDOW",
    "reveal-gone": `THE UPPER ${mat} HIDES THE STRIP`,
    "no-size": "NO LISTED SIZE IS LARGE ENOUGH",
    "sheet-past-board": "THE SHEET IS LARGER THAN THE BOARD",
  };
  return reasons[code];
}

/** Where it fails: the front's name, then the hand, which a tag completes for left and right. */
export function failsAt(code: StopCode, side: Side, mat: string | null): string {
  const what = code === "border-negative" || code === "sheet-past-board" ? "too large at" : "short at";
  const of = mat === null ? "" : `${mat}: `;
  return side === "head" || side === "foot"
    ? `${of}${what} the ${side}, ${AWAY[side]}`
    : `${of}${what} the ${sideWords(side)}, at your`;
}

/** Which sheets of an edition fail there; the figure beside it is the worst of them. */
export const failingSheets = (sheets: readonly string[]): string =>
  `${sheets.length === 1 ? "Sheet" : "Sheets"} ${andList(sheets)}.`;

export const copies = (quantity: number): Phrase => [count(quantity), `${NBSP}alike`];
