import type { Box } from "../../geometry/index.ts";
import { ticks } from "../../lengths/index.ts";
import { at } from "./at.ts";
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
  const start: State = {
    boards: [{ edges: sheet, nominal: usable, content: contentOf(root) }],
    leftovers: [],
    cuts: null,
    settings: 0,
    rises: 0,
    last: Number.POSITIVE_INFINITY,
    left: 0,
  };
  let beam: State[] = [{ ...start, left: cutsLeft(at(start.boards, 0)) }];
  const width = at(beam, 0).left > MOST_CUTS_TO_WEIGH ? 1 : BEAM;
  for (;;) {
    const done = beam.filter((state) => state.left === 0).toSorted(better)[0];
    if (done !== undefined) {
      return { cuts: unrolled(done.cuts), settings: done.settings, leftovers: done.leftovers };
    }
    const next = beam.flatMap((state) => settingsOf(state, measure).map((set) => cutAt(state, set, measure)));
    beam = next.toSorted(better).slice(0, width);
    if (beam.length === 0) throw new RangeError("a layout that no cut within the longest can part");
  }
}

interface State {
  readonly boards: readonly Board[];
  readonly leftovers: readonly Edges[];
  readonly cuts: Chain | null;
  readonly settings: number;
  /** How often a setting was larger than the one before. */
  readonly rises: number;
  readonly last: number;
  /** Cuts still to make. */
  readonly left: number;
}

interface Chain {
  readonly cut: Cut;
  readonly earlier: Chain | null;
}

function better(a: State, b: State): number {
  return a.settings - b.settings || a.left - b.left || a.rises - b.rises || b.last - a.last;
}

function unrolled(chain: Chain | null): Cut[] {
  const cuts: Cut[] = [];
  for (let link = chain; link !== null; link = link.earlier) cuts.push(link.cut);
  return cuts.toReversed();
}

/** Every setting at which some board can be cut now, the largest first. */
function settingsOf(state: State, measure: Measure): number[] {
  const settings = new Set<number>();
  for (const board of state.boards) {
    for (const cut of possibleCuts(board, measure))
      for (const way of waysOf(board, cut)) settings.add(way.set);
  }
  return [...settings].toSorted((a, b) => b - a);
}

/**
 * The ways to make a cut. Against the fence lies a part that pieces still come from and whose width is
 * made by them alone: measured across a rest, a sheet that is not quite its nominal size would make
 * every piece on the other side wrong.
 */
function waysOf(
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
function cutAt(state: State, set: number, measure: Measure): State {
  const waiting = state.boards.toReversed();
  const boards: Board[] = [];
  const leftovers = [...state.leftovers];
  let { cuts } = state;
  for (let board = waiting.pop(); board !== undefined; board = waiting.pop()) {
    const made = cutOnce(board, set, measure);
    if (made === null) {
      boards.push(board);
      continue;
    }
    cuts = { cut: made.cut, earlier: cuts };
    for (const part of [made.after, made.before]) {
      if (part === null) continue;
      if (part.content === null) leftovers.push(part.edges);
      else if (cutsLeft(part) > 0) waiting.push(part);
    }
  }
  return {
    boards,
    leftovers,
    cuts,
    settings: state.settings + 1,
    rises: state.rises + Number(set > state.last),
    last: set,
    left: boards.reduce((sum, board) => sum + cutsLeft(board), 0),
  };
}

function cutOnce(board: Board, set: number, measure: Measure) {
  for (const cut of possibleCuts(board, measure)) {
    const way = waysOf(board, cut).find((one) => one.set === set);
    if (way === undefined) continue;
    return { before: cut.before, after: cut.after, cut: written(board.edges, cut, set, way.against) };
  }
  return null;
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
