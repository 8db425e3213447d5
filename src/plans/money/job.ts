import type { Money, Price } from "./price.ts";

/** What is done by hand, in its order: minutes are told for each of them. */
export const OPERATIONS = ["blank", "window", "hold", "glaze", "frame", "close", "hang"] as const;
export type Operation = (typeof OPERATIONS)[number];

/** What a price or a count goes by. */
export const PER = ["work", "mat", "pane", "frame", "show"] as const;
export type Per = (typeof PER)[number];

export type GoodsGroup = "board" | "glazing" | "moulding";
export const GOODS_GROUPS: readonly GoodsGroup[] = ["board", "glazing", "moulding"];

/** One material of a show, as it is really bought. */
export interface Goods {
  readonly name: string;
  readonly group: GoodsGroup;
  /** Sheets or lengths that are bought. */
  readonly bought: number;
  /** What they cost, packs counted; null: some price is not known. */
  readonly cost: Money | null;
  /** What would be paid without the rack and without what falls out of windows; null: it could not be made, or its price is not known. */
  readonly without: Money | null;
  /** What the pieces' own measure comes to, waste left out; null: not known. */
  readonly byMeasure: Money | null;
  /** How much of it each work takes: square ticks of a sheet, ticks of a length. Beside the works. */
  readonly uses: readonly bigint[];
}

/** A small part: so many for each of what it goes by, bought singly or in packs. */
export interface Fitting {
  readonly name: string;
  /** Of one, or of a pack. */
  readonly price: Price;
  /** How many a pack holds; 1: bought singly. */
  readonly pack: number;
  readonly each: number;
  readonly per: Per;
}

/** What having it done costs. */
export interface Done {
  readonly what: string;
  readonly price: Price;
  readonly per: Per;
}

/** How often a work has what is counted, all its copies together. */
export interface QuotedWork {
  readonly title: string;
  readonly copies: number;
  readonly done: Readonly<Record<Operation, number>>;
  readonly mats: number;
  readonly panes: number;
  readonly frames: number;
}

/** What a show costs is reckoned from this. */
export interface QuoteJob {
  /** Decimals of the currency. */
  readonly digits: number;
  /** At least one. */
  readonly works: readonly QuotedWork[];
  readonly goods: readonly Goods[];
  readonly fittings: readonly Fitting[];
  /** Hundredths of a minute; absent: not told. */
  readonly minutes: Readonly<Partial<Record<Operation, number>>>;
  /** Of an hour's work; null: not told. */
  readonly hour: Price | null;
  readonly having: readonly Done[];
}
