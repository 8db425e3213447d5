import type { Column } from "./master.ts";

/** Whole amounts of columns, no less than nought, at the least cost. */
export interface IntegerProgramme {
  readonly columns: readonly Column[];
  /** At least this of every row; "at least -3" of a column that gives -1 is "at most 3 of it". */
  readonly wanted: readonly number[];
  /** Amounts that serve, to begin from; null: none are known. */
  readonly start: readonly number[] | null;
}

/**
 * Solves an integer programme: the best amounts found before `timeIsUp`, one for each column; null
 * when none were found. What it gives is rounded and held against every row by the caller.
 */
export type IntegerSolver = (
  programme: IntegerProgramme,
  timeIsUp: () => boolean,
) => ArrayLike<number> | null;
