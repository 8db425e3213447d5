import { turnOf } from "./exact.ts";
import { placeOf } from "./polygon.ts";
import type { Outline, RealBox, RealPoint } from "./types.ts";

/**
 * Whether an upright box of some width and height lies wholly inside an outline; touching its edge
 * is inside. Exact for whole boxes and all finite points: the last word on every rectangle that is
 * found by computing in doubles. Of an outline that crosses itself, inside is what `placeOf` says,
 * and no edge may enter the box.
 */
export function outlineHolds(outline: Outline | readonly RealPoint[], box: RealBox): boolean {
  if (!(box.width > 0 && box.height > 0)) return false;
  let from = outline.at(-1);
  for (const to of outline) {
    if (from !== undefined && enters(from, to, box)) return false;
    from = to;
  }
  // No edge within: all of the box lies where its centre does.
  const centre = { x: box.left + box.width / 2, y: box.top + box.height / 2 };
  return placeOf(centre, outline) === "inside";
}

/** Whether an edge has points within the open box. It has none when it lies beside one of the box's sides, or the box beside its line. */
function enters(from: RealPoint, to: RealPoint, box: RealBox): boolean {
  const right = box.left + box.width;
  const bottom = box.top + box.height;
  if (from.x <= box.left && to.x <= box.left) return false;
  if (from.x >= right && to.x >= right) return false;
  if (from.y <= box.top && to.y <= box.top) return false;
  if (from.y >= bottom && to.y >= bottom) return false;
  const sides = [
    turnOf(from, to, { x: box.left, y: box.top }),
    turnOf(from, to, { x: right, y: box.top }),
    turnOf(from, to, { x: right, y: bottom }),
    turnOf(from, to, { x: box.left, y: bottom }),
  ];
  return !(sides.every((side) => side >= 0) || sides.every((side) => side <= 0));
}
