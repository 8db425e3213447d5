import { at } from "../at.ts";
import { type Mixture, mixtureOf } from "./columns.ts";
import { compareRough, loadOf, remainder, type RoughChopping, roughOf, takeOff } from "./patterns.ts";
import { type ChoppingWork, sequential } from "./sequential.ts";
import type { Pattern, WholeChopping } from "./whole.ts";

/** The last lengths of a dive are filled one after the other, so often anew. */
const TURNS = 6;
/** A pattern is taken when it keeps at least this part of its load. */
const FULL = 0.98;
/** A pattern that is chopped more often than this in the mixture is taken as a whole one. */
const NEARLY = 0.75;

/**
 * A whole plan out of a mixture: every pattern that is chopped once and more is taken that often,
 * then those nearest to a whole one; what is left is mixed anew, and so on. After each step the rest
 * is also filled length by length, and the best whole plan that comes of it is kept. `loose` sets how
 * far from the nearest a pattern may be that is taken, so that one dive differs from the next.
 */
export function dived(
  whole: WholeChopping,
  mixture: Mixture,
  best: RoughChopping,
  loose: number,
  work: ChoppingWork,
): RoughChopping {
  const bars: Pattern[] = [];
  let found = best;
  let mixed = mixture;
  let rest = whole;
  for (;;) {
    const taken = takenOf(rest, mixed, loose, work);
    bars.push(...taken);
    rest = remainder(whole, bars);
    const fixed = bars.reduce((sum, { stock }) => sum + at(whole.stocks, stock).price, 0);
    const end = sequential(rest, fixed, TURNS, work);
    const plan = roughOf(whole, [...bars, ...end.bars]);
    if (compareRough(plan, found) < 0) found = plan;
    const done = found.missing === 0 && work.enough(found.price);
    if (done || taken.length === 0 || end.bars.length < 2 || work.timeIsUp()) return found;
    mixed = mixtureOf(rest, work.pricing, usefulOf(whole, mixed), () => false, work.timeIsUp);
    // No way leads from here to a better plan.
    if (found.missing === 0 && fixed + mixed.bound.price > found.price - 1e-9 * (1 + found.price))
      return found;
  }
}

/** The patterns that a step settles on, without the rails that are not wanted any more. */
function takenOf(
  rest: WholeChopping,
  { pool, amounts }: Mixture,
  loose: number,
  work: ChoppingWork,
): Pattern[] {
  const left = Int32Array.from(rest.kinds, ({ count }) => count);
  const copies = rest.stocks.map((stock) => stock.copies);
  const taken: Pattern[] = [];
  /** Takes a pattern that keeps most of its load once it is served; false when it does not. */
  const take = (pattern: Pattern): boolean => {
    const served = servedBy(rest, pattern, left);
    if (served === null || at(copies, pattern.stock) < 1) return false;
    if (loadOf(rest, served) < FULL * loadOf(rest, pattern)) return false;
    copies[pattern.stock] = at(copies, pattern.stock) - 1;
    takeOff(left, served);
    taken.push(served);
    return true;
  };
  pool.forEach((pattern, index) => {
    for (let often = Math.floor(at(amounts, index) + 1e-6); often > 0 && take(pattern); often--);
  });
  const parts = pool
    .map((pattern, index) => {
      const amount = at(amounts, index) + 1e-6;
      return { pattern, part: amount - Math.floor(amount) };
    })
    .filter(({ part }) => part > 1e-4)
    .map(({ pattern, part }) => ({ pattern, part: part - loose * work.chance.next() }))
    .toSorted((a, b) => b.part - a.part);
  for (const { pattern, part } of parts) {
    if (taken.length > 0 && part < NEARLY) break;
    take(pattern);
  }
  return taken;
}

/**
 * A pattern with rails that are still wanted: in the place of those that are not, the longest shorter
 * ones, as the mixture has it, and whatever else fits then. null when none is wanted.
 */
function servedBy(rest: WholeChopping, { stock, kinds, counts }: Pattern, left: Int32Array): Pattern | null {
  const served = new Map<number, number>();
  let room = at(rest.stocks, stock).capacity;
  const put = (kind: number, most: number): number => {
    const { weight } = at(rest.kinds, kind);
    const had = served.get(kind) ?? 0;
    const count = Math.min(most, at(left, kind) - had, Math.floor(room / weight));
    if (count <= 0) return 0;
    served.set(kind, had + count);
    room -= count * weight;
    return count;
  };
  kinds.forEach((kind, index) => put(kind, at(counts, index)));
  for (let kind = at(kinds, 0); kind < rest.kinds.length; kind++) put(kind, Number.POSITIVE_INFINITY);
  const own = [...served.keys()].toSorted((a, b) => a - b);
  return own.length === 0 ? null : { stock, kinds: own, counts: own.map((kind) => served.get(kind) ?? 0) };
}

/** A pattern whose rails are worth less than this part of its price is not likely to be of use again. */
const USEFUL = 0.97;

/** The patterns that the mixture uses or may yet use. */
const usefulOf = (whole: WholeChopping, { pool, amounts, values }: Mixture): readonly Pattern[] =>
  pool.filter(({ stock, kinds, counts }, index) => {
    const worth = kinds.reduce((sum, kind, place) => sum + at(values, kind) * at(counts, place), 0);
    return at(amounts, index) > 0 || worth >= USEFUL * at(whole.stocks, stock).price;
  });
