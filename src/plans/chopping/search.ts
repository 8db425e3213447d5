import type { FrameGroup, Shared } from "./assemble.ts";
import { at } from "../at.ts";
import type { Chance } from "../chance.ts";
import { nextSum } from "../cutting/money.ts";
import { boundByPricing, type ChoppingLimits, mixtureOf } from "./columns.ts";
import { dived } from "./dive.ts";
import { cheapestOfFew } from "./exact.ts";
import { decreasing } from "./first.ts";
import { swapped } from "./improve.ts";
import { compareRough, type RoughChopping } from "./patterns.ts";
import type { ChoppingBound } from "./plan.ts";
import { Pricing } from "./pricing.ts";
import { type ChoppingWork, sequential } from "./sequential.ts";
import { remaindersTogether } from "./remainder.ts";
import { framesTogether } from "./together.ts";
import type { WholeChopping } from "./whole.ts";

/** The first turns of filling length by length, before there is a mixture. */
const FIRST_TURNS = 4;
/** Dives that differ, until no more is hoped for. */
const DIVES = 60;

/** Groups of lengths without gain after which swaps end, before there is a mixture and at last. */
const FIRST_SWAPS = 30;
const LAST_SWAPS = 300;
/** More kinds are not mixed: the mixture would take minutes, and so many lengths fill up without it. */
const MOST_KINDS = 1000;

export interface Chopped {
  readonly shared: Shared;
  readonly bound: ChoppingBound;
}

/**
 * The best plan there is time for: quick ones first, then columns for bound and plan, dives, swaps.
 * Of plans alike in price then one with more frames whole on one length and a longer remainder.
 * `timeLeft` in milliseconds.
 */
export function chopped(
  whole: WholeChopping,
  groups: readonly FrameGroup[],
  chance: Chance,
  timeLeft: () => number,
): Chopped {
  const pricing = new Pricing(whole);
  let best = decreasing(whole, "best");
  let limits = boundByPricing(
    whole,
    pricing,
    whole.kinds.map(({ weight }) => weight),
  ).bound;
  let how: ChoppingBound["how"] = limits.cost > 0 ? "length" : "none";
  let least = leastPrice(whole, limits);
  const timeIsUp = (): boolean => timeLeft() <= 0;
  const enough = (price: number): boolean => price <= least * (1 + 1e-9);
  const work: ChoppingWork = { pricing, chance, enough, timeIsUp };
  const done = (): boolean => timeIsUp() || (best.missing === 0 && enough(best.price));
  const take = (plan: RoughChopping): void => {
    if (compareRough(plan, best) < 0) best = plan;
  };
  if (!done()) take(sequential(whole, 0, FIRST_TURNS, work));
  if (!done()) take(swapped(whole, best, FIRST_SWAPS, work));
  if (!done() && whole.kinds.length <= MOST_KINDS) {
    const half = timeLeft() / 2;
    const settled = (bound: ChoppingLimits, mixed: number): boolean =>
      mixed < bound.price + dearest(whole) && leastPrice(whole, bound) >= mixed;
    const mixture = mixtureOf(whole, pricing, best.bars, settled, () => timeLeft() <= half);
    if (mixture.bound.cost > limits.cost) how = "patterns";
    limits = {
      price: Math.max(limits.price, mixture.bound.price),
      cost: Math.max(limits.cost, mixture.bound.cost),
    };
    least = leastPrice(whole, limits);
    for (let dive = 0; dive < DIVES && !done(); dive++)
      take(dived(whole, mixture, best, 0.5 * Math.min(1, dive / 4), work));
  }
  const few = done() ? null : cheapestOfFew(whole);
  if (few !== null) {
    take(few);
    const cost = costOfBars(whole, few);
    limits = { price: few.price, cost };
    how = "every";
  } else if (!done()) take(swapped(whole, best, LAST_SWAPS, work));
  const together = framesTogether(whole, groups, best.bars, chance, timeIsUp);
  return {
    shared: remaindersTogether(whole, together, pricing, timeIsUp),
    bound: { cost: limits.cost, how },
  };
}

const costOfBars = ({ stocks }: WholeChopping, { bars }: RoughChopping): number =>
  bars.reduce((sum, { stock }) => sum + at(stocks, stock).cost, 0);

const dearest = ({ stocks }: WholeChopping): number =>
  stocks.reduce((most, { price }) => Math.max(most, price), 0);

/** The least cost that lengths can add up to, no less than the bound. */
export const leastCost = ({ stocks }: WholeChopping, bound: number): number =>
  nextSum(
    stocks.filter(({ copies }) => copies > 0).map(({ cost }) => cost),
    bound,
  );

/** The same in the planner's prices: at that cost, so many lengths at least. */
function leastPrice(whole: WholeChopping, { price, cost }: ChoppingLimits): number {
  const least = leastCost(whole, cost);
  const [first] = whole.stocks;
  const hair = first === undefined ? 0 : first.price - first.cost;
  return hair <= 0 ? least : least + hair * Math.max(0, Math.ceil((price - least) / hair - 1e-6));
}
