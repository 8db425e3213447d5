import { at } from "../at.ts";
import { type Choice, costOf } from "./choice.ts";
import { relaxed, type Settled } from "./relaxed.ts";

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
  let best = swapped(choice, most, start);
  let cost = costOf(choice, best);
  let left = steps;
  let openBound = Number.POSITIVE_INFINITY;
  let rootValues = values;
  const branch = (settled: Settled, from: Float64Array, effort: number): void => {
    if (!canServe(choice, settled)) return;
    const found = relaxed(choice, most, settled, from, cost, effort);
    if (effort === ROOT_STEPS) rootValues = found.values;
    if (isDone(found.bound, cost)) return;
    const fixed = [...settled.state.keys()].filter((size) => at(settled.state, size) === 1);
    const suggested = [...fixed, ...found.suggests];
    // Making a choice better takes longer than judging it: at the start, and where it is better already.
    const isStart = effort === ROOT_STEPS;
    offer(isStart || costOf(choice, suggested) < cost ? swapped(choice, most, suggested) : suggested);
    if (isDone(found.bound, cost)) return;
    // Where nothing more may be chosen, what is settled was the choice.
    const next = found.suggests[0] ?? settled.state.indexOf(0);
    if (settled.chosen === most || next < 0) return;
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

const withSize = ({ state, chosen }: Settled, size: number, is: 1 | -1): Settled => {
  const next = state.slice();
  next[size] = is;
  return { state: next, chosen: is === 1 ? chosen + 1 : chosen };
};

const canServe = ({ rows }: Choice, { state }: Settled): boolean =>
  rows.every(({ servedBy }) => servedBy.some((size) => at(state, size) >= 0));

/** A choice made better by adding sizes while there is room and by putting one in another's place, as long as either saves. */
function swapped(choice: Choice, most: number, start: readonly number[]): readonly number[] {
  let best = [...new Set(start)].slice(0, most);
  let cost = costOf(choice, best);
  for (let changed = true; changed; ) {
    changed = false;
    for (const size of choice.prices.keys()) {
      if (best.includes(size)) continue;
      const ways =
        best.length < most
          ? [[...best, size]]
          : best.map((out) => [...best.filter((one) => one !== out), size]);
      for (const way of ways) {
        const price = costOf(choice, way);
        if (price >= cost) continue;
        best = way;
        cost = price;
        changed = true;
        break;
      }
    }
  }
  return best;
}
