import type { LengthFault } from "../lengths/index.ts";
import type { Wanted } from "../show/problem.ts";

const orList = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;

/** Why a text is not a length, as what is wanted instead. */
export function sayLengthFault(fault: LengthFault): string {
  switch (fault.code) {
    case "not-a-length":
      return "a length, such as 7 1/4 in or 184 mm";
    case "empty":
      return "a length, such as 7 1/4 in; nothing is written here";
    case "negative":
      return "a length of 0 or more";
    case "improper-fraction":
      return `a fraction less than 1: ${orList(fault.meant)}?`;
    case "either-comma":
      return `a length with its unit, or without the comma: ${orList(fault.meant)}?`;
    case "nought-denominator":
      return "a fraction of something: the lower figure is 0";
    case "unknown-unit":
      return `in, ft, mm, cm or m as the unit, not ${fault.unit}`;
    case "too-long":
      return "a length of at most 100 m";
  }
}

const TYPES: Readonly<Record<string, string>> = {
  string: "a text",
  number: "a number",
  object: "an object",
  array: "a list",
  boolean: "true or false",
};

/** What is wanted in a field, as the end of "… wanted: …". */
export function sayWanted(wanted: Wanted): string {
  switch (wanted.kind) {
    case "length":
      return sayLengthFault(wanted.fault);
    case "size":
      return "a length above 0";
    case "number":
      switch (wanted.what) {
        case "degrees":
          return `degrees above ${wanted.above}, at most ${wanted.to}`;
        case "ratio":
          return `foot to head as a number above ${wanted.above}, at most ${wanted.to}, such as 1.25`;
        case "count":
          return `a number above ${wanted.above}, at most ${wanted.to}`;
      }
    case "one-of":
      return orList(wanted.options);
    case "type":
      return TYPES[wanted.expected] ?? "a value that this field knows";
    case "outer-shape":
      return "an outer size: a width and a height, or borders, or the smallest of a list";
    case "size-list":
      return "inch, metric, iso, or a list of sizes such as 11 x 14 in";
    case "below-overall":
      return "a rabbet narrower than the moulding";
    case "print-or-window":
      return "the print's width and height, or a typed window";
    case "outline":
      switch (wanted.fault) {
        case "few-points":
          return "an outline of at least 3 points";
        case "crosses-itself":
          return "an outline that does not cross itself";
      }
    case "at-most":
      return `at most ${wanted.most}`;
    case "at-least":
      return `at least ${wanted.least}`;
    case "between":
      return wanted.what === "border"
        ? "a border of at least the least"
        : "a lift between its least and its most";
    case "date":
      return wanted.after === null
        ? "a date as year, month, day, such as 2026-12-14"
        : `a date from ${wanted.after} on`;
    case "illuminance":
      return "light as 50 lx or 5 fc, at most 200,000 lx";
    case "grammage":
      return "a paper's weight, such as 300 gsm or 140 lb (a ream of 22 × 30 in), at most 3000 gsm";
    case "humidity":
      return "relative humidity from 0 to 100 percent, the drier first";
    case "like":
      return `something like ${orList(wanted.examples)}`;
    case "below-tab":
      return "less than is left of the tab's height above what is pasted";
    case "json":
      return "one JSON document";
    case "version":
      return `a document of version ${wanted.reads} or earlier`;
  }
}
