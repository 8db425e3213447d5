import { type Cell, type CellValue, readXlsx, type Sheet, writeXlsx } from "hucre/xlsx";
import { packPlain, unpack } from "./archive.ts";
import { BOUNDS } from "./bounds.ts";
import { columnLetters, HEADER_WITHIN } from "./header.ts";
import { decimalText, unitInFormat } from "./number-text.ts";
import type { Bounded, FileFault } from "./records.ts";

/** One worksheet as texts. */
export interface Worksheet {
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
}

export type WorkbookRead =
  | { readonly ok: true; readonly sheets: readonly Worksheet[] }
  | { readonly ok: false; readonly fault: FileFault }
  | { readonly ok: false; readonly bound: Bounded };

const PARTS_READ = /^(?:\[content_types\]\.xml|.*\.rels|xl\/[^/]*\.xml|xl\/worksheets\/[^/]*\.xml)$/i;
/** The header with all that may stand above it, and the rows. */
const LAST_ROW = BOUNDS.rows + HEADER_WITHIN;
const RANGE = `A1:${columnLetters(BOUNDS.columns - 1)}${LAST_ROW}`;

/**
 * Reads a workbook's visible worksheets as the texts that a person would have typed. Pictures, charts and
 * macros are not even unpacked. This file alone knows the library that reads and writes workbooks.
 */
export async function readWorkbook(bytes: Uint8Array): Promise<WorkbookRead> {
  const unpacked = unpack(bytes, (name) => PARTS_READ.test(name) || name === "mimetype");
  if (!unpacked.ok) {
    return unpacked.bound === null
      ? { ok: false, fault: "broken-workbook" }
      : { ok: false, bound: unpacked.bound };
  }
  const files = new Map([...unpacked.files].filter(([name]) => name !== "mimetype"));
  const mimetype = unpacked.files.get("mimetype");
  if (mimetype !== undefined && new TextDecoder().decode(mimetype).includes("opendocument")) {
    return { ok: false, fault: "open-document" };
  }
  for (const [name, xml] of files) {
    if (!/worksheets\//i.test(name)) continue;
    const bound = extentOf(new TextDecoder().decode(xml));
    if (bound !== null) return { ok: false, bound };
  }
  let sheets: readonly Sheet[];
  try {
    const workbook = await readXlsx(packPlain(files), {
      readStyles: true,
      range: RANGE,
      sheets: (sheet) => sheet.hidden !== true && sheet.veryHidden !== true,
    });
    sheets = workbook.sheets;
  } catch {
    // Whatever a damaged workbook makes the library throw, it says the same to the person: it cannot be read.
    return { ok: false, fault: "broken-workbook" };
  }
  return { ok: true, sheets: sheets.map(textsOf) };
}

/**
 * Which bound the cells of a worksheet pass, counted on its text before any of it is laid out in memory. Cells
 * past the last column or row that is read must be blank (formats alone), or something would be lost.
 */
function extentOf(xml: string): Bounded | null {
  let row = 0;
  let column = 0;
  let lastRow = 0;
  let lastColumn = 0;
  let cells = 0;
  for (const [, tag, attributes = ""] of xml.matchAll(/<(?:\w{1,20}:)?(row|c)\b([^<>]*)>/g)) {
    const [, letters = "", digits = ""] = /\br=["']([A-Z]{0,4})(\d{0,8})["']/.exec(attributes) ?? [];
    if (tag === "row") {
      row = digits === "" ? row + 1 : Number(digits);
      column = 0;
      continue;
    }
    column = letters === "" ? column + 1 : columnNumber(letters);
    cells++;
    if (attributes.endsWith("/")) continue;
    if (column > BOUNDS.columns) return "columns";
    if (row > LAST_ROW) return "rows";
    lastRow = Math.max(lastRow, row);
    lastColumn = Math.max(lastColumn, column);
  }
  return Math.max(cells, lastRow * lastColumn) > BOUNDS.cells ? "cells" : null;
}

const columnNumber = (letters: string): number =>
  [...letters].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0);

function textsOf(sheet: Sheet): Worksheet {
  return {
    name: sheet.name,
    rows: sheet.rows.map((row, rowIndex) =>
      row.map((value, columnIndex) => textOf(value, sheet.cells?.get(`${rowIndex},${columnIndex}`))),
    ),
  };
}

/** One cell as it would be typed: `7.5`, `24.5 cm` where its number format shows the unit, `2026-03-14`. */
function textOf(value: CellValue | undefined, cell: Cell | undefined): string {
  if (value === null || value === undefined) {
    // A formula whose result was never worked out: it is shown, so that it can be named.
    return cell?.formula === undefined ? "" : `=${cell.formula}`;
  }
  if (typeof value === "number") {
    const unit = unitInFormat(cell?.style?.numFmt ?? "");
    return unit === null ? decimalText(value) : `${decimalText(value)} ${unit}`;
  }
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (value instanceof Date) {
    const iso = Number.isNaN(value.getTime()) ? "" : value.toISOString();
    return iso.endsWith("T00:00:00.000Z") ? iso.slice(0, 10) : iso.slice(0, 16).replace("T", " ");
  }
  return value;
}

/** One worksheet to be written. */
export interface WorksheetOut {
  readonly name: string;
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The day that stands in every workbook as its date: the same list makes the same bytes. */
const FIXED_DAY = new Date(Date.UTC(1980, 0, 1));

/**
 * Writes worksheets of texts as a workbook. Every cell is a text, so that nothing is taken for a formula or
 * turned into a date. The same sheets give the same bytes.
 */
export async function writeWorkbook(sheets: readonly WorksheetOut[]): Promise<Uint8Array> {
  return writeXlsx({
    properties: { created: FIXED_DAY, modified: FIXED_DAY },
    sheets: sheets.map(({ name, header, rows }) => ({
      name: sheetName(name),
      rows: [[...header], ...rows.map((row) => [...row])],
      columns: header.map((title, index) => ({ width: columnWidth(title, rows, index) })),
      freezePane: { rows: 1 },
    })),
  });
}

/** A worksheet's name has at most 31 characters, and not these. */
const sheetName = (name: string): string =>
  name
    .replace(/[[\]:*?/\\']/g, " ")
    .trim()
    .slice(0, 31) || "List";

const columnWidth = (title: string, rows: readonly (readonly string[])[], column: number): number =>
  Math.min(48, rows.reduce((widest, row) => Math.max(widest, row[column]?.length ?? 0), title.length) + 2);
