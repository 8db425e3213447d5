import { at } from "../at.ts";
import type { WholeJob } from "./whole.ts";

/** The most inequalities that are kept, and the most numbers of sheets that are looked at for one answer. */
const MOST_KEPT = 400;
const MOST_LOOKS = 30_000;
/** Of more kinds of bought sheets the numbers are not looked through. */
const MOST_BOUGHT = 4;

/** What the bought sheets have to be worth together, whatever the plan. */
interface Inequality {
  /** Of one sheet of each bought stock. */
  readonly worth: Float64Array;
  readonly needed: number;
}

/**
 * How many sheets of each stock a plan needs at least, in whole numbers. For any values of the kinds no
 * sheet holds more than its worth, so the worths of a plan's sheets add up to the value of the demand
 * at least; whatever numbers of sheets keep every such inequality that is known, the cheapest cost no
 * more than any plan. Sheets that cost nothing are all taken.
 */
export class SheetCounts {
  private readonly job: WholeJob;
  /** The stocks that cost something, the dearest first. */
  private readonly bought: readonly number[];
  private readonly known: Inequality[] = [];

  constructor(job: WholeJob) {
    this.job = job;
    this.bought = job.stocks
      .flatMap(({ cost, copies }, stock) => (cost > 0 && copies > 0 ? [stock] : []))
      .toSorted((a, b) => at(job.stocks, b).cost - at(job.stocks, a).cost);
  }

  /** Whether numbers can be looked through, and say more than a sum that is rounded up: not of one kind of sheet. */
  get serve(): boolean {
    return this.bought.length > 1 && this.bought.length <= MOST_BOUGHT;
  }

  /** Takes in what one sheet of each stock can be worth at most for some values of the kinds. */
  learn(values: ArrayLike<number>, worth: ArrayLike<number>): void {
    if (!this.serve) return;
    const { kinds, stocks } = this.job;
    // A hair off for the rounding of the sums, so that it never claims more than is true.
    let needed = (1 - 1e-9) * kinds.reduce((sum, { count }, kind) => sum + count * at(values, kind), 0);
    stocks.forEach(({ cost, copies }, stock) => {
      if (cost === 0 && copies > 0) needed -= copies * at(worth, stock);
    });
    if (!(needed > 0)) return;
    if (this.known.length === MOST_KEPT) this.known.shift();
    this.known.push({ worth: Float64Array.from(this.bought, (stock) => at(worth, stock)), needed });
  }

  /** Whether numbers of sheets, by stock, keep every inequality that is known. */
  allows(copies: readonly number[]): boolean {
    return this.known.every(({ worth, needed }) => {
      const sum = this.bought.reduce((all, stock, place) => {
        const number = at(copies, stock);
        return number > 0 ? all + number * at(worth, place) : all;
      }, 0);
      return sum >= needed;
    });
  }

  /** The cheapest numbers of sheets, by stock, that keep every inequality and cost less than `below`; null: there are none. */
  cheapest(below: number): SheetNumbers | null {
    const search: Looking = { below, found: null, looks: 0, numbers: this.bought.map(() => 0) };
    const needed = Float64Array.from(this.known, (one) => one.needed);
    this.look(0, 0, needed, search);
    // Nothing is claimed of what was not looked through.
    if (search.looks > MOST_LOOKS) return { cost: 0, copies: this.job.stocks.map(({ copies }) => copies) };
    if (search.found === null) return null;
    const { found } = search;
    const copies = this.job.stocks.map((stock) => (stock.cost > 0 ? 0 : stock.copies));
    this.bought.forEach((stock, place) => (copies[stock] = at(found, place)));
    return { cost: search.below, copies };
  }

  /** Tries every number of sheets of the stock at `place` and those after it. */
  private look(place: number, spent: number, needed: Float64Array, search: Looking): void {
    if (spent >= search.below * (1 - 1e-12) || ++search.looks > MOST_LOOKS) return;
    if (needed.every((one) => one <= 0)) {
      search.below = spent;
      search.found = search.numbers.map((number, index) => (index < place ? number : 0));
      return;
    }
    if (place === this.bought.length || spent + this.leastMore(place, needed) >= search.below * (1 - 1e-12))
      return;
    const { cost, copies } = at(this.job.stocks, at(this.bought, place));
    const last = place === this.bought.length - 1;
    const first = last ? this.least(place, needed) : 0;
    for (let number = first; number <= copies && spent + number * cost < search.below; number++) {
      search.numbers[place] = number;
      const rest = needed.map((one, k) => one - number * at(at(this.known, k).worth, place));
      this.look(place + 1, spent + number * cost, rest, search);
      if (last || search.looks > MOST_LOOKS) return;
    }
  }

  /** How many of the stock at a place keep every inequality by themselves. */
  private least(place: number, needed: Float64Array): number {
    let most = 0;
    needed.forEach((one, k) => {
      if (one > 0) most = Math.max(most, Math.ceil(one / at(at(this.known, k).worth, place)));
    });
    return most;
  }

  /** No less than this is spent on the stocks from a place on, sheets taken in parts. */
  private leastMore(place: number, needed: Float64Array): number {
    let most = 0;
    needed.forEach((one, k) => {
      if (one <= 0) return;
      const { worth } = at(this.known, k);
      let least = Number.POSITIVE_INFINITY;
      for (let index = place; index < worth.length; index++)
        least = Math.min(least, at(this.job.stocks, at(this.bought, index)).cost / at(worth, index));
      most = Math.max(most, one * least);
    });
    return most;
  }
}

export interface SheetNumbers {
  readonly cost: number;
  /** For each stock; those that cost nothing as many as there are. */
  readonly copies: readonly number[];
}

interface Looking {
  below: number;
  found: readonly number[] | null;
  looks: number;
  readonly numbers: number[];
}
