import type { Size } from "../geometry/index.ts";
import { type Length, printLength, type Ruler } from "../lengths/index.ts";
import { wholeWords } from "./figures.ts";
import { NBSP, type Phrase, runs, sentence, sizeRuns, withUnit } from "./runs.ts";

/** Words of the shopping list. */
export const SHOPPING = {
  paper: "SHOPPING LIST",
  unit: "unit",
  money: "money",
  fromRackFact: "from the rack",
  howMany: "how many",
  what: "what",
  reckoned: "reckoned",
  paid: "paid",
  board: "Board",
  glazing: "Glazing",
  moulding: "Moulding",
  rack: "From the rack, nothing to pay",
  small: "Small parts",
  tape: "Gummed linen tape, wetted",
  blades: "Blades for the cutter",
  newBlade: "new blade: test cuts again",
  pack: "pack",
  roll: "roll",
  inAll: "In all",
  caution:
    "Board, moulding or glazing in another size or thickness: stop, change the practice, print a new plan.",
  csv: [
    "group",
    "how many",
    "of",
    "what",
    "width",
    "height",
    "at least width",
    "at least height",
    "each",
    "reckoned",
  ],
} as const;

export const shoppingTitle = (works: number): string =>
  `${sentence(wholeWords(works))} work${works === 1 ? "" : "s"}: what to buy`;

export const shoppingLine = (priced: boolean, fromRack: boolean): string =>
  `${fromRack ? "What the rack already holds is taken off. " : ""}${priced ? "Prices are yours." : "No prices are known: ask in the shop."}`;

export const moneyFact = (currency: string | null): string =>
  currency === null ? "as in the stock" : `${currency}, before tax`;

export const rackFact = (sheets: number): string =>
  `${sheets}${NBSP}${sheets === 1 ? "sheet or offcut" : "sheets and offcuts"}`;

export const sheetsWord = (count: number): string => (count === 1 ? "sheet" : "sheets");
export const packsWord = (count: number): string => (count === 1 ? SHOPPING.pack : `${SHOPPING.pack}s`);

export const sticksWord = (count: number): string => (count === 1 ? "stick" : "sticks");

/** How sheets are bought where that is by the pack; over: what the packs hold beyond the need. */
export function inPacks(packs: number, of: number, singles: number, over: number): string {
  const bought = `${packs}${NBSP}${packsWord(packs)} of ${of}`;
  const more = singles === 0 ? "" : ` and ${singles}${NBSP}${sheetsWord(singles)}`;
  return `${bought}${more}${over === 0 ? "" : `, ${over} over`}`;
}

export const askForLength = (length: Length, ruler: Ruler): Phrase =>
  runs`${withUnit(length, ruler)} each, straight, one batch`;

/** What offcuts and drop-outs saved, as far as it is known. Sums are money of the stock. */
export function savedLine(
  board: string,
  saved:
    | { readonly kind: "needed" }
    | { readonly kind: "money"; readonly atLeast: number; readonly atMost: number; readonly sheets: number },
  priced: boolean,
): string {
  const name = boardWhat(board);
  if (saved.kind === "needed")
    return `${name}: without the rack and the windows that fall out the sheets would not do.`;
  const { atLeast, atMost, sheets } = saved;
  const fewer = `${wholeWords(sheets)} ${sheetsWord(sheets)} fewer to buy`;
  if (!priced)
    return `${name}: offcuts and windows that fall out saved ${sheets === 0 ? "no sheet" : fewer}.`;
  if (atMost === 0) return `${name}: offcuts and windows that fall out saved nothing.`;
  const sum =
    atLeast === atMost
      ? money(atMost)
      : atLeast > 0
        ? `between ${money(atLeast)} and ${money(atMost)}`
        : `at most ${money(atMost)}; how much is not known, since the time ran out`;
  return `${name}: offcuts and windows that fall out saved ${sum}${sheets === 0 ? "" : ` (${fewer})`}.`;
}

export const boardWhat = (board: string): string => (board === "" ? "Board" : sentence(board));

/** The size to ask for, and what it must measure so that the plan holds. */
export const askFor = (size: Size, needs: Size, ruler: Ruler): Phrase =>
  runs`${sizeRuns(size, ruler)}; measure it in the shop: at least ${sizeRuns(needs, ruler, "up", false)}`;

export const takeOut = (name: string, size: Size, ruler: Ruler): Phrase =>
  runs`${name === "" ? "" : `${name}: `}${sizeRuns(size, ruler)}`;

/** Tape for one hinge a work, along its head. */
export const tapeSize = (length: Length, width: Length, ruler: Ruler): Phrase =>
  runs`${withUnit(width, ruler)} wide; for these works at least ${withUnit(length, ruler, "up")}`;

/** A sum of money to the hundredth, as it stands in a column. */
export const money = (value: number): string => value.toFixed(2);

export const timesEach = (count: number, each: number): string => `${count}${NBSP}×${NBSP}${money(each)}`;

export const plainLength = (length: Length, ruler: Ruler): string => printLength(length, ruler, "up");
