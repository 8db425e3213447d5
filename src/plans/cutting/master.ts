import { at } from "./at.ts";

/** A column of the master problem: what it costs, and how much it gives to each row. */
export interface Column {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly amounts: readonly number[];
}

const SMALL = 1e-9;

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

  constructor(wanted: ArrayLike<number>, first: readonly (Column | null)[]) {
    const rows = wanted.length;
    this.wanted = Float64Array.from(wanted);
    this.duals = new Float64Array(rows);
    this.inverse = new Float64Array(rows * rows);
    this.basis = new Int32Array(rows);
    this.amount = new Float64Array(rows);
    this.direction = new Float64Array(rows);
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

  /** Takes columns into the basis for as long as one makes it cheaper, at most `most` times. */
  solve(most: number): void {
    this.price();
    for (let turn = 0; turn < most; turn++) {
      const entering = this.entering();
      if (entering === null || !this.exchange(entering)) return;
      this.price();
    }
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

  /** Takes a column into the basis and the first that falls to nought out. False when none does. */
  private exchange(entering: number): boolean {
    const { inverse, direction, amount } = this;
    const rows = direction.length;
    const column = entering < 0 ? { rows: [-1 - entering], amounts: [-1] } : at(this.columns, entering);
    for (let place = 0; place < rows; place++) {
      let sum = 0;
      for (let k = 0; k < column.rows.length; k++)
        sum += (inverse[place * rows + (column.rows[k] as number)] as number) * (column.amounts[k] as number);
      direction[place] = sum;
    }
    let leaving = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let place = 0; place < rows; place++) {
      const falls = direction[place] as number;
      if (falls <= SMALL) continue;
      const ratio = Math.max(0, amount[place] as number) / falls;
      const sooner = ratio < least - SMALL;
      const steeper = ratio <= least + SMALL && leaving >= 0 && falls > (direction[leaving] as number);
      if (!sooner && !steeper) continue;
      least = Math.min(least, ratio);
      leaving = place;
    }
    if (leaving < 0) return false;
    const pivot = direction[leaving] as number;
    const from = leaving * rows;
    for (let k = 0; k < rows; k++) inverse[from + k] = (inverse[from + k] as number) / pivot;
    for (let place = 0; place < rows; place++) {
      const times = direction[place] as number;
      if (place === leaving || times === 0) continue;
      amount[place] = (amount[place] as number) - times * least;
      const row = place * rows;
      for (let k = 0; k < rows; k++)
        inverse[row + k] = (inverse[row + k] as number) - times * (inverse[from + k] as number);
    }
    amount[leaving] = least;
    this.basis[leaving] = entering;
    return true;
  }
}
