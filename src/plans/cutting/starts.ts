import { pricingFor, quickPricingFor } from "./coarse.ts";
import { Mixture } from "./columns.ts";
import { cheapestGreedy, dived } from "./dive.ts";
import { greedyPlan, type RoughPlan, WAYS } from "./first.ts";
import { patternPlan } from "./patterns.ts";
import { type Pattern, patternOf } from "./pool.ts";
import type { Pricing } from "./pricing.ts";
import { isMany } from "./search.ts";
import { fitsAtAll, type WholeJob } from "./whole.ts";

/** Where a size is wanted less often than this on average, whole patterns are hardly ever cut twice. */
const REPEATED = 2;
/** Of so few kinds the fullest patterns are soon known. */
const FEW_KINDS = 8;
/** Of more kinds no mixture is quick. */
const MANY_KINDS = 150;
/** Milliseconds for a quick mixture, and the part of the time beyond them. */
const QUICK = 200;
const QUICK_SHARE = 0.05;
/** Part of a short time for mixing; the rest is for making it a plan. */
const QUICK_MIXING = 0.7;
/** Ways tried for its last sheets. */
const QUICK_WAYS = 3;

/** The plans that a search begins from, and what comes of making them. */
export class Starts {
  /** Whether columns come first: they need the time more than further ways that are alike. */
  readonly many: boolean;
  /** Layouts that may be of use. */
  layouts: readonly Pattern[] = [];
  private readonly whole: WholeJob;
  private readonly timeLeft: () => number;
  private readonly scarce: boolean;
  private table: Pricing | null | undefined = undefined;

  constructor(whole: WholeJob, timeLeft: () => number) {
    this.whole = whole;
    this.timeLeft = timeLeft;
    this.scarce = mayRunOut(whole);
    this.many = !this.scarce && isMany(whole);
  }

  /** The exact pricing of the job, made when it is first asked for. */
  get pricing(): Pricing | null {
    if (this.table === undefined) this.table = pricingFor(this.whole);
    return this.table;
  }

  /** The quickest plan first. */
  *plans(): Generator<RoughPlan> {
    const { whole, scarce } = this;
    const [first, second, ...others] = WAYS.map((way) => () => greedyPlan(whole, way, scarce));
    if (first === undefined || second === undefined) throw new RangeError("no way to lay anything");
    const greedy = first();
    yield greedy;
    const quick = this.many && whole.kinds.length <= MANY_KINDS ? this.quick(greedy) : null;
    if (quick !== null) {
      yield quick;
      if (whole.kinds.length <= FEW_KINDS) yield* this.fullPatterns();
      return;
    }
    yield second();
    yield* this.fullPatterns();
    for (const make of others) yield make();
  }

  private *fullPatterns(): Generator<RoughPlan> {
    const { whole, pricing, scarce } = this;
    const pieces = whole.kinds.reduce((sum, { count }) => sum + count, 0);
    if (scarce || pricing === null || pieces < REPEATED * whole.kinds.length) return;
    for (const way of WAYS.slice(0, 4)) yield patternPlan(whole, pricing, way, () => this.timeLeft() <= 0);
  }

  /** A plan out of a mixture of layouts that are priced on a coarse measure; null where none can be made so. */
  private quick(start: RoughPlan): RoughPlan | null {
    const { whole, timeLeft } = this;
    const pricing = quickPricingFor(whole);
    if (pricing === null) return null;
    const kinds = whole.kinds.length;
    const mixture = new Mixture(
      whole,
      pricing,
      start.layouts.map((layout) => patternOf(layout, kinds)),
    );
    const from = timeLeft();
    const most = Math.min(QUICK_MIXING * from, QUICK + QUICK_SHARE * from);
    mixture.price(Number.POSITIVE_INFINITY, () => timeLeft() <= from - most);
    this.layouts = mixture.layouts.filter((one) => one !== null);
    return dived(whole, mixture, {
      chance: null,
      rounds: 0,
      last: (rest) => cheapestGreedy(rest, QUICK_WAYS),
      timeIsUp: () => timeLeft() <= from - most / QUICK_MIXING,
    });
  }
}

/** Whether some kind fits no sheet that can be had as often as wanted. */
const mayRunOut = (whole: WholeJob): boolean =>
  whole.kinds.some(
    (kind) =>
      !whole.stocks.some((stock) => stock.copies === Number.POSITIVE_INFINITY && fitsAtAll(kind, stock)),
  ) || whole.stocks.some((stock) => stock.longestCut !== Number.POSITIVE_INFINITY);
