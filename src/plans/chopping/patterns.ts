import { at } from "../at.ts";
import type { Pattern, WholeChopping } from "./whole.ts";

/** A plan in whole units: one pattern for each length used. */
export interface RoughChopping {
  readonly bars: readonly Pattern[];
  /** What the planner weighs: the prices of all lengths, hairs included. */
  readonly price: number;
  /** How many rails are in no bar. */
  readonly missing: number;
}

export const loadOf = (whole: WholeChopping, { kinds, counts }: Pattern): number =>
  kinds.reduce((sum, kind, index) => sum + at(whole.kinds, kind).weight * at(counts, index), 0);

/** A pattern out of how many of each kind there are, most of them nought. */
export function patternOf(stock: number, counts: ArrayLike<number>): Pattern {
  const kinds: number[] = [];
  for (let kind = 0; kind < counts.length; kind++) if (at(counts, kind) > 0) kinds.push(kind);
  return { stock, kinds, counts: kinds.map((kind) => at(counts, kind)) };
}

/** The same pattern without the rails that are not wanted any more; null when none is left. */
export function wantedOf({ stock, kinds, counts }: Pattern, left: ArrayLike<number>): Pattern | null {
  const taken = counts.map((count, index) => Math.min(count, at(left, at(kinds, index))));
  const kept = kinds.map((_, index) => index).filter((index) => at(taken, index) > 0);
  if (kept.length === 0) return null;
  return { stock, kinds: kept.map((i) => at(kinds, i)), counts: kept.map((i) => at(taken, i)) };
}

/** Takes the rails of a pattern off what is still wanted. */
export function takeOff(left: Int32Array, { kinds, counts }: Pattern): void {
  kinds.forEach((kind, index) => {
    left[kind] = at(left, kind) - at(counts, index);
  });
}

/** What is still wanted and still there once some bars are fixed. */
export function remainder(whole: WholeChopping, bars: readonly Pattern[]): WholeChopping {
  const left = Int32Array.from(whole.kinds, ({ count }) => count);
  const used = new Int32Array(whole.stocks.length);
  for (const bar of bars) {
    takeOff(left, bar);
    used[bar.stock] = at(used, bar.stock) + 1;
  }
  return {
    ...whole,
    kinds: whole.kinds.map((kind, index) => ({ ...kind, count: at(left, index) })),
    stocks: whole.stocks.map((stock, index) => ({ ...stock, copies: stock.copies - at(used, index) })),
  };
}

/** The plan with each bar out of the cheapest length that holds it and is still there. */
export function roughOf(whole: WholeChopping, bars: readonly Pattern[]): RoughChopping {
  const cheap = cheapened(whole, bars);
  const placed = bars.reduce((sum, { counts }) => sum + counts.reduce((a, b) => a + b, 0), 0);
  return {
    bars: cheap,
    price: cheap.reduce((sum, { stock }) => sum + at(whole.stocks, stock).price, 0),
    missing: whole.kinds.reduce((sum, { count }) => sum + count, 0) - placed,
  };
}

function cheapened(whole: WholeChopping, bars: readonly Pattern[]): Pattern[] {
  if (whole.stocks.length === 1) return [...bars];
  const copies = whole.stocks.map((stock) => stock.copies);
  const byPrice = whole.stocks.map((_, index) => index).toSorted((a, b) => priceAt(a) - priceAt(b));
  function priceAt(stock: number): number {
    return at(whole.stocks, stock).price;
  }
  for (const { stock } of bars) copies[stock] = at(copies, stock) - 1;
  // The fullest choose first: they have the least choice.
  const loads = bars.map((bar, index) => ({ bar, index, load: loadOf(whole, bar) }));
  const out = [...bars];
  for (const { bar, index, load } of loads.toSorted((a, b) => b.load - a.load)) {
    const better = byPrice.find((stock) => at(copies, stock) > 0 && at(whole.stocks, stock).capacity >= load);
    if (better === undefined || priceAt(better) >= priceAt(bar.stock)) continue;
    copies[bar.stock] = at(copies, bar.stock) + 1;
    copies[better] = at(copies, better) - 1;
    out[index] = { ...bar, stock: better };
  }
  return out;
}

/** Fewer missing rails first, then the lower price: below nought when `a` is the better plan. */
export const compareRough = (a: RoughChopping, b: RoughChopping): number =>
  a.missing - b.missing || (Math.abs(a.price - b.price) <= 1e-9 * (1 + a.price) ? 0 : a.price - b.price);
