import { readLength } from "../../lengths/index.ts";
import { foundText } from "../problem.ts";
import { BOUNDS } from "./bounds.ts";
import { type Column, COLUMNS, LENGTH_COLUMNS, type LengthColumn } from "./columns.ts";

/** What stands in one cell of a header. */
export type HeaderCell =
  | {
      readonly kind: "column";
      readonly column: Column;
      /** The unit that a bare figure under it has; null where the header names none. */
      readonly unit: string | null;
      /** The bracket behind the name says something that is no unit. */
      readonly badUnit: string | null;
    }
  | { readonly kind: "unknown"; readonly name: string; readonly like: Column | null }
  | { readonly kind: "blank" };

/** A header longer than this names no column. */
const LONGEST_NAME = 80;

const squash = (text: string): string => text.replace(/[\s_\-.:]+/g, "");

const BY_NAME: ReadonlyMap<string, Column> = new Map(COLUMNS.map((column) => [squash(column), column]));

export const isLengthColumn = (column: Column): column is LengthColumn =>
  (LENGTH_COLUMNS as readonly Column[]).includes(column);

/** Marks that no one sees: directions of writing, joiners, a byte-order mark inside the text. */
export const withoutInvisible = (text: string): string =>
  text.replace(/[\u00ad\u200b-\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]/g, "");

/**
 * Reads one header cell: any letter case, spaces, underscores and hyphens anywhere, and for a length its
 * unit behind the name: `Sheet_Width (cm)`, `sheet width, cm`, `sheet width cm`.
 */
export function readHeaderCell(text: string): HeaderCell {
  const written = withoutInvisible(text).replace(/\s+/g, " ").trim();
  if (written === "") return { kind: "blank" };
  const unknown: HeaderCell = { kind: "unknown", name: written, like: null };
  if (written.length > LONGEST_NAME) return unknown;
  const lower = written.normalize("NFKC").toLowerCase();
  const plain = BY_NAME.get(squash(lower));
  if (plain !== undefined) return { kind: "column", column: plain, unit: null, badUnit: null };

  const parted = partOff(lower);
  const column = parted === null ? undefined : BY_NAME.get(squash(parted.name));
  if (parted !== null && column !== undefined && takesUnit(column)) {
    const unit = unitOf(column, parted.unit);
    if (unit !== undefined) return { kind: "column", column, unit, badUnit: null };
    if (parted.bracketed) return { kind: "column", column, unit: null, badUnit: parted.unit };
  }
  return { ...unknown, like: nearest(squash(parted?.bracketed ? parted.name : lower)) };
}

/** A name and what stands in brackets, or as the last word, behind it. */
function partOff(text: string): { name: string; unit: string; bracketed: boolean } | null {
  const open = text.search(/[([]/);
  if (open > 0 && /[)\]]$/.test(text)) {
    return { name: text.slice(0, open), unit: text.slice(open + 1, -1).trim(), bracketed: true };
  }
  const words = text.split(/[\s_\-,/:]+/);
  const unit = words.at(-1);
  if (words.length < 2 || unit === undefined) return null;
  return { name: words.slice(0, -1).join(" "), unit, bracketed: false };
}

const takesUnit = (column: Column): boolean =>
  isLengthColumn(column) || column === "dimensions" || column === "angle";

/** The unit as it is put behind a figure; null where there is none to put; undefined where this is none. */
function unitOf(column: Column, written: string): string | null | undefined {
  if (column === "angle") return /^(°|deg\.?|degrees?)$/.test(written) ? null : undefined;
  const words = written.replace(/^in /, "");
  // "(h x w)" is the order that is read anyway; the other way round is no unit and is refused.
  const ordered = column === "dimensions" ? /^(?:h|height) ?[x×] ?(?:w|width),? ?(.*)$/.exec(words) : null;
  const unit = ordered === null ? words : (ordered[1] ?? "");
  if (ordered !== null && unit === "") return null;
  for (const form of [unit, unit.replace(/\.$/, "")]) {
    if (/^(\p{L}+\.?|["'″′”’])$/u.test(form) && readLength(`1 ${form}`, "mm").ok) return form;
  }
  return undefined;
}

/** The column that was perhaps meant: one or two letters off. */
function nearest(name: string): Column | null {
  for (const [known, column] of BY_NAME) {
    if (known.length > 3 && Math.abs(known.length - name.length) <= 2 && distance(name, known) <= 2)
      return column;
  }
  return null;
}

/** Letters to change, add, drop or swap with their neighbour to come from one word to the other. */
function distance(a: string, b: string): number {
  let twoBack: number[] = [];
  let back = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((back[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (back[j - 1] ?? 0) + same);
      if (a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (twoBack[j - 2] ?? Infinity) + 1);
      row.push(least);
    }
    [twoBack, back] = [back, row];
  }
  return back[b.length] ?? 0;
}

/** A column's letters as a spreadsheet writes them: 0 is A, 26 is AA. */
export function columnLetters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : columnLetters(Math.floor(index / 26) - 1) + last;
}

/** The header is looked for no further down than this: a title, a date and blank lines may stand above it. */
export const HEADER_WITHIN = 20;

/** How many columns a record names; with a column of titles more than any number of others. */
export function columnsNamed(cells: readonly string[]): number {
  const named = new Set(cells.slice(0, BOUNDS.columns).flatMap((cell) => namedColumn(cell) ?? []));
  return named.size + (named.has("title") ? COLUMNS.length : 0);
}

const namedColumn = (cell: string): Column | null => {
  const read = readHeaderCell(cell);
  return read.kind === "column" ? read.column : null;
};

/** Whether a record names a column of titles, and `others` more. */
const titled = (cells: readonly string[], others: number): boolean =>
  columnsNamed(cells) >= COLUMNS.length + 1 + others;

/**
 * Which record is the header: the first that is not blank, unless it names no column of titles and one of the
 * next does, with another column beside it. -1 where all are blank.
 */
export function findHeader(records: readonly (readonly string[])[]): { index: number; titled: boolean } {
  const first = records.findIndex((cells) => cells.some((cell) => cell.trim() !== ""));
  const start = records[first];
  if (start === undefined) return { index: -1, titled: false };
  if (titled(start, 0)) return { index: first, titled: true };
  const later = records.slice(first, first + HEADER_WITHIN).findIndex((cells) => titled(cells, 1));
  return later === -1 ? { index: first, titled: false } : { index: first + later, titled: true };
}

/** What a column is called when something in it is named: its own name, its header, or its letters. */
export function columnName(header: string, index: number): string {
  const read = readHeaderCell(header);
  switch (read.kind) {
    case "column":
      return read.column;
    case "unknown":
      return foundText(read.name);
    case "blank":
      return `column ${columnLetters(index)}`;
  }
}
