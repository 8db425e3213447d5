import type { Length } from "../lengths/index.ts";
import { crossingsOf } from "./simple.ts";
import type { RealPoint } from "./types.ts";

/**
 * The same outline with fewer points, none of them new: every point left out lies within `tolerance`
 * of the edge that passes it by (Ramer 1972; Douglas and Peucker 1973). A simple outline stays
 * simple: where two of the new edges would meet, points are taken back between their ends until
 * they do not. Fewer than four points, or an outline that crosses itself, come back as they are.
 * Where the list starts does not matter to the points kept, unless several lie equally far out.
 */
export function simplified<P extends RealPoint>(outline: readonly P[], tolerance: Length): readonly P[] {
  if (outline.length < 4 || crossingsOf(outline, 1).length > 0) return outline;
  const kept = new Set(outermost(outline));
  for (const [from, to] of gaps(kept, outline.length)) keepFar(outline, from, to, tolerance, kept);
  for (;;) {
    const edges = gaps(kept, outline.length);
    const meeting = crossingsOf(pick(outline, kept), outline.length).flat();
    const before = kept.size;
    for (const edge of new Set(meeting)) {
      const gap = edges[edge];
      if (gap === undefined) continue;
      const far = farthest(outline, gap[0], gap[1]);
      if (far === null) continue;
      kept.add(far.place);
      // A point that is taken back moves the edge: what was near the long edge need not be near the two.
      keepFar(outline, gap[0], far.at, tolerance, kept);
      keepFar(outline, far.at, gap[1], tolerance, kept);
    }
    // Each round takes points back, and all of them together are the outline itself, which is simple.
    if (kept.size === before) return pick(outline, kept);
  }
}

/** The places of two points that any likeness must keep: the one farthest left (of those the highest), and the farthest from it. */
function outermost(outline: readonly RealPoint[]): readonly [number, number] {
  let first: { place: number; point: RealPoint } | null = null;
  for (const [place, point] of outline.entries()) {
    if (first === null || fartherLeft(point, first.point)) first = { place, point };
  }
  let last = { place: 0, far: -1 };
  for (const [place, { x, y }] of outline.entries()) {
    const far = first === null ? 0 : Math.hypot(x - first.point.x, y - first.point.y);
    if (far > last.far) last = { place, far };
  }
  return [first?.place ?? 0, last.place];
}

const fartherLeft = (a: RealPoint, b: RealPoint): boolean => (a.x === b.x ? a.y < b.y : a.x < b.x);

/** From each kept place to the next one; the last gap's end is counted on past the end of the list. */
function gaps(kept: ReadonlySet<number>, length: number): readonly (readonly [number, number])[] {
  const places = [...kept].toSorted((a, b) => a - b);
  const round = (places[0] ?? 0) + length;
  return places.map((place, index) => [place, places[index + 1] ?? round]);
}

function keepFar(
  outline: readonly RealPoint[],
  from: number,
  to: number,
  tolerance: number,
  kept: Set<number>,
): void {
  // A list of its own instead of recursion: an outline of thousands of points may split one by one.
  const open: (readonly [number, number])[] = [[from, to]];
  for (let gap = open.pop(); gap !== undefined; gap = open.pop()) {
    const far = farthest(outline, gap[0], gap[1]);
    if (far === null || far.distance <= tolerance) continue;
    kept.add(far.place);
    open.push([gap[0], far.at], [far.at, gap[1]]);
  }
}

/** The point between two places that lies farthest from the edge between them; null when none lies between. */
function farthest(
  outline: readonly RealPoint[],
  from: number,
  to: number,
): { readonly place: number; readonly at: number; readonly distance: number } | null {
  const point = (at: number): RealPoint => outline[at % outline.length] ?? { x: 0, y: 0 };
  let best = { at: -1, distance: -1 };
  for (let at = from + 1; at < to; at++) {
    const distance = distanceToEdge(point(at), point(from), point(to));
    if (distance > best.distance) best = { at, distance };
  }
  return best.at < 0 ? null : { ...best, place: best.at % outline.length };
}

function distanceToEdge(point: RealPoint, from: RealPoint, to: RealPoint): number {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const squared = dx * dx + dy * dy;
  const along = squared === 0 ? 0 : ((point.x - from.x) * dx + (point.y - from.y) * dy) / squared;
  const held = Math.min(Math.max(along, 0), 1);
  return Math.hypot(point.x - from.x - held * dx, point.y - from.y - held * dy);
}

const pick = <P>(outline: readonly P[], kept: ReadonlySet<number>): readonly P[] =>
  outline.filter((_, place) => kept.has(place));
