import { turnOf } from "./exact.ts";
import { extentOf } from "./polygon.ts";
import type { Extent, Outline, OutlineFault, RealPoint } from "./types.ts";

/** An edge with its place in the list, and the places of the edges that it shares a corner with. */
interface Edge {
  readonly place: number;
  readonly from: RealPoint;
  readonly to: RealPoint;
  readonly next: number;
}

/** A run of edges that follow one another, with its halves when it is long. */
interface Run {
  readonly extent: Extent;
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
  return starts.map((edge, index) => ({ ...edge, next: (starts[index + 1] ?? starts[0] ?? edge).place }));
}

function crossings(edges: readonly Edge[], most: number): (readonly [number, number])[] {
  const found: (readonly [number, number])[] = [];
  const compare = (a: Edge, b: Edge): void => {
    if (found.length < most && meetAstray(a, b)) found.push([a.place, b.place]);
  };
  const within = (run: Run): void => {
    if (found.length >= most) return;
    if (run.halves === null) {
      run.edges.forEach((a, index) => run.edges.slice(index + 1).forEach((b) => compare(a, b)));
      return;
    }
    const [first, second] = run.halves;
    within(first);
    within(second);
    across(first, second);
  };
  // `a` always lies before `b` in the list.
  const across = (a: Run, b: Run): void => {
    if (found.length >= most || apart(a.extent, b.extent)) return;
    if (a.halves !== null && (b.halves === null || a.edges.length >= b.edges.length)) {
      a.halves.forEach((half) => across(half, b));
    } else if (b.halves !== null) {
      b.halves.forEach((half) => across(a, half));
    } else {
      a.edges.forEach((one) => b.edges.forEach((other) => compare(one, other)));
    }
  };
  if (edges.length > 0) within(runOf(edges));
  return found;
}

function runOf(edges: readonly Edge[]): Run {
  if (edges.length <= LONGEST_LEAF) {
    return { extent: extentOf(edges.flatMap(({ from, to }) => [from, to])), edges, halves: null };
  }
  const middle = Math.ceil(edges.length / 2);
  const first = runOf(edges.slice(0, middle));
  const second = runOf(edges.slice(middle));
  const extent: Extent = {
    left: Math.min(first.extent.left, second.extent.left),
    top: Math.min(first.extent.top, second.extent.top),
    right: Math.max(first.extent.right, second.extent.right),
    bottom: Math.max(first.extent.bottom, second.extent.bottom),
  };
  return { extent, edges, halves: [first, second] };
}

const apart = (a: Extent, b: Extent): boolean =>
  a.right < b.left || b.right < a.left || a.bottom < b.top || b.bottom < a.top;

/** Whether two edges, the first earlier in the list, meet elsewhere than at the corner that they share as neighbours. */
function meetAstray(a: Edge, b: Edge): boolean {
  if (a.next === b.place && foldsBack(a, b)) return true;
  if (b.next === a.place && foldsBack(b, a)) return true;
  if (a.next === b.place || b.next === a.place) return false;
  if (apart(extentOf([a.from, a.to]), extentOf([b.from, b.to]))) return false;
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
