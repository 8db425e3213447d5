import { type Length, mm } from "../../lengths/index.ts";

/** Past these a file is refused with a sentence, before it can cost memory or time. */
export const BOUNDS = {
  /** Of the file as it comes. */
  bytes: 32 * 1024 * 1024,
  /** Of everything in a workbook that is read, unpacked. */
  unpackedBytes: 64 * 1024 * 1024,
  /** Files inside a workbook. */
  entries: 5_000,
  /** Records under the header. */
  rows: 100_000,
  columns: 256,
  /** Rows times columns of one worksheet, blank ones included. */
  cells: 2_000_000,
  /** Characters in one cell. */
  cell: 4_000,
} as const;

/** No sheet, image, window or board of this trade is larger; a figure past it has the wrong unit. */
export const LARGEST: Length = mm(20_000);

/** Nor is any smaller both read and cut. */
export const SMALLEST: Length = mm(3);

/** Paper and its mount are thinner than this; what is thicker is an object and no sheet. */
export const THICKEST: Length = mm(10);

/** A size stated twice, in inches and centimetres, may differ by this much from rounding alone. */
export const AGREES_WITHIN: Length = mm(2);
