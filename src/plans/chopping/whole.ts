import { at } from "../at.ts";
import { moneyUnit } from "../cutting/money.ts";
import type { ChoppingJob } from "./job.ts";

/**
 * A job in whole units without kerf and waste: every rail is a kerf longer and every length a kerf
 * longer less its waste, so that rails lie end to end; rails of one length are one kind.
 */
export interface WholeChopping {
  /** From the longest to the shortest. */
  readonly kinds: readonly RailKind[];
  /** In the job's own order. */
  readonly stocks: readonly LengthStock[];
  /** The rails that no length holds. */
  readonly tooLong: readonly number[];
  /** Whether some kind fits no stock that never runs out. */
  readonly scarce: boolean;
}

export interface RailKind {
  readonly weight: number;
  readonly count: number;
  /** The job's rails of this length. */
  readonly rails: readonly number[];
}

export interface LengthStock {
  readonly capacity: number;
  readonly cost: number;
  /**
   * What the planner weighs: the cost and a hair, the same for each length, so that among equal costs
   * fewer lengths are better. All hairs together are less than the least difference of two costs.
   */
  readonly price: number;
  /** Positive infinity: as many as wanted. Nought where no rail fits it. */
  readonly copies: number;
}

/** Lengths of one stock that are chopped alike: `counts[i]` rails of the kind `kinds[i]`, kinds from the longest on. */
export interface Pattern {
  readonly stock: number;
  readonly kinds: readonly number[];
  readonly counts: readonly number[];
}

export function wholeChopping(job: ChoppingJob): WholeChopping {
  const spaces = job.lengths.map(({ length, copies }) =>
    copies === 0 ? 0 : Math.max(0, length - 2 * job.waste),
  );
  const longest = spaces.reduce((most, space) => Math.max(most, space), 0);
  const wanted = job.rails.flatMap(({ count }, rail) => (count > 0 ? [rail] : []));
  const fitting = wanted.filter((rail) => at(job.rails, rail).length <= longest);
  const unit =
    fitting.reduce((common, rail) => divisor(common, at(job.rails, rail).length + job.kerf), 0) || 1;
  const kinds = kindsOf(job, fitting, unit);
  const shortest = kinds.at(-1)?.weight ?? Number.POSITIVE_INFINITY;
  const hair = hairOf(job);
  const stocks = job.lengths.map(({ cost, copies }, index) => {
    const capacity = Math.floor((at(spaces, index) + job.kerf) / unit);
    const price = cost + hair;
    return { capacity, cost, price, copies: capacity < shortest ? 0 : (copies ?? Number.POSITIVE_INFINITY) };
  });
  const endless = stocks.reduce(
    (most, { capacity, copies }) => (copies === Number.POSITIVE_INFINITY ? Math.max(most, capacity) : most),
    0,
  );
  return {
    kinds,
    stocks,
    tooLong: wanted.filter((rail) => at(job.rails, rail).length > longest),
    scarce: kinds.some(({ weight }) => weight > endless),
  };
}

function kindsOf(job: ChoppingJob, rails: readonly number[], unit: number): RailKind[] {
  const kinds = new Map<number, { weight: number; count: number; rails: number[] }>();
  for (const rail of rails) {
    const { length, count } = at(job.rails, rail);
    const kind = kinds.get(length) ?? { weight: (length + job.kerf) / unit, count: 0, rails: [] };
    kind.count += count;
    kind.rails.push(rail);
    kinds.set(length, kind);
  }
  return [...kinds.values()].toSorted((a, b) => b.weight - a.weight);
}

/** What a length is dearer by than its cost, in the planner's eyes. */
function hairOf({ lengths, rails }: ChoppingJob): number {
  const costs = lengths.map(({ cost }) => cost);
  const [first = 0] = costs;
  if (costs.every((cost) => cost === first)) return first === 0 ? 1 : 0;
  const most = Math.max(...costs);
  const sticks = rails.reduce((sum, { count }) => sum + count, 1);
  return (moneyUnit(costs) ?? most * 1e-6) / (sticks + 1);
}

function divisor(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b];
  return a;
}
