import * as fc from "fast-check";
import { expect, test } from "vitest";
import { moneyUnit, nextSum } from "../../src/plans/cutting/money.ts";
import { jobOf, piece, planned, sheet, smallJob } from "./jobs.ts";

/**
 * The least number of equal sheets for a few pieces, by trying every way to part every board: an
 * answer from outside the planner.
 */
function leastSheets(width: number, height: number, pieces: readonly (readonly [number, number])[]): number {
  const memo = new Map<string, boolean>();
  const fits = (w: number, h: number, ids: readonly number[]): boolean => {
    const sizes = ids.map((id) => pieces[id] ?? ([0, 0] as const));
    if (sizes.length === 0) return true;
    if (sizes.reduce((sum, [a, b]) => sum + a * b, 0) > w * h) return false;
    const [only] = sizes;
    if (sizes.length === 1 && only !== undefined) {
      return (only[0] <= w && only[1] <= h) || (only[1] <= w && only[0] <= h);
    }
    const key = `${w} ${h} ${ids.join()}`;
    const known = memo.get(key);
    if (known !== undefined) return known;
    let found = false;
    for (let mask = 1; mask < 2 ** ids.length - 1 && !found; mask++) {
      const one = ids.filter((_, bit) => (mask >> bit) % 2 === 1);
      const two = ids.filter((_, bit) => (mask >> bit) % 2 === 0);
      for (let a = 1; a < w && !found; a++) found = fits(a, h, one) && fits(w - a, h, two);
      for (let b = 1; b < h && !found; b++) found = fits(w, b, one) && fits(w, h - b, two);
    }
    memo.set(key, found);
    return found;
  };
  const all = pieces.map((_, id) => id);
  const least = (ids: readonly number[]): number => {
    const [first, ...others] = ids;
    if (first === undefined) return 0;
    let best = ids.length;
    for (let mask = 0; mask < 2 ** others.length; mask++) {
      const here = [first, ...others.filter((_, bit) => (mask >> bit) % 2 === 1)];
      if (!fits(width, height, here)) continue;
      best = Math.min(best, 1 + least(others.filter((_, bit) => (mask >> bit) % 2 === 0)));
    }
    return best;
  };
  return least(all);
}

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
  expect(moneyUnit([0])).toBeNull();
  expect(nextSum([11.5, 26.5], 27)).toBe(34.5);
  expect(nextSum([11.5, 26.5], 26.6)).toBe(34.5);
  expect(nextSum([11.5, 26.5], 26.5)).toBe(26.5);
  expect(nextSum([1150, 2650], 1)).toBe(1150);
  expect(nextSum([Math.PI], 2)).toBe(2);
});
