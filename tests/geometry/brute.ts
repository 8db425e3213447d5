import type { Box, Outline, RealPoint } from "../../src/geometry/index.ts";
import { Fraction } from "../reference/fraction.ts";
import type { Chance } from "../reference/chance.ts";

/** Slow and plain ways to the same answers, sharing nothing with the ways under test. */

interface ExactPoint {
  readonly x: Fraction;
  readonly y: Fraction;
}

/** A double is a whole number over a power of two. */
export function exactly(value: number): Fraction {
  let [top, bottom] = [value, 1n];
  while (!Number.isInteger(top)) [top, bottom] = [top * 2, bottom * 2n];
  return Fraction.of(BigInt(top), bottom);
}

const exactPoints = (points: readonly RealPoint[]): readonly ExactPoint[] =>
  points.map(({ x, y }) => ({ x: exactly(x), y: exactly(y) }));

function twiceArea(points: readonly ExactPoint[]): Fraction {
  return points.reduce((sum, { x, y }, index) => {
    const next = points[(index + 1) % points.length] ?? { x, y };
    return sum.plus(x.times(next.y)).minus(next.x.times(y));
  }, Fraction.zero);
}

/** What of a polygon lies on one side of an upright or level line: each edge that crosses it is cut there. */
function cutOff(
  points: readonly ExactPoint[],
  axis: "x" | "y",
  at: Fraction,
  side: 1 | -1,
): readonly ExactPoint[] {
  const kept = (point: ExactPoint): boolean => point[axis].against(at) * side >= 0;
  return points.flatMap((point, index) => {
    const next = points[(index + 1) % points.length] ?? point;
    const here = kept(point) ? [point] : [];
    if (kept(point) === kept(next)) return here;
    const share = at.minus(point[axis]).over(next[axis].minus(point[axis]));
    const between = (from: Fraction, to: Fraction): Fraction => from.plus(share.times(to.minus(from)));
    return [...here, { x: between(point.x, next.x), y: between(point.y, next.y) }];
  });
}

/** Exactly twice the area that a polygon and a box have in common. */
export function exactTwiceCommonArea(points: readonly RealPoint[], box: Box): Fraction {
  const right = Fraction.of(box.left + box.width);
  const bottom = Fraction.of(box.top + box.height);
  let cut = cutOff(exactPoints(points), "x", Fraction.of(box.left), 1);
  cut = cutOff(cut, "x", right, -1);
  cut = cutOff(cut, "y", Fraction.of(box.top), 1);
  cut = cutOff(cut, "y", bottom, -1);
  const area = twiceArea(cut);
  return area.sign() < 0 ? Fraction.zero.minus(area) : area;
}

/** Whether a box lies wholly inside a simple polygon: what they have in common is all of the box. */
export const exactlyInside = (points: readonly RealPoint[], box: Box): boolean =>
  box.width > 0 &&
  box.height > 0 &&
  exactTwiceCommonArea(points, box).same(Fraction.of(2n * BigInt(box.width) * BigInt(box.height)));

/** The widest stretch that no edge enters between two heights and that lies inside: its two ends. */
export function widestBetween(points: readonly RealPoint[], top: number, bottom: number): [number, number] {
  const blocked: [number, number][] = [];
  points.forEach((from, index) => {
    const to = points[(index + 1) % points.length] ?? from;
    if (Math.max(from.y, to.y) <= top || Math.min(from.y, to.y) >= bottom) return;
    const xs = [top, bottom].flatMap((y) =>
      (from.y - y) * (to.y - y) < 0 ? [from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y)] : [],
    );
    for (const end of [from, to]) if (end.y >= top && end.y <= bottom) xs.push(end.x);
    blocked.push([Math.min(...xs), Math.max(...xs)]);
  });
  blocked.sort((a, b) => a[0] - b[0]);
  let best: [number, number] = [0, 0];
  let reached = -Infinity;
  for (const [from, to] of blocked) {
    if (from - reached > best[1] - best[0] && insideAt(points, (from + reached) / 2, (top + bottom) / 2)) {
      best = [reached, from];
    }
    reached = Math.max(reached, to);
  }
  return best;
}

/** By counting the edges that a ray to the left meets. */
function insideAt(points: readonly RealPoint[], x: number, y: number): boolean {
  let inside = false;
  points.forEach((from, index) => {
    const to = points[(index + 1) % points.length] ?? from;
    if (from.y > y === to.y > y) return;
    if (from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y) < x) inside = !inside;
  });
  return inside;
}

/**
 * A rectangle inside as large as a climber finds: from many starts, each a pair of heights moved by
 * ever smaller steps for as long as the area grows. Never above the true largest area.
 */
export function climbedArea(points: readonly RealPoint[], chance: Chance, starts: number): number {
  const heights = points.map(({ y }) => y).toSorted((a, b) => a - b);
  const [lowest, highest] = [heights[0] ?? 0, heights.at(-1) ?? 0];
  const areaAt = (top: number, bottom: number): number => {
    if (!(bottom > top)) return 0;
    const [left, right] = widestBetween(points, top, bottom);
    return (right - left) * (bottom - top);
  };
  const height = (): number =>
    chance.happens(0.5)
      ? (heights[chance.whole(0, heights.length - 1)] ?? 0)
      : lowest + (highest - lowest) * chance.next();
  let most = 0;
  for (let start = 0; start < starts; start++) {
    const [one, other] = [height(), height()];
    let [top, bottom] = [Math.min(one, other), Math.max(one, other)];
    let area = areaAt(top, bottom);
    for (let step = (highest - lowest) / 4; step > 1e-3; ) {
      const moves = [-step, 0, step].flatMap((a) =>
        [-step, 0, step].map((b) => [top + a, bottom + b] as const),
      );
      const better = moves.find(([a, b]) => areaAt(a, b) > area);
      if (better === undefined) step /= 2;
      else {
        [top, bottom] = better;
        area = areaAt(top, bottom);
      }
    }
    most = Math.max(most, area);
  }
  return most;
}

/** All pairs of edges that share a point they should not, by exact fractions and no shortcut; null when there are none. */
export function firstCrossing(points: Outline): readonly [number, number] | null {
  const exact = exactPoints(points);
  const edges = exact.map((from, place) => ({ place, from, to: exact[(place + 1) % exact.length] ?? from }));
  for (const a of edges) {
    for (const b of edges.slice(a.place + 1)) {
      const shared = sharedStretch(a.from, a.to, b.from, b.to);
      if (shared === "apart") continue;
      const neighbours = b.place === a.place + 1 || (a.place === 0 && b.place === edges.length - 1);
      if (!neighbours || shared === "stretch" || edges.length < 3) return [a.place, b.place];
    }
  }
  return null;
}

const cross = (x1: Fraction, y1: Fraction, x2: Fraction, y2: Fraction): Fraction =>
  x1.times(y2).minus(y1.times(x2));
const within = (share: Fraction): boolean => share.sign() >= 0 && !Fraction.one.below(share);

/** How two segments meet, by solving for the point where their lines do. */
function sharedStretch(
  a: ExactPoint,
  b: ExactPoint,
  c: ExactPoint,
  d: ExactPoint,
): "apart" | "point" | "stretch" {
  const [abx, aby] = [b.x.minus(a.x), b.y.minus(a.y)];
  const [cdx, cdy] = [d.x.minus(c.x), d.y.minus(c.y)];
  const [acx, acy] = [c.x.minus(a.x), c.y.minus(a.y)];
  const parallel = cross(abx, aby, cdx, cdy);
  if (parallel.sign() !== 0) {
    const onFirst = cross(acx, acy, cdx, cdy).over(parallel);
    const onSecond = cross(acx, acy, abx, aby).over(parallel);
    return within(onFirst) && within(onSecond) ? "point" : "apart";
  }
  if (cross(acx, acy, abx, aby).sign() !== 0) return "apart";
  const squared = abx.times(abx).plus(aby.times(aby));
  const shareOf = (p: ExactPoint): Fraction =>
    p.x.minus(a.x).times(abx).plus(p.y.minus(a.y).times(aby)).over(squared);
  const [one, other] = [shareOf(c), shareOf(d)];
  const [from, to] = other.below(one) ? [other, one] : [one, other];
  const start = from.sign() < 0 ? Fraction.zero : from;
  const end = Fraction.one.below(to) ? Fraction.one : to;
  return end.below(start) ? "apart" : start.same(end) ? "point" : "stretch";
}
