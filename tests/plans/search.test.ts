import * as fc from "fast-check";
import { expect, test } from "vitest";
import { Chance } from "../../src/plans/chance.ts";
import { Mixture } from "../../src/plans/cutting/columns.ts";
import { PricingTable } from "../../src/plans/cutting/pricing.ts";
import { wholeJob } from "../../src/plans/cutting/whole.ts";
import { type CuttingJob, cuttingFaults, planCutting } from "../../src/plans/index.ts";
import { leastSheets } from "./exhaustive.ts";
import { firstPlanned, jobOf, piece, planned, sheet, size, smallJob } from "./jobs.ts";

// In quarter inches: eight mats, of which the first plan makes two boards.
const eightMats = jobOf(
  [sheet(128, 160, { cost: 11.5 })],
  [
    piece(56, 72, { count: 2, window: size(41, 57) }),
    piece(40, 56, { window: size(24, 36) }),
    piece(32, 40, { window: size(20, 28) }),
    piece(44, 56, { count: 4, window: size(28, 36) }),
  ],
  { dropOuts: true },
);

test("[CT6] [CT9] [CT11] eight mats come out of one board, two of them out of windows", () => {
  expect(firstPlanned(eightMats).cost).toBe(23);
  const plan = planned(eightMats);
  expect(plan.cost).toBe(11.5);
  expect(plan.proven).toBe(true);
  expect(plan.sheets.filter(({ from }) => from.kind === "drop-out")).toHaveLength(2);
  expect(plan.sheets.reduce((sum, { placements }) => sum + placements.length, 0)).toBe(8);
});

const small = fc.record({
  width: fc.integer({ min: 7, max: 10 }),
  height: fc.integer({ min: 7, max: 10 }),
  pieces: fc.array(fc.tuple(fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 6 })), {
    minLength: 4,
    maxLength: 6,
  }),
});

test("[CT9] the plan is the least there is on 150 small jobs, by trying every way to cut", () => {
  fc.assert(
    fc.property(small, ({ width, height, pieces }) => {
      const job = jobOf(
        [sheet(width, height)],
        pieces.map(([w, h]) => piece(w, h)),
      );
      expect(planned(job).cost).toBe(leastSheets(width, height, pieces));
    }),
    { numRuns: 150 },
  );
});

test("[CT1] [CT3] [CT12] stopped at any moment there is a plan that holds, and none dearer than the first", () => {
  fc.assert(
    fc.property(smallJob, fc.integer({ min: 0, max: 120 }), (job, moment) => {
      let asked = 0;
      const plan = planCutting(job, { seconds: moment / 1000, seed: 3, clock: () => asked++ });
      expect(cuttingFaults(job, plan)).toEqual([]);
      const first = firstPlanned(job);
      if ([...plan.missing, ...first.missing].every((count) => count === 0))
        expect(plan.cost).toBeLessThanOrEqual(first.cost);
    }),
    { numRuns: 150 },
  );
});

test("[CT6] windows that may be used never make a plan dearer, on jobs small enough to be planned to the end", () => {
  fc.assert(
    fc.property(smallJob, (job) => {
      const without = planned({ ...job, dropOuts: false, longestCut: null });
      const using = planned({ ...job, dropOuts: true, longestCut: null });
      const whole = [...without.missing, ...using.missing].every((count) => count === 0);
      if (whole) expect(using.cost).toBeLessThanOrEqual(without.cost);
    }),
    { numRuns: 100, seed: 11 },
  );
});

const repeated: fc.Arbitrary<CuttingJob> = fc
  .record({
    sheets: fc.array(fc.tuple(fc.integer({ min: 20, max: 40 }), fc.integer({ min: 20, max: 40 })), {
      minLength: 1,
      maxLength: 3,
    }),
    pieces: fc.array(
      fc.record({
        width: fc.integer({ min: 3, max: 19 }),
        height: fc.integer({ min: 3, max: 19 }),
        count: fc.integer({ min: 1, max: 30 }),
        turns: fc.boolean(),
      }),
      { minLength: 1, maxLength: 8 },
    ),
    offcuts: fc.integer({ min: 0, max: 2 }),
  })
  .map(({ sheets, pieces, offcuts }) =>
    jobOf(
      [
        ...sheets.map(([width, height]) => sheet(width, height, { cost: width * height })),
        sheet(15, 22, { cost: 0, copies: offcuts }),
      ],
      pieces.map(({ width, height, count, turns }) => piece(width, height, { count, turns })),
    ),
  );

test("[CT10] the cheapest mixture of layouts costs what its bound says, and meets every demand", () => {
  fc.assert(
    fc.property(repeated, (job) => {
      const whole = wholeJob(job);
      const table = PricingTable.for(whole);
      if (table === null) throw new Error("no table");
      const mixture = new Mixture(whole, table, []);
      mixture.price(Number.POSITIVE_INFINITY, () => false);
      const { bound, layouts } = mixture;
      const amounts = mixture.amounts();
      const made = new Float64Array(whole.kinds.length);
      const used = new Float64Array(whole.stocks.length);
      let cost = 0;
      layouts.forEach((layout, index) => {
        const amount = amounts[index] ?? 0;
        if (layout === null) throw new Error("a kind is left out");
        const { stock, kinds, counts } = layout;
        kinds.forEach((kind, k) => (made[kind] = (made[kind] ?? 0) + amount * (counts[k] ?? 0)));
        used[stock] = (used[stock] ?? 0) + amount;
        cost += amount * (whole.stocks[stock]?.cost ?? 0);
      });
      whole.kinds.forEach(({ count }, kind) => expect(made[kind]).toBeGreaterThanOrEqual(count - 1e-6));
      whole.stocks.forEach(({ copies }, stock) => expect(used[stock]).toBeLessThanOrEqual(copies + 1e-6));
      expect(bound).toBeLessThanOrEqual(cost + 1e-6);
      expect(bound).toBeGreaterThan(cost * (1 - 1e-5) - 1e-6);
    }),
    { numRuns: 150 },
  );
});

test("chance: the same seed gives the same numbers, spread evenly from nought to one", () => {
  const draw = (seed: number) => {
    const chance = new Chance(seed);
    return Array.from({ length: 10_000 }, () => chance.next());
  };
  expect(draw(7)).toEqual(draw(7));
  expect(draw(7)).not.toEqual(draw(8));
  const tenths = Array.from({ length: 10 }, () => 0);
  for (const one of draw(7)) tenths[Math.floor(one * 10)] = (tenths[Math.floor(one * 10)] ?? 0) + 1;
  for (const count of tenths) expect(Math.abs(count - 1000)).toBeLessThan(150);
});
