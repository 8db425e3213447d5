import { at } from "../at.ts";
import { BenchState } from "./bench-state.ts";
import { benchFaults } from "./check.ts";
import { type BenchJob, requireSoundBatch } from "./job.ts";
import { exchanged } from "./exchange.ts";
import { type Kinds, kindsOf } from "./kinds.ts";
import { goodOrder, tryOrders } from "./order.ts";
import { boundByPairs } from "./pairs.ts";
import type { BenchBound, BenchPlan, Run } from "./plan.ts";
import { arrowsOf } from "./arrows.ts";
import { fewestTurns } from "./turns.ts";

/** Branchings spent on the bound, and on trying orders; a small batch is done long before. */
const BOUND_STEPS = 1000;
const PAIR_STEPS = 50;
const ORDER_STEPS = 2000;
/** Exchanges in a long order: so many, divided by the cuts that each has to try. */
const EXCHANGES = 1e8;
/** Orders are tried where the best is this near to the bound: further away there are too many. */
const NEAR = 2;

/**
 * The order of a batch that sets the stop the fewest times, with a number of times that no order can go
 * below. Exact for small batches; of hundreds of mats the order is good and the bound is true, and
 * `proven` says whether they meet. The same batch gives the same order.
 * Every order is passed through the checker before it is handed out.
 * Throws RangeError for a batch that is not sound (see `requireSoundBatch`).
 */
export function planBench(job: BenchJob): BenchPlan {
  requireSoundBatch(job);
  const kinds = kindsOf(job);
  const start = BenchState.start(kinds);
  const { best, bound } = shortest(kinds, start);
  const cuts = kinds.own.reduce((sum, places) => sum + places.length, 0);
  const path = exchanged(kinds, best.path, bound.runs, Math.floor(EXCHANGES / cuts));
  const plan: BenchPlan = {
    runs: runsOf(job, kinds, path),
    bound,
    proven: path.length === bound.runs,
  };
  const faults = benchFaults(job, plan);
  if (faults.length > 0)
    throw new Error(`the planner made an order that does not hold: ${JSON.stringify(faults[0])}`);
  return plan;
}

function shortest(
  kinds: Kinds,
  start: BenchState,
): { readonly best: BenchState; readonly bound: BenchBound } {
  let best = goodOrder(start);
  let bound = boundOf(kinds, start, best.path.length);
  const steps = Math.min(ORDER_STEPS, Math.floor(2e6 / (kinds.own.length * kinds.figures.length)));
  while (bound.runs < best.path.length && best.path.length - bound.runs <= NEAR) {
    const tried = tryOrders(start, bound.runs, steps);
    if (tried.found !== null) best = tried.found;
    else if (tried.all) bound = { runs: bound.runs + 1, how: "orders" };
    else break;
  }
  return { best, bound };
}

function boundOf(kinds: Kinds, start: BenchState, reached: number): BenchBound {
  const figures = kinds.figures.length;
  if (figures === reached) return { runs: figures, how: "figures" };
  const turns = figures + fewestTurns(arrowsOf(kinds, start), BOUND_STEPS).atLeast;
  const paired = turns === reached ? 0 : boundByPairs(kinds, start, PAIR_STEPS);
  if (paired > turns) return { runs: paired, how: "pairs" };
  return { runs: turns, how: turns === figures ? "figures" : "turns" };
}

/** The figures of an order with the mats that are cut at each, a mat as soon as it can be. */
function runsOf(job: BenchJob, kinds: Kinds, path: readonly number[]): readonly Run[] {
  const left = job.mats.map(({ settings }) => new Set(settings));
  const next = job.mats.map((): number[] => []);
  const waiting = kinds.waits.map((others, mat) => {
    for (const other of others) next[other]?.push(mat);
    return others.length;
  });
  const having = new Map<number, number[]>();
  job.mats.forEach(({ settings }, mat) => {
    for (const setting of settings) having.set(setting, [...(having.get(setting) ?? []), mat]);
  });
  return path.map((place) => {
    const setting = at(kinds.figures, place);
    const mats: number[] = [];
    const can = (having.get(setting) ?? []).filter((mat) => at(waiting, mat) === 0);
    for (const mat of can) {
      if (!at(left, mat).delete(setting)) continue;
      mats.push(mat);
      if (at(left, mat).size > 0) continue;
      for (const follower of at(next, mat)) {
        waiting[follower] = at(waiting, follower) - 1;
        if (waiting[follower] === 0 && at(left, follower).has(setting)) can.push(follower);
      }
    }
    return { setting, mats };
  });
}
