import type { WholeJob } from "./whole.ts";

/*
 * The memory of a forest: nodes, lists and counters in one typed array, so that each write can be
 * logged and taken back and a whole state copied at once. A node is named by the place of its first
 * cell; the constants below are the places of its cells after that.
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
/** Place in the list of nodes that have waste; -1: none. */
const WASTE_AT = 10;
/** Of a root. */
export const STOCK = 11;
/** Of a root: place in the list of roots. */
export const ROOT_AT = 12;
const STRIDE = 13;

// Cells at the head of the memory.
const WASTE_COUNT = 0;
const ROOT_COUNT = 1;
const NEXT_UNUSED = 2;
const HEAD = 3;

export class Memory {
  readonly m: Int32Array;
  /** Where the list of nodes with waste begins. */
  readonly wasteBase: number;
  private readonly rootBase: number;
  private readonly openedBase: number;
  private readonly placedBase: number;
  private logging = false;
  private readonly log: number[] = [];

  /** Room for `pieces` pieces of a job. */
  constructor(job: WholeJob, pieces: number) {
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
  }

  get(cell: number): number {
    return this.m[cell] as number;
  }

  put(cell: number, value: number): void {
    if (this.logging) this.log.push(cell, this.m[cell] as number);
    this.m[cell] = value;
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
    this.keep();
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

  get wasteCount(): number {
    return this.get(WASTE_COUNT);
  }

  get rootCount(): number {
    return this.get(ROOT_COUNT);
  }

  root(index: number): number {
    return this.get(this.rootBase + index);
  }

  /** How many pieces of a kind lie in the forest. */
  placed(kind: number): number {
    return this.get(this.placedBase + kind);
  }

  countPlaced(kind: number, change: number): void {
    this.put(this.placedBase + kind, this.placed(kind) + change);
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
    this.put(node + NEXT, -1);
    this.put(node + PREV, -1);
    this.put(node + KIND, kind);
    this.put(node + ROOT, root < 0 ? node : root);
    this.put(node + WASTE_AT, -1);
    return node;
  }

  dropNode(node: number): void {
    this.setFree(node, 0);
    this.put(node + PARENT, this.get(NEXT_UNUSED));
    this.put(NEXT_UNUSED, node);
  }

  newRoot(w: number, h: number, stock: number): number {
    const root = this.newNode(w, h, 0, -1, -1);
    this.put(root + STOCK, stock);
    const count = this.rootCount;
    this.put(this.rootBase + count, root);
    this.put(root + ROOT_AT, count);
    this.put(ROOT_COUNT, count + 1);
    this.put(this.openedBase + stock, this.opened(stock) + 1);
    this.setFree(root, w);
    return root;
  }

  dropRoot(root: number): void {
    const stock = this.get(root + STOCK);
    const at = this.get(root + ROOT_AT);
    const count = this.rootCount - 1;
    const last = this.root(count);
    this.put(this.rootBase + at, last);
    this.put(last + ROOT_AT, at);
    this.put(ROOT_COUNT, count);
    this.put(this.openedBase + stock, this.opened(stock) - 1);
    this.dropNode(root);
  }

  /** Sets a node's waste, and keeps the list of nodes that have some. */
  setFree(node: number, free: number): void {
    this.put(node + FREE, free);
    const at = this.get(node + WASTE_AT);
    if (free > 0 === at >= 0) return;
    const count = this.wasteCount;
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
