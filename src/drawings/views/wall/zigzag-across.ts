import type { RealPoint } from "../../../geometry/index.ts";
import type { Pen } from "../pen.ts";

/** About so far from one zigzag of a level break line to the next, and how far it swings, in pixels. */
const EVERY = 340;
const SWING = 6;

/** A level break line with its zigzags (ISO 128-3). */
export function zigzagAcross({ pixel }: Pen, left: number, right: number, y: number): RealPoint[] {
  const count = Math.max(1, Math.round((right - left) / (EVERY * pixel)));
  const points: RealPoint[] = [{ x: left, y }];
  for (let index = 0; index < count; index++) {
    const middle = left + ((index + 0.5) * (right - left)) / count;
    const swing = SWING * pixel;
    points.push(
      { x: middle - 1.5 * swing, y },
      { x: middle - swing / 2, y: y - swing },
      { x: middle + swing / 2, y: y + swing },
      { x: middle + 1.5 * swing, y },
    );
  }
  return [...points, { x: right, y }];
}
