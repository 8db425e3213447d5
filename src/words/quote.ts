import type { GoodsGroup, Missing, Money, Operation, Per, Price } from "../plans/index.ts";
import { dateWords } from "./dates.ts";
import { andList, countedTitle } from "./figures.ts";
import { NBSP } from "./plain.ts";
import { type Language, VOCABULARY } from "./vocabulary.ts";

/** Words of the quote. */
export const QUOTE = {
  paper: "QUOTE",
  money: "money",
  inAll: "In all",
  asFarAsKnown: "As far as known",
  goods: "material",
  labour: "bench work",
  having: "having it done",
  without: "material bought new",
  work: "what",
  parts: "parts",
  eachWork: "Work by work",
  bought: "What is bought",
  paid: "paid",
  ownMeasure: "its own measure",
  newOnly: "all bought new",
  measureNote:
    "Its own measure: what the pieces take, waste left out. All bought new: without the rack and what falls out of windows.",
  noPlan: "would not do",
  unknown: "not known",
  smallParts: "Small parts",
  byHand: "Minutes by operation",
  done: "Having it done",
  forWhom: "for",
  until: "holds until",
  signed: "signed",
  csv: [
    "row",
    "work",
    "copies",
    "board",
    "glazing",
    "moulding",
    "parts",
    "minutes",
    "bench work",
    "in all",
    "material by its own measure",
    "material all bought new",
    "having it done",
  ],
  csvTotal: "show",
} as const;

/** A sum of money with its currency's decimals: `140.51`; exact. */
export function sayMoney(sum: Money, digits: number): string {
  const sign = sum < 0 ? "−" : "";
  const text = String(Math.abs(sum)).padStart(digits + 1, "0");
  return digits === 0 ? `${sign}${text}` : `${sign}${text.slice(0, -digits)}.${text.slice(-digits)}`;
}

/** A price with at least its currency's decimals, as it was written. */
export function sayPrice({ units, places }: Price, digits: number): string {
  const all = Math.max(places, digits);
  const text = String(units * 10n ** BigInt(all - places)).padStart(all + 1, "0");
  return all === 0 ? text : `${text.slice(0, -all)}.${text.slice(-all)}`;
}

/** Hundredths of a minute as `5 h 42 min`, `42.5 min`. */
export function minutesWords(hundredths: number): string {
  const hours = Math.floor(hundredths / 6000);
  const rest = (hundredths - hours * 6000) / 100;
  const minutes = rest === 0 && hours > 0 ? "" : `${rest}${NBSP}min`;
  return [hours === 0 ? "" : `${hours}${NBSP}h`, minutes].filter((part) => part !== "").join(NBSP);
}

export const quoteTitle = (works: number): string =>
  `${countedTitle(works, "work")}: what ${works === 1 ? "it costs" : "they cost"}`;

const ofDay = (date: string | null): string =>
  date === null ? "of no day that is told" : `of ${dateWords(date)}`;

/** Whose prices, and of which days; a day that is not told is said to be. */
export const pricesLine = (stock: string | null, practice: string | null): string =>
  stock === practice
    ? `Prices are yours, ${ofDay(stock)}. Before tax.`
    : `Prices are yours: boards, glazing and lengths ${ofDay(stock)}, the rest ${ofDay(practice)}. Before tax.`;

export const currencyWords = (currency: string | null): string => currency ?? "as in the stock";

export const groupWord = (group: GoodsGroup, language: Language): string =>
  group === "moulding" ? VOCABULARY[language].moulding : group;

const OPERATION: Readonly<Record<Operation, string>> = {
  blank: "cutting blanks",
  window: "cutting windows",
  hold: "holding prints",
  glaze: "cutting and cleaning glazing",
  frame: "chopping and joining",
  close: "closing",
  hang: "hanging",
};
export const operationWord = (operation: Operation): string => OPERATION[operation];

export const piecesWord = (group: GoodsGroup, count: number): string =>
  count === 0
    ? "from the rack"
    : `${count}${NBSP}${group === "moulding" ? "stick" : "sheet"}${count === 1 ? "" : "s"}`;

export const alikeWords = (copies: number): string => (copies === 1 ? "" : `, ${copies}${NBSP}alike`);

/** "46 × 0.45", "46, 1 box of 100 at 6.20". */
export const partsWords = (count: number, pack: number, price: string): string =>
  pack === 1
    ? `${count}${NBSP}×${NBSP}${price}`
    : `${count}, ${Math.ceil(count / pack)}${NBSP}${count <= pack ? "box" : "boxes"} of ${pack} at ${price}`;

/** "57 × 6 min = 5 h 42 min". */
export const timesMinutes = (count: number, each: number, all: number): string =>
  `${count}${NBSP}×${NBSP}${minutesWords(each)} = ${minutesWords(all)}`;

const PER: Readonly<Record<Per, readonly [one: string, many: string]>> = {
  work: ["work", "works"],
  mat: ["window", "windows"],
  pane: ["pane", "panes"],
  frame: ["frame", "frames"],
  show: ["show", "shows"],
};
/** "23 works × 45.00". */
export const timesPer = (count: number, per: Per, price: string): string =>
  per === "show"
    ? "the whole show"
    : `${count}${NBSP}${PER[per][count === 1 ? 0 : 1]}${NBSP}×${NBSP}${price}`;

/** What is not known, so that nothing stands in its place. */
export function sayMissing(missing: Missing): string {
  switch (missing.code) {
    case "price":
      return `No price is known for ${missing.name}. Write its cost into the stock.`;
    case "hour":
      return "No price of an hour is known: minutes cost nothing here.";
    case "minutes":
      return `No minutes are told for ${andList(missing.operations.map(operationWord))}.`;
    case "fittings":
      return "No small parts are told: rings, screws, tape cost nothing here.";
  }
}
