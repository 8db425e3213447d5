import { expect, test } from "vitest";
import { ticks } from "../../src/lengths/index.ts";
import {
  type Cut,
  type CuttingJob,
  type CuttingPlan,
  cuttingFaults,
  type PlannedSheet,
} from "../../src/plans/index.ts";
import { jobOf, piece, planned, sheet, size } from "./jobs.ts";
import { soundJob as job, soundPlan as plan } from "./sound-plan.ts";

// One sound plan, written by hand, and one fault planted at a time: the checker must find each.

type Writable<T> = { -readonly [Key in keyof T]: T[Key] };

/** The plan with one sheet changed. */
function withSheet(index: number, change: (sheet: Writable<PlannedSheet>) => void): CuttingPlan {
  return {
    ...plan,
    sheets: plan.sheets.map((one, at) => {
      if (at !== index) return one;
      const copy = { ...one };
      change(copy);
      return copy;
    }),
  };
}

const withCut = (number: number, change: Partial<Cut>): CuttingPlan =>
  withSheet(0, (one) => {
    one.cuts = one.cuts.map((cut, at) => (at === number ? { ...cut, ...change } : cut));
  });

const withPlacement = (number: number, change: object): CuttingPlan =>
  withSheet(0, (one) => {
    one.placements = one.placements.map((lies, at) => (at === number ? { ...lies, ...change } : lies));
  });

const codes = (faulty: CuttingPlan, of: CuttingJob = job) =>
  cuttingFaults(of, faulty).map(({ code }) => code);

test("the sound plan has no fault", () => {
  expect(cuttingFaults(job, plan)).toEqual([]);
});

test("[CT1] a piece too few, one too many, one twice, one of another size, one turned against its grain", () => {
  const fewer = withSheet(0, (one) => (one.placements = one.placements.slice(1)));
  expect(codes(fewer)).toContain("demand");
  const first = plan.sheets[0]?.placements[0];
  const twice = withSheet(0, (one) => (one.placements = [...one.placements, ...one.placements.slice(0, 1)]));
  expect(codes(twice)).toContain("copy");
  expect(codes(withPlacement(0, { copy: 7 }))).toContain("copy");
  expect(codes(withPlacement(0, { width: ticks(19) }))).toContain("wrong-piece-size");
  expect(codes(withPlacement(0, { width: first?.height, height: first?.width }))).toContain(
    "wrong-piece-size",
  );
  expect(codes(withPlacement(0, { piece: 9 }))).toContain("no-such-piece");
});

test("[CT1] a missing piece that no stop check names, and a stop check without a missing piece", () => {
  const wanted = { ...job, pieces: [...job.pieces, piece(90, 90)] };
  expect(codes({ ...plan, missing: [0, 0, 1] }, wanted)).toEqual(["silence"]);
  const check = { level: "stop", code: "stock-short", piece: 0, missing: 1, wanted: 3 } as const;
  expect(codes({ ...plan, checks: [check] })).toEqual(["silence"]);
});

test("[CT2] a piece in the trim, past the edge, on another, nearer than the kerf", () => {
  expect(codes(withPlacement(0, { left: ticks(0) }))).toContain("outside");
  expect(codes(withPlacement(1, { left: ticks(23) }))).toContain("outside");
  const first = plan.sheets[0]?.placements[0];
  expect(codes(withPlacement(1, { left: first?.left, top: first?.top }))).toContain("too-close");
  expect(codes(withPlacement(1, { left: ticks(21) }))).toContain("too-close");
  expect(codes(withPlacement(2, { top: ticks(15) }))).toContain("too-close");
});

const lies = (copy: number, left: number, top: number, width: number, height: number) => ({
  piece: 0,
  copy,
  left: ticks(left),
  top: ticks(top),
  ...size(width, height),
});

test("[CT3] four pieces round a hole are in place, and no straight cut parts them", () => {
  const pinwheel: CuttingJob = jobOf([sheet(5, 5)], [piece(3, 2, { count: 4 })]);
  const [sound] = planned(jobOf([sheet(5, 5)], [piece(3, 2)])).sheets;
  if (sound === undefined) throw new Error("no sheet");
  const placements = [lies(0, 0, 0, 3, 2), lies(1, 3, 0, 2, 3), lies(2, 2, 3, 3, 2), lies(3, 0, 2, 2, 3)];
  const wheel = { ...planned(pinwheel), sheets: [{ ...sound, placements }], cost: 1, sheetsUsed: 1 };
  expect(codes(wheel, pinwheel)).toContain("not-guillotine");
});

test("[CT3] a cut left out, made twice, too short, through a piece, out of order", () => {
  const last = (plan.sheets[0]?.cuts.length ?? 0) - 1;
  expect(codes(withSheet(0, (one) => (one.cuts = one.cuts.slice(0, last))))).toContain("not-cut-free");
  expect(codes(withSheet(0, (one) => (one.cuts = [...one.cuts, ...one.cuts.slice(last)])))).toContain(
    "cut-in-the-air",
  );
  expect(codes(withSheet(0, (one) => (one.cuts = one.cuts.toReversed())))).toContain("cut-in-the-air");
  const cut = plan.sheets[0]?.cuts[last];
  if (cut === undefined) throw new Error("no cut");
  expect(codes(withCut(last, { to: { x: ticks(cut.to.x - 1), y: ticks(cut.to.y - 1) } }))).toContain(
    "cut-in-the-air",
  );
  const aside = cut.across === "x" ? { x: 2, y: 0 } : { x: 0, y: 2 };
  const moved = {
    from: { x: ticks(cut.from.x - aside.x), y: ticks(cut.from.y - aside.y) },
    to: { x: ticks(cut.to.x - aside.x), y: ticks(cut.to.y - aside.y) },
  };
  expect(codes(withCut(last, moved))).toContain("not-cut-free");
});

test("[CT3] [CT14] a cut that takes another width, a fence set elsewhere, settings miscounted", () => {
  const last = (plan.sheets[0]?.cuts.length ?? 0) - 1;
  expect(codes(withCut(last, { takes: ticks(2) }))).toContain("cut-takes");
  expect(codes(withCut(last, { setting: ticks(3) }))).toContain("cut-setting");
  expect(codes(withSheet(0, (one) => (one.settings += 1)))).toEqual(["settings"]);
});

test("[CT4] a cut longer than the bench's longest", () => {
  expect(codes(plan, { ...job, longestCut: ticks(42) })).toContain("cut-too-long");
  expect(codes(plan, { ...job, longestCut: ticks(43) })).toEqual([]);
});

test("[CT3] [CT8] a leftover kept back, invented, or wrongly called worth keeping; a wrong need", () => {
  expect(codes(withSheet(0, (one) => (one.left = one.left.slice(1))))).toEqual(["left-over"]);
  const invented = { left: ticks(2), top: ticks(2), ...size(3, 4), keep: true };
  expect(codes(withSheet(0, (one) => (one.left = [...one.left, invented])))).toEqual(["left-over"]);
  const turned = withSheet(0, (one) => (one.left = one.left.map((box) => ({ ...box, keep: !box.keep }))));
  expect(codes(turned)).toContain("keep");
  expect(codes(withSheet(0, (one) => (one.needs = size(1, 1))))).toEqual(["needs"]);
});

test("[CT5] more copies than there are, a sheet that does not exist, a sheet of another size", () => {
  expect(codes(plan, { ...job, sheets: job.sheets.map((one) => ({ ...one, copies: 0 })) })).toContain(
    "copies",
  );
  expect(codes(withSheet(0, (one) => (one.from = { kind: "stock", sheet: 7 })))).toContain("no-such-sheet");
  expect(codes(withSheet(0, (one) => (one.size = size(41, 30))))).toEqual(["wrong-sheet-size"]);
});

test("[CT6] a window used twice, one of a piece without a window, windows where none are allowed, a circle", () => {
  const dropOut = plan.sheets[2];
  if (dropOut === undefined) throw new Error("no window is used");
  expect(codes({ ...plan, sheets: [...plan.sheets, dropOut] })).toContain("drop-out-twice");
  expect(codes(plan, { ...job, dropOuts: false })).toEqual(["no-such-drop-out"]);
  const wrong = withSheet(2, (one) => (one.from = { kind: "drop-out", sheet: 0, placement: 2 }));
  expect(codes(wrong)).toEqual(["no-such-drop-out"]);
  const circle = withSheet(0, (one) => (one.from = { kind: "drop-out", sheet: 0, placement: 0 }));
  expect(codes(circle)).toContain("drop-out-circle");
});

test("[CT7] [CT10] [CT11] a wrong cost, a wrong count, a bound above the cost, proof without ground", () => {
  expect(codes({ ...plan, cost: plan.cost + 1 })).toContain("cost");
  expect(codes({ ...plan, sheetsUsed: 9 })).toEqual(["sheets-used"]);
  expect(codes({ ...plan, proven: false, bound: { cost: plan.cost + 1, how: "area" } })).toEqual([
    "bound-above-cost",
  ]);
  // Nothing between 11.50 and 23.00 can be paid; below 11.50 only nought.
  expect(codes({ ...plan, proven: true, bound: { cost: 0.5, how: "area" } })).toEqual([]);
  expect(codes({ ...plan, proven: true, bound: { cost: 0, how: "none" } })).toEqual(["not-proven"]);
});
