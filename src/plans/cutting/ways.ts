import type { Box } from "../../geometry/index.ts";
import { ticks } from "../../lengths/index.ts";
import { type Board, type Edges, type Measure, type PossibleCut, possibleCuts } from "./bench.ts";
import type { Cut } from "./plan.ts";

/** A cut that can be made at some setting, and which part of it lies against the fence. */
export interface Way {
  readonly cut: PossibleCut;
  readonly against: Cut["against"];
}

/** The settings at which a board can be cut next, with the cuts: of a run with more than so many places for one, the first. */
export function waysOf(board: Board, measure: Measure, most: number): ReadonlyMap<number, Way> {
  const ways = new Map<number, Way>();
  for (const cut of possibleCuts(board, measure, most)) {
    for (const { set, against } of fenced(board, cut)) {
      if (!ways.has(set)) ways.set(set, { cut, against });
    }
  }
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

/** The cut of a board as the plan tells it. */
export function written(part: Edges, { cut, against }: Way, set: number): Cut {
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
