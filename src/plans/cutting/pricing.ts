import { at } from "./at.ts";
import { type Axis, extent, type Part, resized, tidied } from "./layout.ts";
import type { Stock, WholeJob } from "./whole.ts";

/** The most sums of sides that a table may have along one axis; past it the time of one pricing leaves the second. */
const MOST_POINTS = 800;

/**
 * What the best unlimited pattern is worth, for every rectangle up to the largest stock at once: an
 * exact dynamic programme over the sums of piece sides (raster points), any number of stages.
 *   F(w, h) = the larger of: the dearest piece that fits; F of the next smaller width or height;
 *             F(a, h) + F(w - a, h); F(w, b) + F(w, h - b).
 * Demands are left aside, so it bounds every real pattern from above.
 * Gilmore and Gomory 1965; Beasley 1985.
 */
export class PricingTable {
  private readonly job: WholeJob;
  /** Sums of widths and of heights, rising, from nought. */
  private readonly xs: Int32Array;
  private readonly ys: Int32Array;
  private readonly xSplits: readonly Int32Array[];
  private readonly ySplits: readonly Int32Array[];
  private readonly table: Float64Array;
  private values: ArrayLike<number> = [];

  private constructor(job: WholeJob, xs: Int32Array, ys: Int32Array) {
    this.job = job;
    this.xs = xs;
    this.ys = ys;
    this.xSplits = splitsOf(xs);
    this.ySplits = splitsOf(ys);
    this.table = new Float64Array(xs.length * ys.length);
  }

  /** A table for a job; null where it would have too many points to be filled in good time. */
  static for(job: WholeJob): PricingTable | null {
    let wide = 0;
    let high = 0;
    for (const stock of job.stocks) {
      if (stock.copies === 0) continue;
      wide = Math.max(wide, stock.width, stock.takesFixed ? 0 : stock.height);
      high = Math.max(high, stock.height, stock.takesFixed ? 0 : stock.width);
    }
    const xs = rasterPoints(
      job.kinds.flatMap((kind) => (kind.turns ? [kind.width, kind.height] : [kind.width])),
      wide,
    );
    const ys = rasterPoints(
      job.kinds.flatMap((kind) => (kind.turns ? [kind.width, kind.height] : [kind.height])),
      high,
    );
    return xs === null || ys === null ? null : new PricingTable(job, xs, ys);
  }

  /** Fills the table for one value a kind, nought or more. */
  fill(values: ArrayLike<number>): void {
    this.values = values;
    const { table, xs, ys } = this;
    const columns = ys.length;
    table.fill(0);
    this.job.kinds.forEach((kind, index) => {
      this.dearest(kind.width, kind.height, at(values, index));
      if (kind.turns) this.dearest(kind.height, kind.width, at(values, index));
    });
    for (let i = 1; i < xs.length; i++) {
      const row = i * columns;
      this.fillAcross(i, row, columns);
      for (let j = 1; j < columns; j++) {
        let best = Math.max(table[row + j] as number, table[row + j - 1] as number);
        const splits = this.ySplits[j] as Int32Array;
        for (let k = 0; k < splits.length; k += 2) {
          const value =
            (table[row + (splits[k] as number)] as number) +
            (table[row + (splits[k + 1] as number)] as number);
          if (value > best) best = value;
        }
        table[row + j] = best;
      }
    }
  }

  /** The row before and all upright splits, for a whole row at once. */
  private fillAcross(i: number, row: number, columns: number): void {
    const { table } = this;
    for (let j = 1; j < columns; j++) {
      const value = table[row - columns + j] as number;
      if (value > (table[row + j] as number)) table[row + j] = value;
    }
    const splits = this.xSplits[i] as Int32Array;
    for (let k = 0; k < splits.length; k += 2) {
      const one = (splits[k] as number) * columns;
      const two = (splits[k + 1] as number) * columns;
      for (let j = 1; j < columns; j++) {
        const value = (table[one + j] as number) + (table[two + j] as number);
        if (value > (table[row + j] as number)) table[row + j] = value;
      }
    }
  }

  private dearest(width: number, height: number, value: number): void {
    const i = indexBelow(this.xs, width);
    const j = indexBelow(this.ys, height);
    if (this.xs[i] !== width || this.ys[j] !== height) return;
    const cell = i * this.ys.length + j;
    if (value > at(this.table, cell)) this.table[cell] = value;
  }

  /** The most that one sheet of a stock can be worth. A window that may lie turned is taken the better way. */
  worth(stock: Stock): number {
    const one = this.worthOf(stock.width, stock.height);
    return stock.takesFixed ? one : Math.max(one, this.worthOf(stock.height, stock.width));
  }

  private worthOf(width: number, height: number): number {
    return at(this.table, indexBelow(this.xs, width) * this.ys.length + indexBelow(this.ys, height));
  }

  /** A pattern that is worth `worth(stock)`, in the stock's own rectangle; null where that is nought. */
  pattern(stock: Stock): Part | null {
    const part = this.trace(
      indexBelow(this.xs, stock.width),
      indexBelow(this.ys, stock.height),
      stock.width,
      stock.height,
    );
    return part === null ? null : tidied(part);
  }

  private trace(i: number, j: number, width: number, height: number): Part | null {
    const { table, xs, ys } = this;
    const columns = ys.length;
    const value = at(table, i * columns + j);
    if (value <= 0) return null;
    if (table[(i - 1) * columns + j] === value) return this.trace(i - 1, j, width, height);
    if (table[i * columns + j - 1] === value) return this.trace(i, j - 1, width, height);
    const kind = this.job.kinds.findIndex(
      (one, index) =>
        this.values[index] === value &&
        ((one.width === xs[i] && one.height === ys[j]) ||
          (one.turns && one.height === xs[i] && one.width === ys[j])),
    );
    if (kind >= 0) {
      return resized({ is: "piece", kind, width: at(xs, i), height: at(ys, j) }, width, height);
    }
    const across = at(this.xSplits, i);
    for (let k = 0; k < across.length; k += 2) {
      const [one, two] = [at(across, k), at(across, k + 1)];
      if (at(table, one * columns + j) + at(table, two * columns + j) !== value) continue;
      const first = at(xs, one);
      return split(
        "x",
        width,
        height,
        this.trace(one, j, first, height),
        this.trace(two, j, width - first, height),
      );
    }
    const down = at(this.ySplits, j);
    for (let k = 0; k < down.length; k += 2) {
      const [one, two] = [at(down, k), at(down, k + 1)];
      if (at(table, i * columns + one) + at(table, i * columns + two) !== value) continue;
      const first = at(ys, one);
      return split(
        "y",
        width,
        height,
        this.trace(i, one, width, first),
        this.trace(i, two, width, height - first),
      );
    }
    throw new RangeError("the table holds a value that no pattern makes");
  }
}

function split(axis: Axis, width: number, height: number, one: Part | null, two: Part | null): Part | null {
  const parts = [one, two].filter((part) => part !== null);
  if (parts.length === 0) return null;
  const used = parts.reduce((sum, part) => sum + extent(part, axis), 0);
  return { is: "split", axis, width, height, parts, rest: (axis === "x" ? width : height) - used };
}

/** The largest point no greater than `value`. */
function indexBelow(points: Int32Array, value: number): number {
  let low = 0;
  let high = points.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (at(points, middle) <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** For each point, the pairs of points (smaller first) that it can be split into; of pairs with one larger half, only the best. */
function splitsOf(points: Int32Array): Int32Array[] {
  return Array.from(points, (whole, index) => {
    const pairs: number[] = [];
    let two = index;
    for (let one = 1; one < index; one++) {
      while (at(points, two) > whole - at(points, one)) two--;
      if (two < one) break;
      if (pairs[pairs.length - 1] === two) pairs[pairs.length - 2] = one;
      else pairs.push(one, two);
    }
    return Int32Array.from(pairs);
  });
}

/** All sums of the sides up to `most`, nought included, rising; null where there are too many. */
function rasterPoints(sides: readonly number[], most: number): Int32Array | null {
  const distinct = [...new Set(sides)].filter((side) => side <= most);
  const seen = new Set([0]);
  const queue = [0];
  for (const sum of queue) {
    for (const side of distinct) {
      const next = sum + side;
      if (next > most || seen.has(next)) continue;
      if (seen.size > MOST_POINTS) return null;
      seen.add(next);
      queue.push(next);
    }
  }
  return Int32Array.from(queue).toSorted();
}
