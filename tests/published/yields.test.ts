import { describe, expect, it } from "vitest";
import { inch, type Length, mm, ZERO } from "../../src/lengths/index.ts";
import { planCutting } from "../../src/plans/index.ts";

/** How many sheets the planner takes for so many like pieces, and whether it proves that fewer will not do. */
function sheetsFor(
  sheet: readonly [Length, Length],
  piece: readonly [Length, Length],
  count: number,
  trim: Length = ZERO,
) {
  const { cost, proven } = planCutting(
    {
      sheets: [{ name: "sheet", width: sheet[0], height: sheet[1], cost: 1, copies: null, trim }],
      pieces: [{ name: "piece", width: piece[0], height: piece[1], count, window: null, turns: true }],
      dropOuts: false,
      kerf: ZERO,
      least: null,
      longestCut: null,
      tight: ZERO,
    },
    { seconds: 60, seed: 1, clock: () => performance.now() },
  );
  return { cost, proven };
}

interface Yield {
  readonly sheet: string;
  readonly size: readonly [Length, Length];
  readonly unit: (value: number) => Length;
  /** Width, height, and how many come out of one sheet. */
  readonly pieces: readonly (readonly [number, number, number])[];
}

const YIELDS: readonly Yield[] = [
  {
    sheet: "32 x 40 in",
    size: [inch(32), inch(40)],
    unit: inch,
    pieces: [
      [5, 7, 36],
      [8, 10, 16],
      [11, 14, 6],
      [12, 16, 6],
      [14, 18, 4],
      [16, 20, 4],
      [18, 24, 2],
      [20, 24, 2],
      [22, 28, 1],
    ],
  },
  {
    sheet: "40 x 60 in",
    size: [inch(40), inch(60)],
    unit: inch,
    pieces: [
      [5, 7, 68],
      [8, 10, 30],
      [11, 14, 14],
      [12, 16, 12],
      [14, 18, 8],
      [16, 20, 6],
      [18, 24, 4],
      [20, 24, 4],
      [22, 28, 2],
    ],
  },
  {
    sheet: "1120 x 815 mm",
    size: [mm(1120), mm(815)],
    unit: mm,
    pieces: [
      [210, 297, 13],
      [297, 420, 5],
      [240, 300, 10],
      [300, 400, 6],
      [400, 500, 4],
      [500, 700, 2],
    ],
  },
];

describe("the most that guillotine cuts give out of one sheet (computed by exact dynamic programming, no source)", () => {
  for (const { sheet, size, unit, pieces } of YIELDS) {
    for (const [width, height, most] of pieces) {
      it(`${sheet}: ${width} x ${height} gives ${most}, and one more takes a second sheet`, () => {
        const piece = [unit(width), unit(height)] as const;
        expect(sheetsFor(size, piece, most)).toEqual({ cost: 1, proven: true });
        expect(sheetsFor(size, piece, most + 1)).toEqual({ cost: 2, proven: true });
      });
    }
  }

  it("32 x 40 in gives sixteen 8 x 10, with 1/8 in off each edge twelve (plain arithmetic)", () => {
    const [sheet, piece] = [[inch(32), inch(40)] as const, [inch(8), inch(10)] as const];
    expect(sheetsFor(sheet, piece, 12, inch(1, 8))).toEqual({ cost: 1, proven: true });
    expect(sheetsFor(sheet, piece, 13, inch(1, 8))).toEqual({ cost: 2, proven: true });
  });
});
