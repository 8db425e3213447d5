import type { Level } from "../../assembly/index.ts";
import type { LengthFault } from "../../lengths/index.ts";
import type { Wanted } from "../../show/problem.ts";
import { dateWords } from "../dates.ts";
import { wholeWords } from "../figures.ts";
import { sayLengthFault, sayWanted } from "../problems.ts";
import { type Language, VOCABULARY } from "../vocabulary.ts";

/** What the page says outside its sentences: titles, acts, what happened, what stands in the way. */

export const PAGE = {
  tool: "Margent",
  newShow: "A new show",
  toContent: "To the work itself",
  places: "Places",
  works: "Works",
  front: { name: "Front", gloss: "as it will hang" },
  back: { name: "Back", gloss: "turned over like a page, head away from you" },
  section: { name: "Section through the foot", short: "Section", gloss: "face up" },
  views: "The drawing",
  whichView: "Which view",
  goToDrawing: "Go to the drawing",
  facts: "The print",
  brief: "The brief",
  keeping: "How it is kept",
  checks: "What to look at",
  reckoning: "The reckoning",
  noChecks: "Nothing stands against it: it can be cut as it is.",
  printBenchSheet: "Print the bench sheet",
  printPacket: "Print the packet",
  addWork: "Add a work",
  removeWork: "Take it off the table",
  bringList: "Bring in a list",
  onTable: "On the table",
  asList: "As a list",
  howShown: "How the works are shown",
  anotherShow: "Another show",
  saveCopy: "Save a copy",
  layOnTable: "Lay it on the table",
  openExample: "Open the example show",
  openCopy: "Open a saved copy",
  untitled: "untitled",
  unnamed: "who made it, how, when",
  done: "Done",
  keep: "Keep it",
  leaveIt: "Leave it",
  keepMine: "Keep mine",
  takeTheirs: "Take theirs",
  previous: "Previous",
  next: "Next",
} as const;

export const FIRST = {
  title: "Begin with one print.",
  list: "A spreadsheet with a line for each print; any order of columns.",
  example: "Twenty-four invented works, to try everything on.",
  copy: "A show that was saved as a file, here or on another machine.",
  kept: "Kept in this browser",
  noExample: "The example could not be fetched: Margent's server does not answer.",
} as const;

/** Levels as the checks' tabs say them. */
export const LEVEL_WORDS: Readonly<Record<Level, string>> = { stop: "stop", warn: "warn", note: "note" };

export const undoSays = (said: string): string => `Undo “${said}”`;
export const redoSays = (said: string): string => `Redo “${said}”`;
export const workOfShow = (number: number, works: number): string => `Work ${number} of ${works}`;
export const openShow = (name: string): string => `Open “${name}”`;
export const worksKept = (works: number, at: string): string =>
  `${works === 1 ? "one work" : `${wholeWords(works)} works`}, kept ${at}`;

/** "Twenty-four works for 14 December 2026". */
export function worksTitle(works: number, date: string | undefined): string {
  const number = works === 0 ? "no works yet" : works === 1 ? "one work" : `${wholeWords(works)} works`;
  return capital(date === undefined ? number : `${number} for ${dateWords(date)}`);
}

/** What follows from the state of all works. */
export function worksState(stops: number, warns: number, unread: number): string {
  const parts: string[] = [];
  if (unread > 0) parts.push(`${wholeWords(unread)} cannot be read`);
  if (stops > 0) parts.push(`${wholeWords(stops)} must be mended before ${stops === 1 ? "it is" : "they are"} cut`);
  if (warns > 0) parts.push(`${wholeWords(warns)} ${warns === 1 ? "is" : "are"} worth a look`);
  return parts.length === 0 ? "All can be cut as they are." : `${capital(parts.join(", "))}.`;
}

export const TABLE_HINT =
  "All at one scale, in the order of the wall. Take one up with the mouse or with Space to put it elsewhere.";

/** The scale bar's own length. */
export const SCALE_BAR = { in: "12\u00a0in", mm: "300\u00a0mm" } as const;

export const LIST_COLUMNS = {
  place: "No.",
  title: "Work",
  maker: "Made by",
  window: "Window",
  board: "Board",
  checks: "To look at",
} as const;

/** Moving a work with the keys, announced. */
export const takenUp = (title: string): string =>
  `${title} is taken up. The arrows carry it, Space lays it down, Escape puts it back.`;
export const carried = (title: string, place: number, works: number): string =>
  `${title}, place ${place} of ${works}.`;
export const laidDown = (title: string, place: number, works: number): string =>
  `${title} is laid down, place ${place} of ${works}.`;
export const putBackSays = (title: string): string => `${title} is back where it was.`;
export const openWork = (title: string, size: string, level: Level | null): string =>
  `${title}, ${size}${level === null ? "" : `, ${LEVEL_WORDS[level]}`}`;
export const workMoved = (title: string, place: number): string => `${title} to place ${place}`;
export const workAdded = (title: string): string => `added ${title}`;
export const workRemoved = (title: string): string => `took off ${title}`;

/** One sentence after a change: what it was, and the heaviest check. */
export const keptSays = (said: string, heaviest: string | null): string =>
  heaviest === null ? `${capital(said)}.` : `${capital(said)}. ${heaviest}`;
export const undoneSays = (said: string): string => `Undone: ${said}.`;
export const redoneSays = (said: string): string => `Done again: ${said}.`;
export const nothingToUndo = "There is nothing to undo.";

export const paperComing = (paper: string): string => `${paper} is being made.`;
export const paperHere = (name: string): string => `${name} is made and saved with your downloads.`;
export const PAPERS = {
  benchSheet: "The bench sheet",
  packet: "The packet",
  offline: "It could not be made: Margent's server does not answer. The design stays here; try again when it runs.",
  refused: (status: number): string => `It could not be made: the server answered ${status}.`,
} as const;
export const paperRefused = (found: string, wanted: string): string =>
  `It could not be made: ${found === "" ? "" : `“${found}” stands where `}${wanted}${found === "" ? "" : " is wanted"}.`;

export const TROUBLES = {
  word: "Two hands on one word. Another window has changed it meanwhile.",
  theySay: "It says",
  youSay: "you say",
  show: "Two hands on one show. Another window kept it without knowing of your last change.",
  gone: "Another window has taken this work off the table.",
  refused: "Not kept: this browser keeps nothing more. Save a copy before you close the page.",
  unread: (found: string): string =>
    `The show kept in this browser was not opened: it was written by another version (${found}). It is left as it is.`,
  offline: "Working alone. Everything goes on; papers are made when the server is seen again.",
  notAShow: "This file is not a show that Margent has saved.",
  noList: "This list could not be read.",
} as const;

export const fieldProblem = (field: string, found: string, wanted: Wanted): string =>
  `${field}: “${found}” stands where ${sayWanted(wanted)} is wanted.`;
export const listBrought = (works: number, problems: number): string =>
  problems === 0
    ? `${capital(wholeWords(works))} ${works === 1 ? "work" : "works"} brought in.`
    : `${capital(wholeWords(works))} ${works === 1 ? "work" : "works"} brought in; ${wholeWords(problems)} ${problems === 1 ? "cell" : "cells"} could not be read.`;

/** Why a blank's text was not kept. */
export function sayBlankFault(fault: LengthFault, typed: string): string {
  switch (fault.code) {
    case "improper-fraction":
      return `“${typed}” can be read in more than one way. Which is meant?`;
    case "either-comma":
      return `The comma in “${typed}” may part decimals or thousands. Which is meant?`;
    case "empty":
      return "Nothing is written here. Escape puts back what was.";
    default:
      return `“${typed}” is not read: ${sayLengthFault(fault)} is wanted.`;
  }
}
export const sayNumberFault = (typed: string): string => `“${typed}” is not read: a number, such as 1.25, is wanted.`;
export const sayNotAbove = "That cannot be: a length above 0 is wanted.";
export const sayRefused = (wanted: Wanted): string => `That cannot be: ${sayWanted(wanted)} is wanted.`;

/** The ways out that a check offers. `figure` is the value it sets. */
export const WAYS = {
  cover: (figure: string): string => `Cover ${figure}`,
  showLess: (figure: string): string => `Show ${figure} of paper there`,
  onlyImage: "Show the image alone",
  wholeSheet: "Show the whole sheet",
  smaller: (figure: string): string => `Make the window ${figure}`,
  larger: (figure: string): string => `Put it on ${figure}`,
  lower: (figure: string): string => `Raise it ${figure}`,
  middle: "Keep it in the middle",
  reveal: (figure: string): string => `Ask for ${figure}`,
  hinges: "Hold it with hinges",
  strips: "Hold it with edge strips",
  levelSheet: "Hang the sheet level",
  levelImage: "Hang the image level",
} as const;

export const BLOCK = {
  show: "Show",
  work: "Work",
  works: "Works",
  ruler: "Unit, ruler",
  board: "Board",
  onWall: "On the wall",
  kept: "Kept",
  light: "Light",
  notNamed: "not named yet",
  none: "none",
  notSaid: "not said",
} as const;

export const LIGHT_OPTIONS = [
  { key: "system", words: "as the system has it" },
  { key: "light", words: "by day" },
  { key: "dark", words: "by night" },
] as const;

export const rulerSays = (unit: "in" | "mm"): string => `${unit === "in" ? "inch" : "millimeter"}, by`;
export const keptAt = (time: string): string => `${time}, in this browser only`;
export const notKept = "not kept";
export const workCount = (works: number, makers: number): string =>
  `${works}${makers === 0 ? "" : `, by ${makers === 1 ? "one maker" : `${wholeWords(makers)} makers`}`}`;

/** Under a title: who, how, when, which sheet. */
export function subtitle(work: { readonly maker?: string | undefined; readonly process?: string | undefined; readonly year?: string | undefined; readonly edition?: string | undefined }): string {
  const edition = work.edition === undefined || work.edition === "" ? "" : `no. ${work.edition.replace(/\s*\/\s*/, " of ")}`;
  return [work.maker, work.process, work.year, edition].filter((part) => part !== undefined && part !== "").join(", ");
}

/** The day on which something was kept, `25 Nov 2026`. */
export const keptDay = (at: string): string => dateWords(at.slice(0, 10));

/** Layers by the section, from the face down. */
export function layerName(kind: "mat" | "print" | "mount", board: string | null, language: Language): string {
  const { mat } = VOCABULARY[language];
  switch (kind) {
    case "mat":
      return board === null ? `window ${mat}` : `window, ${board}`;
    case "print":
      return "the print";
    case "mount":
      return board === null ? "mount board" : `mount, ${board}`;
  }
}
export const stackSays = "stack, face to back";
export const sectionTimes = (times: number, broken: boolean): string =>
  `face up, ${wholeWords(times)} times the scale of front and back${broken ? ", border broken off" : ""}`;

export const BACK_WORDS = {
  head: "HEAD",
  out: "OUT",
  atLeftHand: { side: "front’s right,", hand: "at your LEFT hand" },
  atRightHand: { side: "front’s left,", hand: "at your RIGHT hand" },
} as const;

/** What the drawings are to a reader of screens. */
export const DRAWN = {
  front: (title: string): string => `Front of ${title}, to scale`,
  back: (borders: { readonly head: string; readonly left: string; readonly right: string; readonly foot: string }, window: string): string =>
    `Back, mirrored. Border at the head ${borders.head}, at the foot ${borders.foot}, at your left hand ${borders.right}, at your right hand ${borders.left}. The window, ${window}, falls out.`,
  section: "Section through the foot: the layers from the face down, listed beside it.",
  first: (sheet: string, image: string): string => `A sheet ${sheet} with an image ${image}, drawn to scale`,
} as const;

/** The drawing's handles, as sliders. */
export const GRIPS = {
  head: "Border at the head",
  foot: "Border at the foot",
  left: "Border at the left",
  right: "Border at the right",
  width: "Board width",
  height: "Board height",
} as const;

export const OUTER_DIALOG = {
  title: "Outer size",
  how: "How it is found",
  size: "A board [outerWidth]~×~[outerHeight].",
  ready: "Sizes that can be had ready made",
  list: "From which list",
  standard: "On which board",
  cut: "on a board cut to them",
  next: (list: string): string => `on the next of the ${list}`,
} as const;

export const boardDialog = (mat: number) =>
  ({
    name: "What it is called",
    sentence: `It is [boardThickness.${mat}] thick and cut at [bevel.${mat}] to its face.`,
    inUse: "Boards in this show",
  }) as const;

export const saidBoard = (board: string): string => `in ${board}`;

export const NAME_DIALOG = {
  title: "The work",
  titleOf: "Title",
  maker: "Made by",
  process: "Process",
  year: "Year",
  edition: "Number in its edition",
  unsaid: "not said",
} as const;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
