import { at } from "../at.ts";
import { boundByValues } from "../cutting/bound.ts";
import { type Column, Master } from "../cutting/master.ts";
import { wantedOf } from "./patterns.ts";
import type { Pricing } from "./pricing.ts";
import type { Pattern, WholeChopping } from "./whole.ts";

/** What column generation knows at its end. */
export interface Mixture {
  /** Every pattern that was ever of use, those of before included, without rails that are not wanted. */
  readonly pool: readonly Pattern[];
  /** How often each pattern of the pool is chopped in the cheapest mixture. */
  readonly amounts: Float64Array;
  /** What one more of each kind is worth there. */
  readonly values: Float64Array;
  readonly bound: ChoppingLimits;
}

/** What no plan for the whole demand goes below. */
export interface ChoppingLimits {
  /** In the planner's prices. */
  readonly price: number;
  readonly cost: number;
}

/**
 * The cheapest mixture of patterns, parts of lengths allowed (Gilmore and Gomory 1961), begun from
 * the patterns of `pool`. Where lengths may run out, a rail may be left out for a price above all
 * others. Values begin with the rails' own lengths and lie half-way to those of the best bound, which
 * spares rounds (Wentges 1997). It ends when no pattern makes it cheaper, or when `settled` says that
 * the bound is as good as the mixture.
 */
export function mixtureOf(
  whole: WholeChopping,
  pricing: Pricing,
  pool: readonly Pattern[],
  settled: (bound: ChoppingLimits, mixed: number) => boolean,
  timeIsUp: () => boolean,
): Mixture {
  const { master, take, patterns, numbers, rows, gain } = masterOf(whole);
  const limits = Int32Array.from(whole.kinds, ({ count }) => count);
  for (const pattern of pool) {
    const wanted = wantedOf(pattern, limits);
    if (wanted !== null) take(wanted);
  }
  let price = 0;
  let cost = 0;
  let centre = Float64Array.from(whole.kinds, ({ weight, count }) => (count > 0 ? weight : 0));
  /** Prices the values out; true when a pattern was taken that makes the mixture cheaper. */
  const round = (values: Float64Array<ArrayBuffer>): boolean => {
    const { bound, patterns: found } = boundByPricing(whole, pricing, values);
    cost = Math.max(cost, bound.cost);
    if (bound.price > price) {
      price = bound.price;
      centre = values;
    }
    const better = found.filter(
      (pattern) => pattern !== null && gain(pattern) > 1e-7 * (1 + at(whole.stocks, pattern.stock).price),
    );
    return better.map((pattern) => pattern !== null && take(pattern)).includes(true);
  };
  const valuesNow = (): Float64Array<ArrayBuffer> => {
    const values = new Float64Array(whole.kinds.length);
    rows.forEach((kind, row) => {
      values[kind] = Math.max(0, at(master.duals, row));
    });
    return values;
  };
  round(centre);
  for (;;) {
    master.solve(4 * master.duals.length + 200);
    const mixed = master.cost();
    if (timeIsUp() || price >= mixed * (1 - 1e-7) || settled({ price, cost }, mixed)) break;
    const values = valuesNow();
    const between = values.map((value, kind) => (value + at(centre, kind)) / 2);
    if (!round(between) && !round(values)) break;
  }
  const all = master.amounts();
  const amounts = Float64Array.from(numbers, (number) => at(all, number));
  return { pool: patterns, amounts, values: valuesNow(), bound: { price, cost } };
}

/** The bound that values of the kinds give, with the patterns worth most at them. */
export function boundByPricing(
  whole: WholeChopping,
  pricing: Pricing,
  values: ArrayLike<number>,
): { readonly bound: ChoppingLimits; readonly patterns: readonly (Pattern | null)[] } {
  const { kinds, stocks } = whole;
  const limits = kinds.map(({ count }) => count);
  const { worth, patterns } = pricing.best(stocks, values, limits);
  const prices = stocks.map(({ price, copies }) => ({ cost: price, copies }));
  return {
    bound: {
      price: boundByValues({ kinds, stocks: prices }, values, worth),
      cost: boundByValues(whole, values, worth),
    },
    patterns,
  };
}

const keyOf = ({ stock, kinds, counts }: Pattern): string => `${stock}|${kinds.join()}|${counts.join()}`;

/** The master problem of a job, a row for each kind that is wanted and each stock that may run out. */
function masterOf(whole: WholeChopping) {
  const { kinds, stocks } = whole;
  const rows = kinds.flatMap(({ count }, kind) => (count > 0 ? [kind] : []));
  const rowOf = new Map(rows.map((kind, row) => [kind, row]));
  const limited = stocks.flatMap(({ copies }, stock) =>
    copies > 0 && copies < Number.POSITIVE_INFINITY ? [stock] : [],
  );
  const limitRow = new Map(limited.map((stock, index) => [stock, rows.length + index]));
  const column = (pattern: Pattern): Column => {
    const cost = at(stocks, pattern.stock).price;
    const own = pattern.kinds.map((kind) => rowOf.get(kind) ?? -1);
    const row = limitRow.get(pattern.stock);
    if (row === undefined) return { cost, rows: own, amounts: pattern.counts };
    return { cost, rows: [...own, row], amounts: [...pattern.counts, -1] };
  };
  const singles = whole.scarce ? [] : rows.map((kind) => single(whole, kind));
  const dear = 10 * stocks.reduce((most, { price }) => Math.max(most, price), 1);
  const first = whole.scarce
    ? rows.map((_, row) => ({ cost: dear, rows: [row], amounts: [1] }))
    : singles.map(column);
  const wanted = [
    ...rows.map((kind) => at(kinds, kind).count),
    ...limited.map((stock) => -at(stocks, stock).copies),
  ];
  const master = new Master(wanted, [...first, ...limited.map(() => null)]);
  // A longer rail's place serves a shorter one, so values never rise as rails get shorter (Valério de Carvalho 2005).
  for (let row = 1; row < rows.length; row++) master.add({ cost: 0, rows: [row - 1, row], amounts: [-1, 1] });
  const patterns: Pattern[] = [...singles];
  const numbers = singles.map((_, number) => number);
  const known = new Set(singles.map(keyOf));
  /** Adds a pattern to the problem; false when it is known. */
  const take = (pattern: Pattern): boolean => {
    const key = keyOf(pattern);
    if (known.has(key)) return false;
    known.add(key);
    patterns.push(pattern);
    numbers.push(master.add(column(pattern)));
    return true;
  };
  /** By how much what a pattern gives is worth more than its price. */
  const gain = (pattern: Pattern): number => {
    const { cost, rows: own, amounts } = column(pattern);
    return own.reduce((sum, row, k) => sum + at(master.duals, row) * at(amounts, k), 0) - cost;
  };
  return { master, take, patterns, numbers, rows, gain };
}

/** One kind alone on the length that never runs out and gives it for the least. */
function single({ kinds, stocks }: WholeChopping, kind: number): Pattern {
  const { weight, count } = at(kinds, kind);
  const fitting = stocks.flatMap(({ capacity, copies, price }, stock) => {
    if (copies !== Number.POSITIVE_INFINITY || capacity < weight) return [];
    const fits = Math.min(count, Math.floor(capacity / weight));
    return [{ stock, fits, rate: price / fits }];
  });
  const [best] = fitting.toSorted((a, b) => a.rate - b.rate);
  if (best === undefined) throw new RangeError("a kind fits no length that never runs out");
  return { stock: best.stock, kinds: [kind], counts: [best.fits] };
}
