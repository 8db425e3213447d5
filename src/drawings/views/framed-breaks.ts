import { add, fromReal, type Length, mm, subtract, ZERO } from "../../lengths/index.ts";
import type { Mark } from "../marks.ts";

/** How far the breaks' lines reach past the drawing, and how far their edges are cleared. */
const PAST = mm(1);
const CLEAR = mm(0.4);

/** Where a section breaks off at its left: the cut edges cleared, and a break line (ISO 128). */
export const ragged = (height: Length): readonly Mark[] => [
  cleared(mm(-1.2), CLEAR, height),
  zigzag(CLEAR, height),
];

/** Where `wide` of the drawing stands for what is left out. */
export function broken(at: Length, wide: Length, height: Length): readonly Mark[] {
  const [near, far] = [subtract(at, CLEAR), add(add(at, wide), CLEAR)];
  return [cleared(near, far, height), zigzag(near, height), zigzag(far, height)];
}

function cleared(near: Length, far: Length, height: Length): Mark {
  const [up, down] = [subtract(ZERO, PAST), add(height, PAST)];
  return {
    kind: "area",
    points: [
      { x: near, y: up },
      { x: far, y: up },
      { x: far, y: down },
      { x: near, y: down },
    ],
    fill: "paper",
    line: null,
  };
}

/** A thin line with one zigzag in its middle. */
function zigzag(x: Length, height: Length): Mark {
  const middle = fromReal(height / 2, "nearest");
  return {
    kind: "polyline",
    points: [
      { x, y: subtract(ZERO, PAST) },
      { x, y: subtract(middle, mm(1.6)) },
      { x: subtract(x, mm(1)), y: subtract(middle, mm(0.6)) },
      { x: add(x, mm(1)), y: add(middle, mm(0.6)) },
      { x, y: add(middle, mm(1.6)) },
      { x, y: add(height, PAST) },
    ],
    line: "thin",
  };
}
