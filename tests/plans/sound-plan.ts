import { ticks } from "../../src/lengths/index.ts";
import type { Cut, CuttingJob, CuttingPlan, PlannedSheet } from "../../src/plans/index.ts";
import { jobOf, piece, sheet, size } from "./jobs.ts";

/*
 * A plan written by hand: a sheet with trim and kerf of 1, an offcut, and a window that falls out.
 *
 *    sheet 43 x 32: two mats of 20 x 14 side by side, a piece of 10 x 6 below the first
 *    offcut 14 x 9: a piece of 10 x 6
 *    window 12 x 8 of the first mat: a piece of 10 x 6
 */
export const soundJob: CuttingJob = jobOf(
  [sheet(43, 32, { cost: 11.5, trim: ticks(1) }), sheet(14, 9, { cost: 0, copies: 1 })],
  [piece(20, 14, { count: 2, window: size(12, 8), turns: false }), piece(10, 6, { count: 3 })],
  { dropOuts: true, kerf: ticks(1), least: size(3, 4) },
);

type Rectangle = readonly [left: number, top: number, width: number, height: number];

const box = ([left, top, width, height]: Rectangle) => ({
  left: ticks(left),
  top: ticks(top),
  ...size(width, height),
});

const cut = (
  across: "x" | "y",
  line: number,
  part: Rectangle,
  setting: number,
  against: Cut["against"] = "before",
): Cut => {
  const [left, top, width, height] = part;
  return {
    across,
    from: across === "x" ? { x: ticks(line), y: ticks(top) } : { x: ticks(left), y: ticks(line) },
    to:
      across === "x"
        ? { x: ticks(line), y: ticks(top + height) }
        : { x: ticks(left + width), y: ticks(line) },
    takes: ticks(1),
    part: box(part),
    setting: ticks(setting),
    against,
  };
};

const lies = (index: number, copy: number, at: Rectangle) => ({ piece: index, copy, ...box(at) });

const onSheet: PlannedSheet = {
  from: { kind: "stock", sheet: 0 },
  size: size(43, 32),
  placements: [lies(0, 0, [1, 1, 20, 14]), lies(0, 1, [22, 1, 20, 14]), lies(1, 0, [1, 16, 10, 6])],
  cuts: [
    cut("y", 0, [0, 0, 43, 32], 31, "after"),
    cut("y", 31, [0, 1, 43, 31], 30),
    cut("x", 0, [0, 1, 43, 30], 42, "after"),
    cut("x", 42, [1, 1, 42, 30], 41),
    cut("y", 15, [1, 1, 41, 30], 14),
    cut("x", 21, [1, 1, 41, 14], 20),
    cut("x", 11, [1, 16, 41, 15], 10),
    cut("y", 22, [1, 16, 10, 15], 6),
  ],
  left: [
    { ...box([12, 16, 30, 15]), keep: true },
    { ...box([1, 23, 10, 8]), keep: true },
  ],
  needs: size(43, 23),
  settings: 8,
};

const onOffcut: PlannedSheet = {
  from: { kind: "stock", sheet: 1 },
  size: size(14, 9),
  placements: [lies(1, 1, [0, 0, 10, 6])],
  cuts: [cut("x", 10, [0, 0, 14, 9], 10), cut("y", 6, [0, 0, 10, 9], 6)],
  left: [
    { ...box([11, 0, 3, 9]), keep: true },
    { ...box([0, 7, 10, 2]), keep: false },
  ],
  needs: size(10, 6),
  settings: 2,
};

const inWindow: PlannedSheet = {
  from: { kind: "drop-out", sheet: 0, placement: 0 },
  size: size(12, 8),
  placements: [lies(1, 2, [0, 0, 10, 6])],
  cuts: [cut("x", 10, [0, 0, 12, 8], 10), cut("y", 6, [0, 0, 10, 8], 6)],
  left: [
    { ...box([11, 0, 1, 8]), keep: false },
    { ...box([0, 7, 10, 1]), keep: false },
  ],
  needs: size(10, 6),
  settings: 2,
};

export const soundPlan: CuttingPlan = {
  sheets: [onSheet, onOffcut, inWindow],
  cost: 11.5,
  sheetsUsed: 2,
  bound: { cost: 0, how: "none" },
  proven: false,
  settings: 12,
  missing: [0, 0],
  checks: [],
};
