import type { Composition, ComposedMat } from "../../assembly/index.ts";
import type { Box, RealPoint } from "../../geometry/index.ts";
import type { Drawing } from "../marks.ts";
import type { Rect } from "./shapes.ts";

/** A drawing of one package, and where the package's outer size lies on it. */
export interface View extends Drawing {
  readonly frame: Box;
}

/** Real lengths in the package frame to a view's own space: scaled, and mirrored where the board is turned over. */
export interface Surface {
  readonly scale: number;
  readonly mirrored: boolean;
  /** The package's outer size, at its own top-left corner. */
  readonly board: Rect;
  readonly point: (point: RealPoint) => RealPoint;
}

/** The front as it hangs, or the back as the hand sees it, x_back = W - x. */
export function surfaceOf(composition: Composition, scale: number, mirrored: boolean): Surface {
  const { width, height } = composition.outer;
  return {
    scale,
    mirrored,
    board: { left: 0, top: 0, right: width * scale, bottom: height * scale },
    point: (point) => ({
      x: (mirrored ? width - point.x : point.x) * scale,
      y: point.y * scale,
    }),
  };
}

/** A mat's opening nearest the print (its back) or at its face, on a surface. */
export function openingOf(
  composition: Composition,
  mat: ComposedMat,
  which: "back" | "face",
  on: Surface,
): Rect {
  const { width, height } = composition.outer;
  const inset = which === "back" ? 0 : mat.bevel.plan;
  const left = (mat.borders.left - inset) * on.scale;
  const right = (width - mat.borders.right + inset) * on.scale;
  const mirror = (x: number): number => width * on.scale - x;
  return {
    left: on.mirrored ? mirror(right) : left,
    right: on.mirrored ? mirror(left) : right,
    top: (mat.borders.head - inset) * on.scale,
    bottom: (height - mat.borders.foot + inset) * on.scale,
  };
}

/** The sheet's own edge on a surface: its torn outline where it has one, else its four corners. */
export const sheetOn = (composition: Composition, on: Surface): RealPoint[] | null =>
  composition.print ? (composition.print.sheetOutline ?? composition.print.sheetCorners).map(on.point) : null;

export const imageOn = (composition: Composition, on: Surface): RealPoint[] | null =>
  composition.print ? composition.print.imageOutline.map(on.point) : null;

/** Whether the whole sheet is shown, so that its edge is meant to be seen. */
export const isFloated = (composition: Composition): boolean => composition.design.window.show === "sheet";
