import type { RealPoint } from "../geometry/index.ts";

/** The point so many ticks from one point towards another; the one itself where both are the same. */
export function towards(from: RealPoint, to: RealPoint, by: number): RealPoint {
  const far = Math.hypot(to.x - from.x, to.y - from.y);
  const share = far === 0 ? 0 : by / far;
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}
