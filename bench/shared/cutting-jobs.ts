import { inch, type Length, ticks, ZERO } from "../../src/lengths/index.ts";
import type { CuttingJob, PieceWanted, StockSheet } from "../../src/plans/index.ts";
import { Chance } from "../../tests/reference/chance.ts";
import { plainJob } from "./classes.ts";

// Mat sizes as they are asked for, with how often: common practice, no source.
const OUTER: readonly (readonly [width: number, height: number, often: number])[] = [
  [8, 10, 3],
  [11, 14, 6],
  [12, 16, 4],
  [14, 18, 4],
  [16, 20, 6],
  [18, 24, 3],
  [20, 24, 2],
  [22, 28, 1],
];

/** Parts of an inch that sizes of their own are rounded to. */
const GRADUATIONS = [2, 2, 4, 4, 8] as const;
/** Offcuts in the rack. */
const OFFCUTS = 8;

const stock = (width: Length, height: Length, cost: number, more: Partial<StockSheet>): StockSheet => ({
  name: `${width} x ${height}`,
  width,
  height,
  cost,
  copies: null,
  trim: ZERO,
  ...more,
});

/**
 * A show of so many works, prices in cents: standard sizes and, one in four, a size of its own to the
 * half, quarter or eighth of an inch that comes again a few times; a rack of offcuts; half an inch of
 * trim off bought sheets where the seed is even; windows of which 1/8 in a side is squared off.
 */
export function showJob(works: number, seed: number, dropOuts: boolean): CuttingJob {
  const chance = new Chance(seed);
  const standard = OUTER.flatMap(([width, height, often]) =>
    Array.from({ length: often }, (): readonly [Length, Length] => [inch(width), inch(height)]),
  );
  const own = Array.from({ length: Math.ceil(works / 20) }, (): readonly [Length, Length] => {
    const parts = chance.pick(GRADUATIONS);
    const side = (least: number, most: number): Length =>
      inch(chance.whole(parts * least, parts * most), parts);
    return [side(7, 21), side(9, 27)];
  });
  const pieces = new Map<string, PieceWanted>();
  for (let work = 0; work < works; work++) {
    const sizes = chance.happens(0.25) ? own : standard;
    const [width, height] = sizes[chance.whole(0, sizes.length - 1)] ?? [inch(16), inch(20)];
    const border = inch(chance.whole(8, 13), 4);
    const inner = (side: Length): Length => ticks(side - 2 * border - inch(1, 4));
    const holds = inner(width) > inch(3) && inner(height) > inch(3);
    const window = holds ? { width: inner(width), height: inner(height) } : null;
    const key = `${width} ${height} ${window?.width}`;
    const count = (pieces.get(key)?.count ?? 0) + 1;
    pieces.set(key, { name: `work ${work + 1}`, width, height, window, turns: true, count });
  }
  const trim = seed % 2 === 0 ? inch(1, 2) : ZERO;
  const offcuts = Array.from({ length: OFFCUTS }, () => {
    const [width, height] = [inch(chance.whole(12, 50), 2), inch(chance.whole(18, 70), 2)];
    return stock(width, height, 0, { copies: 1 });
  });
  return {
    sheets: [
      stock(inch(32), inch(40), 1150, { trim }),
      stock(inch(40), inch(60), 2650, { trim }),
      ...offcuts,
    ],
    pieces: [...pieces.values()],
    dropOuts,
    kerf: ZERO,
    least: { width: inch(5), height: inch(7) },
    longestCut: null,
    tight: inch(1, 8),
  };
}

const wanted = (width: number, height: number, count: number, index: number): PieceWanted => ({
  name: `size ${index + 1}`,
  width: ticks(width),
  height: ticks(height),
  count,
  window: null,
  turns: true,
});

/**
 * Sides from a quarter to three quarters of the sheet's, each piece 1 to 100 times, out of three
 * sheets that cost as much as their area (after Cintra, Miyazawa, Wakabayashi and Xavier, European
 * Journal of Operational Research 191, 2008).
 */
export function severalSizes(sizes: number, seed: number): CuttingJob {
  const chance = new Chance(seed);
  const side = (): number => chance.whole(62, 187);
  return plainJob(
    [
      { width: 250, height: 250, cost: 62500 },
      { width: 275, height: 225, cost: 61875 },
      { width: 300, height: 200, cost: 60000 },
    ],
    Array.from({ length: sizes }, (_, index) => wanted(side(), side(), chance.whole(1, 100), index)),
  );
}

/** Pieces of many sizes on one sheet of 1000 by 1000. */
export function manySizes(pieces: number, sizes: number, seed: number): CuttingJob {
  const chance = new Chance(seed);
  const counts = new Int32Array(sizes);
  for (let piece = 0; piece < pieces; piece++) {
    const size = piece < sizes ? piece : chance.whole(0, sizes - 1);
    counts[size] = (counts[size] ?? 0) + 1;
  }
  const side = (): number => chance.whole(60, 500);
  return plainJob(
    [{ width: 1000, height: 1000, cost: 1 }],
    Array.from(counts, (count, index) => wanted(side(), side(), count, index)),
  );
}
