import { at } from "../at.ts";
import type { Chance } from "../chance.ts";
import { pricingFor } from "./coarse.ts";
import { Mixture } from "./columns.ts";
import { withoutSurplus } from "./dive.ts";
import { improved } from "./improve.ts";
import type { IntegerSolver } from "./integer.ts";
import { nextSum } from "./money.ts";
import { type Pattern, patternOf } from "./pool.ts";
import { cheapened, compareJudged, type Judged, judged, type Least } from "./rough.ts";
import { fitsAtAll, type WholeJob } from "./whole.ts";

/** The most pieces that ruin and recreate lays anew, and its steps without a cheaper plan. */
const MOST_PIECES = 40;
const STEPS = 1500;
/** Rounds of pricing for a group of sheets. */
const ROUNDS = 12;
/** Milliseconds that an integer programme may take; groups are made larger or smaller so that most take less. */
const SOLVING = 100;
const FIRST_SIZE = 14;
/** Share of the turns in which a plan that costs the same may take the place of the present one. */
const SIDEWAYS = 0.3;

export interface Reopening {
  readonly least: Least;
  /** A cost at which there is nothing left to find. */
  readonly enough: number;
  readonly solver: IntegerSolver | null;
  readonly chance: Chance;
  readonly clock: () => number;
  readonly timeIsUp: () => boolean;
  readonly found: (plan: Judged) => void;
}

/**
 * Frees some sheets of a plan, those that lose most before others, and plans their pieces anew as a
 * job of their own: columns, an integer programme over all layouts that are known, ruin and recreate.
 * What costs less stays, now and then what costs the same. It ends when the cost is `enough`, when many
 * groups in a row have brought nothing, or when the time is up. Every cheaper plan is handed to `found`.
 */
export function reopened(whole: WholeJob, mixture: Mixture, start: Judged, work: Reopening): void {
  let plan = start;
  let best = start;
  let size = FIRST_SIZE;
  const quiet = 40 + 6 * start.layouts.length;
  for (let turn = 0, last = 0; turn - last < quiet && best.cost > work.enough && !work.timeIsUp(); turn++) {
    const patterns = plan.layouts.map((layout) => patternOf(layout, whole.kinds.length));
    const sheets = Math.max(3, Math.floor(size * (0.6 + 0.8 * work.chance.next())));
    const group = groupOf(patterns, mixture, sheets, work.chance);
    const begun = work.clock();
    const freed = plan.layouts.filter((_, index) => group.has(index));
    const after = anew(without(whole, patterns, group), mixture, freed, work);
    size = Math.min(whole.kinds.length + FIRST_SIZE, size * (work.clock() - begun > SOLVING ? 0.85 : 1.05));
    if (after === null) continue;
    const others = plan.layouts.filter((_, index) => !group.has(index));
    plan = judged(whole, work.least, { layouts: [...others, ...after.layouts], placed: plan.placed });
    for (const layout of after.layouts) mixture.add(patternOf(layout, whole.kinds.length));
    if (compareJudged(plan, best) >= 0) continue;
    if (plan.cost < best.cost - 1e-6) last = turn;
    best = plan;
    work.found(best);
  }
}

/** The pieces of some sheets planned anew; null where that brings nothing. */
function anew(
  rest: WholeJob,
  mixture: Mixture,
  layouts: Judged["layouts"],
  { solver, chance, clock, timeIsUp }: Reopening,
): Judged | null {
  const placed = Int32Array.from(rest.kinds, ({ count }) => count);
  const before = judged(rest, null, { layouts, placed });
  const patterns = layouts.map((layout) => patternOf(layout, rest.kinds.length));
  const pricing = pricingFor(rest);
  if (pricing !== null) {
    // A layout that loses more than these sheets together is in no better plan.
    const most = patterns.reduce((sum, one) => sum + mixture.loss(one), 1e-6);
    const known = mixture.layouts
      .filter((one) => one !== null)
      .filter(({ kinds }) => kinds.every((kind) => at(rest.kinds, kind).count > 0))
      .filter((one) => mixture.loss(one) <= most);
    const own = new Mixture(rest, pricing, [...patterns, ...known]);
    own.price(ROUNDS, timeIsUp);
    if (nextSum(pricesFor(rest), own.bound) >= before.cost - 1e-6) return null;
    if (solver !== null) {
      const sideways = chance.next() < SIDEWAYS;
      const until = clock() + SOLVING;
      const below = sideways ? before.cost * (1 + 1e-9) + 1e-6 : before.cost - 1e-6;
      const solved = own.solved(solver, below, sideways ? [] : patterns, () => timeIsUp() || clock() > until);
      if (solved !== null) return judged(rest, null, cheapened(rest, withoutSurplus(rest, solved)));
    }
  }
  if (placed.reduce((sum, count) => sum + count, 0) > MOST_PIECES) return null;
  const after = improved(rest, null, before, { enough: 0, quiet: STEPS, chance, timeIsUp });
  return after.cost < before.cost - 1e-6 ? after : null;
}

const pricesFor = ({ stocks, kinds }: WholeJob): number[] =>
  stocks
    .filter((stock) => stock.copies > 0 && kinds.some((kind) => kind.count > 0 && fitsAtAll(kind, stock)))
    .map((stock) => stock.cost);

/** Places of sheets in the plan: of three picked by chance the one that loses most, or any. */
function groupOf(patterns: readonly Pattern[], mixture: Mixture, size: number, chance: Chance): Set<number> {
  const losses = patterns.map((one) => mixture.loss(one));
  const group = new Set<number>();
  for (let tries = 0; tries < 10 * size && group.size < Math.min(size, patterns.length); tries++) {
    const three = Array.from({ length: tries % 3 === 2 ? 1 : 3 }, () => chance.below(patterns.length));
    group.add(three.reduce((most, one) => (at(losses, one) > at(losses, most) ? one : most)));
  }
  return group;
}

/** The job of the group alone: its pieces, and the copies that the other sheets leave. */
function without(whole: WholeJob, patterns: readonly Pattern[], group: ReadonlySet<number>): WholeJob {
  const counts = new Int32Array(whole.kinds.length);
  const used = new Int32Array(whole.stocks.length);
  patterns.forEach(({ stock, kinds, counts: own }, index) => {
    if (group.has(index)) kinds.forEach((kind, k) => (counts[kind] = at(counts, kind) + at(own, k)));
    else used[stock] = at(used, stock) + 1;
  });
  return {
    ...whole,
    kinds: whole.kinds.map((kind, index) => ({ ...kind, count: at(counts, index) })),
    stocks: whole.stocks.map((stock, index) => ({ ...stock, copies: stock.copies - at(used, index) })),
  };
}
