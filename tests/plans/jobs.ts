import * as fc from "fast-check";
import { type Length, ticks } from "../../src/lengths/index.ts";
import type { CuttingJob, CuttingPlan, PieceWanted, StockSheet } from "../../src/plans/index.ts";
import { planCutting } from "../../src/plans/index.ts";

export const size = (width: number, height: number) => ({ width: ticks(width), height: ticks(height) });

export const sheet = (width: number, height: number, more: Partial<StockSheet> = {}): StockSheet => ({
  name: `${width} x ${height}`,
  ...size(width, height),
  cost: 1,
  copies: null,
  trim: ticks(0),
  ...more,
});

export const piece = (width: number, height: number, more: Partial<PieceWanted> = {}): PieceWanted => ({
  name: `${width} x ${height}`,
  ...size(width, height),
  count: 1,
  window: null,
  turns: true,
  ...more,
});

export const jobOf = (
  sheets: readonly StockSheet[],
  pieces: readonly PieceWanted[],
  more: Partial<CuttingJob> = {},
): CuttingJob => ({
  sheets,
  pieces,
  dropOuts: false,
  kerf: ticks(0),
  least: null,
  longestCut: null,
  tight: ticks(0),
  ...more,
});

/** A clock that never moves: the whole work is done. */
const stopped = () => 0;

/** All the planner's work, however long it takes. */
export const planned = (job: CuttingJob, seed = 1): CuttingPlan =>
  planCutting(job, { seconds: 1, seed, clock: stopped });

/** Only what is made at once. */
export const firstPlanned = (job: CuttingJob): CuttingPlan =>
  planCutting(job, { seconds: 0, seed: 1, clock: stopped });

const length = (min: number, max: number) => fc.integer({ min, max }).map((value): Length => ticks(value));

const stockSheet: fc.Arbitrary<StockSheet> = fc.record({
  name: fc.constant("sheet"),
  width: length(4, 40),
  height: length(4, 40),
  cost: fc.oneof(fc.integer({ min: 0, max: 50 }), fc.constantFrom(11.5, 26.55, 0.1)),
  copies: fc.oneof({ weight: 3, arbitrary: fc.constant(null) }, fc.integer({ min: 0, max: 3 })),
  trim: fc.oneof({ weight: 3, arbitrary: fc.constant(ticks(0)) }, length(0, 3)),
});

const inner = (side: number, share: number) => ticks(Math.min(side - 1, Math.ceil(side * share)));

const pieceWanted: fc.Arbitrary<PieceWanted> = fc
  .record({
    width: length(1, 25),
    height: length(1, 25),
    count: fc.integer({ min: 0, max: 4 }),
    window: fc.option(
      fc.tuple(
        fc.double({ min: 0.3, max: 0.95, noNaN: true }),
        fc.double({ min: 0.3, max: 0.95, noNaN: true }),
      ),
    ),
    turns: fc.oneof({ weight: 3, arbitrary: fc.constant(true) }, fc.boolean()),
  })
  .map(({ window, ...rest }) => {
    const holds = window !== null && rest.width > 1 && rest.height > 1;
    return {
      ...rest,
      name: "piece",
      window: holds ? { width: inner(rest.width, window[0]), height: inner(rest.height, window[1]) } : null,
    };
  });

/** Small jobs with everything in them: trims, kerfs, offcuts, windows, grain, a longest cut, pieces that fit nothing. */
export const smallJob: fc.Arbitrary<CuttingJob> = fc.record({
  sheets: fc.array(stockSheet, { minLength: 0, maxLength: 4 }),
  pieces: fc.array(pieceWanted, { minLength: 0, maxLength: 6 }),
  dropOuts: fc.boolean(),
  kerf: fc.oneof({ weight: 2, arbitrary: fc.constant(ticks(0)) }, length(0, 3)),
  least: fc.option(fc.record({ width: length(1, 10), height: length(1, 10) })),
  longestCut: fc.option(length(5, 45), { freq: 3 }),
  tight: length(0, 2),
});

/** The pieces of gcut1, for sheets of 250 x 250 (Beasley 1985, OR-Library). */
export const GCUT1 = [
  [167, 184],
  [114, 118],
  [167, 152],
  [83, 140],
  [70, 86],
  [143, 166],
  [120, 160],
  [66, 148],
  [87, 141],
  [69, 165],
] as const;
