import { at } from "../at.ts";
import { nextSum } from "./money.ts";
import type { BoundArgument, CostBound } from "./plan.ts";
import type { Pricing } from "./pricing.ts";
import { fitsAtAll, type WholeJob } from "./whole.ts";

/** What a bound by values needs to know of a job; `copies` is positive infinity where a stock never runs out. */
interface Priceable {
  readonly kinds: readonly { readonly count: number }[];
  readonly stocks: readonly { readonly cost: number; readonly copies: number }[];
}

/**
 * A cost that no plan for the whole demand can go below, whatever its cuts. Every kind is given a
 * value; `worth` is the most that one sheet of a stock can hold of it. For any factor t that makes t
 * times the worth of each unlimited stock no more than its cost,
 *   t * (value of the demand) - sum over limited stocks of copies * max(0, t * worth - cost)
 * is such a bound (weak duality), and the best t is at one of the ratios cost / worth.
 */
export function boundByValues(job: Priceable, values: ArrayLike<number>, worth: ArrayLike<number>): number {
  const total = job.kinds.reduce((sum, kind, index) => sum + kind.count * at(values, index), 0);
  let cap = Number.POSITIVE_INFINITY;
  const ratios: number[] = [];
  job.stocks.forEach((stock, index) => {
    const most = at(worth, index);
    if (most <= 0 || stock.copies === 0) return;
    ratios.push(stock.cost / most);
    if (stock.copies === Number.POSITIVE_INFINITY) cap = Math.min(cap, stock.cost / most);
  });
  let best = 0;
  for (const ratio of [...ratios, cap]) {
    if (ratio > cap || ratio === Number.POSITIVE_INFINITY) continue;
    // A hair off for the rounding of the sums, so that it never claims more than is true.
    let bound = ratio * total * (1 - 1e-11);
    job.stocks.forEach((stock, index) => {
      if (stock.copies === Number.POSITIVE_INFINITY || stock.copies === 0) return;
      bound -= stock.copies * Math.max(0, ratio * at(worth, index) - stock.cost);
    });
    best = Math.max(best, bound);
  }
  return best;
}

/** What the piece that asks for the dearest sheet costs by itself at least. */
function dearestPiece({ kinds, stocks }: WholeJob): number {
  const least = kinds.map((kind) =>
    stocks.reduce(
      (low, stock) => (stock.copies > 0 && fitsAtAll(kind, stock) ? Math.min(low, stock.cost) : low),
      Number.POSITIVE_INFINITY,
    ),
  );
  return least.reduce((most, one) => (one > most && Number.isFinite(one) ? one : most), 0);
}

/** The best of the bounds that are cheap: by one piece, by area, and by what a pricing says. */
export function cheapBound(job: WholeJob, pricing: Pricing | null): CostBound {
  const areas = job.kinds.map((kind) => kind.width * kind.height);
  const byArea = boundByValues(
    job,
    areas,
    job.stocks.map((stock) => stock.width * stock.height),
  );
  let best: CostBound = { cost: byArea, how: byArea > 0 ? "area" : "none" };
  best = better(best, dearestPiece(job), "piece");
  if (pricing !== null) {
    pricing.fill(areas);
    best = better(
      best,
      boundByValues(
        job,
        areas,
        job.stocks.map((stock) => pricing.worth(stock)),
      ),
      "values",
    );
  }
  return best;
}

const better = (bound: CostBound, cost: number, how: BoundArgument): CostBound =>
  cost > bound.cost ? { cost, how } : bound;

/** The bound, taken up to the next cost that the prices can make. */
export const reachableBound = (job: WholeJob, bound: CostBound): number =>
  nextSum(
    job.stocks
      .filter((stock) => stock.copies > 0 && job.kinds.some((kind) => fitsAtAll(kind, stock)))
      .map((stock) => stock.cost),
    bound.cost,
  );
