import { at } from "../at.ts";
import type { Kinds } from "./kinds.ts";

/** How far a batch is cut: which figures of which kinds are done, and where the stop stands. */
export class BenchState {
  readonly kinds: Kinds;
  /** For each kind, its figures still to be cut, as bits of their place in its own list. */
  private readonly left: Uint16Array;
  /** For each kind, how many kinds it still waits for. */
  private readonly waiting: Int32Array;
  /** For each figure, how many kinds still need it, and how many of them can be cut now. */
  private readonly needed: Int32Array;
  private readonly open: Int32Array;
  /** The figures set so far. */
  readonly path: readonly number[];

  private constructor(
    kinds: Kinds,
    left: Uint16Array,
    waiting: Int32Array,
    needed: Int32Array,
    open: Int32Array,
    path: readonly number[],
  ) {
    this.kinds = kinds;
    this.left = left;
    this.waiting = waiting;
    this.needed = needed;
    this.open = open;
    this.path = path;
  }

  static start(kinds: Kinds): BenchState {
    const open = new Int32Array(kinds.figures.length);
    kinds.own.forEach((places, kind) => {
      if (at(kinds.after, kind).length > 0) return;
      for (const place of places) open[place] = at(open, place) + 1;
    });
    return new BenchState(
      kinds,
      Uint16Array.from(kinds.own, (places) => 2 ** places.length - 1),
      Int32Array.from(kinds.after, (others) => others.length),
      Int32Array.from(kinds.having, (having) => having.length),
      open,
      [],
    );
  }

  /** How many figures are still needed. */
  get figuresLeft(): number {
    return this.needed.reduce((count, needed) => count + Number(needed > 0), 0);
  }

  get isDone(): boolean {
    return this.needed.every((needed) => needed === 0);
  }

  /** How many single cuts are still to be made. */
  get cutsLeft(): number {
    return this.needed.reduce((sum, needed) => sum + needed, 0);
  }

  /** Figures at which something can be cut now. */
  get ready(): readonly number[] {
    return [...this.open.keys()].filter((figure) => at(this.open, figure) > 0);
  }

  /** Whether all that still needs this figure can be cut now: then it may as well be set now as ever. */
  closes(figure: number): boolean {
    return at(this.needed, figure) > 0 && at(this.needed, figure) === at(this.open, figure);
  }

  stillNeeds(kind: number, place: number): boolean {
    return ((at(this.left, kind) >>> place) & 1) === 1;
  }

  /** Two states with one key can be finished in the same ways. */
  get key(): string {
    return String.fromCharCode(...this.left);
  }

  /** With the stop set to a figure and everything cut that can be cut at it, what comes free on the way included. */
  set(figure: number): BenchState {
    const state = new BenchState(
      this.kinds,
      this.left.slice(),
      this.waiting.slice(),
      this.needed.slice(),
      this.open.slice(),
      [...this.path, figure],
    );
    const can = at(this.kinds.having, figure).filter((kind) => at(this.waiting, kind) === 0);
    for (let kind = can.pop(); kind !== undefined; kind = can.pop()) state.cut(kind, figure, can);
    return state;
  }

  private cut(kind: number, figure: number, can: number[]): void {
    const bit = 1 << at(this.kinds.own, kind).indexOf(figure);
    const before = at(this.left, kind);
    if ((before & bit) === 0) return;
    this.left[kind] = before & ~bit;
    this.needed[figure] = at(this.needed, figure) - 1;
    this.open[figure] = at(this.open, figure) - 1;
    if (at(this.left, kind) !== 0) return;
    for (const follower of at(this.kinds.next, kind)) {
      const waits = at(this.waiting, follower) - 1;
      this.waiting[follower] = waits;
      if (waits > 0) continue;
      for (const place of at(this.kinds.own, follower)) {
        this.open[place] = at(this.open, place) + 1;
        if (place === figure) can.push(follower);
      }
    }
  }

  /** Of the figures that can be closed the one nearest on the way that the stop is moving, so that it seldom turns back. */
  nextClosing(): number | null {
    const { path } = this;
    const last = path.at(-1) ?? -1;
    const down = path.length > 1 && last < at(path, path.length - 2);
    const closing = this.ready.filter((figure) => figure !== last && this.closesWhole(figure));
    const wider = closing.find((figure) => figure > last);
    const narrower = closing.findLast((figure) => figure < last);
    return (down ? (narrower ?? wider) : (wider ?? narrower)) ?? null;
  }

  private closesWhole(figure: number): boolean {
    if (this.closes(figure)) return true;
    // What comes free at this very setting is cut at it too.
    const frees = at(this.kinds.having, figure).some(
      (kind) => at(this.waiting, kind) === 0 && this.onlyLeft(kind, figure),
    );
    return frees && at(this.set(figure).needed, figure) === 0;
  }

  private onlyLeft(kind: number, figure: number): boolean {
    return at(this.left, kind) === 1 << at(this.kinds.own, kind).indexOf(figure);
  }
}

/** As far as it goes by figures that need be set only once more: no order is ever longer for it. */
export function settled(from: BenchState): BenchState {
  let state = from;
  for (let figure = state.nextClosing(); figure !== null; figure = state.nextClosing())
    state = state.set(figure);
  return state;
}
