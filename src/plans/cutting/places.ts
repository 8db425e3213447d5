import type { Chance } from "../chance.ts";
import {
  AXIS,
  FIRST,
  FIRST_WASTE,
  FREE,
  H,
  type Memory,
  NEXT_WASTE,
  ROOT,
  SLOT,
  STAMP,
  STOCK,
  W,
} from "./memory.ts";
import { Rooms } from "./rooms.ts";
import { BESIDE, type Preference, scored, SHELF, STRIP } from "./scoring.ts";
import { mayLieIn, type WholeJob } from "./whole.ts";

// Where a place is, beside its node: how, and these.
const HOW = 3;
/** Turned by a quarter against the kind's own width and height. */
export const TURNED = 4;
/** The (empty) root's axis has to change first. */
export const FLIPPED = 8;

export const howOf = (way: number): number => way & HOW;

/**
 * Looks for places in a forest's waste, and remembers for each kind and sheet how many there are and
 * which is best, until the sheet changes.
 */
export class Seeker {
  /** The best place that the last look found. */
  node = -1;
  way = 0;
  /** How many there were. */
  count = 0;

  private readonly job: WholeJob;
  private readonly memory: Memory;
  private readonly preference: Preference;
  private readonly allowed: Uint8Array;
  /** Whether any stock has a longest cut: spares the test in the commonest case. */
  private readonly limited: boolean;
  private readonly widths: Int32Array;
  private readonly heights: Int32Array;
  private readonly turns: Uint8Array;

  /** For each kind and slot, where the row of a kind begins at `rowAt`: the sheet's stamp when it was looked at, and what was found. */
  private readonly rowAt: Int32Array;
  private readonly stamps: Int32Array;
  private readonly counts: Int32Array;
  private readonly nodes: Int32Array;
  private readonly ways: Uint8Array;
  private readonly scores: Float64Array;
  /** For each kind, what its last look at all sheets found: how many places, and the cell of the best. */
  private readonly totals: Int32Array;
  private readonly bests: Int32Array;
  /** The kind whose row it is, where there is one row for all. */
  private lastKind = -1;
  private readonly oneRow: boolean;

  private readonly rooms: Rooms;

  // The best place of one sheet, while it is looked for.
  private bestScore = 0;
  private bestNode = -1;
  private bestWay = 0;
  private fits = 0;
  private skips: Chance | null = null;
  private share = 0;

  /** `oneRow`: what is remembered is the last kind looked for alone, for jobs of many kinds that are laid one after another. */
  constructor(job: WholeJob, memory: Memory, preference: Preference, oneRow: boolean) {
    this.job = job;
    this.memory = memory;
    this.preference = preference;
    this.rooms = new Rooms(memory);
    this.oneRow = oneRow;
    this.widths = Int32Array.from(job.kinds, ({ width }) => width);
    this.heights = Int32Array.from(job.kinds, ({ height }) => height);
    this.turns = Uint8Array.from(job.kinds, ({ turns }) => Number(turns));
    this.allowed = new Uint8Array(job.kinds.length * job.stocks.length);
    job.kinds.forEach((kind, k) => {
      job.stocks.forEach((stock, s) => {
        this.allowed[k * job.stocks.length + s] = mayLieIn(kind, stock) ? 1 : 0;
      });
    });
    this.limited = job.stocks.some((stock) => stock.longestCut !== Number.POSITIVE_INFINITY);
    let rows = 0;
    this.rowAt = Int32Array.from(job.kinds, ({ count }) => {
      if (count > 0 && !oneRow) return memory.slots * rows++;
      return 0;
    });
    this.totals = new Int32Array(job.kinds.length);
    this.bests = new Int32Array(job.kinds.length);
    const cells = memory.slots * Math.max(1, rows);
    this.stamps = new Int32Array(cells);
    this.counts = new Int32Array(cells);
    this.nodes = new Int32Array(cells);
    this.ways = new Uint8Array(cells);
    this.scores = new Float64Array(cells);
  }

  /** The best place for a kind in the waste of all open sheets; false when there is none. */
  seek(kind: number): boolean {
    const { m, slotsBase, rootsBase, rootCount } = this.memory;
    const { stamps, counts, scores } = this;
    this.turnTo(kind);
    const row = this.rowAt[kind] as number;
    let count = 0;
    let best = -1;
    let score = Number.NEGATIVE_INFINITY;
    for (let index = 0; index < rootCount; index++) {
      const slot = m[slotsBase + index] as number;
      const cell = row + slot;
      const root = m[rootsBase + slot] as number;
      if (stamps[cell] !== m[root + STAMP]) this.look(kind, root, cell);
      const own = counts[cell] as number;
      if (own === 0) continue;
      count += own;
      if ((scores[cell] as number) <= score) continue;
      score = scores[cell] as number;
      best = cell;
    }
    this.totals[kind] = count;
    this.bests[kind] = best;
    return this.point(count, best);
  }

  /** As `seek`, where since the kind's last look pieces alone have been laid, on one sheet that was open then. */
  seekAgain(kind: number, root: number): boolean {
    const cell = (this.rowAt[kind] as number) + this.memory.get(root + SLOT);
    const before = this.counts[cell] as number;
    // Where no waste took it before, none does after more has been laid there.
    if (before === 0) {
      this.stamps[cell] = this.memory.m[root + STAMP] as number;
      return this.found(kind);
    }
    const score = this.scores[cell] as number;
    this.look(kind, root, cell);
    const count = (this.totals[kind] as number) + (this.counts[cell] as number) - before;
    this.totals[kind] = count;
    const best = this.bests[kind] as number;
    if (cell === best && (this.scores[cell] as number) < score) return this.seek(kind);
    if (
      cell !== best &&
      this.fits > 0 &&
      (best < 0 || (this.scores[cell] as number) > (this.scores[best] as number))
    )
      this.bests[kind] = cell;
    return this.point(count, this.bests[kind] as number);
  }

  /** What the kind's last look found. */
  found(kind: number): boolean {
    return this.point(this.totals[kind] as number, this.bests[kind] as number);
  }

  private point(count: number, best: number): boolean {
    this.count = count;
    if (count === 0) return false;
    this.node = this.nodes[best] as number;
    this.way = this.ways[best] as number;
    return true;
  }

  /** The best place for a kind in one sheet; false when there is none. */
  seekIn(kind: number, root: number): boolean {
    this.turnTo(kind);
    const cell = (this.rowAt[kind] as number) + this.memory.get(root + SLOT);
    if (this.stamps[cell] !== this.memory.get(root + STAMP)) this.look(kind, root, cell);
    this.count = this.counts[cell] as number;
    this.node = this.nodes[cell] as number;
    this.way = this.ways[cell] as number;
    return this.count > 0;
  }

  /** As `seek`, with each place but the best passed over by chance, a `share` of all, and the best for certain. */
  seekPast(kind: number, chance: Chance, share: number): boolean {
    if (!this.seek(kind)) return false;
    const { memory } = this;
    this.bestScore = Number.NEGATIVE_INFINITY;
    this.bestNode = -1;
    this.skips = chance;
    this.share = share;
    for (let index = 0; index < memory.rootCount; index++) this.lookThrough(kind, memory.root(index));
    this.skips = null;
    // What fits is not left outside because all its places were passed over.
    if (this.bestNode >= 0) {
      this.node = this.bestNode;
      this.way = this.bestWay;
    }
    return true;
  }

  private turnTo(kind: number): void {
    if (!this.oneRow || kind === this.lastKind) return;
    this.stamps.fill(0);
    this.lastKind = kind;
  }

  /** Looks through one sheet and remembers what is found. */
  private look(kind: number, root: number, cell: number): void {
    this.fits = 0;
    this.bestScore = Number.NEGATIVE_INFINITY;
    this.lookThrough(kind, root);
    this.stamps[cell] = this.memory.m[root + STAMP] as number;
    this.counts[cell] = this.fits;
    this.nodes[cell] = this.bestNode;
    this.ways[cell] = this.bestWay;
    this.scores[cell] = this.bestScore;
  }

  private lookThrough(kind: number, root: number): void {
    const { m } = this.memory;
    if (this.allowed[kind * this.job.stocks.length + (m[root + STOCK] as number)] === 0) return;
    const kw = this.widths[kind] as number;
    const kh = this.heights[kind] as number;
    const turns = this.turns[kind] === 1;
    const least = kw < kh ? kw : kh;
    if (!this.rooms.mayTake(root, least, kw + kh - least)) return;
    for (let node = m[root + FIRST_WASTE] as number; node >= 0; node = m[node + NEXT_WASTE] as number) {
      const free = m[node + FREE] as number;
      if (free < least) continue;
      const upright = m[node + AXIS] === 1;
      const cross = m[node + (upright ? W : H)] as number;
      if (cross < least) continue;
      const p = upright ? kh : kw;
      const q = upright ? kw : kh;
      if (p <= free && q <= cross) this.weigh(node, free, cross, p, q, 0);
      if (turns && q <= free && p <= cross) this.weigh(node, free, cross, q, p, TURNED);
      if (node === root && (m[node + FIRST] as number) < 0) {
        if (q <= cross && p <= free) this.weigh(node, cross, free, q, p, FLIPPED);
        if (turns && p <= cross && q <= free) this.weigh(node, cross, free, p, q, TURNED | FLIPPED);
      }
    }
  }

  /** Weighs the ways a piece, p along the axis and q across it, goes into a waste rectangle of f by c. */
  private weigh(node: number, f: number, c: number, p: number, q: number, flags: number): void {
    if (q === c) {
      this.offer(node, f, c, p, q, BESIDE, flags);
      return;
    }
    this.offer(node, f, c, p, q, STRIP, flags);
    // On an empty root the shelf is the strip of the other axis, which is weighed by itself.
    if (p < f && (this.memory.m[node + FIRST] as number) >= 0) this.offer(node, f, c, p, q, SHELF, flags);
  }

  private offer(node: number, f: number, c: number, p: number, q: number, how: number, flags: number): void {
    if (this.limited && !this.cuttable(node, f, c, p, q, how)) return;
    this.fits++;
    if (this.skips !== null) {
      const best = node === this.node && (how | flags) === this.way;
      if (best || this.skips.next() < this.share) return;
    }
    const score = scored(f, c, p, q, how, this.preference);
    if (score <= this.bestScore) return;
    this.bestScore = score;
    this.bestNode = node;
    this.bestWay = how | flags;
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
