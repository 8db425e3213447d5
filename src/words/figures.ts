import type { Figure } from "../lengths/index.ts";
import { sentence } from "./plain.ts";

const SMALL = [
  "nought",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
  "thirteen",
  "fourteen",
  "fifteen",
  "sixteen",
  "seventeen",
  "eighteen",
  "nineteen",
];
const TENS = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];

const PARTS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  "2": ["half", "halves"],
  "4": ["quarter", "quarters"],
  "8": ["eighth", "eighths"],
  "16": ["sixteenth", "sixteenths"],
  "32": ["thirty-second", "thirty-seconds"],
  "64": ["sixty-fourth", "sixty-fourths"],
  "128": ["hundred and twenty-eighth", "hundred and twenty-eighths"],
};

/**
 * A whole number in words, to 99,999; in digits past it. No "and" after hundreds, since "and" parts a
 * whole from its fraction: "one hundred two and one half".
 */
export function wholeWords(number: number): string {
  if (number < 20) return SMALL[number] ?? String(number);
  if (number < 100) {
    const ten = TENS[Math.floor(number / 10)] ?? "";
    return number % 10 === 0 ? ten : `${ten}-${SMALL[number % 10]}`;
  }
  if (number < 1000) return joined(number, 100, "hundred");
  if (number < 100_000) return joined(number, 1000, "thousand");
  return String(number);
}

function joined(number: number, by: number, name: string): string {
  const head = `${wholeWords(Math.floor(number / by))} ${name}`;
  return number % by === 0 ? head : `${head} ${wholeWords(number % by)}`;
}

/**
 * A figure as it is said: "one and three quarters", "eleven sixteenths", "fifty-nine and a half".
 * Out of the figure's own parts, so that the words cannot misread the digits beside them.
 */
export function figureWords(figure: Figure): string {
  const sign = `${figure.approximate ? "about " : ""}${figure.negative ? "minus " : ""}`;
  if (figure.decimals === "5" && figure.unit === "mm") {
    return `${sign}${figure.whole === "0" ? "a half" : `${wholeWords(Number(figure.whole))} and a half`}`;
  }
  if (figure.decimals !== "") {
    const digits = [...figure.decimals].map((digit) => SMALL[Number(digit)]).join(" ");
    return `${sign}${wholeWords(Number(figure.whole))} point ${digits}`;
  }
  if (figure.numerator === "") return `${sign}${wholeWords(Number(figure.whole))}`;
  const [one, many] = PARTS[figure.denominator] ?? ["part", "parts"];
  const over = Number(figure.numerator);
  const fraction = `${wholeWords(over)} ${over === 1 ? one : many}`;
  return `${sign}${figure.whole === "" ? fraction : `${wholeWords(Number(figure.whole))} and ${fraction}`}`;
}

/** `1st`, `2nd`, `11th`, `22nd`. */
export function ordinal(number: number): string {
  const teen = Math.floor((number % 100) / 10) === 1;
  const end = teen ? "th" : (["th", "st", "nd", "rd"][number % 10] ?? "th");
  return `${number}${end}`;
}

/** "an" before a figure that is said with a vowel first: eight, eleven, eighteen, eighty …; otherwise "a". */
export function articleOf(figure: Figure): "a" | "an" {
  const said = figureWords(figure);
  return /^[aeiou]/.test(said) && !said.startsWith("one") ? "an" : "a";
}

/** "one and two", "one, two and three". */
export const andList = (all: readonly string[]): string =>
  all.length < 2 ? all.join("") : `${all.slice(0, -1).join(", ")} and ${all.at(-1)}`;

/** A count of things to begin a title: "Twenty-four works". */
export const countedTitle = (number: number, one: string): string =>
  `${sentence(wholeWords(number))} ${one}${number === 1 ? "" : "s"}`;

/** A place in a row as a letter: A to Z, then AA. */
export function letterOf(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterOf(Math.floor(index / 26) - 1) + last;
}
