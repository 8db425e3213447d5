import type { Composition } from "../assembly/index.ts";
import { type Length, mm, type Ruler } from "../lengths/index.ts";
import type { Drawing, Mark, MeasureText } from "./marks.ts";
import { borderDimensions } from "./views/borders.ts";
import { fitted } from "./views/extent.ts";
import { headMark, type HeadRoom, needsRoomAbove } from "./views/head.ts";
import { openingOf, sheetOn, surfaceOf } from "./views/layout.ts";
import { area, group, groupOf, lettering, type Pen, penFor, textRun } from "./views/pen.ts";
import { aroundAll, contains, corners, heightOf, isOpen, widthOf } from "./views/shapes.ts";

/** The layers of a cut drawing: one for each thing that is done, or only looked at. */
export const CUT_LAYERS = ["OUTLINE", "CUT", "MARK", "DIMENSION", "PAPER", "TEXT"] as const;
export type CutLayer = (typeof CUT_LAYERS)[number];

export interface CutOptions {
  readonly ruler: Ruler;
  /** As it lies under the hand that cuts, from the back; or as it is seen. */
  readonly view: "back" | "front";
  /** "HEAD" and "OUT". */
  readonly words: { readonly head: string; readonly out: string };
  readonly measure?: MeasureText;
}

export interface CutDrawing extends Drawing {
  /** How far the board's top-left corner lies from the drawing's. */
  readonly frame: { readonly left: Length; readonly top: Length };
}

/** Lettering on a board at full size: a figure of 14 pixels stands 7 mm high. */
const PIXEL = mm(0.5);
const MARGIN = mm(10);
const OUT_SIZE = 28;

/**
 * One mat at full size, in real lengths: the board's edge, the cut (the opening nearest the print), the
 * paper behind it, HEAD, OUT and the borders as dimensions. Every group is a layer. A cut is drawn only
 * where the opening lies inside the board. Throws RangeError for a mat that is not there.
 */
export function cutDrawing(composition: Composition, mat: number, options: CutOptions): CutDrawing {
  const chosen = composition.mats[mat];
  if (!chosen) throw new RangeError(`there is no mat ${mat} in this work`);
  const pen = penFor({ ...options, pixel: PIXEL });
  const on = surfaceOf(composition, 1, options.view === "back");
  const window = openingOf(composition, chosen, "back", on);
  const sheet = sheetOn(composition, on);
  const { board } = on;
  const inside = isOpen(window) && contains(board, window);
  const drawn = aroundAll([...corners(board), ...corners(window), ...(sheet ?? [])]);
  const strips = { board, window, edges: sheet ? [aroundAll(sheet).top] : [] };
  const headAbove = needsRoomAbove(pen, strips, options.words.head);
  const dimensions = borderDimensions(composition, chosen, pen, { on, window, drawn, headAbove });
  const drawing = fitted(
    [
      group("OUTLINE", [area(corners(board), "none", "outline")]),
      ...groupOf("CUT", inside ? [area(corners(window), "none", "edge")] : []),
      ...groupOf("PAPER", sheet ? [area(sheet, "none", "phantom")] : []),
      ...headAndOut(pen, strips, inside, options.words),
      group("DIMENSION", [...dimensions.extensions, ...flat(dimensions.stretches)]),
    ],
    MARGIN,
    pen.measure,
  );
  const { width, height, marks, origin } = drawing;
  return { width, height, marks, frame: { left: origin.x, top: origin.y } };
}

/** The arrow is a mark, its word and OUT are text: two layers, so that a machine can be kept off both. */
function headAndOut(pen: Pen, strips: HeadRoom, inside: boolean, words: CutOptions["words"]): Mark[] {
  const head = headMark(pen, strips, words.head);
  const written = head.filter((mark) => mark.kind === "text");
  const arrow = head.filter((mark) => mark.kind !== "text");
  const { window } = strips;
  const middle = { x: (window.left + window.right) / 2, y: (window.top + window.bottom) / 2 };
  const size = Math.min(OUT_SIZE, widthOf(window) / pen.pixel / 4, heightOf(window) / pen.pixel / 2);
  const how = { size, weight: "black" } as const;
  const out = inside
    ? [lettering(pen, middle.x, middle.y + (size / 3) * pen.pixel, [textRun(words.out)], how)]
    : [];
  return [group("MARK", arrow), group("TEXT", [...written, ...out])];
}

const flat = (marks: readonly Mark[]): Mark[] =>
  marks.flatMap((mark) => (mark.kind === "group" ? flat(mark.marks) : [mark]));
