import type { RealPoint } from "../../geometry/index.ts";

/** An upright rectangle by its edges; an opening that cannot be cut may have `right` before `left`. */
export interface Rect {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const widthOf = (rect: Rect): number => rect.right - rect.left;
export const heightOf = (rect: Rect): number => rect.bottom - rect.top;
export const isOpen = (rect: Rect): boolean => rect.right > rect.left && rect.bottom > rect.top;

export const corners = (rect: Rect): RealPoint[] => [
  { x: rect.left, y: rect.top },
  { x: rect.right, y: rect.top },
  { x: rect.right, y: rect.bottom },
  { x: rect.left, y: rect.bottom },
];

/** What two rectangles share; not open where they share nothing. */
export const common = (a: Rect, b: Rect): Rect => ({
  left: Math.max(a.left, b.left),
  top: Math.max(a.top, b.top),
  right: Math.min(a.right, b.right),
  bottom: Math.min(a.bottom, b.bottom),
});

export const contains = (outer: Rect, inner: Rect): boolean =>
  inner.left >= outer.left &&
  inner.right <= outer.right &&
  inner.top >= outer.top &&
  inner.bottom <= outer.bottom;

/** The upright rectangle round points; `left` past `right` where there are none. */
export function aroundAll(points: readonly RealPoint[]): Rect {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  return { left, top, right, bottom };
}

interface Edge {
  readonly inside: (point: RealPoint) => boolean;
  readonly cross: (a: RealPoint, b: RealPoint) => RealPoint;
}

const atX =
  (x: number) =>
  (a: RealPoint, b: RealPoint): RealPoint => ({ x, y: a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x) });
const atY =
  (y: number) =>
  (a: RealPoint, b: RealPoint): RealPoint => ({ x: a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y), y });

const edgesOf = (rect: Rect): Edge[] => [
  { inside: (point) => point.x >= rect.left, cross: atX(rect.left) },
  { inside: (point) => point.x <= rect.right, cross: atX(rect.right) },
  { inside: (point) => point.y >= rect.top, cross: atY(rect.top) },
  { inside: (point) => point.y <= rect.bottom, cross: atY(rect.bottom) },
];

/** The part of a closed polygon inside an upright rectangle (Sutherland and Hodgman, 1974); empty where there is none. */
export function clipPolygon(points: readonly RealPoint[], rect: Rect): RealPoint[] {
  if (!isOpen(rect)) return [];
  let kept = [...points];
  for (const edge of edgesOf(rect)) {
    const next: RealPoint[] = [];
    let before = kept.at(-1);
    let wasInside = before !== undefined && edge.inside(before);
    for (const point of kept) {
      const isInside = edge.inside(point);
      if (before !== undefined && wasInside !== isInside) next.push(edge.cross(before, point));
      if (isInside) next.push(point);
      before = point;
      wasInside = isInside;
    }
    kept = next;
  }
  return kept.length < 3 ? [] : kept;
}

/** Whether both ends lie past one same edge: told for most of a rough outline without reckoning where it crosses. */
const isBeside = (a: RealPoint, b: RealPoint, rect: Rect): boolean =>
  (a.x < rect.left && b.x < rect.left) ||
  (a.x > rect.right && b.x > rect.right) ||
  (a.y < rect.top && b.y < rect.top) ||
  (a.y > rect.bottom && b.y > rect.bottom);

/** Where along a to b the segment lies inside the rectangle, as shares from 0 to 1; null where it does not (Liang and Barsky, 1984). */
function insideShare(a: RealPoint, b: RealPoint, rect: Rect): readonly [number, number] | null {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  let enter = 0;
  let leave = 1;
  for (const [towards, room] of [
    [-dx, a.x - rect.left],
    [dx, rect.right - a.x],
    [-dy, a.y - rect.top],
    [dy, rect.bottom - a.y],
  ] as const) {
    // Strictly inside only: an edge that runs along the rectangle's own is hidden under it.
    if (towards === 0) {
      if (room <= 0) return null;
      continue;
    }
    const share = room / towards;
    if (towards < 0) enter = Math.max(enter, share);
    else leave = Math.min(leave, share);
  }
  return enter < leave ? [enter, leave] : null;
}

const onSegment = (a: RealPoint, b: RealPoint, share: number): RealPoint =>
  share <= 0 ? a : share >= 1 ? b : { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };

/** The pieces of a closed polygon's edge that lie inside (or, with `outside`, outside) an upright rectangle. */
export function clipEdge(
  points: readonly RealPoint[],
  rect: Rect,
  side: "inside" | "outside",
): RealPoint[][] {
  const pieces: RealPoint[][] = [];
  const keep = (a: RealPoint, b: RealPoint): void => {
    const last = pieces.at(-1);
    const end = last?.at(-1);
    if (last && end && end.x === a.x && end.y === a.y) last.push(b);
    else pieces.push([a, b]);
  };
  let a = points.at(-1);
  for (const b of points) {
    if (a === undefined) break;
    const share = isBeside(a, b, rect) ? null : insideShare(a, b, rect);
    if (side === "inside") {
      if (share) keep(onSegment(a, b, share[0]), onSegment(a, b, share[1]));
    } else if (!share) {
      if (!alongEdge(a, b, rect)) keep(a, b);
    } else {
      if (share[0] > 0) keep(a, onSegment(a, b, share[0]));
      if (share[1] < 1) keep(onSegment(a, b, share[1]), b);
    }
    a = b;
  }
  return pieces;
}

const alongEdge = (a: RealPoint, b: RealPoint, rect: Rect): boolean => within(a, rect) && within(b, rect);

const within = (point: RealPoint, rect: Rect): boolean =>
  point.x >= rect.left && point.x <= rect.right && point.y >= rect.top && point.y <= rect.bottom;

/** The same polygon without the points that lie nearer than `least` to the one kept before: nobody sees them at this scale. */
export function thinned(points: readonly RealPoint[], least: number): RealPoint[] {
  const kept: RealPoint[] = [];
  let last: RealPoint | undefined;
  for (const point of points) {
    if (last && (point.x - last.x) ** 2 + (point.y - last.y) ** 2 < least ** 2) continue;
    kept.push(point);
    last = point;
  }
  return kept.length < 3 ? [...points] : kept;
}
