import type { Composition } from "../../assembly/index.ts";
import type { Point, Side } from "../../geometry/index.ts";
import { add, half, type Length, subtract, ZERO } from "../../lengths/index.ts";
import type { View } from "./layout.ts";
import { place } from "./pen.ts";

/** An edge of the window that can be dragged: a slider whose value is the border beside it. */
export interface Grip {
  readonly side: Side;
  /** The middle of the edge, in the package frame. */
  readonly at: Point;
  readonly slides: "x" | "y";
  /** The border as it is. The opposite one yields, so that the two together stay `most`. */
  readonly border: Length;
  readonly least: Length;
  readonly most: Length;
}

/** The four edges of the lowest mat's opening at its back, in the order head, right, foot, left; none without a mat. */
export function grips(composition: Composition): Grip[] {
  const mat = composition.mats[0];
  if (!mat) return [];
  const { head, left, right, foot } = mat.borders;
  const { width, height } = composition.outer;
  const windowRight = subtract(width, right);
  const windowBottom = subtract(height, foot);
  const middle = { x: half(add(left, windowRight), "down"), y: half(add(head, windowBottom), "down") };
  const across = { slides: "x", least: ZERO, most: add(left, right) } as const;
  const down = { slides: "y", least: ZERO, most: add(head, foot) } as const;
  return [
    { side: "head", at: { x: middle.x, y: head }, border: head, ...down },
    { side: "right", at: { x: windowRight, y: middle.y }, border: right, ...across },
    { side: "foot", at: { x: middle.x, y: windowBottom }, border: foot, ...down },
    { side: "left", at: { x: left, y: middle.y }, border: left, ...across },
  ];
}

/** Where a place in the package frame lies on a front view drawn at this scale. */
export const onView = (view: View, scale: number, at: Point): Point => ({
  x: add(view.frame.left, place(at.x * scale)),
  y: add(view.frame.top, place(at.y * scale)),
});
