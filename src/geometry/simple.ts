import { turnOf } from "./exact.ts";
import type { Extent, Outline, OutlineFault, RealPoint } from "./types.ts";

/** An edge with its place in the list, how far it reaches, and the place of the edge after it. */
interface Edge extends Extent {
  readonly place: number;
  readonly from: RealPoint;
  readonly to: RealPoint;
  readonly next: number;
}

/** A run of edges that follow one another, with its halves when it is long. */
interface Run extends Extent {
  readonly edges: readonly Edge[];
  readonly halves: readonly [Run, Run] | null;
}

const LONGEST_LEAF = 6;

/**
 * What keeps a list of points from being the edge of one piece, or null when nothing does: points
 * without a position, fewer than three different points, edges that cross, touch or fold back on
 * one another. Equal neighbours count as one point, so a list may repeat its first point at its end.
 * Exact for all finite coordinates. An edge's number is its place in the list as given.
 */
export function outlineFault(outline: Outline | readonly RealPoint[]): OutlineFault | null {
  const astray = outline.findIndex(({ x, y }) => !Number.isFinite(x) || !Number.isFinite(y));
  if (astray >= 0) return { code: "not-a-point", point: astray };
  const edges = realEdges(outline);
  if (edges.length < 3) return { code: "too-few-points", points: edges.length };
  const [crossing] = crossings(edges, 1);
  return crossing === undefined ? null : { code: "crosses-itself", edges: crossing };
}

/** Up to `most` pairs of edges that meet where they should not, each by the places of its edges, the lower first. */
export const crossingsOf = (
  outline: readonly RealPoint[],
  most: number,
): readonly (readonly [number, number])[] => crossings(realEdges(outline), most);

/** The edges that have a length, in order. */
function realEdges(outline: readonly RealPoint[]): readonly Edge[] {
  const starts = outline.flatMap((from, place) => {
    const to = outline[place + 1] ?? outline[0] ?? from;
    return from.x === to.x && from.y === to.y ? [] : [{ place, from, to }];
  });
  return starts.map(({ place, from, to }, index) => ({
    place,
    from,
    to,
    next: (starts[index + 1] ?? starts[0])?.place ?? place,
    left: Math.min(from.x, to.x),
    top: Math.min(from.y, to.y),
    right: Math.max(from.x, to.x),
    bottom: Math.max(from.y, to.y),
  }));
}

/** Neighbours in the list lie close together, so runs of them are compared first, and edges only where two runs come near. */
function crossings(edges: readonly Edge[], most: number): (readonly [number, number])[] {
  const found: (readonly [number, number])[] = [];
  const compare = (a: Edge, b: Edge): void => {
    if (found.length < most && meetAstray(a, b)) found.push([a.place, b.place]);
  };
  const within = ({ edges: all, halves }: Run): void => {
    if (found.length >= most) return;
    if (halves === null) {
      for (const a of all) for (const b of all) if (a.place < b.place) compare(a, b);
      return;
    }
    within(halves[0]);
    within(halves[1]);
    across(halves[0], halves[1]);
  };
  // `a` always lies before `b` in the list.
  const across = (a: Run, b: Run): void => {
    if (found.length >= most || apart(a, b)) return;
    if (a.halves !== null && (b.halves === null || a.edges.length >= b.edges.length)) {
      across(a.halves[0], b);
      across(a.halves[1], b);
    } else if (b.halves !== null) {
      across(a, b.halves[0]);
      across(a, b.halves[1]);
    } else {
      for (const one of a.edges) for (const other of b.edges) compare(one, other);
    }
  };
  if (edges.length > 0) within(runOf(edges));
  return found;
}

function runOf(edges: readonly Edge[]): Run {
  if (edges.length <= LONGEST_LEAF) return { ...reachOf(edges), edges, halves: null };
  const middle = Math.ceil(edges.length / 2);
  const halves = [runOf(edges.slice(0, middle)), runOf(edges.slice(middle))] as const;
  return { ...reachOf(halves), edges, halves };
}

function reachOf(parts: readonly Extent[]): Extent {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const part of parts) {
    left = Math.min(left, part.left);
    top = Math.min(top, part.top);
    right = Math.max(right, part.right);
    bottom = Math.max(bottom, part.bottom);
  }
  return { left, top, right, bottom };
}

const apart = (a: Extent, b: Extent): boolean =>
  a.right < b.left || b.right < a.left || a.bottom < b.top || b.bottom < a.top;

/** Whether two edges, the first earlier in the list, meet elsewhere than at the corner that they share as neighbours. */
function meetAstray(a: Edge, b: Edge): boolean {
  if (apart(a, b)) return false;
  if (a.next === b.place && foldsBack(a, b)) return true;
  if (b.next === a.place && foldsBack(b, a)) return true;
  if (a.next === b.place || b.next === a.place) return false;
  // Their boxes meet, so the two meet when neither lies wholly beside the other's line; in one line too.
  return (
    turnOf(b.from, b.to, a.from) * turnOf(b.from, b.to, a.to) <= 0 &&
    turnOf(a.from, a.to, b.from) * turnOf(a.from, a.to, b.to) <= 0
  );
}

/** Whether an edge runs back along the one before it. */
function foldsBack(before: Edge, after: Edge): boolean {
  const { from, to } = before;
  const end = after.to;
  if (turnOf(from, to, end) !== 0) return false;
  return from.x === to.x ? from.y < to.y === end.y < to.y : from.x < to.x === end.x < to.x;
}
