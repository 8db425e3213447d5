import type { WholeJob } from "./whole.ts";

/*
 * The memory of a forest: nodes, lists and counters in one typed array, so that each write can be
 * logged and taken back. A node is named by the place of its first cell; the constants below are the
 * places of its cells after that.
 */
export const W = 0;
export const H = 1;
/** Extent along the axis that no child takes; nought for a piece. */
export const FREE = 2;
/** 0: children side by side along x; 1: along y. */
export const AXIS = 3;
/** -1: a root. Of an unused node: the next unused one. */
export const PARENT = 4;
export const FIRST = 5;
export const NEXT = 6;
const PREV = 7;
/** -1: a split node. */
export const KIND = 8;
export const ROOT = 9;
/** The next node of the root that has waste; -1: none. */
export const NEXT_WASTE = 10;
const PREV_WASTE = 11;
/** Of a root. */
export const STOCK = 12;
/** Of a root: a small number of its own as long as it is open. */
export const SLOT = 13;
/** Of a root: the first of its nodes that have waste. */
export const FIRST_WASTE = 14;
/** Of a root: a number that changes with every change of its tree, and comes back when that is taken back. */
export const STAMP = 15;
const STRIDE = 16;

// Cells at the head of the memory.
const ROOT_COUNT = 0;
const NEXT_UNUSED = 1;
const PLACED = 2;
const HEAD = 3;

export class Memory {
  readonly m: Int32Array;
  /** Where the list of slots begins: those of open roots, then the unused ones. */
  readonly slotsBase: number;
  /** Where the list begins that gives each slot its root. */
  readonly rootsBase: number;
  /** How many roots may be open at once. */
  readonly slots: number;
  private readonly openedBase: number;
  private readonly placedBase: number;
  private logging = false;
  private log = new Int32Array(1024);
  private logged = 0;
  private stamps = 0;

  /** Room for `pieces` pieces of a job. */
  constructor(job: WholeJob, pieces: number) {
    // A piece brings at most itself and two split nodes, and a root.
    const nodes = 4 * pieces + 8;
    this.slots = pieces + 1;
    this.slotsBase = HEAD + nodes * STRIDE;
    this.rootsBase = this.slotsBase + this.slots;
    this.openedBase = this.rootsBase + this.slots;
    this.placedBase = this.openedBase + job.stocks.length;
    this.m = new Int32Array(this.placedBase + job.kinds.length);
    for (let index = 0; index < nodes; index++) {
      this.m[HEAD + index * STRIDE + PARENT] = index + 1 < nodes ? HEAD + (index + 1) * STRIDE : -1;
    }
    for (let slot = 0; slot < this.slots; slot++) this.m[this.slotsBase + slot] = slot;
    this.m[NEXT_UNUSED] = HEAD;
  }

  get(cell: number): number {
    return this.m[cell] as number;
  }

  put(cell: number, value: number): void {
    if (this.logging) {
      if (this.logged === this.log.length) this.lengthen();
      this.log[this.logged] = cell;
      this.log[this.logged + 1] = this.m[cell] as number;
      this.logged += 2;
    }
    this.m[cell] = value;
  }

  private lengthen(): void {
    const longer = new Int32Array(2 * this.log.length);
    longer.set(this.log);
    this.log = longer;
  }

  /** From here on every change can be taken back by `takeBack`. */
  begin(): void {
    this.logged = 0;
    this.logging = true;
  }

  /** Undoes every change since `begin`. */
  takeBack(): void {
    const { log, m } = this;
    for (let at = this.logged - 2; at >= 0; at -= 2) m[log[at] as number] = log[at + 1] as number;
    this.keep();
  }

  /** Keeps every change since `begin`. */
  keep(): void {
    this.logged = 0;
    this.logging = false;
  }

  get rootCount(): number {
    return this.get(ROOT_COUNT);
  }

  slot(index: number): number {
    return this.get(this.slotsBase + index);
  }

  root(index: number): number {
    return this.get(this.rootsBase + this.slot(index));
  }

  /** Says that a root's tree has changed. */
  touch(root: number): void {
    this.stamps = (this.stamps + 1) | 0;
    this.put(root + STAMP, this.stamps);
  }

  /** How many pieces lie in the forest. */
  get allPlaced(): number {
    return this.get(PLACED);
  }

  /** How many pieces of a kind lie in the forest. */
  placed(kind: number): number {
    return this.get(this.placedBase + kind);
  }

  countPlaced(kind: number, change: number): void {
    this.put(this.placedBase + kind, this.placed(kind) + change);
    this.put(PLACED, this.allPlaced + change);
  }

  /** How many sheets of a stock are open. */
  opened(stock: number): number {
    return this.get(this.openedBase + stock);
  }

  newNode(w: number, h: number, axis: number, kind: number, root: number): number {
    const node = this.get(NEXT_UNUSED);
    if (node < 0) throw new RangeError("the forest is full");
    this.put(NEXT_UNUSED, this.get(node + PARENT));
    this.put(node + W, w);
    this.put(node + H, h);
    this.put(node + FREE, 0);
    this.put(node + AXIS, axis);
    this.put(node + PARENT, -1);
    this.put(node + FIRST, -1);
    this.put(node + KIND, kind);
    this.put(node + ROOT, root < 0 ? node : root);
    return node;
  }

  dropNode(node: number): void {
    this.setFree(node, 0);
    this.put(node + PARENT, this.get(NEXT_UNUSED));
    this.put(NEXT_UNUSED, node);
  }

  newRoot(w: number, h: number, stock: number): number {
    const count = this.rootCount;
    if (count === this.slots) throw new RangeError("the forest is full");
    const root = this.newNode(w, h, 0, -1, -1);
    const slot = this.slot(count);
    this.put(root + STOCK, stock);
    this.put(root + SLOT, slot);
    this.put(root + FIRST_WASTE, -1);
    this.put(this.rootsBase + slot, root);
    this.put(ROOT_COUNT, count + 1);
    this.put(this.openedBase + stock, this.opened(stock) + 1);
    this.setFree(root, w);
    this.touch(root);
    return root;
  }

  dropRoot(root: number): void {
    const stock = this.get(root + STOCK);
    const slot = this.get(root + SLOT);
    const count = this.rootCount - 1;
    let index = this.slotsBase;
    while (this.get(index) !== slot) index++;
    this.put(index, this.slot(count));
    this.put(this.slotsBase + count, slot);
    this.put(ROOT_COUNT, count);
    this.put(this.openedBase + stock, this.opened(stock) - 1);
    this.dropNode(root);
  }

  /** Sets a node's waste, and keeps its root's list of nodes that have some. */
  setFree(node: number, free: number): void {
    const before = this.get(node + FREE);
    if (before === free) return;
    this.put(node + FREE, free);
    if (before > 0 && free > 0) return;
    const root = this.get(node + ROOT);
    if (free > 0) {
      const first = this.get(root + FIRST_WASTE);
      this.put(node + NEXT_WASTE, first);
      this.put(node + PREV_WASTE, -1);
      if (first >= 0) this.put(first + PREV_WASTE, node);
      this.put(root + FIRST_WASTE, node);
      return;
    }
    const next = this.get(node + NEXT_WASTE);
    const prev = this.get(node + PREV_WASTE);
    if (next >= 0) this.put(next + PREV_WASTE, prev);
    if (prev >= 0) this.put(prev + NEXT_WASTE, next);
    else this.put(root + FIRST_WASTE, next);
  }

  link(parent: number, child: number): void {
    const first = this.get(parent + FIRST);
    this.put(child + PARENT, parent);
    this.put(child + NEXT, first);
    this.put(child + PREV, -1);
    if (first >= 0) this.put(first + PREV, child);
    this.put(parent + FIRST, child);
  }

  unlink(child: number): void {
    const next = this.get(child + NEXT);
    const prev = this.get(child + PREV);
    if (next >= 0) this.put(next + PREV, prev);
    if (prev >= 0) this.put(prev + NEXT, next);
    else this.put(this.get(child + PARENT) + FIRST, next);
  }
}
