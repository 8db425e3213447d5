import { BOUNDS } from "./bounds.ts";

export const SEPARATORS = [",", ";", "\t"] as const;
export type Separator = (typeof SEPARATORS)[number];

/** One record of a text with separators. */
export interface DelimitedRecord {
  readonly cells: readonly string[];
  /** A quotation mark opens a cell here and closes nowhere, or in the midst of it: `cells` are of this line alone, marks and all. */
  readonly broken: boolean;
}

/** A record is no longer than this, or its quotation mark was never meant to open a cell. */
const LONGEST_RECORD = 1_000_000;

/**
 * Cuts a text (its line ends already `\n`) into records, after RFC 4180: a cell in quotation marks may hold
 * separators, line breaks and doubled marks. A mark inside a cell that does not start with one is a plain
 * inch mark. A record whose marks do not fit costs that line and no other: the next line starts afresh.
 */
export function* recordsOf(text: string, separator: Separator): Generator<DelimitedRecord, void> {
  let at = 0;
  while (at < text.length) {
    const record = readRecord(text, at, separator);
    if (record !== null) {
      yield { cells: record.cells, broken: false };
      at = record.end + 1;
    } else {
      const end = lineEnd(text, at);
      yield { cells: text.slice(at, end).split(separator), broken: true };
      at = end + 1;
    }
  }
}

/** One record from `start` on and where it ends; null where its quotation marks do not fit. */
function readRecord(
  text: string,
  start: number,
  separator: Separator,
): { cells: string[]; end: number } | null {
  const cells: string[] = [];
  let at = start;
  for (;;) {
    const cell =
      quoteAt(text, at) === -1 ? readBare(text, at, separator) : readQuoted(text, quoteAt(text, at), start);
    if (cell === null) return null;
    cells.push(cell.text);
    if (cell.end >= text.length || text[cell.end] === "\n") return { cells, end: cell.end };
    if (text[cell.end] !== separator) return null;
    at = cell.end + 1;
  }
}

/** The mark that opens the cell at `at`, spaces before it forgiven; -1 where the cell is bare. */
function quoteAt(text: string, at: number): number {
  let quote = at;
  while (text[quote] === " ") quote++;
  return text[quote] === '"' ? quote : -1;
}

function readBare(text: string, at: number, separator: Separator): { text: string; end: number } {
  let end = at;
  while (end < text.length && text[end] !== separator && text[end] !== "\n") end++;
  return { text: text.slice(at, end), end };
}

/** The cell whose mark opens at `open`, and the separator or line end behind it. */
function readQuoted(text: string, open: number, recordStart: number): { text: string; end: number } | null {
  const pieces: string[] = [];
  let from = open + 1;
  for (;;) {
    const mark = text.indexOf('"', from);
    if (mark === -1 || mark - recordStart > LONGEST_RECORD) return null;
    if (text[mark + 1] !== '"') {
      pieces.push(text.slice(from, mark));
      let end = mark + 1;
      while (text[end] === " ") end++;
      return { text: pieces.join(""), end };
    }
    pieces.push(text.slice(from, mark + 1));
    from = mark + 2;
  }
}

function lineEnd(text: string, at: number): number {
  const end = text.indexOf("\n", at);
  return end === -1 ? text.length : end;
}

/**
 * The separator of a text: the one with which the header names the most known columns; among equals the one
 * that gives the most rows as many cells as the header; a comma where nothing is parted at all.
 * `known` counts the columns that a record names.
 */
export function separatorOf(text: string, known: (cells: readonly string[]) => number): Separator {
  const sample = text.slice(0, 64 * 1024);
  let best: { separator: Separator; names: number; even: number } = { separator: ",", names: -1, even: -1 };
  for (const separator of SEPARATORS) {
    const records: (readonly string[])[] = [];
    for (const { cells } of recordsOf(sample, separator)) {
      if (cells.some((cell) => cell.trim() !== "")) records.push(cells.slice(0, BOUNDS.columns));
      if (records.length >= 40) break;
    }
    const width = records[0]?.length ?? 0;
    const names = Math.max(0, ...records.slice(0, 20).map(known));
    const even = width < 2 ? 0 : records.filter((cells) => cells.length === width).length;
    if (names > best.names || (names === best.names && even > best.even)) best = { separator, names, even };
  }
  return best.separator;
}
