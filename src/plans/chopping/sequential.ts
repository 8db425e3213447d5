import { at } from "../at.ts";
import type { Chance } from "../chance.ts";
import { decreasing } from "./first.ts";
import { compareRough, loadOf, type RoughChopping, roughOf, takeOff } from "./patterns.ts";
import type { Pricing } from "./pricing.ts";
import type { Pattern, WholeChopping } from "./whole.ts";

/** How far and how long a search goes. */
export interface ChoppingWork {
  readonly pricing: Pricing;
  readonly chance: Chance;
  /** Whether a plan for the whole job at this price leaves nothing to find. */
  readonly enough: (price: number) => boolean;
  readonly timeIsUp: () => boolean;
}

/** Longer rails are worth a little more than their length: they are the harder to place. */
const STEEPNESS = 1.02;

/** So many lengths are filled between two looks at the time. */
const FILLS = 8;

/**
 * One length after the other, each filled with what is worth most of what is left, again and again
 * with the values put right: kinds that came to lie on lengths with much waste are worth more in the
 * next turn (sequential value correction, after Mukhacheva and others 2000, Belov and Scheithauer
 * 2007). The first turn, by length alone, fills each length as far as it can be filled (minimum bin
 * slack, Gupta and Ho 1999). `fixed` is what the rest of the plan weighs already. Where the time is up
 * before the end of the first turn it is laid by falling length.
 */
export function sequential(
  whole: WholeChopping,
  fixed: number,
  turns: number,
  work: ChoppingWork,
): RoughChopping {
  const lengths = Float64Array.from(whole.kinds, ({ weight }) => weight ** STEEPNESS);
  const values = lengths.slice();
  let best: RoughChopping | null = null;
  for (let turn = 0; turn < turns; turn++) {
    const bars = turnOf(whole, lengths, values, work);
    if (bars === null) break;
    const found = roughOf(whole, bars);
    if (best === null || compareRough(found, best) < 0) best = found;
    if (work.timeIsUp() || (best.missing === 0 && work.enough(fixed + best.price))) break;
  }
  return best ?? decreasing(whole, "best");
}

/** One turn; null when the time is up before its end. */
function turnOf(
  whole: WholeChopping,
  lengths: Float64Array,
  values: Float64Array,
  { pricing, chance, timeIsUp }: ChoppingWork,
): Pattern[] | null {
  const left = Int32Array.from(whole.kinds, ({ count }) => count);
  const stocks = whole.stocks.map((stock) => ({ ...stock }));
  const cheapest = Math.min(...stocks.map(({ price, capacity }) => price / Math.max(1, capacity)));
  const bars: Pattern[] = [];
  for (let fill = 1; ; fill++) {
    if (fill % FILLS === 0 && timeIsUp()) return null;
    const { worth, patterns } = pricing.best(stocks, values, left);
    let best = -1;
    let most = 0;
    worth.forEach((value, stock) => {
      const rate = value / Math.max(at(stocks, stock).price, 1e-12);
      if (patterns[stock] === null || rate <= most) return;
      most = rate;
      best = stock;
    });
    const pattern = patterns[best] ?? null;
    const stock = stocks[best];
    if (pattern === null || stock === undefined) return bars;
    const often = timesOf(pattern, left, stock.copies);
    stock.copies -= often;
    for (let copy = 0; copy < often; copy++) {
      bars.push(pattern);
      takeOff(left, pattern);
    }
    // What this length costs by the length of its rails, against the best there could be.
    const dearness = Math.min(4, stock.price / loadOf(whole, pattern) / Math.max(cheapest, 1e-12)) || 1;
    for (const kind of pattern.kinds) {
      const { count } = at(whole.kinds, kind);
      const weight = ((1 + chance.next()) * (count + at(left, kind))) / count;
      values[kind] = (weight * at(values, kind) + at(lengths, kind) * dearness) / (weight + 1);
    }
  }
}

/** How often a pattern is taken at once: half as often as it could be, so that the values stay right. */
function timesOf({ kinds, counts }: Pattern, left: Int32Array, copies: number): number {
  const most = kinds.reduce(
    (times, kind, index) => Math.min(times, Math.floor(at(left, kind) / at(counts, index))),
    copies,
  );
  return Math.max(1, Math.floor(most / 2));
}
