import { inch, type Length, ticks, ZERO } from "../../src/lengths/index.ts";
import type { CuttingJob, PieceWanted } from "../../src/plans/index.ts";
import { Chance } from "../../tests/reference/chance.ts";

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

const stock = (width: number, height: number, cost: number, copies: number | null) => ({
  name: `${width} x ${height}`,
  width: inch(width),
  height: inch(height),
  cost,
  copies,
  trim: ZERO,
});

/** A show of so many works: standard sizes and, one in three, a size of its own to the eighth of an inch. */
export function showJob(works: number, seed: number, dropOuts: boolean): CuttingJob {
  const chance = new Chance(seed);
  const pick = OUTER.flatMap(([width, height, often]) =>
    Array.from({ length: often }, () => [width, height] as const),
  );
  const eighths = (from: number, to: number): Length =>
    inch(Math.floor((from + chance.next() * (to - from)) * 8), 8);
  const pieces = new Map<string, PieceWanted>();
  for (let work = 0; work < works; work++) {
    const [w, h] = pick[chance.whole(0, pick.length - 1)] ?? [16, 20];
    const own = chance.happens(0.33);
    const [width, height] = own ? [eighths(7, 21), eighths(9, 27)] : [inch(w), inch(h)];
    const border = inch(chance.whole(16, 27), 8);
    const inner = (side: Length): Length => ticks(side - 2 * border - inch(1, 4));
    const holds = inner(width) > inch(3) && inner(height) > inch(3);
    const window = holds ? { width: inner(width), height: inner(height) } : null;
    const key = `${width} ${height} ${window?.width} ${window?.height}`;
    const known = pieces.get(key);
    pieces.set(key, {
      name: `work ${work + 1}`,
      width,
      height,
      window,
      turns: true,
      count: (known?.count ?? 0) + 1,
    });
  }
  return {
    sheets: [
      stock(32, 40, 11.5, null),
      stock(40, 60, 26.5, null),
      stock(13, 33, 0, 1),
      stock(20, 24, 0, 1),
      stock(16, 30, 0, 1),
    ],
    pieces: [...pieces.values()],
    dropOuts,
    kerf: ZERO,
    least: { width: inch(5), height: inch(7) },
    longestCut: null,
    tight: inch(1, 8),
  };
}

/** Pieces of many sizes, in whole ticks, on one sheet of 1000 by 1000. */
export function manySizes(pieces: number, sizes: number, seed: number): CuttingJob {
  const chance = new Chance(seed);
  const side = (): Length => ticks(chance.whole(60, 500));
  const kinds = Array.from({ length: sizes }, (_, index) => ({
    name: `size ${index + 1}`,
    width: side(),
    height: side(),
    count: 0,
    window: null,
    turns: true,
  }));
  for (let piece = 0; piece < pieces; piece++) {
    const kind = kinds[piece < sizes ? piece : chance.whole(0, sizes - 1)];
    if (kind !== undefined) kind.count++;
  }
  return {
    sheets: [{ name: "sheet", width: ticks(1000), height: ticks(1000), cost: 1, copies: null, trim: ZERO }],
    pieces: kinds,
    dropOuts: false,
    kerf: ZERO,
    least: null,
    longestCut: null,
    tight: ZERO,
  };
}
