import type { Level } from "../assembly/index.ts";
import type { Sides, Size } from "../geometry/index.ts";
import { type Length, printLength, type Rounding, type Ruler, toMillimetres } from "../lengths/index.ts";
import { sayWanted } from "../words/index.ts";
import type { Problem } from "./problem.ts";

/** A problem of a document in the open format. */
export interface ProblemJson {
  readonly field: string;
  readonly found: string;
  readonly wanted: string;
}

export const problemJson = ({ field, found, wanted }: Problem): ProblemJson => ({
  field,
  found,
  wanted: sayWanted(wanted),
});

/** What stands in the place of an answer where a document could not be read: its problems, the first one foremost. */
export function unreadJson([error, ...more]: readonly ProblemJson[]): object {
  return more.length === 0 ? { error } : { error, more };
}

/** Lengths on one ruler in the open format: exact, and as a text, of a place to the nearest, of a maximum down, of a least up. */
export interface LengthsJson {
  readonly at: (length: Length) => object;
  readonly most: (length: Length) => object;
  readonly least: (length: Length) => object;
}

export function lengthsJson(ruler: Ruler): LengthsJson {
  const rounded = (rounding: Rounding) => (length: Length) => ({
    mm: toMillimetres(length),
    text: printLength(length, ruler, rounding),
  });
  return { at: rounded("nearest"), most: rounded("down"), least: rounded("up") };
}

export const sizeJson = ({ width, height }: Size, at: (length: Length) => object): object => ({
  width: at(width),
  height: at(height),
});

export const sidesJson = ({ head, left, right, foot }: Sides, at: (length: Length) => object): object => ({
  head: at(head),
  left: at(left),
  right: at(right),
  foot: at(foot),
});

/** A check in the open format, said, and about what it is. */
export const checkJson = (
  { code, level }: { readonly code: string; readonly level: Level },
  text: string,
  about: string,
): object => ({ code, level, text, about });
