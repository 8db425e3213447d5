import { at } from "../at.ts";
import type { Board, Edges, Measure } from "./bench.ts";
import type { CutOrder } from "./cuts.ts";
import { extent } from "./layout.ts";
import type { Cut } from "./plan.ts";
import { type Way, waysOf, written } from "./ways.ts";

/** Past so many places for a cut in one run weighing each takes too long. */
const MOST_PLACES = 6;
/** Past so many equal parts of a run more make no difference. */
const MOST_ALIKE = 64;

/**
 * The cuts of a layout of very many pieces: again and again the setting that makes the most cuts,
 * of equal ones the largest, and with it whatever it cuts of what comes off. Boards wait in a list
 * for each setting at which they can be cut, so that each is looked at but once.
 */
export function orderMany(sheet: Board, measure: Measure): CutOrder {
  const bench = new Bench(measure);
  bench.lay(sheet);
  for (let set = bench.busiest(); set !== null; set = bench.busiest()) bench.cutAt(set);
  const { cuts, settings, leftovers } = bench;
  return { cuts, settings, leftovers };
}

class Bench implements CutOrder {
  readonly cuts: Cut[] = [];
  readonly leftovers: Edges[] = [];
  settings = 0;
  private readonly measure: Measure;
  /** For each setting the boards that could be cut at it when they were laid, and how many cuts it makes in those that still can. */
  private readonly boards = new Map<number, Board[]>();
  private readonly counts = new Map<number, number>();
  /** The boards that lie there. */
  private readonly ways = new Map<Board, ReadonlyMap<number, Way>>();

  constructor(measure: Measure) {
    this.measure = measure;
  }

  /** Lays a board that may still want cuts. */
  lay(board: Board): void {
    const ways = waysOf(board, this.measure, MOST_PLACES);
    if (ways.size === 0) return;
    this.ways.set(board, ways);
    for (const set of ways.keys()) {
      const waiting = this.boards.get(set) ?? [];
      waiting.push(board);
      this.boards.set(set, waiting);
      this.counts.set(set, (this.counts.get(set) ?? 0) + this.cutsIn(board, set));
    }
  }

  /** The setting that makes the most cuts, of those the largest; null: there is none. */
  busiest(): number | null {
    let best: number | null = null;
    let most = 0;
    for (const [set, count] of this.counts) {
      if (count < most || (count === most && best !== null && set < best)) continue;
      most = count;
      best = set;
    }
    return best;
  }

  cutAt(set: number): void {
    this.settings++;
    const waiting = this.boards.get(set) ?? [];
    for (let board = waiting.pop(); board !== undefined; board = waiting.pop()) {
      const ways = this.ways.get(board);
      const way = ways?.get(set);
      if (ways === undefined || way === undefined) continue;
      this.ways.delete(board);
      for (const one of ways.keys()) this.forget(board, one);
      this.cuts.push(written(board.edges, way, set));
      for (const part of [way.cut.after, way.cut.before]) {
        if (part === null) continue;
        if (part.content === null) this.leftovers.push(part.edges);
        else this.lay(part);
      }
    }
    this.boards.delete(set);
    this.counts.delete(set);
  }

  private forget(board: Board, set: number): void {
    const count = (this.counts.get(set) ?? 0) - this.cutsIn(board, set);
    if (count > 0) this.counts.set(set, count);
    else this.counts.delete(set);
  }

  /** How many cuts a setting makes in a board one after another: as many as equal parts stand at the head of a run. */
  private cutsIn({ content }: Board, set: number): number {
    if (content === null || content.is === "piece") return 1;
    const { split, from } = content;
    const { unit, kerf } = this.measure;
    let to = from;
    for (; to < Math.min(split.parts.length, from + MOST_ALIKE); to++)
      if (extent(at(split.parts, to), split.axis) * unit - kerf !== set) break;
    return Math.max(1, to - from);
  }
}
