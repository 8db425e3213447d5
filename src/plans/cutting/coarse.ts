import { at } from "../at.ts";
import { type Part, resized } from "./layout.ts";
import { type Pricing, PricingTable } from "./pricing.ts";
import type { Kind, Stock, WholeJob } from "./whole.ts";

/** The most sums along one axis of a coarse table. */
const COARSE_POINTS = 300;

/** The pricing of a job: exact where its sums are few enough, else on a coarser measure. */
export const pricingFor = (job: WholeJob): Pricing | null => PricingTable.for(job) ?? CoarsePricing.for(job);

/** The most units of a quick measure along the longest side of a sheet. */
const QUICK_UNITS = 128;
/** How many measures are weighed for it. */
const MEASURES = 64;

/**
 * Layouts for given values at little cost, none of them surely the best: on the measure of so few units
 * that loses least by rounding every piece up and every sheet down. What it says that a sheet is worth
 * is no bound of any kind. Null where a piece would be larger than every sheet.
 */
export function quickPricingFor(job: WholeJob): Pricing | null {
  const longest = job.stocks.reduce(
    (most, { width, height, copies }) => (copies > 0 ? Math.max(most, width, height) : most),
    0,
  );
  const coarsest = Math.ceil(longest / QUICK_UNITS);
  let measure = coarsest;
  let least = Number.POSITIVE_INFINITY;
  for (let one = coarsest; one <= 2 * coarsest; one += Math.ceil(coarsest / MEASURES)) {
    const loss = lossOf(job, one);
    if (loss >= least) continue;
    least = loss;
    measure = one;
  }
  return RoundedUp.for(job, measure, QUICK_UNITS);
}

/** How much larger the demand and the bought sheets become against one another when sides are rounded. */
function lossOf({ kinds, stocks }: WholeJob, measure: number): number {
  const up = (side: number): number => Math.ceil(side / measure) * measure;
  const down = (side: number): number => Math.floor(side / measure) * measure;
  let [before, after] = [0, 0];
  for (const { count, width, height } of kinds) {
    before += count * width * height;
    after += count * up(width) * up(height);
  }
  const sheets = stocks.filter(({ copies }) => copies === Number.POSITIVE_INFINITY);
  return sheets.reduce(
    (loss, { width, height }) => Math.max(loss, (width * height) / (down(width) * down(height))),
    after / before,
  );
}

/** Layouts of pieces rounded up on sheets rounded down, which every sheet holds, drawn at their true sizes. */
class RoundedUp implements Pricing {
  private readonly job: WholeJob;
  private readonly measure: number;
  private readonly table: PricingTable;

  private constructor(job: WholeJob, measure: number, table: PricingTable) {
    this.job = job;
    this.measure = measure;
    this.table = table;
  }

  static for(job: WholeJob, measure: number, points: number): RoundedUp | null {
    const table = PricingTable.for(coarsened(job, measure, Math.ceil), points);
    return table === null ? null : new RoundedUp(job, measure, table);
  }

  fill(values: ArrayLike<number>): void {
    this.table.fill(values);
  }

  worth(stock: Stock): number {
    return this.table.worth(shrunk(stock, this.measure));
  }

  patterns(stock: Stock, least: number, most: number): readonly Part[] {
    return this.table
      .patterns(shrunk(stock, this.measure), least, most)
      .map((part) => resized(this.refined(part), stock.width, stock.height));
  }

  /** The same arrangement of pieces at their own sizes; its rests are wrong until it is resized. */
  private refined(part: Part): Part {
    if (part.is === "split") return { ...part, parts: part.parts.map((one) => this.refined(one)) };
    const { width, height, turns } = at(this.job.kinds, part.kind);
    const upright = !turns || Math.ceil(width / this.measure) === part.width;
    return upright ? { ...part, width, height } : { ...part, width: height, height: width };
  }
}

/**
 * Pricing on a coarser measure, for jobs whose sides add up to too many sums. What a sheet is worth is
 * taken with every side rounded down, which no layout exceeds; layouts are made with the pieces rounded up.
 */
class CoarsePricing implements Pricing {
  private readonly measure: number;
  private readonly above: PricingTable;
  private readonly below: RoundedUp;

  private constructor(measure: number, above: PricingTable, below: RoundedUp) {
    this.measure = measure;
    this.above = above;
    this.below = below;
  }

  /** On the finest measure that leaves few enough sums; null where a piece would vanish on it. */
  static for(job: WholeJob): CoarsePricing | null {
    const sides = job.kinds.flatMap(({ width, height, count }) => (count > 0 ? [width, height] : []));
    const shortest = sides.reduce((least, side) => Math.min(least, side), Number.POSITIVE_INFINITY);
    for (let measure = 2; measure <= shortest; measure = Math.ceil(measure * 1.3)) {
      const above = PricingTable.for(coarsened(job, measure, Math.floor), COARSE_POINTS);
      const below = above === null ? null : RoundedUp.for(job, measure, COARSE_POINTS);
      if (above !== null && below !== null) return new CoarsePricing(measure, above, below);
    }
    return null;
  }

  fill(values: ArrayLike<number>): void {
    this.above.fill(values);
    this.below.fill(values);
  }

  worth(stock: Stock): number {
    return this.above.worth(shrunk(stock, this.measure));
  }

  patterns(stock: Stock, least: number, most: number): readonly Part[] {
    return this.below.patterns(stock, least, most);
  }
}

const shrunk = (stock: Stock, measure: number): Stock => ({
  ...stock,
  width: Math.floor(stock.width / measure),
  height: Math.floor(stock.height / measure),
});

function coarsened(job: WholeJob, measure: number, round: (side: number) => number): WholeJob {
  const side = (kind: Kind): Kind => ({
    ...kind,
    width: round(kind.width / measure),
    height: round(kind.height / measure),
  });
  return { ...job, kinds: job.kinds.map(side), stocks: job.stocks.map((stock) => shrunk(stock, measure)) };
}
