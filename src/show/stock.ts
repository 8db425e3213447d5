import type { Size } from "../geometry/index.ts";
import type { Length } from "../lengths/index.ts";
import type { StockSheet } from "../plans/cutting/index.ts";
import { Reader } from "./reader.ts";
import type { StockDocument } from "./schema.ts";
import type { Read } from "./validate.ts";

/** One sheet of the stock, with the board it is a sheet of; null: it serves for any board. */
export interface StockBoard extends StockSheet {
  readonly board: string | null;
}

/** What lies in the rack and what can be bought. */
export interface Stock {
  readonly sheets: readonly StockBoard[];
  /** A leftover at least this large is worth keeping. */
  readonly least: Size | null;
  readonly longestCut: Length | null;
  readonly currency: string | null;
  /** Whether prices were given; without them a sheet is priced by its area, the smallest bought one at 1. */
  readonly priced: boolean;
}

/**
 * What can be had where nothing is said: mat board comes as 32 x 40 in sheets, some also as 40 x 60 in
 * (common practice, no source).
 */
export const DEFAULT_STOCK: StockDocument = {
  unit: "in",
  sheets: [
    { name: "32 × 40 in", width: "32", height: "40" },
    { name: "40 × 60 in", width: "40", height: "60" },
  ],
  least: ["5", "7"],
};

/** Reads a validated stock document; every length that cannot be read is a problem with its field. */
export function readStock(document: StockDocument): Read<Stock> {
  const reader = new Reader(document.unit ?? "in");
  const sized = document.sheets.map((sheet, index) => ({
    sheet,
    width: reader.size(`sheets.${index}.width`, sheet.width),
    height: reader.size(`sheets.${index}.height`, sheet.height),
    trim: sheet.trim === undefined ? (0 as Length) : reader.length(`sheets.${index}.trim`, sheet.trim),
  }));
  for (const [index, { sheet }] of sized.entries()) {
    if (sheet.cost !== undefined && !(sheet.cost >= 0 && sheet.cost < 1e9)) {
      reader.refuse(`sheets.${index}.cost`, sheet.cost, { kind: "number", above: 0, to: 1e9, what: "count" });
    }
    const { copies } = sheet;
    if (typeof copies === "number" && !(Number.isInteger(copies) && copies >= 0 && copies <= 1e6)) {
      reader.refuse(`sheets.${index}.copies`, copies, { kind: "number", above: 0, to: 1e6, what: "count" });
    }
  }
  const smallest = Math.min(...sized.map(({ width, height }) => width * height));
  const stock: Stock = {
    sheets: sized.map(({ sheet, width, height, trim }) => ({
      name: sheet.name,
      board: sheet.board ?? null,
      width,
      height,
      trim,
      copies: sheet.copies ?? null,
      // An offcut of the rack is there already; a bought sheet without a price goes by its area, to the hundredth.
      cost:
        sheet.cost ??
        (typeof sheet.copies === "number" ? 0 : Math.round((100 * width * height) / smallest) / 100),
    })),
    least:
      document.least === undefined
        ? null
        : {
            width: reader.size("least.0", document.least[0]),
            height: reader.size("least.1", document.least[1]),
          },
    longestCut: document.longestCut === undefined ? null : reader.size("longestCut", document.longestCut),
    currency: document.currency ?? null,
    priced: document.sheets.some(({ cost }) => cost !== undefined && cost > 0),
  };
  return reader.problems.length === 0 ? { ok: true, value: stock } : { ok: false, problems: reader.problems };
}
