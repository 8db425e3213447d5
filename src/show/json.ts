import { type Length, printLength, type Ruler, toMillimetres } from "../lengths/index.ts";
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

/** A place in the open format: exact, and to the nearest mark of the ruler. */
export const placeJson = (length: Length, ruler: Ruler): object => ({
  mm: toMillimetres(length),
  text: printLength(length, ruler),
});
