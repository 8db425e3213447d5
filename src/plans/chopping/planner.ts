import { at } from "../at.ts";
import type { PlanOptions } from "../cutting/index.ts";
import { Chance } from "../chance.ts";
import { inMoney } from "../cutting/money.ts";
import { assembleSticks, frameKey, type FrameGroup, frameGroups, type Shared } from "./assemble.ts";
import { choppingFaults } from "./check.ts";
import { choppingChecks } from "./findings.ts";
import { type ChoppingJob, requireSoundChoppingJob } from "./job.ts";
import type { ChoppingBound, ChoppingPlan, Stick } from "./plan.ts";
import { chopped, leastCost } from "./search.ts";
import { type WholeChopping, wholeChopping } from "./whole.ts";

/** Milliseconds for each rail to write the plan and check it, and the most of the time for it. */
const COMPLETING = 0.05;
const MOST_COMPLETING = 0.4;

/**
 * Plans one moulding: which lengths to use and which rails to chop from each. Least cost first, then
 * the fewest lengths; where that costs no more, all rails of a frame out of one length; then the
 * longest single remainder. Demand that cannot be met is named by a check of level "stop", and the
 * rest is planned. Every plan is passed through the checker before it is handed out.
 * Throws RangeError for a job that is not sound (see `requireSoundChoppingJob`).
 */
export function planChopping(job: ChoppingJob, options: PlanOptions): ChoppingPlan {
  const started = options.clock();
  requireSoundChoppingJob(job);
  const rails = job.rails.reduce((sum, { count }) => sum + count, 0);
  const most = options.seconds * 1000;
  const until = started + most - Math.min(MOST_COMPLETING * most, COMPLETING * rails);
  const whole = wholeChopping(job);
  const groups = frameGroups(job, whole);
  const { shared, bound } = chopped(whole, groups, new Chance(options.seed), () => until - options.clock());
  const plan = completed(job, whole, groups, shared, bound);
  const faults = choppingFaults(job, plan);
  if (faults.length > 0)
    throw new Error(`the planner made a plan that does not hold: ${JSON.stringify(faults[0])}`);
  return plan;
}

function completed(
  job: ChoppingJob,
  whole: WholeChopping,
  groups: readonly FrameGroup[],
  shared: Shared,
  bound: ChoppingBound,
): ChoppingPlan {
  const sticks = assembleSticks(job, whole, shared);
  const missing = job.rails.map(({ count }) => count);
  for (const { rails } of sticks) for (const { rail } of rails) missing[rail] = at(missing, rail) - 1;
  const cost = costOf(job, sticks);
  const complete = missing.every((count) => count === 0);
  const own = complete ? { ...bound, cost: Math.min(bound.cost, cost) } : ({ cost: 0, how: "none" } as const);
  return {
    sticks,
    cost,
    bound: own,
    proven: complete && cost <= leastCost(whole, own.cost) * (1 + 1e-9),
    frames: framesOf(job, groups, sticks),
    missing,
    checks: choppingChecks(job, whole, missing),
  };
}

function costOf(job: ChoppingJob, sticks: readonly Stick[]): number {
  const cost = sticks.reduce((sum, { length }) => sum + at(job.lengths, length).cost, 0);
  return inMoney(
    cost,
    job.lengths.map((length) => length.cost),
  );
}

/** How many frames are whole in the plan, and how many of those lie on one stick. */
function framesOf(
  job: ChoppingJob,
  groups: readonly FrameGroup[],
  sticks: readonly Stick[],
): ChoppingPlan["frames"] {
  const sizes = new Map(groups.map(({ key, rails }) => [key, rails.length]));
  const placed = new Map<string, number>();
  let onOneStick = 0;
  for (const { rails } of sticks) {
    const here = new Map<string, number>();
    for (const one of rails) {
      const key = frameKey(job, one);
      if (key !== null) here.set(key, (here.get(key) ?? 0) + 1);
    }
    for (const [key, count] of here) {
      placed.set(key, (placed.get(key) ?? 0) + count);
      if (count === sizes.get(key)) onOneStick++;
    }
  }
  return { onOneStick, of: [...placed].filter(([key, count]) => count === sizes.get(key)).length };
}
