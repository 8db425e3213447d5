import { ticks, ZERO } from "../../src/lengths/index.ts";
import type { CuttingJob, PieceWanted } from "../../src/plans/index.ts";
import { Chance } from "../../tests/reference/chance.ts";

/** The numbers of pieces in a job of a class. */
export const CLASS_PIECES = [20, 40, 60, 80, 100] as const;

type Range = readonly [least: number, most: number];
type Type = readonly [width: Range, height: Range];

/** Berkey and Wang, Journal of the Operational Research Society 38 (1987): side of the square sheet, and of pieces drawn evenly. */
const EVEN: readonly (readonly [sheet: number, most: number])[] = [
  [10, 10],
  [30, 10],
  [40, 35],
  [100, 35],
  [100, 100],
  [300, 100],
];

/** Martello and Vigo, Management Science 44 (1998): wide, high, large and small pieces on a sheet of 100 by 100. */
const TYPES: readonly Type[] = [
  [
    [67, 100],
    [1, 50],
  ],
  [
    [1, 50],
    [67, 100],
  ],
  [
    [50, 100],
    [50, 100],
  ],
  [
    [1, 50],
    [1, 50],
  ],
];

/** A job of class 1 to 10: I to VI draw all sides evenly, VII to X draw seven in ten pieces of one type and one in ten of each other. */
export function classJob(number: number, pieces: number, seed: number): CuttingJob {
  const chance = new Chance(1000 * seed + 100 * number + pieces);
  const [sheet, most] = EVEN[number - 1] ?? [100, 100];
  const typeOf = (): Type => {
    if (number <= EVEN.length)
      return [
        [1, most],
        [1, most],
      ];
    const main = number - EVEN.length - 1;
    const others = TYPES.filter((_, index) => index !== main);
    const type = chance.happens(0.7) ? TYPES[main] : others[chance.whole(0, others.length - 1)];
    if (type === undefined) throw new RangeError(`no class ${number}`);
    return type;
  };
  const wanted = Array.from({ length: pieces }, (_, index): PieceWanted => {
    const [width, height] = typeOf();
    return {
      name: `piece ${index + 1}`,
      width: ticks(chance.whole(...width)),
      height: ticks(chance.whole(...height)),
      count: 1,
      window: null,
      turns: true,
    };
  });
  return plainJob([{ width: sheet, height: sheet, cost: 1 }], wanted);
}

/** Sheets of any number, nothing else. */
export const plainJob = (
  sheets: readonly { readonly width: number; readonly height: number; readonly cost: number }[],
  pieces: readonly PieceWanted[],
): CuttingJob => ({
  sheets: sheets.map(({ width, height, cost }) => ({
    name: `${width} x ${height}`,
    width: ticks(width),
    height: ticks(height),
    cost,
    copies: null,
    trim: ZERO,
  })),
  pieces,
  dropOuts: false,
  kerf: ZERO,
  least: null,
  longestCut: null,
  tight: ZERO,
});
