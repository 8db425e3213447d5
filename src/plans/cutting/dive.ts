import { at } from "../at.ts";
import type { Chance } from "../chance.ts";
import type { Mixture } from "./columns.ts";
import { greedyPlan, type RoughPlan, WAYS } from "./first.ts";
import { countKinds, extent, type Layout, type Part } from "./layout.ts";
import { remainder } from "./patterns.ts";
import type { WholeJob } from "./whole.ts";

/** The last sheets of a dive are laid piece by piece. */
const LAST_SHEETS = 4;

/** How a dive goes. */
export interface Dive {
  /** Blurs which layout is taken next; null: the fullest one always. */
  readonly chance: Chance | null;
  /** Rounds of pricing where the rest has become dearer. */
  readonly rounds: number;
  /** Lays what is left at the end. */
  readonly last: (rest: WholeJob) => RoughPlan;
  readonly timeIsUp: () => boolean;
}

/**
 * A whole plan out of a mixture: every layout that is cut once and more is taken that often, then the
 * one nearest to a whole sheet; what is left is mixed anew, priced where it has become
 * dearer, and so on. The last few sheets, and all when `timeIsUp`, are laid by `last`.
 */
export function dived(job: WholeJob, mixture: Mixture, { chance, rounds, last, timeIsUp }: Dive): RoughPlan {
  const layouts: Layout[] = [];
  let rest = job;
  let spent = 0;
  let priced = Number.NEGATIVE_INFINITY;
  for (;;) {
    mixture.want(rest);
    if (spent + mixture.cost() > priced * (1 + 1e-9) + 1e-6) {
      mixture.price(rounds, timeIsUp);
      priced = spent + mixture.cost();
    }
    const amounts = mixture.amounts();
    const sheets = amounts.reduce((sum, amount) => sum + amount, 0);
    if (sheets < LAST_SHEETS || timeIsUp()) break;
    const taken = takenOf(rest, mixture.layouts, amounts, chance);
    if (taken.length === 0) break;
    layouts.push(...taken);
    for (const { stock } of taken) spent += at(job.stocks, stock).cost;
    rest = remainder(job, layouts);
    if (rest.kinds.every(({ count }) => count === 0)) break;
  }
  const end = last(rest);
  const placed = Int32Array.from(end.placed, (count, kind) => {
    return count + at(job.kinds, kind).count - at(rest.kinds, kind).count;
  });
  return { layouts: [...layouts, ...end.layouts], placed };
}

/** What is laid greedily, in that of the first so many ways that costs least. */
export function cheapestGreedy(rest: WholeJob, ways: number): RoughPlan {
  const costOf = (plan: RoughPlan) =>
    plan.layouts.reduce((sum, { stock }) => sum + at(rest.stocks, stock).cost, 0);
  const [first, ...more] = WAYS.slice(0, ways).map((way) => greedyPlan(rest, way, false));
  if (first === undefined) throw new RangeError("no way to lay anything");
  return more.reduce((best, plan) => (costOf(plan) < costOf(best) ? plan : best), first);
}

/** Layouts that hold at least what is wanted, as a plan that holds just that. */
export function withoutSurplus(job: WholeJob, layouts: readonly Layout[]): RoughPlan {
  const left = Int32Array.from(job.kinds, ({ count }) => count);
  const kept = layouts.flatMap(({ stock, root }) => {
    const own = pruned(root, left);
    return own === null ? [] : [{ stock, root: own }];
  });
  return { layouts: kept, placed: Int32Array.from(job.kinds, ({ count }, kind) => count - at(left, kind)) };
}

/** The layouts that a step of a dive settles on, without the pieces that are not wanted any more. */
function takenOf(
  rest: WholeJob,
  pool: readonly (Layout | null)[],
  amounts: Float64Array,
  chance: Chance | null,
): Layout[] {
  const left = Int32Array.from(rest.kinds, ({ count }) => count);
  const copies = rest.stocks.map((stock) => stock.copies);
  const taken: Layout[] = [];
  const take = (layout: Layout | null | undefined): void => {
    if (layout === null || layout === undefined || at(copies, layout.stock) < 1) return;
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
  let most = 1e-6;
  amounts.forEach((amount, index) => {
    const rank = chance === null ? amount : amount * (0.5 + chance.next());
    if (rank <= most) return;
    nearest = index;
    most = rank;
  });
  take(pool[nearest]);
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
