import { at } from "../at.ts";
import { patternOf, type RoughChopping, roughOf } from "./patterns.ts";
import type { LengthStock, Pattern, WholeChopping } from "./whole.ts";

/** So few rails have few enough sets: 3 to the tenth ways to split each set in two, for every stock. */
const MOST_RAILS = 10;
const MOST_LAYERS = 40;

/**
 * The cheapest plan of a few rails, by the cheapest way to make every set of them: out of the stocks
 * that came before, or with one more length of this one. Null where there are too many rails, or where
 * no plan makes them all.
 */
export function cheapestOfFew(whole: WholeChopping): RoughChopping | null {
  const rails = whole.kinds.flatMap(({ count }, kind) => Array.from({ length: count }, () => kind));
  const layers = layersOf(whole.stocks, rails.length);
  if (rails.length > MOST_RAILS || layers.length > MOST_LAYERS) return null;
  const all = (1 << rails.length) - 1;
  const loads = loadsOf(rails.map((kind) => at(whole.kinds, kind).weight));
  let prices = new Float64Array(all + 1).fill(Number.POSITIVE_INFINITY);
  prices[0] = 0;
  const taken = layers.map(({ stock, endless }) => {
    const { capacity, price } = at(whole.stocks, stock);
    const next = prices.slice();
    const chosen = new Int32Array(all + 1);
    // An endless stock may be used again on top of itself.
    const below = endless ? next : prices;
    for (let set = 1; set <= all; set++)
      for (let part = set; part > 0; part = (part - 1) & set) {
        const sum = at(below, set ^ part) + price;
        if (at(loads, part) > capacity || sum >= at(next, set)) continue;
        next[set] = sum;
        chosen[set] = part;
      }
    prices = next;
    return chosen;
  });
  if (!Number.isFinite(at(prices, all))) return null;
  return roughOf(whole, barsOf(whole, rails, layers, taken));
}

/** One layer a stock, or one a copy where it runs out. */
interface Layer {
  readonly stock: number;
  readonly endless: boolean;
}

const layersOf = (stocks: readonly LengthStock[], rails: number): readonly Layer[] =>
  stocks.flatMap(({ copies }, stock): readonly Layer[] =>
    copies >= rails
      ? [{ stock, endless: true }]
      : Array.from({ length: copies }, () => ({ stock, endless: false })),
  );

/** What every set of rails weighs. */
function loadsOf(weights: readonly number[]): Float64Array {
  const loads = new Float64Array(1 << weights.length);
  for (let set = 1; set < loads.length; set++) {
    const lowest = set & -set;
    loads[set] = at(loads, set ^ lowest) + at(weights, 31 - Math.clz32(lowest));
  }
  return loads;
}

/** The lengths of the cheapest plan, from the last layer back. */
function barsOf(
  whole: WholeChopping,
  rails: readonly number[],
  layers: readonly Layer[],
  taken: readonly Int32Array[],
): readonly Pattern[] {
  const bars: Pattern[] = [];
  let left = (1 << rails.length) - 1;
  for (let layer = layers.length - 1; layer >= 0; layer--) {
    const { stock, endless } = at(layers, layer);
    for (let part = at(at(taken, layer), left); part > 0; part = endless ? at(at(taken, layer), left) : 0) {
      const counts = new Int32Array(whole.kinds.length);
      rails.forEach((kind, index) => {
        if (part & (1 << index)) counts[kind] = at(counts, kind) + 1;
      });
      bars.push(patternOf(stock, counts));
      left ^= part;
    }
  }
  return bars;
}
