import { at } from "../at.ts";
import { type Axis, extent, type Part, resized, tidied } from "./layout.ts";
import { indexBelow, rasterPoints, splitsOf } from "./raster.ts";
import type { Stock, WholeJob } from "./whole.ts";

/** The most sums of sides that a table may have along one axis; past it the time of one pricing leaves the second. */
const MOST_POINTS = 800;

/** Tells what the sheets of a job can be worth, for one value a kind. */
export interface Pricing {
  /** Sets the value of each kind, nought or more. */
  fill(values: ArrayLike<number>): void;
  /** No layout on a sheet of the stock is worth more. */
  worth(stock: Stock): number;
  /** Layouts in the stock's own rectangle that are worth more than `least`, at most so many, the best first. */
  patterns(stock: Stock, least: number, most: number): readonly Part[];
}

/**
 * What the best unlimited pattern is worth, for every rectangle up to the largest stock at once: an
 * exact dynamic programme over the sums of piece sides (raster points), any number of stages.
 *   F(w, h) = the larger of: the dearest piece that fits; F of the next smaller width or height;
 *             F(a, h) + F(w - a, h); F(w, b) + F(w, h - b).
 * Demands are left aside, so it bounds every real pattern from above.
 * Gilmore and Gomory 1965; Beasley 1985.
 */
export class PricingTable implements Pricing {
  /** Sums of widths and of heights, rising, from nought. */
  private readonly xs: Int32Array;
  private readonly ys: Int32Array;
  private readonly xSplits: readonly Int32Array[];
  private readonly ySplits: readonly Int32Array[];
  private readonly table: Float64Array;
  private values: ArrayLike<number> = [];
  /** The kinds that fill a rectangle of the table exactly, one way or the other. */
  private readonly filling = new Map<number, number[]>();

  private constructor(job: WholeJob, xs: Int32Array, ys: Int32Array) {
    this.xs = xs;
    this.ys = ys;
    this.xSplits = splitsOf(xs);
    this.ySplits = splitsOf(ys);
    this.table = new Float64Array(xs.length * ys.length);
    job.kinds.forEach(({ width, height, turns }, kind) => {
      this.fills(width, height, kind);
      if (turns) this.fills(height, width, kind);
    });
  }

  private fills(width: number, height: number, kind: number): void {
    const i = indexBelow(this.xs, width);
    const j = indexBelow(this.ys, height);
    if (this.xs[i] !== width || this.ys[j] !== height) return;
    const cell = i * this.ys.length + j;
    this.filling.set(cell, [...(this.filling.get(cell) ?? []), kind]);
  }

  /** A table for a job; null where it would have more points along one axis than can be filled in good time. */
  static for(job: WholeJob, points = MOST_POINTS): PricingTable | null {
    let wide = 0;
    let high = 0;
    const kinds = job.kinds.filter(({ count }) => count > 0);
    for (const stock of job.stocks) {
      if (stock.copies === 0) continue;
      wide = Math.max(wide, stock.width, stock.takesFixed ? 0 : stock.height);
      high = Math.max(high, stock.height, stock.takesFixed ? 0 : stock.width);
    }
    const xs = rasterPoints(
      kinds.flatMap((kind) => (kind.turns ? [kind.width, kind.height] : [kind.width])),
      wide,
      points,
    );
    const ys = rasterPoints(
      kinds.flatMap((kind) => (kind.turns ? [kind.width, kind.height] : [kind.height])),
      high,
      points,
    );
    return xs === null || ys === null ? null : new PricingTable(job, xs, ys);
  }

  /** Fills the table for one value a kind, nought or more. */
  fill(values: ArrayLike<number>): void {
    this.values = values;
    const { table, xs, ys } = this;
    const columns = ys.length;
    table.fill(0);
    for (const [cell, kinds] of this.filling)
      for (const kind of kinds) table[cell] = Math.max(at(table, cell), at(values, kind));
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

  /** The best pattern, then the best of other first cuts. */
  patterns(stock: Stock, least: number, most: number): Part[] {
    const best = this.worth(stock) > least ? this.pattern(stock) : null;
    if (best === null) return [];
    const { table, xs, ys } = this;
    const [i, j] = [indexBelow(xs, stock.width), indexBelow(ys, stock.height)];
    const firsts: FirstCut[] = [];
    const offer = (axis: Axis, pairs: Int32Array, worthAt: (point: number) => number): void => {
      for (let k = 0; k < pairs.length; k += 2) {
        const [one, two] = [at(pairs, k), at(pairs, k + 1)];
        const value = worthAt(one) + worthAt(two);
        if (value > least) firsts.push({ axis, one, two, value });
      }
    };
    offer("x", at(this.xSplits, i), (point) => at(table, point * ys.length + j));
    offer("y", at(this.ySplits, j), (point) => at(table, i * ys.length + point));
    firsts.sort((a, b) => b.value - a.value);
    const others = firsts.slice(0, most - 1).map((cut) => this.parted(cut, i, j, stock.width, stock.height));
    return [best, ...others.flatMap((part) => (part === null ? [] : [tidied(part)]))];
  }

  /** The pattern of a rectangle that is cut so first. */
  private parted(
    cut: Omit<FirstCut, "value">,
    i: number,
    j: number,
    width: number,
    height: number,
  ): Part | null {
    const { axis, one, two } = cut;
    if (axis === "x") {
      const first = at(this.xs, one);
      const parts = [this.trace(one, j, first, height), this.trace(two, j, width - first, height)];
      return split(axis, width, height, parts);
    }
    const first = at(this.ys, one);
    const parts = [this.trace(i, one, width, first), this.trace(i, two, width, height - first)];
    return split(axis, width, height, parts);
  }

  private trace(i: number, j: number, width: number, height: number): Part | null {
    const { table, xs, ys } = this;
    const columns = ys.length;
    const value = at(table, i * columns + j);
    if (value <= 0) return null;
    if (table[(i - 1) * columns + j] === value) return this.trace(i - 1, j, width, height);
    if (table[i * columns + j - 1] === value) return this.trace(i, j - 1, width, height);
    const kind = this.filling.get(i * columns + j)?.find((one) => this.values[one] === value);
    if (kind !== undefined) {
      return resized({ is: "piece", kind, width: at(xs, i), height: at(ys, j) }, width, height);
    }
    const across = at(this.xSplits, i);
    for (let k = 0; k < across.length; k += 2) {
      const [one, two] = [at(across, k), at(across, k + 1)];
      if (at(table, one * columns + j) + at(table, two * columns + j) !== value) continue;
      return this.parted({ axis: "x", one, two }, i, j, width, height);
    }
    const down = at(this.ySplits, j);
    for (let k = 0; k < down.length; k += 2) {
      const [one, two] = [at(down, k), at(down, k + 1)];
      if (at(table, i * columns + one) + at(table, i * columns + two) !== value) continue;
      return this.parted({ axis: "y", one, two }, i, j, width, height);
    }
    throw new RangeError("the table holds a value that no pattern makes");
  }
}

/** A first cut of a rectangle: into which points it is parted, and what both parts are worth. */
interface FirstCut {
  readonly axis: Axis;
  readonly one: number;
  readonly two: number;
  readonly value: number;
}

function split(axis: Axis, width: number, height: number, both: readonly (Part | null)[]): Part | null {
  const parts = both.filter((part) => part !== null);
  if (parts.length === 0) return null;
  const used = parts.reduce((sum, part) => sum + extent(part, axis), 0);
  return { is: "split", axis, width, height, parts, rest: (axis === "x" ? width : height) - used };
}
