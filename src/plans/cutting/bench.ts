import { at } from "../at.ts";
import { type Axis, extent, type Part, type PiecePart, type SplitPart } from "./layout.ts";

/** An upright rectangle by its edges, in ticks. */
export interface Edges {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly foot: number;
}

/** How the planners' whole units become lengths on the bench. */
export interface Measure {
  /** Ticks in one whole unit. */
  readonly unit: number;
  /** In ticks. */
  readonly kerf: number;
  /** In ticks; Infinity: any. */
  readonly longestCut: number;
}

/**
 * A board on the bench: its edges as they are, as they should be (`nominal`: the trim still has to
 * come off where the two differ), and the pieces still to come from it; null: a leftover.
 */
export interface Board {
  readonly edges: Edges;
  readonly nominal: Edges;
  readonly content: Content | null;
}

/** A piece; or a run of a split's parts, `from` up to but not including `to`, where the index after the last part stands for the rest. */
export type Content =
  | { readonly is: "piece"; readonly piece: PiecePart }
  | { readonly is: "run"; readonly split: SplitPart; readonly from: number; readonly to: number };

type Run = Extract<Content, { is: "run" }>;

/** A cut that can be made now: where its line stands, what the blade takes beyond it, and what it makes of the board. */
export interface PossibleCut {
  readonly across: Axis;
  readonly line: number;
  readonly takes: number;
  readonly before: Board | null;
  readonly after: Board | null;
  /** Of a cut that only takes trim off: the part that stays; null: both parts are wanted, or one is a rest. */
  readonly kept: "before" | "after" | null;
}

export function contentOf(part: Part): Content {
  if (part.is === "piece") return { is: "piece", piece: part };
  return { is: "run", split: part, from: 0, to: part.parts.length + (part.rest > 0 ? 1 : 0) };
}

/**
 * Every cut that can be made on a board next: first what its edges still want, then between any two
 * parts of its run, of a run with more than so many `places` for a cut after its first part alone.
 */
export function possibleCuts(board: Board, measure: Measure, most: number): PossibleCut[] {
  const { content } = board;
  if (content === null) return [];
  const edges = edgeCuts(board, measure);
  if (edges.length > 0 || content.is === "piece") return edges;
  return places(content, most).map((index) => cutBetween(board, content, index, measure));
}

function places({ from, to }: Run, most: number): number[] {
  const all = to - from - 1;
  return Array.from({ length: all <= most ? all : 1 }, (_, index) => from + 1 + index);
}

/** How many cuts a board still needs. */
export function cutsLeft(board: Board): number {
  const { content, edges, nominal } = board;
  if (content === null) return 0;
  let count =
    Number(edges.left < nominal.left) +
    Number(edges.right > nominal.right) +
    Number(edges.top < nominal.top) +
    Number(edges.foot > nominal.foot);
  if (content.is === "run") {
    count += content.to - content.from - 1;
    for (const part of content.split.parts.slice(content.from, content.to)) count += cutsInside(part);
  }
  return count;
}

function cutsInside(part: Part): number {
  if (part.is === "piece") return 0;
  const between = part.parts.length - (part.rest > 0 ? 0 : 1);
  return part.parts.reduce((sum, one) => sum + cutsInside(one), between);
}

function edgeCuts(board: Board, measure: Measure): PossibleCut[] {
  const { edges, nominal, content } = board;
  const cuts: PossibleCut[] = [];
  const upright = edges.foot - edges.top <= measure.longestCut;
  const level = edges.right - edges.left <= measure.longestCut;
  const trim = (across: Axis, line: number, takes: number, kept: Edges, off: Edges, keptIsAfter: boolean) => {
    const rest = { edges: kept, nominal, content };
    const gone =
      off.right > off.left && off.foot > off.top ? { edges: off, nominal: off, content: null } : null;
    cuts.push({
      across,
      line,
      takes,
      before: keptIsAfter ? gone : rest,
      after: keptIsAfter ? rest : gone,
      kept: keptIsAfter ? "after" : "before",
    });
  };
  if (upright && edges.left < nominal.left) {
    const takes = Math.min(measure.kerf, nominal.left - edges.left);
    const line = nominal.left - takes;
    trim("x", line, takes, { ...edges, left: nominal.left }, { ...edges, right: line }, true);
  }
  if (upright && edges.right > nominal.right) {
    const takes = Math.min(measure.kerf, edges.right - nominal.right);
    const off = { ...edges, left: nominal.right + takes };
    trim("x", nominal.right, takes, { ...edges, right: nominal.right }, off, false);
  }
  if (level && edges.top < nominal.top) {
    const takes = Math.min(measure.kerf, nominal.top - edges.top);
    const line = nominal.top - takes;
    trim("y", line, takes, { ...edges, top: nominal.top }, { ...edges, foot: line }, true);
  }
  if (level && edges.foot > nominal.foot) {
    const takes = Math.min(measure.kerf, edges.foot - nominal.foot);
    const off = { ...edges, top: nominal.foot + takes };
    trim("y", nominal.foot, takes, { ...edges, foot: nominal.foot }, off, false);
  }
  return cuts;
}

/** The cut before the part `index` of a run. */
function cutBetween(board: Board, run: Run, index: number, { unit, kerf }: Measure): PossibleCut {
  const { edges, nominal } = board;
  const { split } = run;
  const { axis } = split;
  let along = 0;
  for (const part of split.parts.slice(run.from, index)) along += extent(part, axis);
  const start = axis === "x" ? nominal.left : nominal.top;
  const end = axis === "x" ? edges.right : edges.foot;
  const line = start + along * unit - kerf;
  const takes = Math.min(kerf, end - line);
  const part = (from: number, to: number, low: number, high: number, real: Edges): Board => {
    const box = axis === "x" ? { ...nominal, left: low, right: high } : { ...nominal, top: low, foot: high };
    return { edges: real, nominal: box, content: runOf(split, from, to) };
  };
  const before = axis === "x" ? { ...edges, right: line } : { ...edges, foot: line };
  const after = axis === "x" ? { ...edges, left: line + takes } : { ...edges, top: line + takes };
  const nominalEnd = axis === "x" ? nominal.right : nominal.foot;
  return {
    across: axis,
    line,
    takes,
    before: part(run.from, index, start, line, before),
    after: line + takes < end ? part(index, run.to, line + kerf, nominalEnd, after) : null,
    kept: null,
  };
}

/** What a run comes down to: its only part itself, or null where only the rest is left. */
function runOf(split: SplitPart, from: number, to: number): Content | null {
  if (to - from > 1) return { is: "run", split, from, to };
  return from === split.parts.length ? null : contentOf(at(split.parts, from));
}
