import * as fc from "fast-check";
import type { Box, Outline, Point, RealPoint } from "../../src/geometry/index.ts";
import { ticks } from "../../src/lengths/index.ts";

/** Outlines to test with: made by rules of their own, so that what they are is known beforehand. */

export const point = (x: number, y: number): Point => ({ x: ticks(x), y: ticks(y) });
export const outline = (...pairs: readonly (readonly [number, number])[]): Outline =>
  pairs.map(([x, y]) => point(x, y));
export const box = (left: number, top: number, width: number, height: number): Box => ({
  left: ticks(left),
  top: ticks(top),
  width: ticks(width),
  height: ticks(height),
});
export const areaOf = (of: { readonly width: number; readonly height: number }): number =>
  of.width * of.height;

/** A figure of squares on a grid, all in one piece and without holes, with its edge. */
export interface SquareFigure {
  /** Widths of the columns and heights of the rows, in ticks. */
  readonly columns: readonly number[];
  readonly rows: readonly number[];
  readonly has: (column: number, row: number) => boolean;
  readonly edge: Outline;
}

const GRID = 8;
/** The eight neighbours of a square, going round. */
const ROUND: readonly (readonly [number, number])[] = [
  [0, -1],
  [1, -1],
  [1, 0],
  [1, 1],
  [0, 1],
  [-1, 1],
  [-1, 0],
  [-1, -1],
];

/** Whether a square may join without closing a ring or meeting the figure in a bare corner: what is taken round it is one run that holds a side. */
function joins(taken: ReadonlySet<number>, column: number, row: number): boolean {
  const round = ROUND.map(([dx, dy]) => {
    const [x, y] = [column + dx, row + dy];
    return x >= 0 && y >= 0 && x < GRID && y < GRID && taken.has(y * GRID + x);
  });
  const runs = round.filter((here, index) => here && !round.at(index - 1)).length;
  return runs === 1 && round.some((here, index) => here && index % 2 === 0);
}

export const squareFigures: fc.Arbitrary<SquareFigure> = fc
  .record({
    tries: fc.array(fc.nat(GRID * GRID - 1), { minLength: 5, maxLength: 160 }),
    columns: fc.array(fc.integer({ min: 1, max: 40 }), { minLength: GRID, maxLength: GRID }),
    rows: fc.array(fc.integer({ min: 1, max: 40 }), { minLength: GRID, maxLength: GRID }),
  })
  .map(({ tries, columns, rows }) => {
    const taken = new Set<number>([tries[0] ?? 0]);
    for (const square of tries) {
      if (!taken.has(square) && joins(taken, square % GRID, Math.floor(square / GRID))) taken.add(square);
    }
    const has = (column: number, row: number): boolean =>
      column >= 0 && row >= 0 && column < GRID && row < GRID && taken.has(row * GRID + column);
    return { columns, rows, has, edge: edgeOfSquares(has, columns, rows) };
  });

const before = (sizes: readonly number[], count: number): number =>
  sizes.slice(0, count).reduce((sum, size) => sum + size, 0);

/** Walks round the figure with it on the right hand. */
function edgeOfSquares(
  has: (column: number, row: number) => boolean,
  columns: readonly number[],
  rows: readonly number[],
): Outline {
  const onward = new Map<string, readonly [number, number]>();
  for (let row = 0; row < GRID; row++) {
    for (let column = 0; column < GRID; column++) {
      if (!has(column, row)) continue;
      if (!has(column, row - 1)) onward.set(`${column},${row}`, [column + 1, row]);
      if (!has(column + 1, row)) onward.set(`${column + 1},${row}`, [column + 1, row + 1]);
      if (!has(column, row + 1)) onward.set(`${column + 1},${row + 1}`, [column, row + 1]);
      if (!has(column - 1, row)) onward.set(`${column},${row + 1}`, [column, row]);
    }
  }
  const [start = ""] = onward.keys();
  const edge: Point[] = [];
  for (let key = start; edge.length === 0 || key !== start; ) {
    const [column, row] = onward.get(key) ?? [0, 0];
    edge.push(point(before(columns, column), before(rows, row)));
    key = `${column},${row}`;
  }
  return edge;
}

/** A polygon that goes once round the origin, its points at rising angles and any distances: spiky, concave, simple unless rounding folds it. */
export const roundedStars = (least: number, most: number, size: number): fc.Arbitrary<Outline> =>
  fc.array(fc.integer({ min: 20, max: 1000 }), { minLength: least, maxLength: most }).map((radii) =>
    radii.map((thousandths, index) => {
      const radius = thousandths / 1000;
      const angle = ((index + 0.37) / radii.length) * 2 * Math.PI;
      return point(Math.round(size * radius * Math.cos(angle)), Math.round(size * radius * Math.sin(angle)));
    }),
  );

/** Any points in any order: mostly no simple outline. */
export const anyPoints = (most: number, size: number): fc.Arbitrary<Outline> =>
  fc
    .array(fc.tuple(fc.integer({ min: 0, max: size }), fc.integer({ min: 0, max: size })), {
      maxLength: most,
    })
    .map((pairs) => outline(...pairs));

/** A sheet's rough edge: `per` points a side, each up to `rough` ticks outside or inside of a rectangle. */
export function roughRectangle(
  width: number,
  height: number,
  per: number,
  rough: number,
  chance: () => number,
): Outline {
  const off = (): number => Math.round((chance() - 0.5) * 2 * rough);
  const side = (of: (share: number) => readonly [number, number]): Point[] =>
    Array.from({ length: per }, (_, index) => {
      const [x, y] = of((index + 0.5) / per);
      return point(Math.round(x), Math.round(y));
    });
  return [
    ...side((share) => [width * share, off()]),
    ...side((share) => [width + off(), height * share]),
    ...side((share) => [width * (1 - share), height + off()]),
    ...side((share) => [off(), height * (1 - share)]),
  ];
}

/** An ellipse by points on it, rounded to whole ticks; a and b are its half axes. */
export const ellipse = (a: number, b: number, points: number): Outline =>
  Array.from({ length: points }, (_, index) => {
    const angle = ((index + 0.5) / points) * 2 * Math.PI;
    return point(Math.round(a * Math.cos(angle)), Math.round(b * Math.sin(angle)));
  });

export const shifted = <P extends RealPoint>(points: readonly P[], by: number): readonly P[] => [
  ...points.slice(by % points.length),
  ...points.slice(0, by % points.length),
];
