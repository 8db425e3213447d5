import * as fc from "fast-check";
import { expect, test } from "vitest";
import { ticks } from "../../src/lengths/index.ts";
import { countKinds, type Part } from "../../src/plans/cutting/layout.ts";
import { PricingTable } from "../../src/plans/cutting/pricing.ts";
import { wholeJob } from "../../src/plans/cutting/whole.ts";
import type { CuttingJob, PieceWanted } from "../../src/plans/index.ts";
import { GCUT1, jobOf, piece, planned, sheet } from "./jobs.ts";

/** The worth of one sheet, with one value a piece, and the pattern that makes it. */
function bestPattern(job: CuttingJob, valueOf: (piece: PieceWanted) => number) {
  const whole = wholeJob(job);
  const table = PricingTable.for(whole);
  const [stock] = whole.stocks;
  if (table === null || stock === undefined) throw new Error("no table");
  const values = whole.kinds.map((kind) => {
    const own = job.pieces[kind.pieces[0] ?? -1];
    return own === undefined ? 0 : valueOf(own);
  });
  table.fill(values);
  const pattern = table.pattern(stock);
  const counts = new Int32Array(whole.kinds.length);
  if (pattern !== null) countKinds(pattern, counts);
  const made = counts.reduce((sum, count, kind) => sum + count * (values[kind] ?? 0), 0);
  return { worth: table.worth(stock), made, pattern };
}

// Best yields of a sheet by straight cuts, pieces may turn, no kerf: computed by exact dynamic
// programming outside this project. The sizes are common practice; inches are counted as they are,
// millimetres too.
const YIELDS: readonly (readonly [width: number, height: number, yields: Record<string, number>])[] = [
  [
    32,
    40,
    {
      "5x7": 36,
      "8x10": 16,
      "11x14": 6,
      "12x16": 6,
      "14x18": 4,
      "16x20": 4,
      "18x24": 2,
      "20x24": 2,
      "22x28": 1,
    },
  ],
  [
    40,
    60,
    {
      "5x7": 68,
      "8x10": 30,
      "11x14": 14,
      "12x16": 12,
      "14x18": 8,
      "16x20": 6,
      "18x24": 4,
      "20x24": 4,
      "22x28": 2,
    },
  ],
  [1120, 815, { "210x297": 13, "297x420": 5, "240x300": 10, "300x400": 6, "400x500": 4, "500x700": 2 }],
];

const cases = YIELDS.flatMap(([width, height, yields]) =>
  Object.entries(yields).map(([name, count]) => {
    const [w = 0, h = 0] = name.split("x").map(Number);
    return { width, height, w, h, count };
  }),
);

test.each(cases)(
  "[CT13] $width x $height gives $count of $w x $h, and no more",
  ({ width, height, w, h, count }) => {
    const { worth, made } = bestPattern(jobOf([sheet(width, height)], [piece(w, h)]), () => 1);
    expect(worth).toBe(count);
    expect(made).toBe(count);
  },
);

test.each(cases)(
  "[CT13] the plan cuts $count of $w x $h from one sheet",
  ({ width, height, w, h, count }) => {
    const plan = planned(jobOf([sheet(width, height)], [piece(w, h, { count })]));
    expect(plan.sheetsUsed).toBe(1);
    expect(plan.proven).toBe(true);
  },
);

/** Sheets for blanks of 8 x 10 from 32 x 40 with 1/8 off each edge, counted in eighths. */
const sheetsInEighths = (count: number): number => {
  const trimmed = { ...sheet(32 * 8, 40 * 8), trim: ticks(1) };
  return planned(jobOf([trimmed], [piece(8 * 8, 10 * 8, { count })])).sheetsUsed;
};

test("[CT13] 32 x 40 with 1/8 off each edge gives twelve of 8 x 10, no longer sixteen", () => {
  expect(sheetsInEighths(12)).toBe(1);
  expect(sheetsInEighths(13)).toBe(2);
});

test("the best pattern of gcut1: 56460 in their own direction, 58136 turning allowed (OR-Library, Beasley 1985; 56460 computed again)", () => {
  const worth = (turns: boolean) =>
    bestPattern(
      jobOf(
        [sheet(250, 250)],
        GCUT1.map(([w, h]) => piece(w, h, { turns })),
      ),
      (one) => one.width * one.height,
    ).worth;
  expect(worth(false)).toBe(56460);
  expect(worth(true)).toBe(58136);
});

/** The same by trying every cut at every place, with no raster points and no symmetry. */
function byBruteForce(
  width: number,
  height: number,
  pieces: readonly { w: number; h: number; v: number }[],
): number {
  const memo = new Map<number, number>();
  const best = (w: number, h: number): number => {
    const key = w * 1000 + h;
    const known = memo.get(key);
    if (known !== undefined) return known;
    let most = 0;
    for (const one of pieces) {
      if ((one.w <= w && one.h <= h) || (one.h <= w && one.w <= h)) most = Math.max(most, one.v);
    }
    for (let a = 1; a <= w / 2; a++) most = Math.max(most, best(a, h) + best(w - a, h));
    for (let b = 1; b <= h / 2; b++) most = Math.max(most, best(w, b) + best(w, h - b));
    memo.set(key, most);
    return most;
  };
  return best(width, height);
}

test("a pricing table is worth what trying every cut is, and its pattern makes that worth", () => {
  const one = fc.record({
    w: fc.integer({ min: 1, max: 12 }),
    h: fc.integer({ min: 1, max: 12 }),
    v: fc.integer({ min: 1, max: 30 }),
  });
  fc.assert(
    fc.property(
      fc.integer({ min: 3, max: 18 }),
      fc.integer({ min: 3, max: 18 }),
      fc.uniqueArray(one, {
        minLength: 1,
        maxLength: 4,
        selector: ({ w, h }) => `${Math.min(w, h)} ${Math.max(w, h)}`,
      }),
      (width, height, pieces) => {
        const fitting = pieces.filter(
          ({ w, h }) => (w <= width && h <= height) || (h <= width && w <= height),
        );
        fc.pre(fitting.length > 0);
        const job = jobOf(
          [sheet(width, height)],
          fitting.map(({ w, h }) => piece(w, h)),
        );
        const value = (own: PieceWanted) =>
          fitting.find(({ w, h }) => own.width === w && own.height === h)?.v ?? 0;
        const { worth, made, pattern } = bestPattern(job, value);
        expect(worth).toBe(byBruteForce(width, height, fitting));
        expect(made).toBe(worth);
        if (pattern !== null) expect(fillsItself(pattern)).toBe(true);
      },
    ),
    { numRuns: 300 },
  );
});

/** Whether the parts and the rest of every split add up to it. */
function fillsItself(part: Part): boolean {
  if (part.is === "piece") return true;
  const along = part.axis === "x" ? "width" : "height";
  const across = part.axis === "x" ? "height" : "width";
  const used = part.parts.reduce((sum, one) => sum + one[along], 0);
  return (
    used + part.rest === part[along] &&
    part.rest >= 0 &&
    part.parts.every((one) => one[across] === part[across] && fillsItself(one))
  );
}
