import { at } from "../at.ts";
import { greedyPlan, type RoughPlan, type Way } from "./first.ts";
import { countKinds, type Layout } from "./layout.ts";
import { cuttable } from "./cuttable.ts";
import type { Pricing } from "./pricing.ts";
import type { WholeJob } from "./whole.ts";

/**
 * What is left to do once some layouts are fixed: the same kinds and stocks, with what is still
 * wanted and still there.
 */
export function remainder(job: WholeJob, layouts: readonly Layout[]): WholeJob {
  const placed = new Int32Array(job.kinds.length);
  const used = new Int32Array(job.stocks.length);
  for (const { stock, root } of layouts) {
    countKinds(root, placed);
    used[stock] = at(used, stock) + 1;
  }
  return {
    ...job,
    kinds: job.kinds.map((kind, index) => ({ ...kind, count: kind.count - at(placed, index) })),
    stocks: job.stocks.map((stock, index) => ({ ...stock, copies: stock.copies - at(used, index) })),
  };
}

/**
 * A plan out of the fullest patterns: the best layout by area is cut as often as the demand allows,
 * then the best for what is left, and so on; the remainder, too little for a whole pattern, is laid
 * greedily, and all that is left when the time is up. Only for jobs whose stock cannot run out.
 */
export function patternPlan(job: WholeJob, pricing: Pricing, way: Way, timeIsUp: () => boolean): RoughPlan {
  const layouts: Layout[] = [];
  let rest = job;
  while (!timeIsUp()) {
    const found = fullPatterns(rest, pricing);
    if (found.length === 0) break;
    layouts.push(...found);
    rest = remainder(job, layouts);
  }
  const last = greedyPlan(rest, way, false);
  const placed = Int32Array.from(last.placed, (count, kind) => {
    return count + at(job.kinds, kind).count - at(rest.kinds, kind).count;
  });
  return { layouts: [...layouts, ...last.layouts], placed };
}

/** The best pattern for what is left, as often as it is wanted in full: of every stock that costs nothing, then of the one with the most area for its price. */
function fullPatterns(rest: WholeJob, pricing: Pricing): Layout[] {
  pricing.fill(rest.kinds.map((kind) => (kind.count > 0 ? kind.width * kind.height : 0)));
  const left = Int32Array.from(rest.kinds, (kind) => kind.count);
  const layouts: Layout[] = [];
  const worth = rest.stocks.map((stock, index) => ({ stock, index, worth: pricing.worth(stock) }));
  const ranked = worth
    // The pricing does not know which pieces must not turn: windows that may lie turned are left to the greedy plan.
    .filter((one) => one.stock.copies > 0 && one.worth > 0 && one.stock.takesFixed)
    .toSorted((a, b) => b.worth / Math.max(b.stock.cost, 1e-9) - a.worth / Math.max(a.stock.cost, 1e-9));
  for (const { stock, index } of ranked) {
    if (stock.cost > 0 && layouts.length > 0) break;
    const [root] = pricing.patterns(stock, 0, 1);
    if (root === undefined || !cuttable(root, stock)) continue;
    const counts = new Int32Array(rest.kinds.length);
    countKinds(root, counts);
    let times = stock.copies;
    counts.forEach((count, kind) => {
      if (count > 0) times = Math.min(times, Math.floor(at(left, kind) / count));
    });
    for (let copy = 0; copy < times; copy++) layouts.push({ stock: index, root });
    counts.forEach((count, kind) => (left[kind] = at(left, kind) - times * count));
    if (stock.cost > 0) break;
  }
  return layouts;
}
