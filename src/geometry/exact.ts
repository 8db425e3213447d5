import type { Outline, RealPoint } from "./types.ts";

/**
 * Signs that must not be wrong. A product of two coordinates can leave the safe integers, so a sign
 * comes from doubles only where their error cannot reach it, and from BigInt everywhere else.
 */

export type Sign = -1 | 0 | 1;

/**
 * Largest relative error of the determinant below, computed in doubles: (3 + 16e)e for e = 2^-53
 * (J. R. Shewchuk, "Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric
 * Predicates", Discrete & Computational Geometry 18, 1997).
 */
const RELATIVE_ERROR = 3.3306690738754716e-16;
/** Far above what products can lose by falling out of the doubles at the small end. */
const SMALLEST_ERROR = 1e-300;

/**
 * Which way one turns on the way from `a` over `b` to `c`: 1 clockwise as seen (y runs down), -1
 * the other way, 0 when the three lie on one line. Exact for all finite coordinates.
 */
export function turnOf(a: RealPoint, b: RealPoint, c: RealPoint): Sign {
  const one = (b.x - a.x) * (c.y - a.y);
  const other = (b.y - a.y) * (c.x - a.x);
  const determinant = one - other;
  const error = RELATIVE_ERROR * (Math.abs(one) + Math.abs(other)) + SMALLEST_ERROR;
  if (determinant > error) return 1;
  if (determinant < -error) return -1;
  const [ax = 0n, ay = 0n, bx = 0n, by = 0n, cx = 0n, cy = 0n] = onOneGrid([a.x, a.y, b.x, b.y, c.x, c.y]);
  return signOf((bx - ax) * (cy - ay) - (by - ay) * (cx - ax));
}

/**
 * Twice the area inside an outline, in square ticks, exact: above nought when its points go round
 * clockwise as seen, below when they go the other way. Where an outline crosses itself, parts cancel.
 */
export const twiceSignedArea = (outline: Outline): bigint =>
  shoelace(outline.flatMap(({ x, y }) => [BigInt(x), BigInt(y)]));

/** Which way the points go round: 1 clockwise as seen, -1 the other way, 0 when they hold no area. Exact for all finite coordinates. */
export const windingOf = (points: readonly RealPoint[]): Sign =>
  signOf(shoelace(onOneGrid(points.flatMap(({ x, y }) => [x, y]))));

function shoelace(flat: readonly bigint[]): bigint {
  let [x = 0n, y = 0n] = flat.slice(-2);
  let total = 0n;
  for (let at = 0; at < flat.length; at += 2) {
    const nextX = flat[at] ?? 0n;
    const nextY = flat[at + 1] ?? 0n;
    total += x * nextY - nextX * y;
    x = nextX;
    y = nextY;
  }
  return total;
}

const signOf = (value: bigint): Sign => (value > 0n ? 1 : value < 0n ? -1 : 0);

/** The same numbers times one power of two, large enough to make all of them whole. A double is always such a fraction. */
function onOneGrid(values: readonly number[]): bigint[] {
  const doublings = values.map((value) => {
    let times = 0;
    for (let whole = value; !Number.isInteger(whole); whole *= 2) times++;
    return times;
  });
  const most = doublings.reduce((a, b) => Math.max(a, b), 0);
  return values.map((value, index) => {
    const own = doublings[index] ?? 0;
    return BigInt(timesPowerOfTwo(value, own)) << BigInt(most - own);
  });
}

/** Exact as long as the result is a double: one step at a time, since 2^1074 itself is none. */
function timesPowerOfTwo(value: number, power: number): number {
  let result = value;
  for (let step = 0; step < power; step++) result *= 2;
  return result;
}
