import type { Layout, Part } from "./layout.ts";
import { mayLieIn, type WholeJob } from "./whole.ts";

/*
 * A sheet is a tree. A split node is a rectangle whose children lie side by side along its axis, the
 * axis alternating from level to level; the extent that the children leave is the node's one waste
 * rectangle. Any insertion keeps the tree cuttable from edge to edge, and taking a child away joins
 * its extent to the waste. Everything, counters and lists included, lives in one typed array, so that
 * each write can be logged and taken back and a whole state copied at once.
 */

// Cells of a node.
const W = 0;
const H = 1;
/** Extent along the axis that no child takes; nought for a piece. */
const FREE = 2;
/** 0: children side by side along x; 1: along y. */
const AXIS = 3;
/** -1: a root. Of an unused node: the next unused one. */
const PARENT = 4;
const FIRST = 5;
const NEXT = 6;
const PREV = 7;
/** -1: a split node. */
const KIND = 8;
const ROOT = 9;
/** Place in the list of nodes that have waste; -1: none. */
const WASTE_AT = 10;
/** Of a root. */
const STOCK = 11;
/** Of a root: place in the list of roots. */
const ROOT_AT = 12;
const STRIDE = 13;

// Cells at the head of the memory.
const WASTE_COUNT = 0;
const ROOT_COUNT = 1;
const NEXT_UNUSED = 2;
const HEAD = 3;

/** As a further child: the piece fills the waste rectangle's other side exactly. */
const BESIDE = 0;
/** In a strip of its own, cut off along the node's axis; the rest of the strip is waste. */
const STRIP = 1;
/** The whole waste rectangle is split the other way first, then the piece cut from that shelf. */
const SHELF = 2;

/** A place for a piece: found by `seek`, taken by `insert`. */
export interface Place {
  node: number;
  how: number;
  /** Turned by a quarter against the kind's own width and height. */
  turned: boolean;
  /** The (empty) root's axis has to change first. */
  flipped: boolean;
  /** Higher is better. */
  score: number;
  /** How many places there were; only `seek` over the whole forest counts them. */
  count: number;
}

export const noPlace = (): Place => ({
  node: -1,
  how: BESIDE,
  turned: false,
  flipped: false,
  score: 0,
  count: 0,
});

/**
 * What makes one place better than another.
 * "squares": the change in the sum of squared waste areas; one large remainder beats two small ones.
 * "tight": the smallest waste rectangle that takes the piece. "side": the closest side.
 */
export type Preference = "squares" | "tight" | "side";

export class Forest {
  private readonly m: Int32Array;
  private readonly job: WholeJob;
  private readonly wasteBase: number;
  private readonly rootBase: number;
  private readonly openedBase: number;
  private readonly placedBase: number;
  private readonly allowed: Uint8Array;
  /** Whether any stock has a longest cut: spares the test in the commonest case. */
  private readonly limited: boolean;
  private logging = false;
  private readonly log: number[] = [];

  /** An empty forest with room for `pieces` pieces. */
  constructor(job: WholeJob, pieces: number) {
    this.job = job;
    // A piece brings at most itself and two split nodes, and a root.
    const nodes = 4 * pieces + 8;
    this.wasteBase = HEAD + nodes * STRIDE;
    this.rootBase = this.wasteBase + nodes;
    this.openedBase = this.rootBase + nodes;
    this.placedBase = this.openedBase + job.stocks.length;
    this.m = new Int32Array(this.placedBase + job.kinds.length);
    for (let index = 0; index < nodes; index++) {
      this.m[HEAD + index * STRIDE + PARENT] = index + 1 < nodes ? HEAD + (index + 1) * STRIDE : -1;
    }
    this.m[NEXT_UNUSED] = HEAD;
    this.allowed = new Uint8Array(job.kinds.length * job.stocks.length);
    job.kinds.forEach((kind, k) => {
      job.stocks.forEach((stock, s) => {
        this.allowed[k * job.stocks.length + s] = mayLieIn(kind, stock) ? 1 : 0;
      });
    });
    this.limited = job.stocks.some((stock) => stock.longestCut !== Number.POSITIVE_INFINITY);
  }

  private get(cell: number): number {
    return this.m[cell] as number;
  }

  private put(cell: number, value: number): void {
    if (this.logging) this.log.push(cell, this.m[cell] as number);
    this.m[cell] = value;
  }

  /** How many pieces of a kind lie in the forest. */
  placed(kind: number): number {
    return this.get(this.placedBase + kind);
  }

  /** How many sheets of a stock are open. */
  opened(stock: number): number {
    return this.get(this.openedBase + stock);
  }

  get rootCount(): number {
    return this.get(ROOT_COUNT);
  }

  root(index: number): number {
    return this.get(this.rootBase + index);
  }

  stockOf(root: number): number {
    return this.get(root + STOCK);
  }

  /** From here on every change can be taken back by `takeBack`. */
  begin(): void {
    this.log.length = 0;
    this.logging = true;
  }

  /** Undoes every change since `begin`. */
  takeBack(): void {
    const { log, m } = this;
    for (let at = log.length - 2; at >= 0; at -= 2) m[log[at] as number] = log[at + 1] as number;
    log.length = 0;
    this.logging = false;
  }

  /** Keeps every change since `begin`. */
  keep(): void {
    this.log.length = 0;
    this.logging = false;
  }

  /** The whole state, to be given back to `restore`. */
  copy(): Int32Array {
    return this.m.slice();
  }

  restore(state: Int32Array): void {
    this.m.set(state);
  }

  private newNode(w: number, h: number, axis: number, kind: number, root: number): number {
    const node = this.get(NEXT_UNUSED);
    if (node < 0) throw new RangeError("the forest is full");
    this.put(NEXT_UNUSED, this.get(node + PARENT));
    this.put(node + W, w);
    this.put(node + H, h);
    this.put(node + FREE, 0);
    this.put(node + AXIS, axis);
    this.put(node + PARENT, -1);
    this.put(node + FIRST, -1);
    this.put(node + NEXT, -1);
    this.put(node + PREV, -1);
    this.put(node + KIND, kind);
    this.put(node + ROOT, root < 0 ? node : root);
    this.put(node + WASTE_AT, -1);
    return node;
  }

  private dropNode(node: number): void {
    this.setFree(node, 0);
    this.put(node + PARENT, this.get(NEXT_UNUSED));
    this.put(NEXT_UNUSED, node);
  }

  private setFree(node: number, free: number): void {
    this.put(node + FREE, free);
    const at = this.get(node + WASTE_AT);
    if (free > 0 === at >= 0) return;
    const count = this.get(WASTE_COUNT);
    if (free > 0) {
      this.put(this.wasteBase + count, node);
      this.put(node + WASTE_AT, count);
      this.put(WASTE_COUNT, count + 1);
      return;
    }
    const last = this.get(this.wasteBase + count - 1);
    this.put(this.wasteBase + at, last);
    this.put(last + WASTE_AT, at);
    this.put(node + WASTE_AT, -1);
    this.put(WASTE_COUNT, count - 1);
  }

  private link(parent: number, child: number): void {
    const first = this.get(parent + FIRST);
    this.put(child + PARENT, parent);
    this.put(child + NEXT, first);
    this.put(child + PREV, -1);
    if (first >= 0) this.put(first + PREV, child);
    this.put(parent + FIRST, child);
  }

  private unlink(child: number): void {
    const next = this.get(child + NEXT);
    const prev = this.get(child + PREV);
    if (next >= 0) this.put(next + PREV, prev);
    if (prev >= 0) this.put(prev + NEXT, next);
    else this.put(this.get(child + PARENT) + FIRST, next);
  }

  /** Opens an empty sheet of a stock. Copies are the caller's to count. */
  open(stock: number): number {
    const { width, height } = this.stock(stock);
    const root = this.newNode(width, height, 0, -1, -1);
    this.put(root + STOCK, stock);
    const count = this.get(ROOT_COUNT);
    this.put(this.rootBase + count, root);
    this.put(root + ROOT_AT, count);
    this.put(ROOT_COUNT, count + 1);
    this.put(this.openedBase + stock, this.opened(stock) + 1);
    this.setFree(root, width);
    return root;
  }

  /** Takes a sheet away with all that lies on it; the kinds that came free are added to `freed`. */
  close(root: number, freed: number[]): void {
    this.dropChildren(root, freed);
    const stock = this.get(root + STOCK);
    const at = this.get(root + ROOT_AT);
    const count = this.get(ROOT_COUNT) - 1;
    const last = this.get(this.rootBase + count);
    this.put(this.rootBase + at, last);
    this.put(last + ROOT_AT, at);
    this.put(ROOT_COUNT, count);
    this.put(this.openedBase + stock, this.opened(stock) - 1);
    this.dropNode(root);
  }

  private dropChildren(node: number, freed: number[]): void {
    for (let child = this.get(node + FIRST); child >= 0; ) {
      const next = this.get(child + NEXT);
      const kind = this.get(child + KIND);
      if (kind >= 0) {
        freed.push(kind);
        this.put(this.placedBase + kind, this.placed(kind) - 1);
      } else this.dropChildren(child, freed);
      this.dropNode(child);
      child = next;
    }
    this.put(node + FIRST, -1);
  }

  /** Takes one node out of its sheet, with all that lies in it; its place joins the waste around it. Never a root. */
  remove(node: number, freed: number[]): void {
    const kind = this.get(node + KIND);
    if (kind >= 0) {
      freed.push(kind);
      this.put(this.placedBase + kind, this.placed(kind) - 1);
    } else this.dropChildren(node, freed);
    let gone = node;
    for (;;) {
      const parent = this.get(gone + PARENT);
      this.unlink(gone);
      const along = this.get(parent + AXIS) === 0 ? this.get(gone + W) : this.get(gone + H);
      this.dropNode(gone);
      this.setFree(parent, this.get(parent + FREE) + along);
      if (this.get(parent + FIRST) >= 0 || this.get(parent + PARENT) < 0) return;
      gone = parent;
    }
  }

  private stock(index: number) {
    const stock = this.job.stocks[index];
    if (stock === undefined) throw new RangeError(`no stock ${index}`);
    return stock;
  }

  /**
   * The best place for a kind among the waste of all open sheets (or of one, `only`), into `place`;
   * false when there is none. `place.score` must be set to the score to beat, -Infinity for any.
   */
  seek(kind: number, preference: Preference, place: Place, only = -1): boolean {
    const { m, wasteBase } = this;
    const wanted = this.job.kinds[kind];
    if (wanted === undefined) throw new RangeError(`no kind ${kind}`);
    const allowedAt = kind * this.job.stocks.length;
    const { width: kw, height: kh, turns } = wanted;
    const least = kw < kh ? kw : kh;
    const count = m[WASTE_COUNT] as number;
    const before = place.count;
    for (let index = 0; index < count; index++) {
      const node = m[wasteBase + index] as number;
      const free = m[node + FREE] as number;
      if (free < least) continue;
      const root = m[node + ROOT] as number;
      if (only >= 0 && root !== only) continue;
      if (this.allowed[allowedAt + (m[root + STOCK] as number)] === 0) continue;
      const w = m[node + W] as number;
      const h = m[node + H] as number;
      const upright = m[node + AXIS] === 1;
      const cross = upright ? w : h;
      if (cross < least) continue;
      const [p, q] = upright ? [kh, kw] : [kw, kh];
      this.weigh(node, free, cross, p, q, false, false, preference, place);
      if (turns) this.weigh(node, free, cross, q, p, true, false, preference, place);
      if (node === root && (m[node + FIRST] as number) < 0) {
        this.weigh(node, cross, free, q, p, false, true, preference, place);
        if (turns) this.weigh(node, cross, free, p, q, true, true, preference, place);
      }
    }
    return place.count > before;
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
    if (p < f && (this.m[node + FIRST] as number) >= 0) {
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
    const { longestCut, trimmed } = this.stock(this.get(this.get(node + ROOT) + STOCK));
    if (trimmed && (p > longestCut || q > longestCut)) return false;
    if ((p < f || this.get(node + FIRST) >= 0) && c > longestCut) return false;
    if (how === STRIP) return p <= longestCut;
    return how !== SHELF || (f <= longestCut && q <= longestCut);
  }

  /** Puts a piece at a place that `seek` found and nothing has changed since. */
  insert(kind: number, place: Place): void {
    const wanted = this.job.kinds[kind];
    if (wanted === undefined) throw new RangeError(`no kind ${kind}`);
    const { node, how } = place;
    if (place.flipped) {
      const axis = 1 - this.get(node + AXIS);
      this.put(node + AXIS, axis);
      this.setFree(node, axis === 0 ? this.get(node + W) : this.get(node + H));
    }
    const axis = this.get(node + AXIS);
    const root = this.get(node + ROOT);
    const [w, h] = place.turned ? [wanted.height, wanted.width] : [wanted.width, wanted.height];
    const [p, q] = axis === 0 ? [w, h] : [h, w];
    const free = this.get(node + FREE);
    const cross = axis === 0 ? this.get(node + H) : this.get(node + W);
    const piece = this.newNode(w, h, 0, kind, root);
    this.put(this.placedBase + kind, this.placed(kind) + 1);
    if (how === BESIDE) {
      this.link(node, piece);
      this.setFree(node, free - p);
      return;
    }
    const along = how === STRIP ? p : free;
    const outer = this.split(axis, along, cross, root);
    this.link(node, outer);
    this.setFree(node, free - along);
    this.setFree(outer, cross - q);
    if (how === STRIP) {
      this.link(outer, piece);
      return;
    }
    const inner = this.newNode(axis === 0 ? free : q, axis === 0 ? q : free, axis, -1, root);
    this.link(outer, inner);
    this.link(inner, piece);
    this.setFree(inner, free - p);
  }

  /** A split node, `along` by `cross` in the given axis, whose own children lie the other way. */
  private split(axis: number, along: number, cross: number, root: number): number {
    return axis === 0 ? this.newNode(along, cross, 1, -1, root) : this.newNode(cross, along, 0, -1, root);
  }

  /** The area of all waste on one sheet. */
  wasteOf(root: number): number {
    const { m, wasteBase } = this;
    let area = 0;
    for (let index = 0; index < (m[WASTE_COUNT] as number); index++) {
      const node = m[wasteBase + index] as number;
      if (m[node + ROOT] === root) area += this.wasteArea(node);
    }
    return area;
  }

  private wasteArea(node: number): number {
    return this.get(node + FREE) * (this.get(node + AXIS) === 0 ? this.get(node + H) : this.get(node + W));
  }

  /** Every sheet that holds a piece, as a layout. */
  layouts(): Layout[] {
    const layouts: Layout[] = [];
    for (let index = 0; index < this.rootCount; index++) {
      const root = this.root(index);
      if (this.get(root + FIRST) >= 0) layouts.push({ stock: this.stockOf(root), root: this.partOf(root) });
    }
    return layouts;
  }

  private partOf(node: number): Part {
    const [width, height] = [this.get(node + W), this.get(node + H)];
    const kind = this.get(node + KIND);
    if (kind >= 0) return { is: "piece", kind, width, height };
    const parts: Part[] = [];
    for (let child = this.get(node + FIRST); child >= 0; child = this.get(child + NEXT)) {
      parts.push(this.partOf(child));
    }
    const axis = this.get(node + AXIS) === 0 ? "x" : "y";
    return { is: "split", axis, width, height, parts, rest: this.get(node + FREE) };
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
