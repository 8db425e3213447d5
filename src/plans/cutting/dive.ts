import { at } from "./at.ts";
import { generated, type Generated } from "./columns.ts";
import { greedyPlan, type RoughPlan, WAYS } from "./first.ts";
import { countKinds, extent, type Layout, type Part } from "./layout.ts";
import { remainder } from "./patterns.ts";
import type { PricingTable } from "./pricing.ts";
import type { WholeJob } from "./whole.ts";

/** Rounds of pricing for what is left after each step of a dive. */
const ROUNDS = 3;
/** The last sheets of a dive are laid piece by piece. */
const LAST_SHEETS = 6;

/**
 * A whole plan out of a mixture: every layout that is cut once and more is taken that often, then the
 * one nearest to a whole sheet; what is left is mixed anew, and so on. The last few sheets, and all
 * when `timeIsUp`, are laid by `last`.
 */
export function dived(
  job: WholeJob,
  table: PricingTable,
  mixture: Generated,
  last: (rest: WholeJob) => RoughPlan,
  timeIsUp: () => boolean,
): RoughPlan {
  const layouts: Layout[] = [];
  let mixed = mixture;
  let rest = job;
  for (;;) {
    const sheets = mixed.amounts.reduce((sum, amount) => sum + amount, 0);
    if (sheets < LAST_SHEETS || timeIsUp()) break;
    const taken = takenOf(rest, mixed);
    if (taken.length === 0) break;
    layouts.push(...taken);
    rest = remainder(job, layouts);
    if (rest.kinds.every(({ count }) => count === 0)) break;
    mixed = generated(rest, table, mixed.pool, ROUNDS, timeIsUp);
  }
  const end = last(rest);
  const placed = Int32Array.from(end.placed, (count, kind) => {
    return count + at(job.kinds, kind).count - at(rest.kinds, kind).count;
  });
  return { layouts: [...layouts, ...end.layouts], placed };
}

/** What is laid greedily, in the way that costs least. */
export function cheapestGreedy(rest: WholeJob): RoughPlan {
  const costOf = (plan: RoughPlan) =>
    plan.layouts.reduce((sum, { stock }) => sum + at(rest.stocks, stock).cost, 0);
  const [first, ...more] = WAYS.slice(0, 8).map((way) => greedyPlan(rest, way, false));
  if (first === undefined) throw new RangeError("no way to lay anything");
  return more.reduce((best, plan) => (costOf(plan) < costOf(best) ? plan : best), first);
}

/** The layouts that a step of a dive settles on, without the pieces that are not wanted any more. */
function takenOf(rest: WholeJob, { pool, amounts }: Generated): Layout[] {
  const left = Int32Array.from(rest.kinds, ({ count }) => count);
  const copies = rest.stocks.map((stock) => stock.copies);
  const taken: Layout[] = [];
  const take = (layout: Layout): void => {
    if (at(copies, layout.stock) < 1) return;
    const root = pruned(layout.root, left);
    if (root === null) return;
    copies[layout.stock] = at(copies, layout.stock) - 1;
    taken.push({ stock: layout.stock, root });
  };
  pool.forEach((layout, index) => {
    for (let copy = 0; copy < Math.floor(at(amounts, index) + 1e-6); copy++) take(layout);
  });
  if (taken.length > 0) return taken;
  let nearest = -1;
  amounts.forEach((amount, index) => {
    if (amount > 1e-6 && (nearest < 0 || amount > at(amounts, nearest))) nearest = index;
  });
  const layout = pool[nearest];
  if (layout !== undefined) take(layout);
  return taken;
}

/** A layout with the pieces alone that are still wanted, which are taken off `left`; null when none is. */
function pruned(part: Part, left: Int32Array): Part | null {
  const counts = new Int32Array(left.length);
  countKinds(part, counts);
  if (counts.every((count, kind) => count <= at(left, kind))) {
    counts.forEach((count, kind) => (left[kind] = at(left, kind) - count));
    return part;
  }
  if (part.is === "piece") return null;
  let { rest } = part;
  const parts: Part[] = [];
  for (const one of part.parts) {
    const kept = pruned(one, left);
    if (kept === null) rest += extent(one, part.axis);
    else parts.push(kept);
  }
  return parts.length === 0 ? null : { ...part, parts, rest };
}
