import { at } from "../at.ts";
import { reachableBound } from "./bound.ts";
import { SheetCounts } from "./counts.ts";
import type { Chance } from "../chance.ts";
import { Mixture } from "./columns.ts";
import { cheapestGreedy, dived, withoutSurplus } from "./dive.ts";
import type { RoughPlan } from "./first.ts";
import { improved, quietSteps } from "./improve.ts";
import type { IntegerSolver } from "./integer.ts";
import { regrouped } from "./near.ts";
import type { CostBound } from "./plan.ts";
import { type Pattern, patternOf } from "./pool.ts";
import type { Pricing } from "./pricing.ts";
import { reopened } from "./reopen.ts";
import { cheapened, compareJudged, type Judged, judged, type Least } from "./rough.ts";
import type { WholeJob } from "./whole.ts";

/** Jobs of no more pieces are laid as a whole until nothing better is to be hoped for. */
const FEW_PIECES = 24;
/** A job with more pieces, or with as many of a kind, is given to column generation first. */
const MANY_PIECES = 150;
const MANY_ALIKE = 3;

const piecesOf = (whole: WholeJob): number => whole.kinds.reduce((sum, kind) => sum + kind.count, 0);

/** Whether a job is soon searched to its end. */
export const isSmall = (whole: WholeJob): boolean => piecesOf(whole) <= FEW_PIECES;

/** Whether columns are to come first. */
export const isMany = (whole: WholeJob): boolean =>
  piecesOf(whole) > MANY_PIECES || (!isSmall(whole) && piecesOf(whole) >= MANY_ALIKE * whole.kinds.length);

/** Ways tried, and steps without a cheaper plan, for the last sheets of a dive. */
const LAST_WAYS = 8;
const LAST_STEPS = 4000;
/** A plan of fewer sheets is not searched by groups. */
const MANY_SHEETS = 6;
/** Parts of the time that is left: for columns, where they come first and where they do not; for the integer
 * programme of the whole job; for laying few unlike pieces before that. */
const COLUMNS = 0.55;
const FEW_COLUMNS = 0.05;
const SOLVING = 0.35;
const LAYING = 0.85;
/** Part of the time that is left for whole numbers of sheets, and rounds of pricing for each. */
const COUNTING = 0.2;
const COUNTING_ROUNDS = 60;

/** What a search works with. */
export interface Means {
  readonly least: Least;
  readonly solver: IntegerSolver | null;
  readonly chance: Chance;
  readonly clock: () => number;
  /** Milliseconds; nought or less: none, or the work has been stopped. */
  readonly timeLeft: () => number;
  /** Told the best plan and bound so far, whenever one has become better. */
  readonly told: (best: Judged, bound: CostBound) => void;
  /** Layouts that may be of use, beside those of the plan to begin from. */
  readonly layouts: readonly Pattern[];
}

export interface Searched {
  readonly best: Judged;
  readonly bound: CostBound;
}

/**
 * The long search that follows the first plans: columns for a bound and, where pieces repeat, for the
 * plan; ruin and recreate for the whole job; then groups of sheets. It ends by itself, or when the time
 * is up. `pricing` is null where nothing can be said about what a sheet may be worth.
 */
export function searched(
  whole: WholeJob,
  pricing: Pricing | null,
  start: Judged,
  cheap: CostBound,
  means: Means,
): Searched {
  const search = new Search(whole, start, cheap, means);
  // Columns are for plans that leave nothing out.
  if (pricing === null || start.missing > 0) search.lay();
  else search.mix(pricing);
  return search;
}

class Search implements Searched {
  best: Judged;
  bound: CostBound;
  private readonly whole: WholeJob;
  private readonly means: Means;
  private enough: number;
  private readonly counts: SheetCounts;
  private readonly timeIsUp = (): boolean => this.means.timeLeft() <= 0;

  constructor(whole: WholeJob, start: Judged, cheap: CostBound, means: Means) {
    this.whole = whole;
    this.means = means;
    this.best = start;
    this.counts = new SheetCounts(whole);
    this.bound = cheap;
    this.enough = reachableBound(whole, cheap) * (1 + 1e-9);
  }

  /** Ruin and recreate, in a part of the time that is left. */
  lay(share = 1): void {
    const { whole, enough, means } = this;
    const { least, chance } = means;
    if (this.done()) return;
    const until = means.timeLeft() * (1 - share);
    const timeIsUp = (): boolean => means.timeLeft() <= until;
    const pieces = piecesOf(whole);
    this.take(
      pieces > MANY_PIECES
        ? regrouped(whole, least, this.best, enough, chance, timeIsUp)
        : improved(whole, least, this.best, { enough, quiet: quietSteps(pieces), chance, timeIsUp }),
    );
  }

  /** Columns and ruin and recreate, with the layouts of one for the other. */
  mix(pricing: Pricing): void {
    if (this.done()) return;
    const { whole, means } = this;
    const many = isMany(whole);
    const kinds = whole.kinds.length;
    const mixture = new Mixture(
      whole,
      pricing,
      [...this.best.layouts.map((layout) => patternOf(layout, kinds)), ...means.layouts],
      (values, worth) => this.counts.learn(values, worth),
    );
    const share = means.timeLeft() * (1 - (many ? COLUMNS : FEW_COLUMNS));
    mixture.price(Number.POSITIVE_INFINITY, () => means.timeLeft() <= share);
    this.raise({ cost: mixture.bound, how: "columns" });
    if (many) this.take(this.dive(mixture, false), mixture);
    else this.lay(isSmall(whole) ? 1 : LAYING);
    this.solve(mixture);
    this.count(mixture, pricing);
    if (isSmall(whole)) return;
    if (many && !this.done()) this.take(this.dive(mixture, true), mixture);
    if (this.done()) return;
    mixture.want(whole);
    this.reopen(mixture);
    if (piecesOf(whole) <= MANY_PIECES) this.lay();
  }

  private dive(mixture: Mixture, blurred: boolean): Judged {
    const { whole, means, timeIsUp } = this;
    const { chance } = means;
    const last = (rest: WholeJob): RoughPlan => {
      const laid = judged(rest, null, cheapestGreedy(rest, LAST_WAYS));
      return improved(rest, null, laid, { enough: 0, quiet: LAST_STEPS, chance, timeIsUp });
    };
    const half = means.timeLeft() / 2;
    const plan = dived(whole, mixture, {
      chance: blurred ? chance : null,
      rounds: 1,
      last,
      timeIsUp: () => means.timeLeft() <= half,
    });
    return judged(whole, means.least, cheapened(whole, plan));
  }

  /** Groups of sheets anew; a plan of few sheets is laid anew as a whole. */
  private reopen(mixture: Mixture): void {
    if (this.done() || this.best.layouts.length < MANY_SHEETS) return;
    const { least, solver, chance, clock } = this.means;
    const { enough, timeIsUp } = this;
    const found = (plan: Judged): void => this.take(plan);
    reopened(this.whole, mixture, this.best, { least, enough, solver, chance, clock, timeIsUp, found });
  }

  /** The cheapest plan out of all layouts that are known. */
  private solve(mixture: Mixture): void {
    const { whole, best, means } = this;
    if (means.solver === null || this.done()) return;
    mixture.want(whole);
    const until = means.timeLeft() * (1 - SOLVING);
    const start = best.layouts.map((layout) => patternOf(layout, whole.kinds.length));
    const solved = mixture.solved(means.solver, best.cost, start, () => means.timeLeft() <= until);
    if (solved === null) return;
    this.take(judged(whole, means.least, cheapened(whole, withoutSurplus(whole, solved))), mixture);
  }

  /** Raises the bound to the cheapest whole numbers of sheets that could hold all, sheets of each number mixed in parts. */
  private count(mixture: Mixture, pricing: Pricing): void {
    const { whole, counts, means } = this;
    const until = means.timeLeft() * (1 - COUNTING);
    const timeIsUp = (): boolean => means.timeLeft() <= until;
    while (counts.serve && !this.done()) {
      const cheapest = counts.cheapest(this.best.cost);
      this.raise({ cost: cheapest?.cost ?? this.best.cost, how: "counts" });
      if (cheapest === null || timeIsUp()) return;
      // Whether so many sheets can hold all: what is left out alone costs something.
      const stocks = whole.stocks.map((stock, index) => ({
        ...stock,
        cost: 0,
        copies: at(cheapest.copies, index),
      }));
      const known = mixture.layouts.filter((one) => one !== null);
      const held = new Mixture({ ...whole, stocks }, pricing, known, (values, worth) =>
        counts.learn(values, worth),
      );
      held.price(COUNTING_ROUNDS, () => timeIsUp() || !counts.allows(cheapest.copies));
      for (const one of held.layouts) if (one !== null) mixture.add(one);
      if (counts.allows(cheapest.copies)) return;
    }
  }

  private done(): boolean {
    return this.timeIsUp() || (this.best.missing === 0 && this.best.cost <= this.enough);
  }

  private take(found: Judged, mixture: Mixture | null = null): void {
    for (const layout of mixture === null ? [] : found.layouts)
      mixture?.add(patternOf(layout, this.whole.kinds.length));
    if (compareJudged(found, this.best) >= 0) return;
    this.best = found;
    this.means.told(found, this.bound);
  }

  private raise(bound: CostBound): void {
    if (bound.cost <= this.bound.cost) return;
    this.bound = bound;
    this.enough = reachableBound(this.whole, this.bound) * (1 + 1e-9);
    this.means.told(this.best, this.bound);
  }
}
