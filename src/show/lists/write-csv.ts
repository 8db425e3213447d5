import type { Separator } from "./delimited.ts";
import { withMark } from "./formula.ts";

export interface CsvOptions {
  /** A byte-order mark, without which some spreadsheet programs misread letters beyond ASCII. */
  readonly bom?: boolean;
  /** A comma where absent. */
  readonly separator?: Separator;
}

/**
 * A table as CSV (RFC 4180: lines end with CR LF, marks are doubled inside marks). A cell that a spreadsheet
 * would carry out as a formula gets an apostrophe before it, which reading takes away again; a plain negative
 * number stays one.
 */
export function writeCsv(
  header: readonly string[],
  rows: readonly (readonly string[])[],
  { bom = false, separator = "," }: CsvOptions = {},
): string {
  const needsMarks = new RegExp(`["\\n\\r\\t${separator}]|^\\s|\\s$`);
  const cell = (text: string): string => {
    const safe = withMark(text);
    return needsMarks.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
  };
  // A record of one blank cell would be a blank line, which is none.
  const line = (cells: readonly string[]): string =>
    cells.length === 1 && cells[0] === "" ? '""\r\n' : `${cells.map(cell).join(separator)}\r\n`;
  return `${bom ? "\ufeff" : ""}${[header, ...rows].map(line).join("")}`;
}
