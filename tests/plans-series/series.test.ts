import * as fc from "fast-check";
import { expect, test } from "vitest";
import { inch, ZERO } from "../../src/lengths/index.ts";
import { planSeries, seriesFaults } from "../../src/plans/series/index.ts";
import { leastCost, servesAtAll } from "./exhaustive.ts";
import { LIMITS, series, size, work } from "./series-jobs.ts";

test("[SZ3] [SZ4] for every number of sizes no choice is cheaper, and with fewer none serves all", () => {
  fc.assert(
    fc.property(series(7, 8), (job) => {
      const plan = planSeries(job);
      const first = plan.steps[0]?.sizes.length ?? 0;
      expect(plan.fewest).toBe(first);
      if (first > 0) expect(leastCost(job, first - 1)).toBeNull();
      plan.steps.forEach((step, place) => {
        expect(step.sizes.length).toBe(first + place);
        expect(step.cost).toBe(leastCost(job, first + place));
        expect(step.proven).toBe(true);
      });
      const last = plan.steps.at(-1);
      if (last !== undefined) expect(last.cost).toBe(leastCost(job, job.sizes.length));
    }),
    { numRuns: 250 },
  );
});

test("[SZ1] [SZ2] every work is served within its limits or named, and named only where no size serves it", () => {
  fc.assert(
    fc.property(series(12, 12), (job) => {
      const plan = planSeries(job);
      expect(seriesFaults(job, plan)).toEqual([]);
      const named = plan.unserved.map(({ work: place }) => place);
      job.works.forEach((one, place) => {
        expect(named.includes(place)).toBe(!job.sizes.some((each) => servesAtAll(job, one, each)));
      });
    }),
    { numRuns: 300 },
  );
});

test("[SZ5] each further size saves, until none does", () => {
  fc.assert(
    fc.property(series(30, 20), (job) => {
      const { steps } = planSeries(job);
      steps.forEach(({ saving }, place) => {
        if (place === 0) expect(saving).toBeNull();
        else expect(saving).toBeGreaterThan(0);
      });
    }),
    { numRuns: 60 },
  );
});

test("[SZ3] one more size to choose from never costs more", () => {
  fc.assert(
    fc.property(series(15, 10), (job) => {
      const fewer = planSeries({ ...job, sizes: job.sizes.slice(0, -1) });
      const more = planSeries(job);
      if (fewer.unserved.length !== more.unserved.length) return;
      for (const step of fewer.steps) {
        const served = more.steps.filter(({ sizes }) => sizes.length <= step.sizes.length).at(-1);
        expect(served?.cost).toBeLessThanOrEqual(step.cost);
      }
    }),
    { numRuns: 80 },
  );
});

test("[SZ1] [SZ5] three works and four sizes, by hand", () => {
  const works = [work(7, 10), work(7, 9), work(12, 16)];
  const sizes = [size(11, 14, 2), size(12, 16, 3), size(16, 20, 5), size(18, 22, 7)];
  const { steps, fewest } = planSeries({ works, sizes, limits: LIMITS });
  expect(fewest).toBe(2);
  expect(steps.map(({ cost, saving, sizes: own }) => [own.map((one) => one.size), cost, saving])).toEqual([
    [[0, 2], 9, null],
  ]);
  // 14 in less 10 in leaves 4: 2 in each, no room for a lift above the least border of 2 in.
  const [first] = steps[0]?.sizes[0]?.works ?? [];
  expect(first?.fit.borders).toEqual({ head: inch(2), left: inch(2), right: inch(2), foot: inch(2) });
});

test("[SZ1] a size lies either way up where it may", () => {
  const job = { works: [work(10, 7)], sizes: [size(11, 14, 2)], limits: LIMITS };
  expect(planSeries(job).steps[0]?.sizes[0]?.works[0]?.fit.outer).toEqual({
    width: inch(14),
    height: inch(11),
  });
  const fixed = planSeries({ ...job, limits: { ...LIMITS, turns: false } });
  expect(fixed.steps).toEqual([]);
  expect(fixed.unserved[0]?.why).toMatchObject({
    code: "narrow",
    side: "left",
    border: inch(1, 2),
    limit: inch(2),
  });
});

test("[SZ2] the reason names the border where a size comes nearest, and paper that reaches past the board", () => {
  const wide = { ...work(7, 10), reach: { head: ZERO, left: inch(3), right: ZERO, foot: ZERO } };
  const plan = planSeries({ works: [wide, work(2, 2)], sizes: [size(11, 14, 2)], limits: LIMITS });
  expect(plan.unserved.map(({ why }) => why?.code)).toEqual(["paper", "wide"]);
  expect(planSeries({ works: [wide], sizes: [], limits: LIMITS }).unserved).toEqual([{ work: 0, why: null }]);
});

test("[SZ6] a job that cannot be read is refused by its name", () => {
  const refuse = (more: object) => () =>
    planSeries({ works: [work(7, 10)], sizes: [], limits: LIMITS, ...more });
  expect(refuse({ works: [work(7, 10, 0)] })).toThrow("work 7 x 10: count");
  expect(refuse({ works: [work(0, 10)] })).toThrow("work 0 x 10: window");
  expect(refuse({ sizes: [size(8, 10, Number.POSITIVE_INFINITY)] })).toThrow("size 8 x 10: cost");
  expect(refuse({ works: [work(7, 10, 20_001)] })).toThrow("20001 works");
  expect(refuse({ limits: { ...LIMITS, border: { least: inch(3), most: inch(2) } } })).toThrow("border");
});

test("[SZ7] the checker finds a border past its limits, a work left out and a wrong sum", () => {
  const job = { works: [work(7, 10), work(7, 9)], sizes: [size(11, 14, 2)], limits: LIMITS };
  const plan = planSeries(job);
  const [step] = plan.steps;
  const [own] = step?.sizes ?? [];
  const [first] = own?.works ?? [];
  if (step === undefined || own === undefined || first === undefined) throw new Error("nothing was planned");
  const codes = (works: typeof own.works, more: Partial<typeof step> = {}) =>
    seriesFaults(job, { ...plan, steps: [{ ...step, sizes: [{ ...own, works }], ...more }] }).map(
      ({ code }) => code,
    );
  expect(codes(own.works)).toEqual([]);
  expect(codes([first])).toEqual(["not-served", "wrong-cost"]);
  expect(codes([...own.works, first])).toContain("served-twice");
  const borders = { ...first.fit.borders, head: inch(1), foot: inch(3) };
  expect(codes([{ ...first, fit: { ...first.fit, borders } }, ...own.works.slice(1)])).toEqual([
    "past-limits",
  ]);
  expect(codes(own.works, { cost: 5 })).toContain("wrong-cost");
  expect(codes(own.works, { bound: 5 })).toContain("bound-above");
});
