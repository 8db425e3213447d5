import { at } from "../at.ts";
import { boundByValues } from "./bound.ts";
import { cuttable } from "./cuttable.ts";
import type { IntegerSolver } from "./integer.ts";
import { type Column, Master } from "./master.ts";
import { type Pattern, patternOf } from "./pool.ts";
import type { Pricing } from "./pricing.ts";
import { single } from "./single.ts";
import type { WholeJob } from "./whole.ts";

/** The most rounds of pricing: past them the bound hardly moves. */
const MOST_ROUNDS = 400;
/** The most layouts that one stock is given in one round. */
const A_ROUND = 10;

type Heard = (values: ArrayLike<number>, worth: ArrayLike<number>) => void;

/**
 * The cheapest mixture of layouts, parts of sheets allowed, for what is wanted of a job; the layouts
 * that it takes are priced for all stocks at once (Gilmore and Gomory 1965). The values that are
 * priced lie half-way to those of the best bound, which spares rounds (Wentges 1997).
 */
export class Mixture {
  /** Every layout that was ever of use; null: a kind left out, where no stock takes it as often as wanted. */
  readonly layouts: (Pattern | null)[];
  /** No plan for all that is wanted costs less; of what was wanted last. */
  bound = 0;
  private readonly job: WholeJob;
  private wanted: WholeJob;
  private readonly pricing: Pricing;
  /** The kinds that are wanted at all, and the stocks that can run out: a row of the master each. */
  private readonly kinds: readonly number[];
  private readonly limited: readonly number[];
  private readonly kindRow: Int32Array;
  private readonly limitRow: ReadonlyMap<number, number>;
  private readonly master: Master;
  private readonly known = new Set<string>();
  private centre: Float64Array | null = null;
  private readonly heard: Heard | null;

  /** `heard` is told of all values that are priced, and the most that a sheet of each stock is worth at them. */
  constructor(job: WholeJob, pricing: Pricing, pool: readonly Pattern[], heard: Heard | null = null) {
    this.heard = heard;
    this.job = job;
    this.wanted = job;
    this.pricing = pricing;
    this.kinds = job.kinds.flatMap(({ count }, kind) => (count > 0 ? [kind] : []));
    this.kindRow = new Int32Array(job.kinds.length).fill(-1);
    this.kinds.forEach((kind, row) => (this.kindRow[kind] = row));
    this.limited = job.stocks.flatMap(({ copies }, stock) =>
      copies > 0 && copies !== Number.POSITIVE_INFINITY ? [stock] : [],
    );
    this.limitRow = new Map(this.limited.map((stock, index) => [stock, this.kinds.length + index]));
    this.layouts = this.kinds.map((kind) => single(job, kind));
    const dear = dearest(job);
    const first = this.layouts.map((layout, row) =>
      layout === null ? { cost: dear, rows: [row], amounts: [1] } : this.columnOf(layout),
    );
    this.master = new Master(this.rowsOf(job), [...first, ...this.limited.map(() => null)]);
    for (const layout of pool) this.add(layout);
    this.master.solve(this.turns());
  }

  /** Makes a layout known to the mixture; false when it already was, or its stock has run out. */
  add(layout: Pattern): boolean {
    if (this.known.has(layout.key) || at(this.job.stocks, layout.stock).copies <= 0) return false;
    this.known.add(layout.key);
    this.layouts.push(layout);
    this.master.add(this.columnOf(layout));
    return true;
  }

  /** How often each layout is cut. */
  amounts(): Float64Array {
    return this.master.amounts();
  }

  /** What the mixture costs. */
  cost(): number {
    return this.master.cost();
  }

  /** What a layout costs beyond what its pieces are worth in the mixture; nought or more at the end of `price`. */
  loss(layout: Pattern): number {
    const { cost, rows, amounts } = this.columnOf(layout);
    return rows.reduce((sum, row, k) => sum - at(this.master.duals, row) * at(amounts, k), cost);
  }

  /** Wants something else: the same kinds and stocks, with no larger counts and copies. */
  want(rest: WholeJob): void {
    this.wanted = rest;
    this.bound = 0;
    this.centre = null;
    this.master.want(this.rowsOf(rest), this.turns());
    this.master.solve(this.turns());
  }

  /** Adds layouts for as long as some make the mixture cheaper, in at most so many rounds. */
  price(rounds: number, timeIsUp: () => boolean): void {
    this.master.solve(this.turns());
    for (let round = 0; round < Math.min(rounds, MOST_ROUNDS) && !timeIsUp(); round++) {
      const values = Float64Array.from(this.job.kinds, (_, kind) => this.value(kind));
      const { centre } = this;
      const between = centre === null ? values : values.map((value, kind) => (value + at(centre, kind)) / 2);
      if (!this.pricedAt(between) && (centre === null || !this.pricedAt(values))) return;
      this.master.solve(this.turns());
      if (this.bound >= this.master.cost() * (1 - 1e-7)) return;
    }
  }

  /**
   * The cheapest plan out of the layouts that are known, by an integer programme: none that loses more
   * than lies between the mixture and `below` can be part of it. `start` is a plan to begin from. The
   * layouts may hold more than is wanted. Null when none was found that costs less than `below`.
   */
  solved(
    solver: IntegerSolver,
    below: number,
    start: readonly Pattern[],
    timeIsUp: () => boolean,
  ): Pattern[] | null {
    const most = Math.max(0, below - this.master.cost()) + 1e-6 * (1 + below);
    const used = this.layouts.filter((one) => one !== null).filter((one) => this.loss(one) <= most);
    const columns = used.map((one) => this.columnOf(one));
    const wanted = this.rowsOf(this.wanted);
    const found = solver({ columns, wanted, start: timesOf(used, start) }, timeIsUp);
    if (found === null) return null;
    const times = columns.map((_, index) => Math.round(at(found, index)));
    const given = wanted.map(() => 0);
    let cost = 0;
    columns.forEach((column, index) => {
      cost += column.cost * at(times, index);
      column.rows.forEach((row, k) => {
        given[row] = at(given, row) + at(column.amounts, k) * at(times, index);
      });
    });
    if (cost >= below || given.some((amount, row) => amount < at(wanted, row))) return null;
    return used.flatMap((one, index) => Array.from({ length: at(times, index) }, () => one));
  }

  /** What one more of a kind is worth in the mixture. */
  private value(kind: number): number {
    const row = at(this.kindRow, kind);
    return row < 0 ? 0 : Math.max(0, at(this.master.duals, row));
  }

  /** Prices the values out; true when a layout was taken that makes the mixture cheaper. */
  private pricedAt(values: Float64Array): boolean {
    const { pricing, job, wanted } = this;
    pricing.fill(values);
    const worth = job.stocks.map((stock) => pricing.worth(stock));
    this.heard?.(values, worth);
    const found = boundByValues(wanted, values, worth);
    if (found > this.bound) {
      this.bound = found;
      this.centre = values;
    }
    let taken = false;
    wanted.stocks.forEach((stock, index) => {
      // The pricing does not know which pieces must not turn in a window that may lie turned.
      if (stock.copies <= 0 || !stock.takesFixed || at(worth, index) === 0) return;
      const row = this.limitRow.get(index);
      const least = stock.cost + (row === undefined ? 0 : at(this.master.duals, row));
      for (const root of pricing.patterns(stock, least, A_ROUND)) {
        if (!cuttable(root, stock)) continue;
        const layout = patternOf({ stock: index, root }, job.kinds.length);
        if (this.loss(layout) < -1e-7 * (1 + stock.cost) && this.add(layout)) taken = true;
      }
    });
    return taken;
  }

  private columnOf({ stock, kinds, counts }: Pattern): Column {
    const rows: number[] = [];
    const amounts: number[] = [];
    kinds.forEach((kind, index) => {
      const row = at(this.kindRow, kind);
      if (row < 0) return;
      rows.push(row);
      amounts.push(at(counts, index));
    });
    const row = this.limitRow.get(stock);
    if (row !== undefined) {
      rows.push(row);
      amounts.push(-1);
    }
    return { cost: at(this.job.stocks, stock).cost, rows, amounts };
  }

  private rowsOf(job: WholeJob): number[] {
    return [
      ...this.kinds.map((kind) => at(job.kinds, kind).count),
      ...this.limited.map((stock) => -at(job.stocks, stock).copies),
    ];
  }

  private turns(): number {
    return 4 * (this.kinds.length + this.limited.length) + 200;
  }
}

/** More than a plan can cost: what leaving out one piece counts. */
const dearest = (job: WholeJob): number =>
  10 * job.stocks.reduce((most, { cost }) => Math.max(most, cost), 1);

/** How often each of the patterns is cut in a plan; null where it holds another. */
function timesOf(patterns: readonly Pattern[], plan: readonly Pattern[]): number[] | null {
  const places = new Map(patterns.map((one, index) => [one.key, index]));
  const times = patterns.map(() => 0);
  for (const { key } of plan) {
    const place = places.get(key);
    if (place === undefined) return null;
    times[place] = at(times, place) + 1;
  }
  return times;
}
