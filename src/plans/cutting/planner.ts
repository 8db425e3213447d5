import { assemble } from "./assemble.ts";
import { at } from "./at.ts";
import { cheapBound, reachableBound } from "./bound.ts";
import { cuttingFaults } from "./check.ts";
import { checksOf } from "./findings.ts";
import { greedyPlan, type RoughPlan, WAYS } from "./first.ts";
import { type CuttingJob, requireSoundJob } from "./job.ts";
import { moneyUnit } from "./money.ts";
import { patternPlan } from "./patterns.ts";
import { PricingTable } from "./pricing.ts";
import { isMany, searched } from "./search.ts";
import { Chance } from "./chance.ts";
import type { CostBound, CuttingPlan, PlannedSheet } from "./plan.ts";
import { cheapened, compareJudged, type Judged, judged, leastOf } from "./rough.ts";
import { fitsAtAll, wholeJob, type WholeJob } from "./whole.ts";

export interface PlanOptions {
  /** How long it may take. The first plan is always made; further work stops when the time is up. */
  readonly seconds: number;
  /** Two runs with one job and one seed give one plan, as long as the work fits in `seconds`. */
  readonly seed: number;
  /** Milliseconds from any start. */
  readonly clock: () => number;
}

/** The first plans of a job that columns are generated for. */
const QUICK_WAYS = 4;
/** The part of the time that first plans may take where a search follows. */
const FIRST_SHARE = 0.1;
/** Where a size is wanted less often than this on average, whole patterns are hardly ever cut twice. */
const REPEATED = 2;

/** The most plans alike in cost, sheets and leftover whose fence settings are compared. */
const MOST_ALIKE = 3;

/**
 * Plans one material: which sheets to use, what to cut from each, in which order. Least cost first,
 * then the fewest sheets, the largest leftover worth keeping, the fewest settings of the fence.
 * Demand that cannot be met is named by a check of level "stop", and the rest is planned.
 * Every plan is passed through the checker before it is handed out.
 * Throws RangeError for a job that is not sound (see `requireSoundJob`).
 */
export function planCutting(job: CuttingJob, options: PlanOptions): CuttingPlan {
  const until = options.clock() + options.seconds * 1000;
  requireSoundJob(job);
  const whole = wholeJob(job);
  const table = PricingTable.for(whole);
  const { best, bound } = bestPlans(job, whole, table, options, until);
  const plans: CuttingPlan[] = [];
  for (const one of best) {
    // Putting the cuts of a large plan in order takes seconds: a second plan is for what time is left.
    if (plans.length > 0 && options.clock() >= until) break;
    plans.push(completed(job, whole, bound, one));
  }
  const [plan] = plans.toSorted((x, y) => x.settings - y.settings);
  if (plan === undefined) throw new RangeError("no plan was made");
  const faults = cuttingFaults(job, plan);
  if (faults.length > 0)
    throw new Error(`the planner made a plan that does not hold: ${JSON.stringify(faults[0])}`);
  return plan;
}

/** The best plans of those tried, alike in all but their cuts. */
function bestPlans(
  job: CuttingJob,
  whole: WholeJob,
  table: PricingTable | null,
  { seed, clock }: PlanOptions,
  until: number,
): { readonly best: readonly Judged[]; readonly bound: CostBound } {
  const cheap = cheapBound(whole, table);
  const scarce = mayRunOut(whole);
  const least = leastOf(job.least, whole);
  const searchFrom = until - (1 - FIRST_SHARE) * (until - clock());
  let best: Judged[] = [];
  for (const make of attempts(whole, scarce ? null : table, scarce)) {
    const begun = clock();
    if (best.length > 0 && begun >= searchFrom) break;
    const plan = judged(whole, least, cheapened(whole, make()));
    const order = best[0] === undefined ? -1 : compareJudged(plan, best[0]);
    if (order < 0) best = [plan];
    else if (order === 0 && best.length < MOST_ALIKE) best.push(plan);
    // The next way would take about as long again.
    if (clock() + (clock() - begun) >= until) return { best, bound: cheap };
  }
  const [start] = best;
  if (start === undefined) return { best, bound: cheap };
  const own = scarce ? null : table;
  const found = searched(whole, own, least, start, cheap, new Chance(seed), () => until - clock());
  const better = compareJudged(found.best, start) < 0;
  return { best: better ? [found.best] : best, bound: found.bound };
}

/** Ways to make a plan, the quickest first. */
function attempts(whole: WholeJob, table: PricingTable | null, scarce: boolean): (() => RoughPlan)[] {
  const greedy = WAYS.map((way) => () => greedyPlan(whole, way, scarce));
  const pieces = whole.kinds.reduce((sum, { count }) => sum + count, 0);
  const repeats = pieces >= REPEATED * whole.kinds.length;
  const full =
    table === null || !repeats ? [] : WAYS.slice(0, 4).map((way) => () => patternPlan(whole, table, way));
  const quick = [...greedy.slice(0, 2), ...full];
  // Where columns come first they need the time more than further ways that are alike.
  return table !== null && isMany(whole) ? quick.slice(0, QUICK_WAYS) : [...quick, ...greedy.slice(2)];
}

/** Whether some kind fits no sheet that can be had as often as wanted. */
const mayRunOut = (whole: WholeJob): boolean =>
  whole.kinds.some(
    (kind) =>
      !whole.stocks.some((stock) => stock.copies === Number.POSITIVE_INFINITY && fitsAtAll(kind, stock)),
  ) || whole.stocks.some((stock) => stock.longestCut !== Number.POSITIVE_INFINITY);

function completed(job: CuttingJob, whole: WholeJob, bound: CostBound, plan: Judged): CuttingPlan {
  const sheets = assemble(job, whole, plan.layouts);
  const missing = job.pieces.map(({ count }) => count);
  for (const { placements } of sheets)
    for (const { piece } of placements) missing[piece] = at(missing, piece) - 1;
  const complete = missing.every((count) => count === 0);
  const cost = costOf(job, sheets);
  const own = boundFor(bound, plan, cost);
  return {
    sheets,
    cost,
    sheetsUsed: sheets.filter(({ from }) => from.kind === "stock").length,
    bound: own,
    proven: complete && cost <= reachableBound(whole, own) * (1 + 1e-9),
    settings: sheets.reduce((sum, sheet) => sum + sheet.settings, 0),
    missing,
    checks: checksOf(job, whole, sheets, missing),
  };
}

/** A bound for the demand that is met: where some cannot be, the pieces that no sheet gives are left out; where the stock runs out, nothing is known. */
function boundFor(bound: CostBound, plan: Judged, cost: number): CostBound {
  if (plan.missing > 0) return { cost: 0, how: "none" };
  return { ...bound, cost: Math.min(bound.cost, cost) };
}

function costOf(job: CuttingJob, sheets: readonly PlannedSheet[]): number {
  const cost = sheets.reduce(
    (sum, { from }) => sum + (from.kind === "stock" ? at(job.sheets, from.sheet).cost : 0),
    0,
  );
  // Tenths and cents are not whole in binary; a sum of them is what they would add up to by hand.
  return moneyUnit(job.sheets.map((sheet) => sheet.cost)) === null ? cost : Math.round(cost * 1e6) / 1e6;
}
