import { at } from "../at.ts";
import { invertedOf } from "./inverse.ts";

/** A column of the master problem: what it costs, and how much it gives to each row. */
export interface Column {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly amounts: readonly number[];
}

const SMALL = 1e-9;
/** What is smaller in the inverse comes of rounding. */
const NOUGHT = 1e-13;
/** After so many exchanges the inverse is reckoned anew, before its rounding shows. */
const EXCHANGES = 150;

/**
 * The master problem of column generation, min cost x with at least `wanted` of every row and x no
 * less than nought, by the revised simplex method with a dense inverse of the basis. Rows may want a
 * negative amount: "at least -3" of a column that gives -1 is "at most 3 of it".
 * The caller gives a first column for every row that wants more than nought, one that gives to that
 * row alone, so that there is a basis to start from.
 */
export class Master {
  /** What one more of a row would cost; of the last `solve`. */
  readonly duals: Float64Array;
  private readonly wanted: Float64Array;
  private readonly columns: Column[];
  private readonly inverse: Float64Array;
  /** The column in each place of the basis; -1 - row: the surplus of that row. */
  private readonly basis: Int32Array;
  private readonly amount: Float64Array;
  private readonly direction: Float64Array;
  /** The columns in which a row of the inverse is not nought. */
  private readonly filled: Int32Array;
  private exchanges = 0;

  constructor(wanted: ArrayLike<number>, first: readonly (Column | null)[]) {
    const rows = wanted.length;
    this.wanted = Float64Array.from(wanted);
    this.duals = new Float64Array(rows);
    this.inverse = new Float64Array(rows * rows);
    this.basis = new Int32Array(rows);
    this.amount = new Float64Array(rows);
    this.direction = new Float64Array(rows);
    this.filled = new Int32Array(rows);
    this.columns = [];
    first.forEach((column, row) => {
      const gives = column === null ? -1 : at(column.amounts, 0);
      this.inverse[row * rows + row] = 1 / gives;
      this.amount[row] = at(this.wanted, row) / gives;
      this.basis[row] = column === null ? -1 - row : this.columns.length;
      if (column !== null) this.columns.push(column);
    });
  }

  /** Adds a column, and gives its number. */
  add(column: Column): number {
    return this.columns.push(column) - 1;
  }

  /** The amount of each column, by its number. */
  amounts(): Float64Array {
    const amounts = new Float64Array(this.columns.length);
    this.basis.forEach((column, place) => {
      if (column >= 0) amounts[column] = Math.max(0, at(this.amount, place));
    });
    return amounts;
  }

  /** What the present solution costs. */
  cost(): number {
    return this.basis.reduce((sum, column, place) => sum + this.costOf(column) * at(this.amount, place), 0);
  }

  /**
   * Wants other amounts of the rows, and mends the last solution for them (the dual simplex method)
   * instead of beginning anew; to be followed by `solve`. At most `most` exchanges.
   */
  want(wanted: ArrayLike<number>, most: number): void {
    this.wanted.set(Array.from(wanted));
    this.reckonAmounts();
    this.price();
    for (let turn = 0; turn < most; turn++) {
      const leaving = this.mostWanting();
      const entering = leaving < 0 ? null : this.mending(leaving);
      if (entering === null) return;
      this.direct(entering);
      this.exchange(entering, leaving);
    }
  }

  /** Takes columns into the basis for as long as one makes it cheaper, at most `most` times. */
  solve(most: number): void {
    this.price();
    for (let turn = 0; turn < most; turn++) {
      const entering = this.entering();
      if (entering === null) return;
      this.direct(entering);
      const leaving = this.leaving();
      if (leaving < 0) return;
      this.exchange(entering, leaving);
    }
  }

  /** What one more of a column would cost beyond what it gives is worth. */
  private reducedCost(column: number): number {
    if (column < 0) return at(this.duals, -1 - column);
    const one = at(this.columns, column);
    return one.cost - product(one, this.duals, 0);
  }

  private costOf(column: number): number {
    return column < 0 ? 0 : at(this.columns, column).cost;
  }

  private price(): void {
    const { duals, inverse, basis } = this;
    const rows = duals.length;
    duals.fill(0);
    for (let place = 0; place < rows; place++) {
      const cost = this.costOf(basis[place] as number);
      if (cost === 0) continue;
      const row = place * rows;
      for (let k = 0; k < rows; k++) duals[k] = (duals[k] as number) + cost * (inverse[row + k] as number);
    }
  }

  /** The column that makes it cheaper fastest; null when none does. */
  private entering(): number | null {
    const { duals } = this;
    let best: number | null = null;
    let least = -SMALL;
    this.columns.forEach(({ cost, rows, amounts }, index) => {
      let reduced = cost;
      for (let k = 0; k < rows.length; k++)
        reduced -= (duals[rows[k] as number] as number) * (amounts[k] as number);
      // In parts of the cost, so that money of any size has one meaning of nought.
      const scaled = reduced / (1 + cost);
      if (scaled >= least) return;
      least = scaled;
      best = index;
    });
    duals.forEach((dual, row) => {
      if (dual >= least) return;
      least = dual;
      best = -1 - row;
    });
    return best;
  }

  /** The place whose amount is furthest below nought; -1: none is. */
  private mostWanting(): number {
    let leaving = -1;
    let least = -1e-7;
    for (let place = 0; place < this.amount.length; place++) {
      const amount = this.amount[place] as number;
      if (amount >= least) continue;
      least = amount;
      leaving = place;
    }
    return leaving;
  }

  /** The column that fills a place's want at the least rise of cost; null when none can. */
  private mending(leaving: number): number | null {
    const { columns, duals, inverse } = this;
    const rows = duals.length;
    const from = leaving * rows;
    let best: number | null = null;
    let least = Number.POSITIVE_INFINITY;
    let steepest = 0;
    const weigh = (column: number, reduced: number, falls: number): void => {
      const ratio = Math.max(0, reduced) / -falls;
      if (ratio > least + SMALL || (ratio > least - SMALL && falls >= steepest)) return;
      least = Math.min(least, ratio);
      steepest = falls;
      best = column;
    };
    columns.forEach((column, index) => {
      const falls = product(column, inverse, from);
      if (falls < -1e-7) weigh(index, this.reducedCost(index), falls);
    });
    for (let row = 0; row < rows; row++) {
      const falls = -(inverse[from + row] as number);
      if (falls < -1e-7) weigh(-1 - row, duals[row] as number, falls);
    }
    return best;
  }

  /** What each place loses for one of a column. */
  private direct(entering: number): void {
    const { inverse, direction } = this;
    const rows = direction.length;
    const column = entering < 0 ? { rows: [-1 - entering], amounts: [-1] } : at(this.columns, entering);
    for (let place = 0; place < rows; place++) direction[place] = product(column, inverse, place * rows);
  }

  /** The place that falls to nought first; -1: none does. */
  private leaving(): number {
    const { direction, amount } = this;
    let leaving = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let place = 0; place < direction.length; place++) {
      const falls = direction[place] as number;
      if (falls <= SMALL) continue;
      const ratio = Math.max(0, amount[place] as number) / falls;
      const sooner = ratio < least - SMALL;
      const steeper = ratio <= least + SMALL && leaving >= 0 && falls > (direction[leaving] as number);
      if (!sooner && !steeper) continue;
      least = Math.min(least, ratio);
      leaving = place;
    }
    return leaving;
  }

  /** Puts a column into the basis in the place of another; `direct` has been asked for it. */
  private exchange(entering: number, leaving: number): void {
    const { inverse, direction, amount, duals } = this;
    const rows = direction.length;
    const gain = this.reducedCost(entering);
    const pivot = direction[leaving] as number;
    const taken = (amount[leaving] as number) / pivot;
    const from = leaving * rows;
    // Most of the inverse is nought: only the columns of the row that leaves change.
    let filled = 0;
    for (let k = 0; k < rows; k++) {
      const value = (inverse[from + k] as number) / pivot;
      const kept = Math.abs(value) < NOUGHT ? 0 : value;
      inverse[from + k] = kept;
      if (kept !== 0) this.filled[filled++] = k;
    }
    for (let place = 0; place < rows; place++) {
      const times = direction[place] as number;
      if (place === leaving || times === 0) continue;
      amount[place] = (amount[place] as number) - times * taken;
      const row = place * rows;
      for (let index = 0; index < filled; index++) {
        const k = this.filled[index] as number;
        inverse[row + k] = (inverse[row + k] as number) - times * (inverse[from + k] as number);
      }
    }
    amount[leaving] = taken;
    this.basis[leaving] = entering;
    // Much less to do than to price all anew; what that would round away is set right by the next `price`.
    for (let k = 0; k < rows; k++) duals[k] = (duals[k] as number) + gain * (inverse[from + k] as number);
    if (++this.exchanges < EXCHANGES) return;
    this.invert();
    this.price();
  }

  /** Reckons the inverse of the basis, and the amounts, from the columns themselves. */
  private invert(): void {
    this.exchanges = 0;
    const { inverse, basis } = this;
    const rows = basis.length;
    const matrix = new Float64Array(rows * rows);
    basis.forEach((column, place) => {
      if (column < 0) matrix[(-1 - column) * rows + place] = -1;
      else {
        const { rows: own, amounts } = at(this.columns, column);
        own.forEach((row, k) => (matrix[row * rows + place] = at(amounts, k)));
      }
    });
    const inverted = invertedOf(matrix, rows);
    if (inverted !== null) inverse.set(inverted);
    this.reckonAmounts();
  }

  private reckonAmounts(): void {
    const { inverse, wanted, amount } = this;
    const rows = amount.length;
    for (let place = 0; place < rows; place++) {
      let sum = 0;
      for (let k = 0; k < rows; k++) sum += (inverse[place * rows + k] as number) * (wanted[k] as number);
      amount[place] = sum;
    }
  }
}

/** The product of a column with a row of numbers that begins at `from`. */
function product({ rows, amounts }: Omit<Column, "cost">, numbers: Float64Array, from: number): number {
  let sum = 0;
  for (let k = 0; k < rows.length; k++)
    sum += (numbers[from + (rows[k] as number)] as number) * (amounts[k] as number);
  return sum;
}
