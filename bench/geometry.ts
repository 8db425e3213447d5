/**
 * The largest upright rectangle inside a rough edge, as brushed and torn sheets have it. Wanted: an
 * outline of 2,000 points in 20 ms. Beside it the plain way on the same outlines in the same run: a grid
 * of 1,000 by 1,000 squares laid over the outline, the largest box of squares that are all inside, and
 * what that box leaves of the largest.
 */
import {
  extentOf,
  largestUprightRectangle,
  largestUprightRectangleWithin,
  type Outline,
  outlineFault,
  type RealPoint,
  turned,
} from "../src/geometry/index.ts";
import { roughRectangle } from "../tests/geometry/outlines.ts";
import { Chance } from "../tests/reference/chance.ts";
import { median, spread } from "./shared/timing.ts";

const OUTLINES = 25;
const SQUARES = 1000;
const MM = 80_000;

/** A sheet of about 300 x 400 mm, its edge rough by 2 mm either way, lying a little skew. */
function sheet(points: number, seed: number): readonly RealPoint[] {
  const chance = new Chance(seed);
  const edge = roughRectangle(300 * MM, 400 * MM, points / 4, 2 * MM, () => chance.next());
  return turned(edge, { x: 150 * MM, y: 200 * MM }, (chance.next() - 0.5) * 4);
}

/** Points at rising angles and any distance: spikes all round. */
function spikes(points: number, seed: number): readonly RealPoint[] {
  const chance = new Chance(seed);
  return Array.from({ length: points }, (_, index) => {
    const [angle, radius] = [(index / points) * 2 * Math.PI, (20 + 180 * chance.next()) * MM];
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
}

/** Marks every square that an edge passes over, row by row. */
function blockedSquares(
  points: readonly RealPoint[],
  column: (x: number) => number,
  row: (y: number) => number,
) {
  const blocked = new Uint8Array(SQUARES * SQUARES);
  points.forEach((from, index) => {
    const to = points[(index + 1) % points.length] ?? from;
    const [upper, lower] = from.y <= to.y ? [from, to] : [to, from];
    const [top, bottom] = [row(upper.y), row(lower.y)];
    const x = (y: number): number => upper.x + ((lower.x - upper.x) * (y - top)) / (bottom - top || 1);
    for (let y = Math.floor(top); y <= Math.min(Math.floor(bottom), SQUARES - 1); y++) {
      const ends = [column(x(Math.max(y, top))), column(x(Math.min(y + 1, bottom)))];
      if (bottom === top) ends.push(column(lower.x));
      const last = Math.min(Math.floor(Math.max(...ends)), SQUARES - 1);
      for (let at = Math.floor(Math.min(...ends)); at <= last; at++) blocked[y * SQUARES + at] = 1;
    }
  });
  return blocked;
}

/** The plain way: the area of the largest box of unblocked squares, in square ticks. */
function largestOnGrid(points: readonly RealPoint[]): number {
  const { left, top, right, bottom } = extentOf(points);
  const [wide, tall] = [(right - left) / SQUARES, (bottom - top) / SQUARES];
  const blocked = blockedSquares(
    points,
    (x) => (x - left) / wide,
    (y) => (y - top) / tall,
  );
  // Outside is what can be reached from the grid's rim without passing an edge.
  const open = Array.from({ length: SQUARES }, (_, at) => [
    at,
    (SQUARES - 1) * SQUARES + at,
    at * SQUARES,
    at * SQUARES + SQUARES - 1,
  ]).flat();
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    if (blocked[at] !== 0) continue;
    blocked[at] = 2;
    const column = at % SQUARES;
    if (column > 0) open.push(at - 1);
    if (column < SQUARES - 1) open.push(at + 1);
    if (at >= SQUARES) open.push(at - SQUARES);
    if (at < SQUARES * (SQUARES - 1)) open.push(at + SQUARES);
  }
  let most = 0;
  const heights = new Int32Array(SQUARES + 1);
  for (let row = 0; row < SQUARES; row++) {
    const rising: number[] = [];
    for (let column = 0; column <= SQUARES; column++) {
      const free = column < SQUARES && blocked[row * SQUARES + column] === 0;
      heights[column] = free ? (heights[column] ?? 0) + 1 : 0;
      while (rising.length > 0 && (heights[rising.at(-1) ?? 0] ?? 0) >= (heights[column] ?? 0)) {
        const height = heights[rising.pop() ?? 0] ?? 0;
        most = Math.max(most, height * (column - (rising.at(-1) ?? -1) - 1));
      }
      rising.push(column);
    }
  }
  return most * wide * tall;
}

/** CPU milliseconds for one call each, after one that warms up. */
function timed(
  outlines: readonly (readonly RealPoint[])[],
  work: (points: readonly RealPoint[]) => unknown,
): number[] {
  const [first = []] = outlines;
  work(first);
  return outlines.map((points) => {
    const start = process.cpuUsage();
    work(points);
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  });
}

const many = (of: (seed: number) => readonly RealPoint[], count = OUTLINES): (readonly RealPoint[])[] =>
  Array.from({ length: count }, (_, seed) => of(seed + 1));

const rough = many((seed) => sheet(2000, seed));
const found = timed(rough, (points) => largestUprightRectangle(points));
const gridded = timed(rough, largestOnGrid);
const left = rough.map((points) => largestOnGrid(points) / largestUprightRectangleWithin(points).atMost);
console.log(`  rough edge, 2,000 points       ${spread(found, 1)} ms; wanted 20`);
console.log(
  `  plain grid, the same outlines  ${spread(gridded, 1)} ms, and it finds ${(100 * median(left)).toFixed(2)} % of the area`,
);
const others: readonly [string, (readonly RealPoint[])[]][] = [
  ["rough edge, 20,000 points     ", many((seed) => sheet(20_000, seed), 7)],
  ["spikes, 200 points            ", many((seed) => spikes(200, seed))],
  ["spikes, 2,000 points          ", many((seed) => spikes(2000, seed), 7)],
];
for (const [name, outlines] of others) {
  console.log(
    `  ${name} ${spread(
      timed(outlines, (points) => largestUprightRectangle(points)),
      1,
    )} ms`,
  );
}
console.log(
  `  check for crossings, 2,000     ${spread(
    timed(rough, (points: Outline | readonly RealPoint[]) => outlineFault(points)),
    1,
  )} ms`,
);
