import { assemble } from "./assemble.ts";
import { at } from "../at.ts";
import { cheapestOfFew } from "./exact.ts";
import { cheapBound, reachableBound } from "./bound.ts";
import { cuttingFaults } from "./check.ts";
import { checksOf } from "./findings.ts";
import type { IntegerSolver } from "./integer.ts";
import { Starts } from "./starts.ts";
import { type CuttingJob, requireSoundJob } from "./job.ts";
import { inMoney } from "./money.ts";
import { isSmall, searched } from "./search.ts";
import { Chance } from "../chance.ts";
import type { CostBound, CuttingPlan, PlannedSheet } from "./plan.ts";
import { cheapened, compareJudged, type Judged, judged, leastOf } from "./rough.ts";
import { wholeJob, type WholeJob } from "./whole.ts";

export interface PlanOptions {
  /** How long it may take. The first plan is always made; further work stops when the time is up. */
  readonly seconds: number;
  /** Two runs with one job and one seed give one plan, as long as the work fits in `seconds`. */
  readonly seed: number;
  /** Milliseconds from any start. */
  readonly clock: () => number;
  /** Solves integer programmes over layouts; absent: plans are found without, less near to their bounds. */
  readonly solver?: IntegerSolver | null;
  /** Asked now and then: true ends the work, as if the time were up. */
  readonly stop?: () => boolean;
  /** Told how far the work has come, when something has become better and a tenth of a second has passed. */
  readonly progress?: (so: CuttingProgress) => void;
}

/** How far the planning of a job has come. */
export interface CuttingProgress {
  /** Of the best plan so far. */
  readonly cost: number;
  /** No plan costs less. */
  readonly bound: number;
  /** Whether the best plan so far leaves nothing out. */
  readonly complete: boolean;
}

/** The part of the time that first plans may take where a search follows. */
const FIRST_SHARE = 0.1;
/** Milliseconds for each piece to put the cuts in order and check the plan, and the most of the time for it. */
const COMPLETING = 0.06;
const MOST_COMPLETING = 0.4;

/** How many cuts are weighed at length when they are put in order: at least, for each second asked for, and at most. */
const LEAST_WEIGHED = 60;
const WEIGHED = 1000;
const MOST_WEIGHED = 2500;

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
  const { clock, stop, seconds } = options;
  const started = clock();
  requireSoundJob(job);
  const pieces = job.pieces.reduce((sum, { count }) => sum + count, 0);
  const until = started + seconds * 1000 - Math.min(MOST_COMPLETING * seconds * 1000, COMPLETING * pieces);
  const timeLeft = (): number => (stop?.() === true ? 0 : until - clock());
  const whole = wholeJob(job);
  const { best, bound } = bestPlans(job, whole, options, timeLeft);
  const plans: CuttingPlan[] = [];
  const weighed = Math.min(MOST_WEIGHED, LEAST_WEIGHED + WEIGHED * seconds);
  for (const one of best) {
    // Putting the cuts of a large plan in order takes seconds: a second plan is for what time is left.
    if (plans.length > 0 && timeLeft() <= 0) break;
    plans.push(completed(job, whole, bound, one, weighed));
  }
  const [plan] = plans.toSorted((x, y) => x.settings - y.settings);
  if (plan === undefined) throw new RangeError("no plan was made");
  const faults = cuttingFaults(job, plan);
  if (faults.length > 0)
    throw new Error(`the planner made a plan that does not hold: ${JSON.stringify(faults[0])}`);
  return plan;
}

interface Found {
  /** The best plans of those tried, alike in all but their cuts. */
  readonly best: readonly Judged[];
  readonly bound: CostBound;
}

/** The best plans: of a few pieces the cheapest there are, and of a small job never dearer than without its windows. */
function bestPlans(job: CuttingJob, whole: WholeJob, options: PlanOptions, timeLeft: () => number): Found {
  const least = leastOf(job.least, whole);
  const exact = timeLeft() > 0 ? cheapestOfFew(whole, least, () => timeLeft() <= 0) : null;
  if (exact !== null) {
    const cheapest = judged(whole, least, exact);
    return foundFor(job, whole, [cheapest], { cost: cheapest.cost, how: "every-way" }, options, timeLeft);
  }
  const windows = whole.stocks.some(({ hosts }) => hosts !== null);
  if (!windows || !isSmall(whole)) return foundFor(job, whole, [], null, options, timeLeft);
  const stocks = whole.stocks.map((stock) => (stock.hosts === null ? stock : { ...stock, copies: 0 }));
  const without = foundFor(job, { ...whole, stocks }, [], null, options, timeLeft);
  return foundFor(job, whole, without.best, null, options, timeLeft);
}

function foundFor(
  job: CuttingJob,
  whole: WholeJob,
  known: readonly Judged[],
  exact: CostBound | null,
  options: PlanOptions,
  timeLeft: () => number,
): Found {
  const { seed, clock, solver = null } = options;
  const starts = new Starts(whole, timeLeft);
  const told = teller(whole, options);
  const least = leastOf(job.least, whole);
  const cheap = exact ?? cheapBound(whole, starts.many ? null : starts.pricing);
  const searchFrom = starts.many ? 0 : timeLeft() * (1 - FIRST_SHARE);
  let best = [...known];
  let before = timeLeft();
  if (best.length === 0 || before > searchFrom)
    for (const made of starts.plans()) {
      const plan = judged(whole, least, cheapened(whole, made));
      const order = best[0] === undefined ? -1 : compareJudged(plan, best[0]);
      if (order < 0) {
        best = [plan];
        told(plan, cheap);
      } else if (order === 0 && best.length < MOST_ALIKE) best.push(plan);
      const after = timeLeft();
      // The next way would take about as long again.
      if (after <= (starts.many ? 0 : before - after)) return { best, bound: cheap };
      if (after <= searchFrom) break;
      before = after;
    }
  const [start] = best;
  if (start === undefined) return { best, bound: cheap };
  const { pricing, layouts, many } = starts;
  const bound = many && exact === null ? cheapBound(whole, pricing) : cheap;
  const means = { least, solver, chance: new Chance(seed), clock, timeLeft, told, layouts };
  const found = searched(whole, pricing, start, bound, means);
  const better = compareJudged(found.best, start) < 0;
  return { best: better ? [found.best] : best, bound: found.bound };
}

/** Milliseconds between two words about how far the work has come. */
const BETWEEN = 100;

/** Tells of a better plan or bound, not too often. */
function teller(whole: WholeJob, { clock, progress }: PlanOptions): (best: Judged, bound: CostBound) => void {
  if (progress === undefined) return () => {};
  let last = Number.NEGATIVE_INFINITY;
  return (best, bound) => {
    const now = clock();
    if (now - last < BETWEEN) return;
    last = now;
    const complete = best.missing === 0 && whole.impossible.length === 0;
    const { money } = whole;
    progress({ cost: best.cost * money, bound: reachableBound(whole, bound) * money, complete });
  };
}

function completed(
  job: CuttingJob,
  whole: WholeJob,
  bound: CostBound,
  plan: Judged,
  weighed: number,
): CuttingPlan {
  const sheets = assemble(job, whole, plan.layouts, weighed);
  const missing = job.pieces.map(({ count }) => count);
  for (const { placements } of sheets)
    for (const { piece } of placements) missing[piece] = at(missing, piece) - 1;
  const complete = missing.every((count) => count === 0);
  const cost = costOf(job, sheets);
  const own = boundFor(job, whole, bound, plan, cost);
  return {
    sheets,
    cost,
    sheetsUsed: sheets.filter(({ from }) => from.kind === "stock").length,
    bound: own,
    proven: complete && cost <= own.cost * (1 + 1e-9),
    settings: sheets.reduce((sum, sheet) => sum + sheet.settings, 0),
    missing,
    checks: checksOf(job, whole, sheets, missing),
  };
}

/** The bound of the whole demand, taken up to the next sum of prices; nothing is known where the stock runs out. */
function boundFor(job: CuttingJob, whole: WholeJob, bound: CostBound, plan: Judged, cost: number): CostBound {
  if (plan.missing > 0) return { cost: 0, how: "none" };
  return { ...bound, cost: Math.min(moneyOf(job, reachableBound(whole, bound) * whole.money), cost) };
}

function costOf(job: CuttingJob, sheets: readonly PlannedSheet[]): number {
  const cost = sheets.reduce(
    (sum, { from }) => sum + (from.kind === "stock" ? at(job.sheets, from.sheet).cost : 0),
    0,
  );
  return moneyOf(job, cost);
}

const moneyOf = (job: CuttingJob, sum: number): number =>
  inMoney(
    sum,
    job.sheets.map(({ cost }) => cost),
  );
