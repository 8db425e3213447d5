import type { Mark } from "../marks.ts";
import { fitted } from "./extent.ts";
import type { Surface, View } from "./layout.ts";
import { type Pen, place } from "./pen.ts";
import { heightOf, widthOf } from "./shapes.ts";

/** Lays a view's marks on a drawing that just holds them, `margin` pixels all round. */
export function finished(pen: Pen, on: Surface, marks: readonly Mark[], margin: number): View {
  const drawing = fitted(marks, place(margin * pen.pixel), pen.measure);
  return {
    width: drawing.width,
    height: drawing.height,
    marks: drawing.marks,
    frame: {
      left: drawing.origin.x,
      top: drawing.origin.y,
      width: place(widthOf(on.board)),
      height: place(heightOf(on.board)),
    },
  };
}
