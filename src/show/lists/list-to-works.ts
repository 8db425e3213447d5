import type { WorkDocument } from "../schema.ts";
import { foundText } from "../problem.ts";
import { layoutOf, type UnknownColumn } from "./layout.ts";
import type { ListNote, ListProblem, Table } from "./records.ts";
import { RowReader } from "./row-reader.ts";
import { type ListOptions, rowToWork } from "./row-to-work.ts";

export interface ListedWork {
  readonly row: number;
  readonly work: WorkDocument;
  readonly notes: readonly ListNote[];
}

export interface ListRead {
  /** The rows that are whole, in the order of the list. */
  readonly works: readonly ListedWork[];
  /** Every fault of every other row, by row. */
  readonly problems: readonly ListProblem[];
  /** Of the list as a whole. */
  readonly notes: readonly ListNote[];
  /** Columns that are kept with each work under their name, and read no further. */
  readonly unknownColumns: readonly UnknownColumn[];
}

/**
 * The works of a list. A row with any fault is left out with all its faults named; the others go on. A list
 * without a column of titles is one problem and no works. Each length of a work is written with its unit, so
 * that the work stands alone.
 */
export function listToWorks(table: Table, options: ListOptions): ListRead {
  const layout = layoutOf(table.header);
  if (!layout.known.has("title")) {
    const found = foundText(table.header.filter((cell) => cell.trim() !== "").join(", "));
    const problem: ListProblem = { row: 1, column: "title", found, wanted: { kind: "title-column" } };
    return { works: [], problems: [problem], notes: table.notes, unknownColumns: layout.unknown };
  }
  const works: ListedWork[] = [];
  const problems = [...layout.problems, ...table.problems];
  for (const row of table.rows) {
    const reader = new RowReader(row, layout, options.unit);
    const work = rowToWork(reader, options);
    if (reader.problems.length === 0) works.push({ row: row.row, work, notes: reader.notes });
    else problems.push(...reader.problems);
  }
  problems.sort((a, b) => (a.row ?? 0) - (b.row ?? 0));
  return { works, problems, notes: table.notes, unknownColumns: layout.unknown };
}
