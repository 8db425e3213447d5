import { at } from "../at.ts";
import { Forest } from "./forest.ts";
import { Seeker } from "./places.ts";
import type { Preference } from "./scoring.ts";
import type { Layout } from "./layout.ts";
import { fitsAtAll, type Kind, type Stock, type WholeJob } from "./whole.ts";

/** One way to build a first plan, greedily: in which order, where to, and which sheet to open next. */
export interface Way {
  /** Kinds are taken in falling order of this. */
  readonly order: keyof typeof ORDERS;
  readonly preference: Preference;
  /** Which sheet is opened when a piece fits no open one. */
  readonly opening: "cheapest-area" | "smallest" | "largest";
  /** Whether a sheet that costs nothing is opened before waste of open sheets is looked at. */
  readonly freeFirst: boolean;
}

const ORDERS = {
  area: (kind: Kind) => kind.width * kind.height,
  longest: (kind: Kind) => Math.max(kind.width, kind.height),
  shortest: (kind: Kind) => Math.min(kind.width, kind.height),
  girth: (kind: Kind) => kind.width + kind.height,
  slender: (kind: Kind) => Math.max(kind.width, kind.height) ** 2 * Math.min(kind.width, kind.height),
} as const;

const wayOf = (
  order: keyof typeof ORDERS,
  preference: Preference,
  opening: Way["opening"],
  freeFirst: boolean,
): Way => ({
  order,
  preference,
  opening,
  freeFirst,
});

/** Tried in this order as long as time lasts; the first is the one that is best most often. */
export const WAYS: readonly Way[] = [
  wayOf("area", "squares", "cheapest-area", false),
  wayOf("longest", "squares", "cheapest-area", true),
  wayOf("area", "tight", "smallest", true),
  wayOf("longest", "tight", "cheapest-area", false),
  wayOf("girth", "squares", "largest", false),
  wayOf("shortest", "squares", "cheapest-area", true),
  wayOf("slender", "squares", "cheapest-area", false),
  wayOf("area", "side", "cheapest-area", true),
  wayOf("longest", "squares", "smallest", false),
  wayOf("slender", "tight", "largest", true),
  wayOf("girth", "tight", "cheapest-area", true),
  wayOf("shortest", "tight", "smallest", false),
  wayOf("longest", "side", "largest", false),
  wayOf("area", "squares", "largest", true),
  wayOf("slender", "side", "smallest", true),
  wayOf("girth", "side", "cheapest-area", false),
  wayOf("shortest", "side", "largest", true),
  wayOf("longest", "tight", "largest", true),
  wayOf("area", "tight", "largest", false),
  wayOf("girth", "squares", "smallest", true),
];

/** Layouts, and for each kind how many of it they hold. */
export interface RoughPlan {
  readonly layouts: readonly Layout[];
  readonly placed: Int32Array;
}

/**
 * Builds one plan greedily. Every kind is placed as often as it is wanted, or as the stock allows.
 * A drop-out is opened at most as often as its mats are sure to be cut: where all demand can be met
 * that is all of them; where the stock may run out (`scarce`), those that are placed already.
 */
export function greedyPlan(job: WholeJob, way: Way, scarce: boolean): RoughPlan {
  const builder = new Builder(job, way, scarce);
  const size = ORDERS[way.order];
  const kinds = job.kinds.map((_, index) => index);
  kinds.sort((a, b) => size(at(job.kinds, b)) - size(at(job.kinds, a)) || a - b);
  for (const kind of kinds) if (at(job.kinds, kind).count > 0) builder.placeAll(kind);
  const placed = Int32Array.from(job.kinds, (_, index) => builder.forest.memory.placed(index));
  return { layouts: builder.forest.layouts(), placed };
}

class Builder {
  readonly forest: Forest;
  private readonly job: WholeJob;
  private readonly way: Way;
  private readonly scarce: boolean;
  private readonly seeker: Seeker;
  /** The stocks, those to be opened first before others. */
  private readonly ranked: readonly number[];

  constructor(job: WholeJob, way: Way, scarce: boolean) {
    this.job = job;
    this.way = way;
    this.scarce = scarce;
    this.forest = new Forest(
      job,
      job.kinds.reduce((sum, kind) => sum + kind.count, 0),
    );
    this.seeker = new Seeker(job, this.forest.memory, way.preference, true);
    this.ranked = job.stocks
      .map((stock, place) => ({ place, rank: rankOf(stock, way.opening), copies: stock.copies }))
      .filter(({ copies }) => copies > 0)
      .toSorted((a, b) => a.rank - b.rank || a.place - b.place)
      .map(({ place }) => place);
  }

  placeAll(index: number): void {
    const kind = at(this.job.kinds, index);
    const stocks = this.ranked.filter((place) => fitsAtAll(kind, at(this.job.stocks, place)));
    const free = stocks.filter((stock) => at(this.job.stocks, stock).cost === 0);
    for (let copy = 0; copy < kind.count; copy++) {
      const placed =
        (this.way.freeFirst && this.openFor(index, free)) || this.layIn(index) || this.openFor(index, stocks);
      if (!placed) return;
    }
  }

  /** Lays one piece in the waste of an open sheet. */
  private layIn(kind: number): boolean {
    if (!this.seeker.seek(kind)) return false;
    this.forest.insert(kind, this.seeker);
    return true;
  }

  /** Opens the first of the stocks that has a copy left, and lays one piece there. */
  private openFor(kind: number, stocks: readonly number[]): boolean {
    for (const stock of stocks) {
      if (this.forest.memory.opened(stock) >= this.copiesOf(at(this.job.stocks, stock))) continue;
      const root = this.forest.open(stock);
      if (this.seeker.seekIn(kind, root)) {
        this.forest.insert(kind, this.seeker);
        return true;
      }
      this.forest.close(root);
    }
    return false;
  }

  private copiesOf(stock: Stock): number {
    if (stock.hosts === null || !this.scarce) return stock.copies;
    return sureHosts(this.job, stock.hosts, (kind) => this.forest.memory.placed(kind));
  }
}

/** Lower is opened sooner. What costs nothing always comes first, the smallest that serves before others. */
function rankOf(stock: Stock, opening: Way["opening"]): number {
  const area = stock.width * stock.height;
  if (stock.cost === 0) return -1 / area;
  switch (opening) {
    case "cheapest-area":
      return stock.cost / area;
    case "smallest":
      return area;
    case "largest":
      return 1 / area;
  }
}

/** How many of the pieces `hosts` are among those placed, whichever of their kind were left out. */
function sureHosts(job: WholeJob, hosts: readonly number[], placed: (kind: number) => number): number {
  let sure = 0;
  job.kinds.forEach((kind, index) => {
    const own = kind.pieces.reduce(
      (sum, piece, i) => sum + (hosts.includes(piece) ? at(kind.counts, i) : 0),
      0,
    );
    if (own > 0) sure += Math.max(0, placed(index) - (kind.count - own));
  });
  return sure;
}
