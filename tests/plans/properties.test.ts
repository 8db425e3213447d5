import * as fc from "fast-check";
import { expect, test } from "vitest";
import { ticks } from "../../src/lengths/index.ts";
import { type CuttingJob, type CuttingPlan, cuttingFaults, planCutting } from "../../src/plans/index.ts";
import { jobOf, sheet, smallJob } from "./jobs.ts";

// Every property is drawn for as many jobs: `MARGENT_PLAN_JOBS=30000 npx vitest run tests/plans/properties.test.ts`.
const JOBS = Number(process.env["MARGENT_PLAN_JOBS"] ?? 400);
const runs = { numRuns: JOBS };
/** A long run is given the time it takes. */
const LIMIT = Math.max(60_000, JOBS * 100);

/** A plan that is stopped when its clock has been asked as often: the same on a fast machine and a slow one. */
function stoppedAfter(questions: number, job: CuttingJob, seed = 1): CuttingPlan {
  let asked = 0;
  return planCutting(job, { seconds: questions / 1000, seed, clock: () => asked++ });
}

const moment = fc.integer({ min: 0, max: 40 });
/** As much as a small job's search asks at most: two jobs stopped half-way have no order. */
const ENOUGH = 400;

/** Area of the pieces that could not be made, each with the kerf that it would take. */
const missingOf = ({ pieces, kerf }: CuttingJob, { missing }: CuttingPlan): number =>
  pieces.reduce(
    (sum, { width, height }, piece) => sum + (missing[piece] ?? 0) * (width + kerf) * (height + kerf),
    0,
  );

/** A plan leaves out no more than another for the same pieces, and where it leaves out as much, it costs no more. */
function expectNoWorse(job: CuttingJob, plan: CuttingPlan, other: CuttingPlan): void {
  const [left, otherLeft] = [missingOf(job, plan), missingOf(job, other)];
  expect(left).toBeLessThanOrEqual(otherLeft);
  if (left === otherLeft) expect(plan.cost).toBeLessThanOrEqual(other.cost + 1e-9);
}

const named = (rule: string) => `${rule}, on ${JOBS} jobs`;

test(named("[CT1] [CT3] [CT5] [CT6] [CT8] stopped at any moment there is a plan that the checker passes"), {
  timeout: LIMIT,
}, () => {
  fc.assert(
    fc.property(smallJob, moment, fc.integer(), (job, questions, seed) => {
      expect(cuttingFaults(job, stoppedAfter(questions, job, seed))).toEqual([]);
    }),
    runs,
  );
});

test(named("[CT10] the bound of one plan is above the cost of no other plan that makes every piece"), {
  timeout: LIMIT,
}, () => {
  fc.assert(
    fc.property(smallJob, moment, (job, questions) => {
      const plans = [stoppedAfter(questions, job), stoppedAfter(0, job), stoppedAfter(40, job, 2)];
      for (const { bound } of plans)
        for (const other of plans)
          if (missingOf(job, other) === 0) expect(bound.cost).toBeLessThanOrEqual(other.cost + 1e-9);
    }),
    runs,
  );
});

test(named("[CT12] more time never makes a plan dearer"), { timeout: LIMIT }, () => {
  fc.assert(
    fc.property(smallJob, moment, moment, (job, a, b) => {
      const [less, more] = [Math.min(a, b), Math.max(a, b)];
      expectNoWorse(job, stoppedAfter(more, job), stoppedAfter(less, job));
    }),
    runs,
  );
});

test(named("[CT5] [CT12] one more offcut never makes a plan dearer"), { timeout: LIMIT }, () => {
  const offcut = fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }));
  fc.assert(
    fc.property(smallJob, offcut, (job, [width, height]) => {
      const more = { ...job, sheets: [...job.sheets, sheet(width, height, { cost: 0, copies: 1 })] };
      expectNoWorse(job, stoppedAfter(ENOUGH, more), stoppedAfter(ENOUGH, job));
    }),
    runs,
  );
});

test(named("[CT6] [CT12] windows that may be used never make a plan dearer"), { timeout: LIMIT }, () => {
  fc.assert(
    fc.property(smallJob, (job) => {
      const using = stoppedAfter(ENOUGH, { ...job, dropOuts: true });
      expectNoWorse(job, using, stoppedAfter(ENOUGH, { ...job, dropOuts: false }));
    }),
    runs,
  );
});

test(named("[CT2] a trim makes a smaller sheet of it, and a kerf larger pieces on a larger sheet"), {
  timeout: LIMIT,
}, () => {
  fc.assert(
    fc.property(smallJob, fc.integer({ min: 0, max: 3 }), moment, (drawn, kerf, questions) => {
      const job = { ...drawn, longestCut: null, least: null, dropOuts: false, kerf: ticks(kerf) };
      const plain = jobOf(
        job.sheets
          .filter(({ width, height, trim }) => width > 2 * trim && height > 2 * trim)
          .map((one) => ({
            ...one,
            width: ticks(one.width - 2 * one.trim + kerf),
            height: ticks(one.height - 2 * one.trim + kerf),
            trim: ticks(0),
          })),
        job.pieces.map((one) => ({
          ...one,
          width: ticks(one.width + kerf),
          height: ticks(one.height + kerf),
        })),
      );
      const [plan, other] = [stoppedAfter(questions, job), stoppedAfter(questions, plain)];
      expect(plan.missing).toEqual(other.missing);
      expect(plan.cost).toBe(other.cost);
      expect(plan.bound.cost).toBeCloseTo(other.bound.cost, 6);
    }),
    runs,
  );
});
