import { at } from "../at.ts";
import { type Part, resized } from "./layout.ts";
import { type Pricing, PricingTable } from "./pricing.ts";
import type { Kind, Stock, WholeJob } from "./whole.ts";

/** The most sums along one axis of a coarse table. */
const COARSE_POINTS = 300;

/** The pricing of a job: exact where its sums are few enough, else on a coarser measure. */
export const pricingFor = (job: WholeJob): Pricing | null => PricingTable.for(job) ?? CoarsePricing.for(job);

/**
 * Pricing on a coarser measure, for jobs whose sides add up to too many sums. What a sheet is worth is
 * taken with every side rounded down, which no layout exceeds; layouts are made with the pieces
 * rounded up and the sheets down, which every sheet holds, and then drawn at their true sizes.
 */
class CoarsePricing implements Pricing {
  private readonly job: WholeJob;
  private readonly measure: number;
  private readonly above: PricingTable;
  private readonly below: PricingTable;

  private constructor(job: WholeJob, measure: number, above: PricingTable, below: PricingTable) {
    this.job = job;
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
      const below =
        above === null ? null : PricingTable.for(coarsened(job, measure, Math.ceil), COARSE_POINTS);
      if (above !== null && below !== null) return new CoarsePricing(job, measure, above, below);
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
    return this.below
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
