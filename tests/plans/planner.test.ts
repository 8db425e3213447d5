import * as fc from "fast-check";
import { expect, test } from "vitest";
import { ticks } from "../../src/lengths/index.ts";
import { cuttingFaults, planCutting } from "../../src/plans/index.ts";
import { firstPlanned, jobOf, piece, planned, sheet, size, smallJob } from "./jobs.ts";

// The planner itself refuses to hand out a plan with a fault; the checker is called here as well, so
// that the rules hold even where that guard is lost.
test("[CT1] [CT2] [CT3] [CT4] [CT5] [CT6] [CT7] [CT8] every first plan survives the checker", () => {
  fc.assert(
    fc.property(smallJob, (job) => {
      expect(cuttingFaults(job, firstPlanned(job))).toEqual([]);
    }),
    { numRuns: 2000 },
  );
});

test("[CT1] [CT3] [CT6] [CT10] [CT11] every plan after all the work survives the checker", () => {
  fc.assert(
    fc.property(smallJob, (job) => {
      expect(cuttingFaults(job, planned(job))).toEqual([]);
    }),
    { numRuns: 300 },
  );
});

test("[CT12] the same job and seed give the same plan, and more work never a dearer one", () => {
  fc.assert(
    fc.property(smallJob, (job) => {
      const plan = planned(job);
      expect(planned(job)).toEqual(plan);
      const first = firstPlanned(job);
      const missing = (one: typeof plan) => one.missing.reduce((sum, count) => sum + count, 0);
      if (missing(plan) === 0 && missing(first) === 0) expect(plan.cost).toBeLessThanOrEqual(first.cost);
    }),
    { numRuns: 100 },
  );
});

test("[CT12] a plan is there even when no time is left", () => {
  let now = 0;
  const clock = () => (now += 1000);
  const plan = planCutting(jobOf([sheet(10, 10)], [piece(3, 4, { count: 9 })]), {
    seconds: 0,
    seed: 1,
    clock,
  });
  expect(plan.missing).toEqual([0]);
});

test("[CT1] [CT19] a piece larger than every sheet is named, and the rest is planned", () => {
  const job = jobOf([sheet(10, 10)], [piece(11, 2), piece(5, 5, { count: 4 })]);
  const plan = planned(job);
  expect(plan.missing).toEqual([1, 0]);
  expect(plan.checks).toContainEqual({
    level: "stop",
    code: "piece-too-large",
    piece: 0,
    largest: size(10, 10),
  });
  expect(plan.cost).toBe(1);
});

test("[CT1] [CT19] where the sheets run out the missing ones are counted", () => {
  const job = jobOf([sheet(10, 10, { copies: 1 })], [piece(6, 6, { count: 3 })]);
  const plan = planned(job);
  expect(plan.missing).toEqual([2]);
  expect(plan.checks).toContainEqual({
    level: "stop",
    code: "stock-short",
    piece: 0,
    missing: 2,
    wanted: 3,
  });
  expect(plan.proven).toBe(false);
});

test("[CT19] no sheet at all", () => {
  const plan = planned(jobOf([], [piece(1, 1)]));
  expect(plan.checks).toEqual([{ level: "stop", code: "piece-too-large", piece: 0, largest: null }]);
});

test("[CT4] a long sheet is cut across before it is cut along", () => {
  const job = jobOf([sheet(60, 40)], [piece(30, 20, { count: 4, turns: false })], { longestCut: ticks(40) });
  const plan = planned(job);
  expect(plan.sheetsUsed).toBe(1);
  expect(plan.sheets[0]?.cuts[0]).toMatchObject({ across: "x", from: { x: 30, y: 0 }, to: { x: 30, y: 40 } });
});

test("[CT4] [CT19] a piece that only a longer cut would free is named as that", () => {
  const job = jobOf([sheet(60, 40)], [piece(50, 20)], { longestCut: ticks(45) });
  expect(planned(job).checks).toEqual([{ level: "stop", code: "cut-too-long", piece: 0, longest: 45 }]);
});

test("[CT6] windows that fall out save a sheet, and a piece from a window from a window", () => {
  const mats = [
    piece(10, 10, { window: size(8, 8) }),
    piece(8, 8, { window: size(6, 6) }),
    piece(6, 6, { window: size(4, 4) }),
  ];
  const without = planned(jobOf([sheet(10, 10)], mats));
  const withThem = planned(jobOf([sheet(10, 10)], mats, { dropOuts: true }));
  expect(without.cost).toBe(3);
  expect(withThem.cost).toBe(1);
  expect(withThem.sheets.map(({ from }) => from)).toEqual([
    { kind: "stock", sheet: 0 },
    { kind: "drop-out", sheet: 0, placement: 0 },
    { kind: "drop-out", sheet: 1, placement: 0 },
  ]);
  expect(withThem.checks).toContainEqual({ level: "note", code: "drop-outs-used", count: 2 });
});

test("[CT6] a mat that cannot be cut has no window to give", () => {
  const job = jobOf(
    [sheet(10, 10, { copies: 1 })],
    [piece(10, 9, { count: 2, window: size(8, 7) }), piece(8, 7, { count: 2 })],
    { dropOuts: true },
  );
  const plan = planned(job);
  expect(plan.missing).toEqual([1, 1]);
});

test("[CT5] an offcut that costs nothing goes first, as often as it is there", () => {
  const offcut = sheet(12, 12, { cost: 0, copies: 1 });
  const plan = planned(jobOf([sheet(20, 20, { cost: 11.5 }), offcut], [piece(12, 12, { count: 2 })]));
  expect(plan.cost).toBe(11.5);
  expect(plan.sheetsUsed).toBe(2);
});

test("[CT2] trim and kerf at the limit: what only just fits does, a tick more does not", () => {
  // 2 + 2 trim, three pieces of 5, two kerfs of 1: 21 exactly.
  const pieces = [piece(5, 5, { count: 3 })];
  const plan = (width: number) =>
    planned(jobOf([sheet(width, 9, { trim: ticks(2) })], pieces, { kerf: ticks(1) })).sheetsUsed;
  expect(plan(21)).toBe(1);
  expect(plan(20)).toBe(2);
});

test("[CT2] the blade may hang over the edge: a rest smaller than the kerf is no leftover", () => {
  const plan = planned(jobOf([sheet(10, 5)], [piece(9, 5)], { kerf: ticks(3) }));
  expect(plan.sheets[0]?.left).toEqual([]);
  expect(plan.sheets[0]?.cuts).toMatchObject([{ from: { x: 9 }, takes: 1 }]);
});

const grained = (turns: boolean) => [piece(8, 4, { count: 2, turns })];

test("[CT1] grain: what must not turn does not, even where turning would save a sheet", () => {
  expect(planned(jobOf([sheet(8, 8)], grained(false))).sheetsUsed).toBe(1);
  expect(planned(jobOf([sheet(4, 16)], grained(true))).sheetsUsed).toBe(1);
  expect(planned(jobOf([sheet(4, 16)], grained(false))).missing).toEqual([2]);
});

test("[CT9] among plans of one cost the larger leftover is kept whole", () => {
  const plan = planned(jobOf([sheet(32, 40)], [piece(16, 20)], { least: size(5, 7) }));
  const keeps =
    plan.sheets[0]?.left.filter(({ keep }) => keep).map(({ width, height }) => width * height) ?? [];
  // Upright the piece leaves 24 x 32 at its side or 20 x 32 below, lying down 24 x 32 below.
  expect(Math.max(...keeps)).toBe(24 * 32);
});

test("[CT16] a sheet with nothing to spare is warned about, one with room is not", () => {
  const tight = planned(jobOf([sheet(32, 40)], [piece(8, 10, { count: 16 })], { tight: ticks(1) }));
  expect(tight.checks).toEqual([
    { level: "warn", code: "just-fits", sheet: 0, direction: "width", needs: 32, spare: 0, sheets: 1 },
    { level: "warn", code: "just-fits", sheet: 0, direction: "height", needs: 40, spare: 0, sheets: 1 },
  ]);
  const roomy = planned(jobOf([sheet(32, 40)], [piece(8, 10, { count: 4 })], { tight: ticks(1) }));
  expect(roomy.checks).toEqual([]);
});

test("a job that is not sound is refused", () => {
  expect(() => planned(jobOf([sheet(10, 10)], [piece(5, 5, { window: size(5, 4) })]))).toThrow(RangeError);
  expect(() => planned(jobOf([sheet(10, 10, { cost: Number.NaN })], []))).toThrow(RangeError);
  expect(() => planned(jobOf([sheet(10, 10)], [piece(5, 5, { count: 0.5 })]))).toThrow(RangeError);
});
