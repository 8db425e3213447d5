import { at } from "../at.ts";
import type { Table } from "./table.ts";

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
  /** What each size is worth there. */
  readonly worth: Float64Array;
}

/**
 * A lower bound by Lagrange multipliers: that every row is served once is not asked for but paid for, by a
 * value for each row. Then a size is worth the sum of what its rows pay above its price, and the best `most`
 * sizes are simply the `most` worthiest. Any values give a true bound; a subgradient walk raises it.
 */
export function relaxed(
  table: Table,
  most: number,
  settled: Settled,
  start: Float64Array,
  target: number,
  steps: number,
): Relaxed {
  let values = start.slice();
  let best: Relaxed | null = null;
  let pace = 1.5;
  let idle = 0;
  const slope = new Int32Array(table.rows);
  for (let step = 0; step < steps; step++) {
    const now = judged(table, most, settled, values);
    idle += 1;
    if (best === null || now.bound > best.bound) {
      best = now;
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
    const norm = slopeOf(table, now, settled, slope);
    if (norm === 0) break;
    const stride = (pace * Math.max(target - now.bound, 1)) / norm;
    const before = values;
    values = new Float64Array(table.rows);
    for (let row = 0; row < table.rows; row++) {
      const value = (before[row] as number) + stride * (slope[row] as number);
      values[row] = value > 0 ? value : 0;
    }
  }
  return best ?? judged(table, most, settled, values);
}

/** The bound of some values. */
function judged(table: Table, most: number, { state, chosen }: Settled, values: Float64Array): Relaxed {
  const { begins, size, price } = table;
  const worth = new Float64Array(table.sizes);
  let bound = 0;
  for (let row = 0; row < table.rows; row++) {
    const value = values[row] as number;
    bound += value;
    const end = begins[row + 1] as number;
    for (let entry = begins[row] as number; entry < end; entry++) {
      const gain = value - (price[entry] as number);
      if (gain <= 0) break;
      const own = size[entry] as number;
      worth[own] = (worth[own] as number) + gain;
    }
  }
  const suggests = [...state.keys()]
    .filter((one) => at(state, one) === 0 && at(worth, one) > 0)
    .toSorted((a, b) => at(worth, b) - at(worth, a))
    .slice(0, most - chosen);
  for (const one of suggests) bound -= at(worth, one);
  state.forEach((is, one) => {
    if (is === 1) bound -= at(worth, one);
  });
  return { bound, values, suggests, worth };
}

/** Rows that nobody serves are to pay more, those that several serve less; gives the sum of squares. */
function slopeOf(table: Table, { values, suggests }: Relaxed, { state }: Settled, slope: Int32Array): number {
  const { begins, size, price } = table;
  const taken = Uint8Array.from(state, (is) => Number(is === 1));
  for (const one of suggests) taken[one] = 1;
  let norm = 0;
  for (let row = 0; row < table.rows; row++) {
    const value = values[row] as number;
    const end = begins[row + 1] as number;
    let served = 0;
    for (let entry = begins[row] as number; entry < end; entry++) {
      if (value - (price[entry] as number) <= 0) break;
      served += taken[size[entry] as number] as number;
    }
    slope[row] = 1 - served;
    norm += (1 - served) ** 2;
  }
  return norm;
}
