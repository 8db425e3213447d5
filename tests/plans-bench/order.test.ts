import * as fc from "fast-check";
import { expect, test } from "vitest";
import { inch } from "../../src/lengths/index.ts";
import { benchFaults, planBench, requireSoundBatch } from "../../src/plans/bench/index.ts";
import { batch, mat } from "./batches.ts";
import { fewestRuns } from "./exhaustive.ts";

const runsOf = (mats: Parameters<typeof planBench>[0]["mats"]) =>
  planBench({ mats }).runs.map(({ setting, mats: cut }) => [Math.round((setting * 8) / inch(1)), [...cut]]);

test("[BO5] [BO6] of a small batch the order is the shortest there is, and it says so", () => {
  fc.assert(
    fc.property(batch(5, 4), (job) => {
      const plan = planBench(job);
      expect(plan.runs.length).toBe(fewestRuns(job));
      expect(plan.proven).toBe(true);
    }),
    { numRuns: 250 },
  );
});

test("[BO4] [BO5] what dries is cut last, and the order is still the shortest", () => {
  fc.assert(
    fc.property(batch(4, 3, true), (job) => {
      const plan = planBench(job);
      expect(benchFaults(job, plan)).toEqual([]);
      expect(plan.runs.length).toBe(fewestRuns(job));
    }),
    { numRuns: 200 },
  );
});

test("[BO1] [BO2] [BO6] every order holds, and its bound lies between the figures and its runs", () => {
  fc.assert(
    fc.property(batch(40, 12), (job) => {
      const plan = planBench(job);
      expect(benchFaults(job, plan)).toEqual([]);
      const figures = new Set(job.mats.flatMap(({ settings }) => settings)).size;
      expect(plan.bound.runs).toBeGreaterThanOrEqual(figures);
      expect(plan.bound.runs).toBeLessThanOrEqual(plan.runs.length);
    }),
    { numRuns: 60 },
  );
});

test("[BO2] mats that wait for nothing need each figure once", () => {
  const free = batch(60, 20).map(({ mats }) => ({ mats: mats.map((one) => ({ ...one, after: [] })) }));
  fc.assert(
    fc.property(free, (job) => {
      const plan = planBench(job);
      const figures = job.mats.flatMap(({ settings }) => settings);
      expect(plan.runs.map(({ setting }) => setting)).toEqual(
        [...new Set(figures)].toSorted((a, b) => a - b),
      );
      expect(plan.proven).toBe(true);
    }),
    { numRuns: 100 },
  );
});

test("[BO2] alike mats, however many, set the stop no more often than one", () => {
  fc.assert(
    fc.property(batch(6, 5), fc.integer({ min: 2, max: 4 }), (job, copies) => {
      const several = Array.from({ length: copies }, (_, copy) =>
        job.mats.map((one) => ({ ...one, after: one.after.map((other) => other + copy * job.mats.length) })),
      ).flat();
      expect(planBench({ mats: several }).runs.length).toBe(planBench(job).runs.length);
    }),
    { numRuns: 100 },
  );
});

test("[BO3] the lower mat follows the upper, at the same setting where its figure stands there", () => {
  // Upper 14 and 16 eighths, lower 16 and 18: 14, then 16 for both, then 18.
  expect(runsOf([mat([16, 18], [1]), mat([14, 16])])).toEqual([
    [14, [1]],
    [16, [1, 0]],
    [18, [0]],
  ]);
});

test("[BO3] a blank out of a window waits until that window has fallen", () => {
  // Both need 16 and 20: one of them has to be set again.
  const mats = [mat([16, 20]), mat([16, 20], [0])];
  const plan = planBench({ mats });
  expect(plan.runs).toHaveLength(3);
  expect(plan.bound).toEqual({ runs: 3, how: "turns" });
});

test("[BO6] a chain of three mats alike needs its two figures four times, which pairs prove", () => {
  const mats = [mat([16, 20]), mat([16, 20], [0]), mat([16, 20], [1])];
  const plan = planBench({ mats });
  expect(plan.runs).toHaveLength(4);
  expect(plan.bound).toEqual({ runs: 4, how: "pairs" });
});

test("[BO2] an empty batch needs no setting, and one mat each of its figures", () => {
  expect(planBench({ mats: [] })).toEqual({ runs: [], bound: { runs: 0, how: "figures" }, proven: true });
  expect(runsOf([mat([20, 16])])).toEqual([
    [16, [0]],
    [20, [0]],
  ]);
});

test("[BO7] a batch that no order can exist for is refused by its name", () => {
  const refuse = (mats: Parameters<typeof planBench>[0]["mats"]) => () => planBench({ mats });
  expect(refuse([mat([])])).toThrow("mat 0: no cut");
  expect(refuse([mat([1]), mat([2, 2])])).toThrow("mat 1: one figure twice");
  expect(refuse([mat([1], [4])])).toThrow("mat 0: waits for no mat");
  expect(refuse([mat([1], [1]), mat([1], [0])])).toThrow("wait for one another");
  expect(() => requireSoundBatch({ mats: Array.from({ length: 100_001 }, () => mat([1])) })).toThrow(
    "100001 mats",
  );
});

test("[BO8] the same batch gives the same order", () => {
  fc.assert(
    fc.property(batch(20, 10), (job) => {
      expect(planBench(job)).toEqual(planBench(job));
    }),
    { numRuns: 20 },
  );
});
