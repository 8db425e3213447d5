import { at } from "../at.ts";
import { patternOf } from "./patterns.ts";
import type { Pattern, WholeChopping } from "./whole.ts";

/** The most sums that are kept at a time; past it those of nearly equal worth are thinned out. */
const MOST_SUMS = 60_000;

/** What is better by less comes of rounding. */
const HAIR = 1e-12;

/** What one length of each stock can hold at most. */
export interface Priced {
  /** By stock; no pattern is worth more. */
  readonly worth: Float64Array;
  /** By stock; null where nothing of worth fits. */
  readonly patterns: readonly (Pattern | null)[];
}

/** Sums that can be reached, ever longer and ever worth more. */
interface Front {
  readonly sums: Float64Array;
  readonly worths: Float64Array;
  /** The last step to each sum, in the ledger of steps. */
  readonly steps: Int32Array;
  size: number;
}

/**
 * The pattern worth most on one length of each stock: a knapsack with so many of each kind as are
 * wanted, solved for all stocks at once by the list of all sums that no shorter one outdoes
 * (Nemhauser and Ullmann 1969). Kinds come in by worth for their length, and a sum is dropped when
 * filling it up at the next kind's rate beats no stock's best (as in Martello and Toth 1990). Exact
 * up to `MOST_SUMS` sums; past it a slack is added to `worth`, so that a bound stays a bound.
 */
export class Pricing {
  private readonly weights: Float64Array;
  private front: Front = frontOf(1024);
  private next: Front = frontOf(1024);
  private readonly ledger = new Ledger();

  constructor(whole: Pick<WholeChopping, "kinds">) {
    this.weights = Float64Array.from(whole.kinds, ({ weight }) => weight);
  }

  /** Values each kind, none below nought; at most `limits` of each in a pattern. */
  best(stocks: WholeChopping["stocks"], values: ArrayLike<number>, limits: ArrayLike<number>): Priced {
    const { weights } = this;
    const open = stocks.flatMap(({ copies }, index) => (copies > 0 ? [index] : []));
    const capacities = open.map((stock) => at(stocks, stock).capacity);
    const longest = capacities.reduce((most, capacity) => Math.max(most, capacity), 0);
    const rate = (kind: number): number => at(values, kind) / at(weights, kind);
    const order = Array.from(weights, (_, kind) => kind)
      .filter((kind) => at(values, kind) > 0 && at(limits, kind) > 0 && at(weights, kind) <= longest)
      .toSorted((a, b) => rate(b) - rate(a) || a - b);
    const held = capacities.map((capacity) => this.filled(order, values, limits, capacity));
    const slack = this.build(order, values, limits, held);
    const worth = new Float64Array(stocks.length);
    const patterns: (Pattern | null)[] = stocks.map(() => null);
    open.forEach((stock, index) => {
      const best = at(held, index);
      worth[stock] = best.worth + slack;
      if (best.worth > 0) patterns[stock] = patternOf(stock, best.counts ?? this.counts(best.step));
    });
    return { worth, patterns };
  }

  /** The best by rate alone. */
  private filled(
    order: readonly number[],
    values: ArrayLike<number>,
    limits: ArrayLike<number>,
    capacity: number,
  ): Held {
    const counts = new Int32Array(this.weights.length);
    let room = capacity;
    let worth = 0;
    for (const kind of order) {
      const weight = at(this.weights, kind);
      const count = Math.min(at(limits, kind), Math.floor(room / weight));
      counts[kind] = count;
      room -= count * weight;
      worth += count * at(values, kind);
    }
    return { capacity, worth, counts, step: -1 };
  }

  /** Betters what is held by all that can be reached; gives the slack by which it may be short of the truth. */
  private build(
    order: readonly number[],
    values: ArrayLike<number>,
    limits: ArrayLike<number>,
    held: readonly Held[],
  ): number {
    const longest = held.reduce((most, { capacity }) => Math.max(most, capacity), 0);
    const { weights, ledger } = this;
    const rates = order.map((kind) => at(values, kind) / at(weights, kind));
    const shortest = order.map((kind) => at(weights, kind));
    for (let place = order.length - 2; place >= 0; place--)
      shortest[place] = Math.min(at(shortest, place), at(shortest, place + 1));
    ledger.size = 0;
    this.front.sums[0] = 0;
    this.front.worths[0] = 0;
    this.front.steps[0] = -1;
    this.front.size = 1;
    let slack = 0;
    for (let place = 0; place < order.length && this.front.size > 0; place++) {
      const kind = at(order, place);
      const weight = at(weights, kind);
      let left = Math.min(at(limits, kind), Math.floor(longest / weight));
      for (let copies = 1; left > 0 && this.front.size > 0; copies *= 2) {
        const now = Math.min(copies, left);
        left -= now;
        this.merge(kind, now, now * weight, now * at(values, kind), longest);
        for (const one of held) this.better(one);
        // Further copies of this kind, then kinds of no better rate.
        const next = left > 0 ? place : place + 1;
        if (next === order.length) return slack;
        this.prune(at(rates, next), longest - at(shortest, next), held);
        if (this.front.size > MOST_SUMS) slack += this.thin();
      }
    }
    return slack;
  }

  /** Takes what the front has for a stock, where it is better than what is held. */
  private better(held: Held): void {
    const { sums, worths, steps } = this.front;
    const end = this.lastWithin(held.capacity);
    if (at(sums, end) > held.capacity || at(worths, end) <= held.worth) return;
    held.worth = at(worths, end);
    held.counts = null;
    held.step = at(steps, end);
  }

  /** Drops the sums to which nothing can be added, and those that no filling up at this rate makes better than what is held. */
  private prune(rate: number, longest: number, held: readonly Held[]): void {
    const { front } = this;
    const { sums, worths, steps } = front;
    let least = Number.POSITIVE_INFINITY;
    for (const { worth, capacity } of held) least = Math.min(least, worth - rate * capacity);
    least += HAIR * Math.abs(least);
    let count = 0;
    for (let index = 0; index < front.size; index++) {
      const sum = sums[index] as number;
      if (sum > longest) break;
      const worth = worths[index] as number;
      if (worth - rate * sum <= least) continue;
      sums[count] = sum;
      worths[count] = worth;
      steps[count] = steps[index] as number;
      count++;
    }
    front.size = count;
  }

  /** Every sum of the front without and with so many more of a kind. */
  private merge(kind: number, copies: number, weight: number, value: number, longest: number): void {
    const { front, ledger } = this;
    if (this.next.sums.length < 2 * front.size + 2) this.next = frontOf(4 * front.size + 4);
    const { next } = this;
    const { sums, worths, steps, size } = front;
    ledger.room(size);
    let count = 0;
    let best = -1;
    let added = 0;
    let without = 0;
    while (without < size || added < size) {
      const plain = without < size ? (sums[without] as number) : Number.POSITIVE_INFINITY;
      const more = added < size ? (sums[added] as number) + weight : Number.POSITIVE_INFINITY;
      const isPlain =
        plain < more || (plain === more && (worths[without] as number) >= (worths[added] as number) + value);
      const sum = isPlain ? plain : more;
      if (sum > longest) break;
      const worth = isPlain ? (worths[without] as number) : (worths[added] as number) + value;
      if (worth > best) {
        best = worth;
        next.sums[count] = sum;
        next.worths[count] = worth;
        next.steps[count] = isPlain
          ? (steps[without] as number)
          : ledger.add(kind, copies, steps[added] as number);
        count++;
      }
      if (isPlain) without++;
      else added++;
    }
    next.size = count;
    this.front = next;
    this.next = front;
  }

  /** Drops sums that are worth next to nothing more than a shorter one; gives that next to nothing. */
  private thin(): number {
    const { front } = this;
    const grain = (2 * at(front.worths, front.size - 1)) / MOST_SUMS;
    let count = 1;
    for (let index = 1; index < front.size; index++) {
      if (at(front.worths, index) < at(front.worths, count - 1) + grain) continue;
      front.sums[count] = at(front.sums, index);
      front.worths[count] = at(front.worths, index);
      front.steps[count] = at(front.steps, index);
      count++;
    }
    front.size = count;
    return grain;
  }

  /** The place of the longest sum within a capacity. */
  private lastWithin(capacity: number): number {
    const { sums, size } = this.front;
    let [low, high] = [0, size - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (at(sums, middle) <= capacity) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  /** How many of each kind the steps to a sum make. */
  private counts(step: number): Int32Array {
    const counts = new Int32Array(this.weights.length);
    this.ledger.walk(step, (kind, copies) => {
      counts[kind] = at(counts, kind) + copies;
    });
    return counts;
  }
}

/** The best that is known for one stock: so many of each kind, or the last step to it. */
interface Held {
  readonly capacity: number;
  worth: number;
  counts: Int32Array | null;
  step: number;
}

const frontOf = (room: number): Front => ({
  sums: new Float64Array(room),
  worths: new Float64Array(room),
  steps: new Int32Array(room),
  size: 0,
});

/** Steps from sum to sum, each with the one before it. */
class Ledger {
  size = 0;
  private kinds = new Int32Array(1 << 14);
  private copies = new Int32Array(1 << 14);
  private before = new Int32Array(1 << 14);

  /** Makes room for so many more steps. */
  room(more: number): void {
    if (this.size + more <= this.kinds.length) return;
    const grown = (old: Int32Array): Int32Array<ArrayBuffer> => {
      const larger = new Int32Array(2 * (this.size + more));
      larger.set(old);
      return larger;
    };
    this.kinds = grown(this.kinds);
    this.copies = grown(this.copies);
    this.before = grown(this.before);
  }

  add(kind: number, copies: number, before: number): number {
    this.kinds[this.size] = kind;
    this.copies[this.size] = copies;
    this.before[this.size] = before;
    return this.size++;
  }

  walk(from: number, step: (kind: number, copies: number) => void): void {
    for (let place = from; place >= 0; place = at(this.before, place))
      step(at(this.kinds, place), at(this.copies, place));
  }
}
