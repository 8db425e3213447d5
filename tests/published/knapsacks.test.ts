import { describe, expect, test } from "vitest";
import { countKinds } from "../../src/plans/cutting/layout.ts";
import { PricingTable } from "../../src/plans/cutting/pricing.ts";
import { wholeJob } from "../../src/plans/cutting/whole.ts";
import type { CuttingJob } from "../../src/plans/index.ts";
import { GCUT1, jobOf, piece, planned, sheet } from "../plans/jobs.ts";

/** Pieces with a worth, of which one sheet takes as many as it can. */
interface Valued {
  readonly w: number;
  readonly h: number;
  readonly worth: number;
  /** Absent: as many as wanted. */
  readonly most?: number;
}

function jobFor(width: number, height: number, pieces: readonly Valued[], counts?: readonly number[]) {
  return jobOf(
    [sheet(width, height)],
    pieces.map(({ w, h }, index) => piece(w, h, { turns: false, count: counts?.[index] ?? 1 })),
  );
}

/** The most that a pattern of any number of each piece is worth, by the table that prices columns. */
function tableWorth(job: CuttingJob, pieces: readonly Valued[]) {
  const whole = wholeJob(job);
  const table = PricingTable.for(whole);
  const [stock] = whole.stocks;
  if (table === null || stock === undefined) throw new Error("no table");
  const worthOf = whole.kinds.map(({ pieces: [first = -1] }) => pieces[first]?.worth ?? 0);
  table.fill(worthOf);
  const counts = new Int32Array(worthOf.length);
  const pattern = table.pattern(stock);
  if (pattern !== null) countKinds(pattern, counts);
  const made = counts.reduce((sum, count, kind) => sum + count * (worthOf[kind] ?? 0), 0);
  return { worth: table.worth(stock), made };
}

test("gcut1: 56460 out of 250 x 250, each piece as often as it fits and worth its area (Beasley, Journal of the Operational Research Society 36, 1985, OR-Library; computed again)", () => {
  const pieces = GCUT1.map(([w, h]): Valued => ({ w, h, worth: w * h }));
  expect(tableWorth(jobFor(250, 250, pieces), pieces)).toEqual({ worth: 56_460, made: 56_460 });
});

const LIMITED = [
  {
    name: "cgcut1: 244 out of 15 x 10 (Christofides and Whitlock, Operations Research 25, 1977; the data from memory)",
    size: [15, 10] as const,
    best: 244,
    pieces: [
      { w: 8, h: 4, most: 2, worth: 66 },
      { w: 3, h: 7, most: 1, worth: 35 },
      { w: 8, h: 2, most: 3, worth: 24 },
      { w: 3, h: 4, most: 5, worth: 17 },
      { w: 3, h: 3, most: 2, worth: 11 },
      { w: 3, h: 2, most: 2, worth: 8 },
      { w: 2, h: 1, most: 1, worth: 2 },
    ],
  },
  {
    name: "ngcut1: 164 out of 10 x 10 (Beasley, Operations Research 33, 1985; the values from memory)",
    size: [10, 10] as const,
    best: 164,
    pieces: [
      { w: 3, h: 7, most: 2, worth: 35 },
      { w: 8, h: 2, most: 2, worth: 40 },
      { w: 10, h: 2, most: 1, worth: 27 },
      { w: 5, h: 4, most: 3, worth: 23 },
      { w: 2, h: 9, most: 2, worth: 43 },
    ],
  },
];

/** Every choice of pieces within their limits that has room by area and is worth as much, the dearest first. */
function choices(area: number, pieces: readonly Required<Valued>[], atLeast: number) {
  let found: { counts: number[]; area: number; worth: number }[] = [{ counts: [], area: 0, worth: 0 }];
  for (const { w, h, worth, most } of pieces) {
    found = found.flatMap((one) =>
      Array.from({ length: most + 1 }, (_, count) => ({
        counts: [...one.counts, count],
        area: one.area + count * w * h,
        worth: one.worth + count * worth,
      })),
    );
  }
  return found
    .filter((one) => one.area <= area && one.worth >= atLeast)
    .toSorted((a, b) => b.worth - a.worth);
}

describe.each(LIMITED.slice(1))("$name", ({ size: [width, height], best, pieces }) => {
  test("of all choices the dearest that the planner lays on one sheet", () => {
    const laid = (counts: readonly number[]) => planned(jobFor(width, height, pieces, counts)).cost === 1;
    const dear = choices(width * height, pieces, best);
    expect(dear[0]?.worth).toBeGreaterThan(best);
    expect(dear.find(({ counts }) => laid(counts))?.worth).toBe(best);
  });
});

describe.each(LIMITED)("$name", ({ size: [width, height], best, pieces }) => {
  test("the pricing table, which knows no limits, is worth no less", () => {
    const { worth, made } = tableWorth(jobFor(width, height, pieces), pieces);
    expect(worth).toBeGreaterThanOrEqual(best);
    expect(made).toBe(worth);
  });
});
