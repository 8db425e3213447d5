import { at } from "../at.ts";
import type { Choice } from "./choice.ts";

/** What is settled of a choice on the way to it. */
export interface Settled {
  /** For each size: 1 chosen, -1 left out, 0 open. */
  readonly state: Int8Array;
  /** How many are chosen. */
  readonly chosen: number;
}

/** A bound on every choice that keeps what is settled, and what it suggests. */
export interface Relaxed {
  readonly bound: number;
  /** The multipliers that gave it, to start from elsewhere. */
  readonly values: Float64Array;
  /** The open sizes that it would choose, the most useful first. */
  readonly suggests: readonly number[];
}

/**
 * A lower bound by Lagrange multipliers: that every row is served once is not asked for but paid for, by a
 * value for each row. Then a size is worth the sum of what its rows pay above its price, and the best `most`
 * sizes are simply the `most` worthiest. Any values give a true bound; a subgradient walk raises it.
 */
export function relaxed(
  choice: Choice,
  most: number,
  settled: Settled,
  start: Float64Array,
  target: number,
  steps: number,
): Relaxed {
  const { prices, rows } = choice;
  let values = start.slice();
  let best: Relaxed = { bound: Number.NEGATIVE_INFINITY, values: values.slice(), suggests: [] };
  let pace = 1.5;
  let idle = 0;
  const worth = new Float64Array(prices.length);
  for (let step = 0; step < steps; step++) {
    worth.fill(0);
    for (const [row, { servedBy, weight }] of rows.entries()) {
      const value = at(values, row);
      for (const size of servedBy) {
        // The innermost of all loops: every place is known to hold a number.
        const gain = value - weight * (prices[size] ?? 0);
        if (gain <= 0) break;
        worth[size] = (worth[size] ?? 0) + gain;
      }
    }
    const open = [...prices.keys()]
      .filter((size) => at(settled.state, size) === 0 && at(worth, size) > 0)
      .toSorted((a, b) => at(worth, b) - at(worth, a))
      .slice(0, most - settled.chosen);
    let bound = values.reduce((sum, value) => sum + value, 0);
    const taken = new Uint8Array(prices.length);
    for (const size of open) taken[size] = 1;
    settled.state.forEach((is, size) => {
      if (is === 1) taken[size] = 1;
    });
    taken.forEach((is, size) => {
      if (is === 1) bound -= at(worth, size);
    });
    idle += 1;
    if (bound > best.bound) {
      best = { bound, values: values.slice(), suggests: open };
      idle = 0;
    }
    if (best.bound >= target) return best;
    if (idle >= 12) {
      pace /= 2;
      idle = 0;
      values = best.values.slice();
      if (pace < 1e-3) break;
      continue;
    }
    // Rows that nobody serves pay more, those that several serve less.
    const slope = rows.map(({ servedBy, weight }, row) => {
      const value = at(values, row);
      let served = 0;
      for (const size of servedBy) {
        if (value - weight * (prices[size] ?? 0) <= 0) break;
        served += taken[size] ?? 0;
      }
      return 1 - served;
    });
    const norm = slope.reduce((sum, one) => sum + one * one, 0);
    if (norm === 0) break;
    const stride = (pace * Math.max(target - bound, 1)) / norm;
    values = values.map((value, row) => Math.max(0, value + stride * at(slope, row)));
  }
  return best;
}
