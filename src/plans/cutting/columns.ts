import { at } from "./at.ts";
import { boundByValues } from "./bound.ts";
import { countKinds, type Layout, layoutKey, resized } from "./layout.ts";
import { type Column, Master } from "./master.ts";
import type { PricingTable } from "./pricing.ts";
import { fitsAtAll, type WholeJob } from "./whole.ts";

/** The most rounds of pricing: past them the bound hardly moves. */
const MOST_ROUNDS = 200;

/** What column generation knows at its end. */
export interface Generated {
  /** Every layout that was ever of use, those of before included. */
  readonly pool: readonly Layout[];
  /** How often each layout of the pool is cut in the cheapest mixture. */
  readonly amounts: Float64Array;
  /** No plan for the demand costs less. */
  readonly bound: number;
}

/**
 * The cheapest mixture of layouts, parts of sheets allowed, with the layouts that it takes priced out
 * of one table for all stocks at once (Gilmore and Gomory 1965). Begins from the layouts of `pool`.
 * The values that are priced lie half-way to those of the best bound, which spares rounds (Wentges 1997).
 * Only for jobs in which every kind fits a stock that never runs out.
 */
export function generated(
  job: WholeJob,
  table: PricingTable,
  pool: readonly Layout[],
  rounds: number,
  timeIsUp: () => boolean,
): Generated {
  const limited = job.stocks.flatMap(({ copies }, index) =>
    copies === Number.POSITIVE_INFINITY ? [] : [index],
  );
  const limitRow = new Map(limited.map((stock, index) => [stock, job.kinds.length + index]));
  const column = ({ stock, root }: Layout): Column => {
    const counts = new Int32Array(job.kinds.length);
    countKinds(root, counts);
    const rows = job.kinds.map((_, kind) => kind).filter((kind) => at(counts, kind) > 0);
    const amounts = rows.map((kind) => at(counts, kind));
    const row = limitRow.get(stock);
    const { cost } = at(job.stocks, stock);
    if (row === undefined) return { cost, rows, amounts };
    return { cost, rows: [...rows, row], amounts: [...amounts, -1] };
  };
  const layouts = job.kinds.map((_, kind) => single(job, kind));
  const wanted = [
    ...job.kinds.map(({ count }) => count),
    ...limited.map((stock) => -at(job.stocks, stock).copies),
  ];
  const master = new Master(wanted, [...layouts.map(column), ...limited.map(() => null)]);
  const known = new Set<string>();
  const take = (layout: Layout): boolean => {
    const key = layoutKey(layout);
    if (known.has(key)) return false;
    known.add(key);
    layouts.push(layout);
    master.add(column(layout));
    return true;
  };
  for (const layout of pool) take(layout);
  let bound = 0;
  let centre: ArrayLike<number> | null = null;
  /** Prices the values out; true when a layout was taken that makes the mixture cheaper. */
  const priced = (values: Float64Array): boolean => {
    table.fill(values);
    const worth = job.stocks.map((stock) => table.worth(stock));
    const found = boundByValues(job, values, worth);
    if (found > bound) {
      bound = found;
      centre = values;
    }
    let taken = false;
    job.stocks.forEach((stock, index) => {
      // The table does not know which pieces must not turn in a window that may lie turned.
      if (stock.copies === 0 || !stock.takesFixed || at(worth, index) === 0) return;
      const root = table.pattern(stock);
      if (root === null) return;
      const { cost, rows, amounts } = column({ stock: index, root });
      const gives = rows.reduce((sum, row, k) => sum + at(master.duals, row) * at(amounts, k), 0);
      if (gives > cost + 1e-7 * (1 + cost) && take({ stock: index, root })) taken = true;
    });
    return taken;
  };
  const turns = 4 * wanted.length + 200;
  for (let round = 0; ; round++) {
    master.solve(turns);
    if (round >= Math.min(rounds, MOST_ROUNDS) || timeIsUp()) break;
    const values = Float64Array.from(job.kinds, (_, kind) => Math.max(0, at(master.duals, kind)));
    const between = values.map((value, kind) => (value + at(centre ?? values, kind)) / 2);
    const taken = priced(between) || priced(values);
    if (!taken || bound >= master.cost() * (1 - 1e-7)) break;
  }
  return { pool: layouts, amounts: master.amounts(), bound };
}

/** One piece alone on the cheapest sheet that never runs out. */
function single(job: WholeJob, index: number): Layout {
  const kind = at(job.kinds, index);
  let best = -1;
  job.stocks.forEach((stock, place) => {
    if (stock.copies !== Number.POSITIVE_INFINITY || !fitsAtAll(kind, stock)) return;
    if (best < 0 || stock.cost < at(job.stocks, best).cost) best = place;
  });
  const { width, height } = at(job.stocks, best);
  const upright = kind.width <= width && kind.height <= height;
  const lies = upright
    ? { width: kind.width, height: kind.height }
    : { width: kind.height, height: kind.width };
  return { stock: best, root: resized({ is: "piece", kind: index, ...lies }, width, height) };
}
