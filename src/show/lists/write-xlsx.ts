import type { WorksheetOut } from "./workbook.ts";

export type { WorksheetOut } from "./workbook.ts";

/**
 * Writes worksheets of texts as a workbook (XLSX). Every cell is a text, so that nothing is taken for a formula
 * or turned into a date. The same sheets give the same bytes.
 */
export async function writeXlsx(sheets: readonly WorksheetOut[]): Promise<Uint8Array> {
  // Only who writes a workbook loads what writes one.
  const { writeWorkbook } = await import("./workbook.ts");
  return writeWorkbook(sheets);
}
