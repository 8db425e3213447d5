import type { Column } from "./columns.ts";
import { columnName, columnLetters, isLengthColumn, readHeaderCell } from "./header.ts";
import type { ListProblem } from "./records.ts";
import { foundText } from "../problem.ts";

/** Where a column stands and what its header says of its figures. */
export interface Source {
  readonly index: number;
  readonly unit: string | null;
  readonly badUnit: string | null;
}

export interface UnknownColumn {
  readonly name: string;
  /** The known column that it is a letter or two away from. */
  readonly like: Column | null;
}

export interface Layout {
  /** Under one name usually one column; more where the list says it twice. */
  readonly known: ReadonlyMap<Column, readonly Source[]>;
  /** Columns that are kept as they are, each under a name of its own. */
  readonly kept: readonly { readonly index: number; readonly name: string }[];
  readonly unknown: readonly UnknownColumn[];
  readonly problems: readonly ListProblem[];
}

/** What each column of a header is for. A second column of one name, and a unit that is none, are problems of row 1. */
export function layoutOf(header: readonly string[]): Layout {
  const known = new Map<Column, Source[]>();
  const kept: { index: number; name: string }[] = [];
  const unknown: UnknownColumn[] = [];
  const problems: ListProblem[] = [];
  const names = new Set<string>();
  const keep = (index: number, name: string): void => {
    let own = name;
    for (let count = 2; names.has(own); count++) own = `${name} (${count})`;
    names.add(own);
    kept.push({ index, name: own });
  };
  for (const [index, text] of header.entries()) {
    const cell = readHeaderCell(text);
    if (cell.kind === "blank") {
      const name = `column ${columnLetters(index)}`;
      keep(index, name);
      unknown.push({ name, like: null });
      continue;
    }
    if (cell.kind === "unknown") {
      keep(index, cell.name);
      unknown.push({ name: cell.name, like: cell.like });
      continue;
    }
    const { column, unit, badUnit } = cell;
    const problem = { row: 1, column: columnName(text, index), found: foundText(text) };
    if (badUnit !== null) problems.push({ ...problem, wanted: { kind: "known-unit" } });
    const before = known.get(column);
    if (before === undefined) {
      known.set(column, [{ index, unit, badUnit }]);
      continue;
    }
    problems.push({ ...problem, wanted: { kind: "one-column" } });
    if (isLengthColumn(column)) before.push({ index, unit, badUnit });
    else keep(index, `${column} (2)`);
  }
  return { known, kept, unknown, problems };
}
