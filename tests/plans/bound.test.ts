import * as fc from "fast-check";
import { expect, test } from "vitest";
import { moneyUnit, nextSum } from "../../src/plans/cutting/money.ts";
import { leastSheets } from "./exhaustive.ts";
import { jobOf, piece, planned, sheet, smallJob } from "./jobs.ts";

const few = fc.array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 })), {
  minLength: 1,
  maxLength: 5,
});

test("[CT10] [CT11] the bound is never above the least there is, and what is called proven is the least", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 6, max: 8 }),
      fc.integer({ min: 6, max: 8 }),
      few,
      (width, height, pieces) => {
        const plan = planned(
          jobOf(
            [sheet(width, height)],
            pieces.map(([w, h]) => piece(w, h)),
          ),
        );
        const least = leastSheets(width, height, pieces);
        expect(plan.bound.cost).toBeLessThanOrEqual(least);
        expect(plan.cost).toBeGreaterThanOrEqual(least);
        if (plan.proven) expect(plan.cost).toBe(least);
      },
    ),
    { numRuns: 120 },
  );
});

test("[CT10] the bound of a job is never above the cost of any plan for it", () => {
  fc.assert(
    fc.property(smallJob, (job) => {
      const plan = planned(job);
      expect(plan.bound.cost).toBeLessThanOrEqual(plan.cost + 1e-9);
    }),
    { numRuns: 100 },
  );
});

test("prices have a common unit, and sums are taken up to what they can make", () => {
  expect(moneyUnit([11.5, 23])).toBe(11.5);
  expect(moneyUnit([11.5, 26.5])).toBe(0.5);
  expect(moneyUnit([0.1, 0.25])).toBe(0.05);
  expect(moneyUnit([Math.PI])).toBeNull();
  expect(moneyUnit([1e9 + 0.01])).toBe(1e9 + 0.01);
  expect(moneyUnit([2e-7, 3e-7])).toBe(1e-7);
  expect(moneyUnit([0])).toBeNull();
  expect(nextSum([11.5, 26.5], 27)).toBe(34.5);
  expect(nextSum([11.5, 26.5], 26.6)).toBe(34.5);
  expect(nextSum([11.5, 26.5], 26.5)).toBe(26.5);
  expect(nextSum([1150, 2650], 1)).toBe(1150);
  expect(nextSum([1150, 2650], 1e-9)).toBe(1150);
  expect(nextSum([Math.PI], 2)).toBe(2);
});

test("[CT7] [CT11] prices of any size are added up and proven alike", () => {
  const costOf = (cost: number) => {
    const plan = planned(
      jobOf([sheet(10, 10, { cost }), sheet(10, 20, { cost: 3 * cost })], [piece(6, 6, { count: 20 })]),
    );
    expect(plan.proven).toBe(true);
    return plan.cost;
  };
  expect(costOf(1)).toBe(20);
  expect(costOf(0.1)).toBe(2);
  expect(costOf(1e-9)).toBe(20e-9);
  expect(costOf(1e-200)).toBe(20e-200);
  expect(costOf(1e9)).toBe(20e9);
});

test("[CT11] one small piece on a large sheet is proven to need it", () => {
  const plan = planned(jobOf([sheet(1_000_000, 1_000_000, { cost: 5 })], [piece(3, 2, { count: 40 })]));
  expect([plan.cost, plan.bound.cost, plan.proven]).toEqual([5, 5, true]);
});
