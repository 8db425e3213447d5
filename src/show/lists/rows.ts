import { foundText } from "../problem.ts";
import { BOUNDS } from "./bounds.ts";
import { withoutMark } from "./formula.ts";
import { columnName, findHeader, HEADER_WITHIN } from "./header.ts";
import type { ListNote, ListProblem, ListWanted, Table, TableRow } from "./records.ts";

export interface RawRecord {
  readonly cells: readonly string[];
  /** Its quotation marks do not fit. */
  readonly broken: boolean;
}

/** Why there is no table at all. */
export class RecordRefused {
  readonly wanted: ListWanted;
  constructor(wanted: ListWanted) {
    this.wanted = wanted;
  }
}

export const isBlank = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === "");

// Control characters but line break and tab, halves of a surrogate pair, and the two that are no characters.
const CONTROL = /(?![\n\t])\p{Cc}|\p{Cs}|[\ufffe\uffff]/gu;

export function withoutControl(text: string): { text: string; dropped: number } {
  let dropped = 0;
  const kept = text.replace(CONTROL, () => {
    dropped++;
    return "";
  });
  return { text: kept, dropped };
}

/**
 * Records to a table: the header found, blank lines dropped yet counted, every row as wide as the header.
 * In a text a row with more cells than the header has a separator too many and is a problem; in a workbook
 * what stands beside the named columns is a column without a name.
 */
export function tableOf(read: {
  readonly records: Iterable<RawRecord>;
  readonly from: "text" | "workbook";
  readonly notes: readonly ListNote[];
}): Table | RecordRefused {
  const records: RawRecord[] = [];
  for (const record of read.records) {
    records.push(record);
    if (records.length > BOUNDS.rows + HEADER_WITHIN) return bound("rows");
  }
  const { index } = findHeader(records.map(({ cells }) => cells));
  const header = records[index];
  if (header === undefined) return new RecordRefused({ kind: "list-file", fault: "blank" });
  if (header.broken) return new RecordRefused({ kind: "closed-quote" });
  const below = records.slice(index + 1);
  if (below.length > BOUNDS.rows) return bound("rows");

  const width = read.from === "text" ? header.cells.length : widest(records.slice(index));
  if (filledWidth(header.cells) > BOUNDS.columns || (read.from === "workbook" && width > BOUNDS.columns)) {
    return bound("columns");
  }
  const titles = cut(header.cells, Math.min(width, BOUNDS.columns)).map((cell) => tidy(cell, read.from));
  const rows: TableRow[] = [];
  const problems: ListProblem[] = [];
  for (const [offset, record] of below.entries()) {
    if (isBlank(record.cells)) continue;
    const row = offset + 2;
    const problem = rowProblem(record, row, titles);
    if (problem !== null) problems.push(problem);
    else rows.push({ row, cells: cut(record.cells, titles.length).map((cell) => tidy(cell, read.from)) });
  }
  const notes: ListNote[] =
    index === 0
      ? [...read.notes]
      : [...read.notes, { level: "note", row: null, column: null, code: "header-line", line: index + 1 }];
  const used = Math.max(filledWidth(titles), widest(rows));
  return {
    header: titles.slice(0, used),
    rows:
      used === titles.length ? rows : rows.map(({ row, cells }) => ({ row, cells: cells.slice(0, used) })),
    notes,
    problems,
  };
}

const bound = (what: "rows" | "columns"): RecordRefused =>
  new RecordRefused({ kind: "bound", what, most: BOUNDS[what] });

function rowProblem(record: RawRecord, row: number, titles: readonly string[]): ListProblem | null {
  const found = foundText(record.cells.join(" | "));
  if (record.broken) return { row, column: null, found, wanted: { kind: "closed-quote" } };
  const cells = filledWidth(record.cells);
  if (cells > titles.length) {
    return { row, column: null, found, wanted: { kind: "cells", cells, columns: titles.length } };
  }
  const long = record.cells.findIndex((cell) => cell.length > BOUNDS.cell);
  if (long === -1) return null;
  return {
    row,
    column: columnName(titles[long] ?? "", long),
    found: foundText(record.cells[long]),
    wanted: { kind: "bound", what: "cell", most: BOUNDS.cell },
  };
}

/** How many cells there are up to the last that holds something. */
const filledWidth = (cells: readonly string[]): number =>
  cells.findLastIndex((cell) => cell.trim() !== "") + 1;

const widest = (rows: readonly { readonly cells: readonly string[] }[]): number =>
  rows.reduce((width, { cells }) => Math.max(width, filledWidth(cells)), 0);

const cut = (cells: readonly string[], width: number): string[] =>
  Array.from({ length: width }, (_, index) => cells[index] ?? "");

function tidy(cell: string, from: "text" | "workbook"): string {
  return from === "text" ? withoutMark(cell) : withoutControl(cell.replace(/\r\n?/g, "\n")).text;
}
