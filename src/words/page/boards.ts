import { wholeWords } from "../figures.ts";
import type { Language } from "../vocabulary.ts";
import type { BlankWords } from "./blanks.ts";
import { capital, inSentence } from "./capital.ts";
import type { Options } from "./options.ts";

/** What is said where boards are cut up. */

export const BOARDS = {
  which: "Which board",
  none: "No boards to cut yet",
  noneLine:
    "Each work that can be made gives its boards here, and they are laid out on the sheets there are.",
  allCut: "All boards are cut",
  isCut: "It is cut",
  unread: "The rack or the practice cannot be read",
  claim: "The plan",
  stop: "Stop, keep this",
  further: "Look further",
  first: "The first plan is being made.",
  failed: "The plan could not be made: its code did not arrive, or met a fault. The works stay as they are.",
  cuts: "Cuts, in order",
  noCut: "No cut: the board is the blank.",
  down: "down",
  across: "across",
  same: "same",
  gives: "Gives",
  keep: "To keep",
  rack: "The rack",
  rackLine: "What lies there and what can be bought; all at one scale.",
  add: "Put something in the rack",
  newSheet: "sheet",
  takeAway: "Take it out of the rack",
  checks: "What to look at",
  barWords: "The thick part is the plan, the dashed mark the least that any plan must cost.",
  anyBoard: "any board",
} as const;

/** A sum in the stock's currency; where it names none that is known, or none, the bare figure. */
export function moneyWords(value: number, currency: string | null, language: Language): string {
  if (currency === null || !/^[A-Z]{3}$/.test(currency)) return value.toFixed(2);
  return new Intl.NumberFormat(language, { style: "currency", currency }).format(value);
}

/** "Eight sheets of 4-ply white rag" */
export const boardsHead = (sheets: number | null, board: string): string =>
  sheets === null
    ? capital(board)
    : capital(`${wholeWords(sheets)} ${sheets === 1 ? "sheet" : "sheets"} of ${board}`);

/** What is cut from them. */
export function boardsLine(pieces: number, fromOuts: number, missing: number): string {
  const out =
    fromOuts === 0
      ? ""
      : `, ${wholeWords(fromOuts)} of them out of ${fromOuts === 1 ? "a window that falls" : "windows that fall"} out`;
  const left = missing === 0 ? "" : ` ${capital(wholeWords(missing))} could not be laid out.`;
  return `${capital(wholeWords(pieces))} ${pieces === 1 ? "blank is" : "blanks are"} cut from them${out}.${left}`;
}

const strong = (text: string) => ({ text, strong: true });
const plain = (text: string) => ({ text, strong: false });

/** The claim: what it costs, what any plan must cost, and how near they are. */
export function claimWords(
  cost: string,
  bound: string,
  proven: boolean,
  share: number,
): readonly { readonly text: string; readonly strong: boolean }[] {
  const head = [strong(cost), plain(" for the plan. No plan can cost less than "), strong(bound)];
  return proven
    ? [...head, plain(": this one is "), strong("proven"), plain(" the best.")]
    : [
        ...head,
        plain(": this one is "),
        strong("not proven"),
        plain(`, and at most ${(100 * share).toFixed(share < 0.1 ? 1 : 0)}\u00a0% dearer than the best.`),
      ];
}

/** In place of money where no prices are known. */
export const unpriced = (value: number): string =>
  `${Number(value.toFixed(2))} ${value === 1 ? "sheet" : "sheets"}’ worth`;

export const tookSeconds = (seconds: number): string =>
  seconds < 0.05 ? "At once." : `After ${seconds.toFixed(1)}\u00a0s.`;

/** While a better plan is looked for. */
export const lookingWords = (best: string | null, bound: string | null): string =>
  best === null
    ? "A better plan is being looked for."
    : `${best} is found, ${bound === null ? "and" : `no plan costs less than ${bound};`} the search goes on.`;

export const barLabel = (cost: string, bound: string): string => `Plan ${cost}, bound ${bound}`;

export const sheetHead = (number: number): string => `Sheet ${number}`;
export const outHead = (host: number, title: string): string =>
  `Out of ${host}${title === "" ? "" : `, ${title}`}`;
export const sheetGloss = (name: string, blanks: number, used: number, over: number): string =>
  `${name === "" ? "" : `${name}, `}${wholeWords(blanks)} ${blanks === 1 ? "blank" : "blanks"}, ${Math.round(100 * used)}\u00a0% used, 1\u00a0:\u00a0${over}`;
export const sheetSeen = (head: string, blanks: number, cuts: number): string =>
  `${head} as it is cut: ${wholeWords(blanks)} ${blanks === 1 ? "blank" : "blanks"}, ${wholeWords(cuts)} ${cuts === 1 ? "cut" : "cuts"}, listed beside it`;
export const longWords = "long";

/** One entry of the rack. `held`: there are only so many. */
export const rackSentence = (index: number, held: boolean): string =>
  held
    ? `[rack.${index}.name] is a sheet [rack.${index}.width]~×~[rack.${index}.height] of [rack.${index}.board]; it is [rack.${index}.copies], [rack.${index}.number] of it, at~[rack.${index}.cost].`
    : `[rack.${index}.name] is a sheet [rack.${index}.width]~×~[rack.${index}.height] of [rack.${index}.board]; it is [rack.${index}.copies] at~[rack.${index}.cost].`;

export const COPIES_OPTIONS: Options<"bought" | "held"> = [
  { key: "bought", words: "bought as wanted" },
  { key: "held", words: "there already" },
];

const LABELS: Readonly<Record<string, string>> = {
  name: "Name in the rack",
  width: "Width of the sheet",
  height: "Height of the sheet",
  board: "Board it is of",
  copies: "Whether it is bought",
  number: "How many there are",
  cost: "What one costs",
};

export function rackBlankWords(blank: string, name: string): BlankWords {
  const [, , part = ""] = blank.split(".");
  const label = `${LABELS[part] ?? part}${name === "" ? "" : `, ${name}`}`;
  return { label, said: inSentence(label) };
}

export const packWords = (of: number, cost: string): string => `Also in packs of ${of} at ${cost}.`;

/** What the act under a sheet's cuts does. */
export const cutActLabel = (head: string): string =>
  `${head} is cut: its blanks are not planned again, and what is left goes to the rack`;

export const BOARDS_SAID = {
  cut: (head: string, board: string): string => `cut ${inSentence(head)} of ${board}`,
  added: (name: string): string => `put ${name} in the rack`,
  removed: (name: string): string => `took ${name} out of the rack`,
} as const;
