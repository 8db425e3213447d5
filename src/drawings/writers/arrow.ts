import type { RealPoint } from "../../geometry/index.ts";
import type { Mark } from "../marks.ts";

/** Half of an arrowhead's angle: filled, 20 degrees in all (ISO 129-1 leaves 15 to 90). */
const HALF_ANGLE = 10;
const HALF_WIDTH = Math.tan((HALF_ANGLE * Math.PI) / 180);

/** Tip and both back corners of an arrowhead, `size` from the tip to its back. */
export function arrowCorners(
  mark: Extract<Mark, { kind: "arrowhead" }>,
): readonly [RealPoint, RealPoint, RealPoint] {
  const turn = (mark.degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const half = mark.size * HALF_WIDTH;
  const back = (way: number): RealPoint => ({
    x: mark.at.x - mark.size * cos - way * half * sin,
    y: mark.at.y - mark.size * sin + way * half * cos,
  });
  return [mark.at, back(1), back(-1)];
}
