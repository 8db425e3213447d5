import type { Chance } from "./chance.ts";
import { AXIS, FIRST, FREE, H, type Memory, ROOT, STOCK, W } from "./memory.ts";
import { mayLieIn, type WholeJob } from "./whole.ts";

/** As a further child: the piece fills the waste rectangle's other side exactly. */
export const BESIDE = 0;
/** In a strip of its own, cut off along the node's axis; the rest of the strip is waste. */
export const STRIP = 1;
/** The whole waste rectangle is split the other way first, then the piece cut from that shelf. */
const SHELF = 2;

/** A place for a piece: found by `seek`, taken by the forest's `insert`. */
export interface Place {
  node: number;
  how: number;
  /** Turned by a quarter against the kind's own width and height. */
  turned: boolean;
  /** The (empty) root's axis has to change first. */
  flipped: boolean;
  /** Higher is better. */
  score: number;
  /** How many places there were. */
  count: number;
}

export const noPlace = (): Place => ({
  node: -1,
  how: BESIDE,
  turned: false,
  flipped: false,
  score: Number.NEGATIVE_INFINITY,
  count: 0,
});

/**
 * What makes one place better than another.
 * "squares": the change in the sum of squared waste areas; one large remainder beats two small ones.
 * "tight": the smallest waste rectangle that takes the piece. "side": the closest side.
 */
export type Preference = "squares" | "tight" | "side";

/** Places passed over by chance: a share of all. */
export interface Skips {
  readonly chance: Chance;
  readonly share: number;
}

/** Looks for places in a forest's waste. */
export class Seeker {
  private readonly job: WholeJob;
  private readonly memory: Memory;
  private readonly allowed: Uint8Array;
  /** Whether any stock has a longest cut: spares the test in the commonest case. */
  private readonly limited: boolean;

  private readonly skips: Skips | null;
  /** How many places are looked at before one is passed over. */
  private untilSkip = Number.POSITIVE_INFINITY;

  constructor(job: WholeJob, memory: Memory, skips: Skips | null) {
    this.job = job;
    this.skips = skips;
    if (skips !== null) this.untilSkip = this.drawn(skips);
    this.memory = memory;
    this.allowed = new Uint8Array(job.kinds.length * job.stocks.length);
    job.kinds.forEach((kind, k) => {
      job.stocks.forEach((stock, s) => {
        this.allowed[k * job.stocks.length + s] = mayLieIn(kind, stock) ? 1 : 0;
      });
    });
    this.limited = job.stocks.some((stock) => stock.longestCut !== Number.POSITIVE_INFINITY);
  }

  private drawn({ chance, share }: Skips): number {
    return Math.ceil(Math.log(1 - chance.next()) / Math.log(1 - share));
  }

  /** The best place for a kind among the waste of all open sheets (or of one, `only`); false when there is none. */
  seek(kind: number, preference: Preference, place: Place, only = -1): boolean {
    const { m, wasteBase, wasteCount } = this.memory;
    const wanted = this.job.kinds[kind];
    if (wanted === undefined) throw new RangeError(`no kind ${kind}`);
    const allowedAt = kind * this.job.stocks.length;
    const { width: kw, height: kh, turns } = wanted;
    const least = kw < kh ? kw : kh;
    place.score = Number.NEGATIVE_INFINITY;
    place.count = 0;
    for (let index = 0; index < wasteCount; index++) {
      const node = m[wasteBase + index] as number;
      const free = m[node + FREE] as number;
      if (free < least) continue;
      const root = m[node + ROOT] as number;
      if (only >= 0 && root !== only) continue;
      if (this.allowed[allowedAt + (m[root + STOCK] as number)] === 0) continue;
      const upright = m[node + AXIS] === 1;
      const cross = m[node + (upright ? W : H)] as number;
      if (cross < least) continue;
      const p = upright ? kh : kw;
      const q = upright ? kw : kh;
      this.weigh(node, free, cross, p, q, false, false, preference, place);
      if (turns) this.weigh(node, free, cross, q, p, true, false, preference, place);
      if (node === root && (m[node + FIRST] as number) < 0) {
        this.weigh(node, cross, free, q, p, false, true, preference, place);
        if (turns) this.weigh(node, cross, free, p, q, true, true, preference, place);
      }
    }
    if (place.count > 0 && place.score === Number.NEGATIVE_INFINITY && this.skips !== null) {
      // What fits is not left outside because all its places were passed over.
      this.untilSkip = Number.POSITIVE_INFINITY;
      this.seek(kind, preference, place, only);
      this.untilSkip = this.drawn(this.skips);
    }
    return place.count > 0;
  }

  /** Weighs the ways a piece, p along the axis and q across it, goes into a waste rectangle of f by c. */
  private weigh(
    node: number,
    f: number,
    c: number,
    p: number,
    q: number,
    turned: boolean,
    flipped: boolean,
    preference: Preference,
    place: Place,
  ): void {
    if (p > f || q > c) return;
    if (q === c) {
      this.offer(node, f, c, p, q, BESIDE, turned, flipped, preference, place);
      return;
    }
    this.offer(node, f, c, p, q, STRIP, turned, flipped, preference, place);
    // On an empty root the shelf is the strip of the other axis, which is weighed by itself.
    if (p < f && (this.memory.m[node + FIRST] as number) >= 0) {
      this.offer(node, f, c, p, q, SHELF, turned, flipped, preference, place);
    }
  }

  private offer(
    node: number,
    f: number,
    c: number,
    p: number,
    q: number,
    how: number,
    turned: boolean,
    flipped: boolean,
    preference: Preference,
    place: Place,
  ): void {
    if (this.limited && !this.cuttable(node, f, c, p, q, how)) return;
    place.count++;
    if (--this.untilSkip <= 0 && this.skips !== null) {
      this.untilSkip = this.drawn(this.skips);
      return;
    }
    const score = scored(f, c, p, q, how, preference);
    if (score <= place.score) return;
    place.node = node;
    place.how = how;
    place.turned = turned;
    place.flipped = flipped;
    place.score = score;
  }

  /** Whether every cut that the place asks for is within the bench's longest. */
  private cuttable(node: number, f: number, c: number, p: number, q: number, how: number): boolean {
    const { m } = this.memory;
    const stock = this.job.stocks[m[(m[node + ROOT] as number) + STOCK] as number];
    if (stock === undefined) throw new RangeError("a root without a stock");
    const { longestCut, trimmed } = stock;
    if (trimmed && (p > longestCut || q > longestCut)) return false;
    if ((p < f || (m[node + FIRST] as number) >= 0) && c > longestCut) return false;
    if (how === STRIP) return p <= longestCut;
    return how !== SHELF || (f <= longestCut && q <= longestCut);
  }
}

/** How good a place is: higher is better. The piece is p by q, the waste rectangle f by c. */
function scored(f: number, c: number, p: number, q: number, how: number, preference: Preference): number {
  const one = how === SHELF ? f * (c - q) : p * (c - q);
  const two = how === SHELF ? (f - p) * q : (f - p) * c;
  switch (preference) {
    case "squares":
      return one * one + two * two - f * c * (f * c);
    case "tight":
      return (one > two ? one : two) * 1e-6 - f * c;
    case "side":
      return (one > two ? one : two) / (f * c) - (f - p < c - q ? f - p : c - q);
  }
}
