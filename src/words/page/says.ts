import { capital } from "./capital.ts";
import type { Level } from "../../assembly/index.ts";
import type { LengthFault } from "../../lengths/index.ts";
import type { Wanted } from "../../show/problem.ts";
import { wholeWords } from "../figures.ts";
import { sayLengthFault, sayWanted } from "../problems.ts";

/** What the page says outside its sentences: titles, acts, what happened, what stands in the way. */

export const PAGE = {
  tool: "Margent",
  newShow: "A new show",
  toContent: "To the work itself",
  places: "Places",
  front: { name: "Front", gloss: "as it will hang" },
  back: { name: "Back", gloss: "turned over like a page, head away from you" },
  section: { name: "Section through the foot", short: "Section", gloss: "face up" },
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
  removeWork: "Take it off the table",
  bringList: "Bring in a list",
  untitled: "untitled",
  notSaid: "not said",
  unnamed: "who made it, how, when",
  notHere:
    "That cannot be done now: Margent's server does not answer. Nothing is lost; try again when it runs.",
  done: "Done",
  takeIn: "Take it into the studio",
  previous: "Previous",
  next: "Next",
} as const;

/** The places by their names. */
export const PLACE_WORDS = {
  first: "A new show",
  works: "Works",
  boards: "Boards",
  frames: "Frames",
  wall: "Wall",
  papers: "Papers",
  practice: "Practice",
} as const;

/** Levels as the checks' tabs say them. */
export const LEVEL_WORDS: Readonly<Record<Level, string>> = { stop: "stop", warn: "warn", note: "note" };

export const undoSays = (said: string): string => `Undo “${said}”`;
export const redoSays = (said: string): string => `Redo “${said}”`;
export const workOfShow = (number: number, works: number): string => `Work ${number} of ${works}`;
/** One sentence after a change: what it was, and the heaviest check. */
export const keptSays = (said: string, heaviest: string | null): string =>
  heaviest === null ? `${capital(said)}.` : `${capital(said)}. ${heaviest}`;
export const undoneSays = (said: string): string => `Undone: ${said}.`;
export const redoneSays = (said: string): string => `Done again: ${said}.`;
export const nothingToUndo = "There is nothing to undo.";

export const fieldProblem = (field: string, found: string, wanted: Wanted): string =>
  `${field}: “${found}” stands where ${sayWanted(wanted)} is wanted.`;
/** What was typed, as far as it is told by its beginning. */
const MOST_QUOTED = 40;
const quoted = (typed: string): string => {
  const signs = [...typed];
  return signs.length > MOST_QUOTED ? `“${signs.slice(0, MOST_QUOTED).join("")}…”` : `“${typed}”`;
};
/** Why a blank's text was not kept. */
export function sayBlankFault(fault: LengthFault, typed: string): string {
  switch (fault.code) {
    case "improper-fraction":
      return `${quoted(typed)} can be read in more than one way. Which is meant?`;
    case "either-comma":
      return `The comma in ${quoted(typed)} may part decimals or thousands. Which is meant?`;
    case "empty":
      return "Nothing is written here. Escape puts back what was.";
    default:
      return `${quoted(typed)} is not read. Wanted: ${sayLengthFault(fault)}.`;
  }
}
export const sayNumberFault = (typed: string): string =>
  `${quoted(typed)} is not read: a number, such as 1.25, is wanted.`;
export const sayThatCannotBe = (wanted: string): string => `That cannot be: ${wanted} is wanted.`;
export const sayRefused = (wanted: Wanted): string => sayThatCannotBe(sayWanted(wanted));

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
export const keptAt = (time: string, where: "studio" | "sending" | "browser"): string =>
  `${time}, ${where === "studio" ? "in the studio" : where === "sending" ? "here, on its way to the studio" : "in this browser only"}`;
export const notKept = "not kept";
export const workCount = (works: number, makers: number): string =>
  `${works}${makers === 0 ? "" : `, by ${makers === 1 ? "one maker" : `${wholeWords(makers)} makers`}`}`;

/** Under a title: who, how, when, which sheet. */
export function subtitle(work: {
  readonly maker?: string | undefined;
  readonly process?: string | undefined;
  readonly year?: string | undefined;
  readonly edition?: string | undefined;
}): string {
  const edition =
    work.edition === undefined || work.edition === ""
      ? ""
      : `no. ${work.edition.replace(/\s*\/\s*/, " of ")}`;
  return [work.maker, work.process, work.year, edition]
    .filter((part) => part !== undefined && part !== "")
    .join(", ");
}

export const BACK_WORDS = {
  head: "HEAD",
  out: "OUT",
  atLeftHand: { side: "front’s right,", hand: "at your LEFT hand" },
  atRightHand: { side: "front’s left,", hand: "at your RIGHT hand" },
} as const;

/** What the drawings are to a reader of screens. */
export const DRAWN = {
  front: (title: string): string => `Front of ${title}, to scale`,
  back: (
    borders: { readonly head: string; readonly left: string; readonly right: string; readonly foot: string },
    window: string,
  ): string =>
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
