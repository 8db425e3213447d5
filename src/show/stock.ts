import type { Size } from "../geometry/index.ts";
import type { Length } from "../lengths/index.ts";
import type { StockLength, StockSheet } from "../plans/index.ts";
import { readDay } from "./days.ts";
import { Reader } from "./reader.ts";
import type { StockDocument } from "./schema.ts";
import type { Read } from "./validate.ts";

/** One sheet of the stock, with the board it is a sheet of; null: it serves for any board. */
export interface StockBoard extends StockSheet {
  readonly board: string | null;
  readonly pack: Pack | null;
  /** Whether it can be had singly; else only in packs, and its cost is a pack's share. */
  readonly singly: boolean;
  /** Whether its price was told, or it lies in the rack; else its cost goes by its area. */
  readonly known: boolean;
}

/** So many together for one price. */
export interface Pack {
  readonly of: number;
  readonly cost: number;
}

/** A length of moulding; `moulding` null: of the practice's own. */
export interface StockMoulding extends StockLength {
  readonly moulding: string | null;
  readonly known: boolean;
}

/** What lies in the rack and what can be bought. */
export interface Stock {
  readonly sheets: readonly StockBoard[];
  readonly lengths: readonly StockMoulding[];
  /** A leftover at least this large is worth keeping. */
  readonly least: Size | null;
  readonly longestCut: Length | null;
  readonly currency: string | null;
  /** The day on which its prices held, ISO 8601; null: not told. */
  readonly date: string | null;
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
    requireBought(reader, `sheets.${index}`, sheet);
    if (sheet.pack === undefined) continue;
    const { of, cost } = sheet.pack;
    reader.count(`sheets.${index}.pack.of`, of, 1e6);
    requireBought(reader, `sheets.${index}.pack`, { cost });
  }
  const lengths = (document.lengths ?? []).map((one, index) => {
    requireBought(reader, `lengths.${index}`, one);
    return {
      name: one.name,
      moulding: one.moulding ?? null,
      length: reader.size(`lengths.${index}.length`, one.length),
      copies: one.copies ?? null,
      cost: one.cost ?? (typeof one.copies === "number" ? 0 : null),
    };
  });
  if (document.date !== undefined) readDay(reader, "date", document.date);
  const shortest = Math.min(...lengths.map(({ length }) => length));
  const smallest = Math.min(...sized.map(({ width, height }) => width * height));
  const stock: Stock = {
    sheets: sized.map(({ sheet, width, height, trim }) => ({
      name: sheet.name,
      board: sheet.board ?? null,
      width,
      height,
      trim,
      copies: sheet.copies ?? null,
      pack: sheet.pack ?? null,
      singly: sheet.pack === undefined || sheet.cost !== undefined,
      known: sheet.cost !== undefined || sheet.pack !== undefined || typeof sheet.copies === "number",
      // An offcut of the rack is there already; a bought sheet without a price goes by its area, to the hundredth.
      cost:
        sheet.cost ??
        (sheet.pack === undefined
          ? typeof sheet.copies === "number"
            ? 0
            : Math.round((100 * width * height) / smallest) / 100
          : sheet.pack.cost / sheet.pack.of),
    })),
    lengths: lengths.map((one) => ({
      ...one,
      known: one.cost !== null,
      cost: one.cost ?? Math.round((100 * one.length) / shortest) / 100,
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
    date: document.date ?? null,
    priced: [...document.sheets, ...(document.lengths ?? [])].some(
      (one) => (one.cost ?? 0) > 0 || ("pack" in one && one.pack !== undefined),
    ),
  };
  return reader.problems.length === 0 ? { ok: true, value: stock } : { ok: false, problems: reader.problems };
}

/** Refuses a price that is negative or without end, and a number of copies that is not whole. */
function requireBought(
  reader: Reader,
  field: string,
  { cost, copies }: { readonly cost?: number | undefined; readonly copies?: number | null | undefined },
): void {
  if (cost !== undefined && !(cost >= 0 && cost < 1e9))
    reader.refuse(
      `${field}.cost`,
      cost,
      cost > 0 ? { kind: "at-most", most: 1e9 } : { kind: "at-least", least: 0 },
    );
  if (typeof copies === "number" && !(Number.isInteger(copies) && copies >= 0 && copies <= 1e6))
    reader.refuse(`${field}.copies`, copies, { kind: "number", above: 0, to: 1e6, what: "count" });
}
