import type { ChoppingFault } from "./faults.ts";
import type { ChoppingJob } from "./job.ts";
import type { ChoppingPlan, Stick } from "./plan.ts";

type Report = (fault: ChoppingFault) => void;

/**
 * Checks a chop plan against its job, trusting neither the planner nor its notes: whatever can be
 * reckoned again is. It shares no code with the planner, only the shapes of job and plan. An empty
 * list: the plan holds.
 */
export function choppingFaults(job: ChoppingJob, plan: ChoppingPlan): ChoppingFault[] {
  const faults: ChoppingFault[] = [];
  const report: Report = (fault) => void faults.push(fault);
  plan.sticks.forEach((stick, index) => checkStick(job, stick, index, report));
  checkDemand(job, plan, report);
  job.lengths.forEach(({ copies }, length) => {
    const used = plan.sticks.filter((stick) => stick.length === length).length;
    if (copies !== null && used > copies) report({ code: "copies", length, used });
  });
  checkMoney(job, plan, report);
  checkFrames(job, plan, report);
  return faults;
}

function checkStick(job: ChoppingJob, stick: Stick, index: number, report: Report): void {
  const stock = job.lengths[stick.length];
  if (stock === undefined) {
    report({ code: "no-such-length", stick: index });
    return;
  }
  if (stick.rails.length === 0) report({ code: "empty", stick: index });
  let rails = 0;
  stick.rails.forEach(({ rail, at }, place) => {
    const wanted = job.rails[rail];
    if (wanted === undefined) {
      report({ code: "no-such-rail", stick: index, place });
      return;
    }
    if (at !== job.waste + rails + place * job.kerf) report({ code: "place", stick: index, place });
    rails += wanted.length;
  });
  const used = rails + (stick.rails.length - 1) * job.kerf + 2 * job.waste;
  if (stick.used !== used) report({ code: "used", stick: index });
  if (stick.left !== stock.length - used) report({ code: "left", stick: index });
  if (used > stock.length) report({ code: "too-full", stick: index });
}

/** Every copy once, nothing beyond, and whatever is missing said. */
function checkDemand(job: ChoppingJob, plan: ChoppingPlan, report: Report): void {
  const copies = job.rails.map(() => new Set<number>());
  for (const { rails } of plan.sticks) {
    for (const { rail, copy } of rails) {
      const seen = copies[rail];
      if (seen === undefined) continue;
      const count = job.rails[rail]?.count ?? 0;
      if (seen.has(copy) || !Number.isInteger(copy) || copy < 0 || copy >= count)
        report({ code: "copy", rail, copy });
      seen.add(copy);
    }
  }
  job.rails.forEach(({ count }, rail) => {
    const made = copies[rail]?.size ?? 0;
    const missing = plan.missing[rail] ?? Number.NaN;
    if (made + missing !== count) report({ code: "demand", rail, made });
    const named = plan.checks.some((check) => check.level === "stop" && check.rail === rail);
    if (named !== missing > 0) report({ code: "silence", rail });
  });
}

function checkMoney(job: ChoppingJob, plan: ChoppingPlan, report: Report): void {
  const cost = plan.sticks.reduce((sum, { length }) => sum + (job.lengths[length]?.cost ?? 0), 0);
  const hair = 1e-9 * Math.max(1, cost);
  if (!(Math.abs(cost - plan.cost) <= hair)) report({ code: "cost", said: plan.cost, counted: cost });
  if (!(plan.bound.cost <= cost + hair)) report({ code: "bound-above-cost" });
  const short = plan.missing.some((count) => count > 0);
  if (plan.proven && (short || cheaperSum(job, plan.bound.cost - hair, cost - hair)))
    report({ code: "not-proven" });
}

/** How far sums of costs are looked at before "proven" has to rest on the bound alone. */
const MOST_SUMS = 20_000_000;

/** Whether whole lengths can cost anything from `least` up to but not including `below`; also true where that cannot be told. */
function cheaperSum(job: ChoppingJob, least: number, below: number): boolean {
  if (least >= below) return false;
  const shortest = job.rails.reduce(
    (lowest, { length, count }) => (count > 0 ? Math.min(lowest, length) : lowest),
    Number.POSITIVE_INFINITY,
  );
  const costs = job.lengths
    .filter(({ length, copies, cost }) => cost > 0 && copies !== 0 && length - 2 * job.waste >= shortest)
    .map(({ cost }) => cost);
  const millionths = costs.map((cost) => Math.round(cost * 1e6));
  if (costs.some((cost, index) => Math.abs(cost * 1e6 - (millionths[index] ?? 0)) > 1e-3)) return true;
  let step = 0;
  for (let cost of millionths) while (cost !== 0) [step, cost] = [cost, step % cost];
  const end = Math.ceil((below * 1e6) / step - 1e-9);
  if (!(end <= MOST_SUMS)) return true;
  const reached = new Uint8Array(end);
  if (end > 0) reached[0] = 1;
  for (const cost of millionths) {
    const wide = cost / step;
    for (let sum = wide; sum < end; sum++) if (reached[sum - wide] === 1) reached[sum] = 1;
  }
  return reached.includes(1, Math.max(0, Math.ceil((least * 1e6) / step - 1e-9)));
}

/** A frame counts when all its rails are there, as one on one stick when they lie on the same. */
function checkFrames(job: ChoppingJob, plan: ChoppingPlan, report: Report): void {
  const name = (rail: number, copy: number): string | null => {
    const frame = job.rails[rail]?.frame ?? null;
    return frame === null ? null : `${frame.kind}/${Math.floor(copy / frame.each)}`;
  };
  const size = new Map<string, number>();
  job.rails.forEach(({ count }, rail) => {
    for (let copy = 0; copy < count; copy++) {
      const frame = name(rail, copy);
      if (frame !== null) size.set(frame, (size.get(frame) ?? 0) + 1);
    }
  });
  const made = new Map<string, number>();
  let onOneStick = 0;
  for (const { rails } of plan.sticks) {
    const here = new Map<string, number>();
    for (const { rail, copy } of rails) {
      const frame = name(rail, copy);
      if (frame === null) continue;
      here.set(frame, (here.get(frame) ?? 0) + 1);
      made.set(frame, (made.get(frame) ?? 0) + 1);
    }
    for (const [frame, count] of here) if (count === size.get(frame)) onOneStick++;
  }
  let of = 0;
  for (const [frame, count] of made) if (count === size.get(frame)) of++;
  if (plan.frames.onOneStick !== onOneStick || plan.frames.of !== of)
    report({ code: "frames", onOneStick, of });
}
