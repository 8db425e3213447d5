import { at } from "../at.ts";
import { loadOf, type RoughChopping, roughOf } from "./patterns.ts";
import type { ChoppingWork } from "./sequential.ts";
import type { Pattern, WholeChopping } from "./whole.ts";

/** How many lengths are filled anew together at most. */
const TOGETHER = 4;

/**
 * Swaps between a few lengths at a time: their rails are chopped anew so that the first lengths are
 * filled as far as they can be, exactly where that is possible, and what is left over comes together
 * on the last, until a length falls empty or a cheaper one will do. Ends when the plan is good enough,
 * after `quiet` groups in a row without gain, or when the time is up.
 */
export function swapped(
  whole: WholeChopping,
  start: RoughChopping,
  quiet: number,
  work: ChoppingWork,
): RoughChopping {
  const { chance } = work;
  let best = start;
  let bars = [...start.bars];
  for (let turn = 0, last = 0; turn - last < quiet && bars.length > 1; turn++) {
    if (work.timeIsUp() || (best.missing === 0 && work.enough(best.price))) break;
    const group = new Set<number>();
    const size = Math.min(bars.length, 2 + chance.below(TOGETHER - 1));
    while (group.size < size) group.add(chance.below(bars.length));
    const own = [...group].map((index) => at(bars, index));
    const anew = filledAnew(whole, own, work);
    if (anew === null) continue;
    const gain = goodnessOf(whole, anew) - goodnessOf(whole, own);
    if (gain < 0) continue;
    bars = [...bars.filter((_, index) => !group.has(index)), ...anew];
    if (gain > 0) last = turn;
    if (anew.length < own.length) {
      best = roughOf(whole, bars);
      bars = [...best.bars];
    }
  }
  return roughOf(whole, bars);
}

/** The same rails on the same lengths or fewer of them; null where they do not all find room. */
function filledAnew(whole: WholeChopping, own: readonly Pattern[], work: ChoppingWork): Pattern[] | null {
  const left = new Int32Array(whole.kinds.length);
  for (const { kinds, counts } of own)
    kinds.forEach((kind, index) => (left[kind] = at(left, kind) + at(counts, index)));
  const out: Pattern[] = [];
  // The dearest for its length last: it is the one to be spared.
  const rate = ({ stock }: Pattern): number =>
    at(whole.stocks, stock).price / at(whole.stocks, stock).capacity;
  for (const { stock } of own.toSorted((a, b) => rate(a) - rate(b))) {
    const values = whole.kinds.map(({ weight }, kind) =>
      at(left, kind) > 0 ? weight * (1 + 1e-4 * work.chance.next()) : 0,
    );
    const found = work.pricing.best([{ ...at(whole.stocks, stock), copies: 1 }], values, left);
    const pattern = found.patterns[0] ?? null;
    if (pattern === null) break;
    pattern.kinds.forEach((kind, index) => (left[kind] = at(left, kind) - at(pattern.counts, index)));
    out.push({ ...pattern, stock });
  }
  return left.every((count) => count === 0) ? out : null;
}

/** Full lengths beside emptier ones are better than all half full; one less than all else. */
function goodnessOf(whole: WholeChopping, bars: readonly Pattern[]): number {
  return bars.reduce((sum, bar) => sum + loadOf(whole, bar) ** 2, 0);
}
