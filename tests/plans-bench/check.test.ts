import { expect, test } from "vitest";
import { inch } from "../../src/lengths/index.ts";
import { benchFaults, type BenchPlan, planBench } from "../../src/plans/bench/index.ts";
import { mat } from "./batches.ts";

const job = { mats: [mat([14, 16]), mat([16, 18], [0]), mat([14], [], { dries: true })] };
const sound = planBench(job);
const codes = (plan: Partial<BenchPlan>) => benchFaults(job, { ...sound, ...plan }).map(({ code }) => code);
const run = (eighths: number, ...mats: number[]) => ({ setting: inch(eighths, 8), mats });

test("[BO1] the checker passes a sound order", () => {
  expect(codes({})).toEqual([]);
});

test("[BO1] the checker finds what is left uncut, cut twice, or cut at a figure that is not its own", () => {
  expect(codes({ runs: sound.runs.slice(0, -1) })).toContain("left-uncut");
  expect(codes({ runs: [...sound.runs, run(18, 1)] })).toContain("not-its-figure");
  expect(codes({ runs: [run(15, 0), ...sound.runs] })).toContain("not-its-figure");
  expect(codes({ runs: [...sound.runs, run(12, 9)] })).toContain("no-such-mat");
});

test("[BO2] the checker finds a run that cuts nothing or leaves the stop where it was", () => {
  const [first, ...rest] = sound.runs;
  if (first === undefined) throw new Error("no run");
  expect(codes({ runs: [first, { ...first, mats: [] }, ...rest] })).toContain("idle-run");
  expect(codes({ runs: [run(14, 0), run(14, 2), ...rest] })).toContain("idle-run");
});

test("[BO3] [BO4] the checker finds a mat that is cut too soon, or wet", () => {
  const early = [run(16, 1, 0), run(14, 0), run(18, 1), run(14, 2)];
  expect(codes({ runs: early })).toEqual(["too-soon"]);
  expect(
    codes({ runs: [run(14, 0, 2), run(16, 0, 1), run(18, 1)], bound: { runs: 3, how: "figures" } }),
  ).toEqual(["still-wet"]);
});

test("[BO6] the checker finds a bound above the order or below the figures, and a false claim", () => {
  expect(codes({ bound: { runs: 9, how: "orders" }, proven: false })).toEqual(["bound-above"]);
  expect(codes({ bound: { runs: 2, how: "figures" }, proven: false })).toEqual(["bound-below-figures"]);
  expect(codes({ proven: !sound.proven })).toEqual(["proof"]);
});
