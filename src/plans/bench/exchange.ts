import { at } from "../at.ts";
import { Chance } from "../chance.ts";
import type { Kinds } from "./kinds.ts";

/** How many steps back an order is compared with (late acceptance, Burke and Bykov 2017). */
const LATE = 60;
/** Part of the exchanges that bring in a figure that is still wanted at the end, instead of moving one. */
const WANTED = 0.5;

/**
 * A shorter order by exchange: one run is taken out, then a run moved or put in the place of another again
 * and again until nothing is left uncut, and so on, in at most `steps` exchanges, or until the order has
 * `enough` runs. The same order, or a shorter one; the same input gives the same.
 */
export function exchanged(kinds: Kinds, start: readonly number[], enough: number, steps: number): number[] {
  const bench = new Rehearsal(kinds);
  const chance = new Chance(1);
  let best = bench.withoutIdle(start);
  let path = Int32Array.from(best);
  let left = 0;
  const late = new Int32Array(LATE);
  for (let step = 0; step < steps && best.length > enough; step++) {
    if (left === 0) {
      best = bench.withoutIdle(path);
      if (best.length <= enough) break;
      const out = chance.below(best.length);
      path = Int32Array.from(best.filter((_, place) => place !== out));
      left = bench.leftBy(path);
      late.fill(left);
      continue;
    }
    const from = chance.below(path.length);
    const to = chance.below(path.length);
    const before = at(path, from);
    const figure = chance.next() < WANTED ? bench.wantedFigure(path, chance) : before;
    moved(path, from, to, figure);
    const now = bench.leftBy(path);
    const slot = step % LATE;
    if (now <= left || now <= at(late, slot)) left = now;
    else moved(path, to, from, before);
    late[slot] = Math.min(at(late, slot), left);
  }
  return best;
}

/** Takes the run at one place out and puts a figure in at another. */
function moved(path: Int32Array, from: number, to: number, figure: number): void {
  if (from < to) path.copyWithin(from, from + 1, to + 1);
  else path.copyWithin(to + 1, to, from);
  path[to] = figure;
}

/** Cuts a batch by an order of figures, and tells what is left. */
class Rehearsal {
  private readonly kinds: Kinds;
  private readonly all: Uint16Array;
  private readonly waits: Int32Array;
  private readonly left: Uint16Array;
  private readonly waiting: Int32Array;
  private readonly cuts: number;
  /** For each figure, beside the kinds that have it, its bit in each. */
  private readonly bits: readonly Uint16Array[];

  constructor(kinds: Kinds) {
    this.kinds = kinds;
    this.all = Uint16Array.from(kinds.own, (places) => 2 ** places.length - 1);
    this.waits = Int32Array.from(kinds.after, (others) => others.length);
    this.left = this.all.slice();
    this.waiting = this.waits.slice();
    this.bits = kinds.having.map((having, figure) =>
      Uint16Array.from(having, (kind) => 1 << at(kinds.own, kind).indexOf(figure)),
    );
    this.cuts = kinds.own.reduce((sum, places) => sum + places.length, 0);
  }

  /** How many cuts an order leaves. */
  leftBy(path: ArrayLike<number>): number {
    this.begin();
    let left = this.cuts;
    for (let run = 0; run < path.length; run++) left -= this.run(path[run] as number);
    return left;
  }

  /** A figure that the last order left uncut somewhere. */
  wantedFigure(path: Int32Array, chance: Chance): number {
    const from = chance.below(this.left.length);
    for (let step = 0; step < this.left.length; step++) {
      const kind = (from + step) % this.left.length;
      if (this.left[kind] === 0 || this.waiting[kind] !== 0) continue;
      const wanted = at(this.kinds.own, kind).filter(
        (_, place) => (((this.left[kind] as number) >>> place) & 1) === 1,
      );
      return at(wanted, chance.below(wanted.length));
    }
    return at(path, chance.below(path.length));
  }

  /** The runs of an order at which something is cut. */
  withoutIdle(path: ArrayLike<number>): number[] {
    this.begin();
    return Array.from(path).filter((figure) => this.run(figure) > 0);
  }

  private begin(): void {
    this.left.set(this.all);
    this.waiting.set(this.waits);
  }

  /** Cuts what can be cut at a figure, what comes free on the way included; gives how many cuts. */
  private run(figure: number): number {
    const { left, waiting } = this;
    const having = at(this.kinds.having, figure);
    const bits = at(this.bits, figure);
    let cuts = 0;
    for (let place = 0; place < having.length; place++) {
      const kind = having[place] as number;
      const bit = bits[place] as number;
      if (waiting[kind] !== 0 || ((left[kind] as number) & bit) === 0) continue;
      const freed = [kind];
      for (let one = freed.pop(); one !== undefined; one = freed.pop()) {
        cuts++;
        this.cut(one, figure, freed);
      }
    }
    return cuts;
  }

  /** Cuts one kind, and adds to `freed` what comes free by it and has the figure too. */
  private cut(kind: number, figure: number, freed: number[]): void {
    const { left, waiting } = this;
    const { own, next } = this.kinds;
    left[kind] = (left[kind] as number) & ~(1 << at(own, kind).indexOf(figure));
    if (left[kind] !== 0) return;
    for (const follower of at(next, kind)) {
      waiting[follower] = (waiting[follower] as number) - 1;
      if (waiting[follower] === 0 && at(own, follower).includes(figure)) freed.push(follower);
    }
  }
}
