import type { Box } from "../../geometry/index.ts";
import { ticks } from "../../lengths/index.ts";
import {
  type Board,
  contentOf,
  cutsLeft,
  type Edges,
  type Measure,
  type PossibleCut,
  possibleCuts,
} from "./bench.ts";
import type { Part } from "./layout.ts";
import type { Cut } from "./plan.ts";

/** The cuts of one sheet in the order in which the hand makes them, and every part that comes off and is no piece. */
export interface CutOrder {
  readonly cuts: readonly Cut[];
  /** How often the fence is set. */
  readonly settings: number;
  /** As they come off, trim and slivers included. */
  readonly leftovers: readonly Edges[];
}

/** How many orders are followed side by side, and the most cuts for which more than one is. */
const BEAM = 8;
const MOST_CUTS_TO_WEIGH = 80;

/**
 * Puts the cuts of a layout in order: each from edge to edge of a part that lies there by then, and
 * grouped so that the fence moves least. With the fence at one setting every board that can be cut at
 * it is cut, one board after another, and what comes off again; of the orders followed the one with
 * the fewest settings is kept, then the one whose settings fall most steadily.
 */
export function orderCuts(sheet: Edges, usable: Edges, root: Part, measure: Measure): CutOrder {
  const known: Known = { measure, boards: new Map() };
  const board: Board = { edges: sheet, nominal: usable, content: contentOf(root) };
  const left = waysOf(board, known).left;
  let beam: State[] = [
    {
      boards: [board],
      leftovers: null,
      cuts: null,
      settings: 0,
      rises: 0,
      last: Number.POSITIVE_INFINITY,
      left,
    },
  ];
  const width = left > MOST_CUTS_TO_WEIGH ? 1 : BEAM;
  for (;;) {
    const done = beam.filter((state) => state.left === 0).toSorted(better)[0];
    if (done !== undefined) {
      return { cuts: unrolled(done.cuts), settings: done.settings, leftovers: unrolled(done.leftovers) };
    }
    const next = beam.flatMap((state) => settingsOf(state, known).map((set) => cutAt(state, set, known)));
    beam = next.toSorted(better).slice(0, width);
    if (beam.length === 0) throw new RangeError("a layout that no cut within the longest can part");
  }
}

interface State {
  readonly boards: readonly Board[];
  readonly leftovers: Chain<Edges> | null;
  readonly cuts: Chain<Cut> | null;
  readonly settings: number;
  /** How often a setting was larger than the one before. */
  readonly rises: number;
  readonly last: number;
  /** Cuts still to make. */
  readonly left: number;
}

interface Chain<T> {
  readonly one: T;
  readonly earlier: Chain<T> | null;
}

/** The boards that have come up in any order, each weighed once: the orders share most of them. */
interface Known {
  readonly measure: Measure;
  readonly boards: Map<Board, Ways>;
}

interface Ways {
  /** Cuts that the board still needs. */
  readonly left: number;
  /** For each setting at which it can be cut now, the cut. */
  readonly at: ReadonlyMap<number, Made>;
}

interface Made {
  readonly cut: Cut;
  readonly before: Board | null;
  readonly after: Board | null;
}

function better(a: State, b: State): number {
  return a.settings - b.settings || a.left - b.left || a.rises - b.rises || b.last - a.last;
}

function unrolled<T>(chain: Chain<T> | null): T[] {
  const list: T[] = [];
  for (let link = chain; link !== null; link = link.earlier) list.push(link.one);
  return list.toReversed();
}

/** Every setting at which some board can be cut now, the largest first. */
function settingsOf(state: State, known: Known): number[] {
  const settings = new Set<number>();
  for (const board of state.boards) for (const set of waysOf(board, known).at.keys()) settings.add(set);
  return [...settings].toSorted((a, b) => b - a);
}

function waysOf(board: Board, known: Known): Ways {
  const found = known.boards.get(board);
  if (found !== undefined) return found;
  const at = new Map<number, Made>();
  for (const cut of possibleCuts(board, known.measure)) {
    for (const { set, against } of fenced(board, cut)) {
      if (at.has(set)) continue;
      at.set(set, { cut: written(board.edges, cut, set, against), before: cut.before, after: cut.after });
    }
  }
  const ways = { left: cutsLeft(board), at };
  known.boards.set(board, ways);
  return ways;
}

/**
 * The ways to make a cut. Against the fence lies a part that pieces still come from and whose width is
 * made by them alone: measured across a rest, a sheet that is not quite its nominal size would make
 * every piece on the other side wrong.
 */
function fenced(
  board: Board,
  cut: PossibleCut,
): { readonly set: number; readonly against: Cut["against"] }[] {
  const { edges } = board;
  const [start, end] = cut.across === "x" ? [edges.left, edges.right] : [edges.top, edges.foot];
  const ways: { set: number; against: Cut["against"] }[] = [];
  if (cut.kept === "before" || (cut.kept === null && isMeasure(cut.before, cut.across)))
    ways.push({ set: cut.line - start, against: "before" });
  if (cut.kept === "after" || (cut.kept === null && isMeasure(cut.after, cut.across)))
    ways.push({ set: end - cut.line - cut.takes, against: "after" });
  return ways;
}

function isMeasure(part: Board | null, across: Cut["across"]): boolean {
  if (part === null || part.content === null) return false;
  const { content } = part;
  return content.is === "piece" || content.split.axis !== across || content.to <= content.split.parts.length;
}

/** Makes every cut that one setting of the fence allows, on what comes off as well. */
function cutAt(state: State, set: number, known: Known): State {
  const waiting = state.boards.toReversed();
  const boards: Board[] = [];
  let { leftovers, cuts } = state;
  let left = 0;
  for (let board = waiting.pop(); board !== undefined; board = waiting.pop()) {
    const ways = waysOf(board, known);
    const made = ways.at.get(set);
    if (made === undefined) {
      boards.push(board);
      left += ways.left;
      continue;
    }
    cuts = { one: made.cut, earlier: cuts };
    for (const part of [made.after, made.before]) {
      if (part === null) continue;
      if (part.content === null) leftovers = { one: part.edges, earlier: leftovers };
      else if (waysOf(part, known).left > 0) waiting.push(part);
    }
  }
  return {
    boards,
    leftovers,
    cuts,
    settings: state.settings + 1,
    rises: state.rises + Number(set > state.last),
    last: set,
    left,
  };
}

function written(part: Edges, cut: PossibleCut, set: number, against: Cut["against"]): Cut {
  const line = ticks(cut.line);
  const upright = cut.across === "x";
  return {
    from: upright ? { x: line, y: ticks(part.top) } : { x: ticks(part.left), y: line },
    to: upright ? { x: line, y: ticks(part.foot) } : { x: ticks(part.right), y: line },
    across: cut.across,
    takes: ticks(cut.takes),
    part: boxOf(part),
    setting: ticks(set),
    against,
  };
}

export const boxOf = (edges: Edges): Box => ({
  left: ticks(edges.left),
  top: ticks(edges.top),
  width: ticks(edges.right - edges.left),
  height: ticks(edges.foot - edges.top),
});
