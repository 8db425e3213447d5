import type { ComposedMat, Composition } from "../../assembly/index.ts";
import { subtract } from "../../lengths/index.ts";
import type { Mark } from "../marks.ts";
import { type DimensionLine, type Dimensions, dimension, extensionLines, type Stretch } from "./dimension.ts";
import { ROOM_ABOVE } from "./head.ts";
import type { Surface } from "./layout.ts";
import type { Pen } from "./pen.ts";
import type { Rect } from "./shapes.ts";

/** Where the dimension lines lie, in pixels off what is drawn: the chain next to it, the whole outermost. */
export const ABOVE = { chain: 12, whole: 38 } as const;
export const BESIDE = { chain: 26, whole: 54 } as const;
/** Room between what overhangs one row of figures and the next. */
const CLEAR = 8;

export interface BorderDimensions {
  readonly extensions: readonly Mark[];
  /** A group for each stretch: `border-head`, `window-width`, `outer-height` … */
  readonly stretches: readonly Mark[];
  /** How far figures at the right hang under all that is drawn; nought or less where they do not. */
  readonly below: number;
}

interface Placing {
  readonly on: Surface;
  /** The opening that is dimensioned. */
  readonly window: Rect;
  /** All that is drawn: figures stand clear of it. */
  readonly drawn: Rect;
  /** HEAD stands above the board, under the figures. */
  readonly headAbove: boolean;
}

/**
 * Chain dimensions of a mat's borders, above and at the right, whole sizes outermost. On a mirrored
 * surface the front's right comes first. Groups are named by the front's sides either way.
 */
export function borderDimensions(
  composition: Composition,
  mat: ComposedMat,
  pen: Pen,
  placing: Placing,
): BorderDimensions {
  const px = (count: number): number => count * pen.pixel;
  const { on, window, drawn } = placing;
  const { board, mirrored } = on;
  const { head, left, right, foot } = mat.borders;
  const { width, height } = composition.outer;
  const above = (row: number): DimensionLine => ({
    along: "x",
    at: drawn.top - px(row + (placing.headAbove ? ROOM_ABOVE : 0)),
    outline: board.top,
  });
  const across = [
    dimensioned(pen, above(ABOVE.chain), [
      {
        name: mirrored ? "border-right" : "border-left",
        from: board.left,
        to: window.left,
        length: mirrored ? right : left,
      },
      {
        name: "window-width",
        from: window.left,
        to: window.right,
        length: subtract(subtract(width, left), right),
      },
      {
        name: mirrored ? "border-left" : "border-right",
        from: window.right,
        to: board.right,
        length: mirrored ? left : right,
      },
    ]),
    dimensioned(pen, above(ABOVE.whole), [
      { name: "outer-width", from: board.left, to: board.right, length: width },
    ]),
  ];
  const column = (edge: number, row: number): DimensionLine => ({
    along: "y",
    at: edge + px(row),
    outline: board.right,
  });
  const downFrom = (edge: number) => [
    dimensioned(pen, column(edge, BESIDE.chain), [
      { name: "border-head", from: board.top, to: window.top, length: head },
      {
        name: "window-height",
        from: window.top,
        to: window.bottom,
        length: subtract(subtract(height, head), foot),
      },
      { name: "border-foot", from: window.bottom, to: board.bottom, length: foot },
    ]),
    dimensioned(pen, column(edge, BESIDE.whole), [
      { name: "outer-height", from: board.top, to: board.bottom, length: height },
    ]),
  ];
  const close = downFrom(drawn.right);
  // Where a column rises above what is drawn and a row overhangs it at the right, the column moves out.
  const rises = close.some(({ set }) => set.low < drawn.top);
  const reach = Math.max(...across.map(({ set }) => set.high));
  const down = rises && reach > drawn.right ? downFrom(reach + px(CLEAR)) : close;
  return {
    extensions: [...extensionLines(pen, across), ...extensionLines(pen, down)],
    stretches: [...across, ...down].flatMap(({ set }) => set.marks),
    below: Math.max(...down.map(({ set }) => set.high)) - drawn.bottom,
  };
}

const dimensioned = (
  pen: Pen,
  on: DimensionLine,
  stretches: readonly Stretch[],
): { readonly on: DimensionLine; readonly set: Dimensions } => ({ on, set: dimension(pen, on, stretches) });
