import { at } from "../at.ts";
import { type Choice, costOf } from "./choice.ts";
import { type Relaxed, relaxed, type Settled } from "./relaxed.ts";
import { swapped } from "./swapped.ts";
import { Table } from "./table.ts";

/** The best choice of at most so many sizes, and what surely no such choice costs less than. */
export interface Chosen {
  readonly sizes: readonly number[];
  readonly cost: number;
  readonly bound: number;
  /** The multipliers of its bound, from which those of one size more are soon found. */
  readonly values: Float64Array;
}

const ROOT_STEPS = 300;
const NODE_STEPS = 40;

/**
 * The cheapest choice of at most `most` sizes, by branch and bound: the bound is Lagrange's, a size is
 * chosen or left out, and since all prices are whole a branch is done when its bound is above the best cost
 * less one. `start` must serve every row. After `steps` branches the best so far is given, with what its
 * branches left open.
 */
export function choose(
  choice: Choice,
  most: number,
  start: readonly number[],
  steps: number,
  values: Float64Array = firstValues(choice),
): Chosen {
  const table = new Table(choice);
  let best = swapped(table, most, start);
  let cost = costOf(choice, best);
  let left = steps;
  let openBound = Number.POSITIVE_INFINITY;
  let rootValues = values;
  const branch = (before: Settled, from: Float64Array, effort: number): void => {
    if (!canServe(choice, before)) return;
    const found = relaxed(table, most, before, from, cost, effort);
    if (effort === ROOT_STEPS) rootValues = found.values;
    if (isDone(found.bound, cost)) return;
    const fixed = [...before.state.keys()].filter((size) => at(before.state, size) === 1);
    const suggested = [...fixed, ...found.suggests];
    // Making a choice better takes longer than judging it: at the start, and where it is better already.
    const isStart = effort === ROOT_STEPS;
    offer(isStart || costOf(choice, suggested) < cost ? swapped(table, most, suggested) : suggested);
    if (isDone(found.bound, cost)) return;
    // Where nothing more may be chosen, what is settled was the choice.
    if (before.chosen === most || !before.state.includes(0)) return;
    const settled = narrowed(before, found, most, cost);
    const next = found.suggests.find((size) => at(settled.state, size) === 0) ?? settled.state.indexOf(0);
    if (settled.chosen === most || next < 0) {
      // All the rest is settled by the bound: what is left is one choice.
      offer([...settled.state.keys()].filter((size) => at(settled.state, size) === 1));
      return;
    }
    if (left <= 0) {
      openBound = Math.min(openBound, found.bound);
      return;
    }
    left -= 1;
    branch(withSize(settled, next, 1), found.values, NODE_STEPS);
    branch(withSize(settled, next, -1), found.values, NODE_STEPS);
  };
  const offer = (sizes: readonly number[]): void => {
    const price = costOf(choice, sizes);
    if (price >= cost) return;
    best = sizes;
    cost = price;
  };
  branch({ state: new Int8Array(choice.prices.length), chosen: 0 }, values, ROOT_STEPS);
  const bound = openBound === Number.POSITIVE_INFINITY ? cost : Math.ceil(openBound - slack(openBound));
  return { sizes: best, cost, bound: Math.min(cost, bound), values: rootValues };
}

/** Between the prices of the cheapest size and the next: near to what the bound ends at. */
const firstValues = ({ prices, rows }: Choice): Float64Array =>
  Float64Array.from(rows, ({ servedBy, weight }) => {
    const [first = 0, second = first] = servedBy;
    return (weight * (at(prices, first) + at(prices, second))) / 2;
  });

/** Sums of reals may be off by this much. */
const slack = (bound: number): number => 1e-9 * (1 + Math.abs(bound));

/** Whether nothing below the cost can lie above a bound, all costs being whole. */
const isDone = (bound: number, cost: number): boolean => bound - slack(bound) > cost - 1;

/** With every size settled that the bound settles: what cannot be chosen, or left out, in any cheaper choice. */
function narrowed(
  { state, chosen }: Settled,
  { bound, suggests, worth }: Relaxed,
  most: number,
  cost: number,
): Settled {
  const next = state.slice();
  let count = chosen;
  const full = chosen + suggests.length === most;
  // What the last place among the chosen is worth, and the first one that is not among them.
  const last = full ? at(worth, suggests.at(-1) ?? 0) : 0;
  const others = [...state.keys()].filter((size) => at(state, size) === 0 && !suggests.includes(size));
  const first = others.reduce((best, size) => Math.max(best, at(worth, size)), 0);
  for (const size of others) if (isDone(bound + last - at(worth, size), cost)) next[size] = -1;
  for (const size of suggests) {
    if (!isDone(bound + at(worth, size) - first, cost)) continue;
    next[size] = 1;
    count++;
  }
  return { state: next, chosen: count };
}

const withSize = ({ state, chosen }: Settled, size: number, is: 1 | -1): Settled => {
  const next = state.slice();
  next[size] = is;
  return { state: next, chosen: is === 1 ? chosen + 1 : chosen };
};

const canServe = ({ rows }: Choice, { state }: Settled): boolean =>
  rows.every(({ servedBy }) => servedBy.some((size) => at(state, size) >= 0));
