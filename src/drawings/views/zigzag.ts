import type { RealPoint } from "../../geometry/index.ts";
import type { Mark } from "../marks.ts";
import { area, type Pen, polyline } from "./pen.ts";
import type { Stack } from "./stack.ts";

/** Half of the clear ground between a break's two lines, in pixels. */
const BREAK_HALF = 5;

/** The zigzag where the drawing breaks off inside the window. */
export function innerBreak(pen: Pen, stack: Stack): Mark[] {
  return [polyline(zigzag(pen, stack, stack.inner, 6), "thin")];
}

/** A strip taken out of the stack: clear ground between two zigzags. */
export function breakMarks(pen: Pen, stack: Stack, at: number): Mark[] {
  const half = BREAK_HALF * pen.pixel;
  const left = zigzag(pen, stack, at - half, 5);
  const right = zigzag(pen, stack, at + half, 5);
  return [area([...left, ...right.toReversed()], "paper"), polyline(left, "thin"), polyline(right, "thin")];
}

function zigzag(pen: Pen, stack: Stack, x: number, swing: number): RealPoint[] {
  const px = (count: number): number => count * pen.pixel;
  const top = Math.min(...stack.mats.map((mat) => mat.top), stack.mount.top);
  const middle = (top + stack.mount.bottom) / 2;
  return [
    { x, y: top - px(8) },
    { x, y: middle - px(swing) },
    { x: x - px(swing), y: middle - px(swing / 5) },
    { x: x + px(swing), y: middle + px(swing / 5) },
    { x, y: middle + px(swing) },
    { x, y: stack.mount.bottom + px(8) },
  ];
}
