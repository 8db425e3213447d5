import type { ComposeDocument, WorkDocument } from "../../src/show/schema.ts";
import type { Area, Edge } from "./edges.ts";
import type { Picture } from "./svg.ts";

/** A work of the example show: what the list says of it, its design, and how its picture is drawn. */
export interface ExampleWork {
  readonly work: Omit<WorkDocument, "picture" | "design" | "id">;
  /** Its name in the document and in `pictures/`. */
  readonly id: string;
  readonly draw: Picture;
  /** What the picture's chance starts from; the two sheets of a diptych share it. */
  readonly seed?: string;
  /** Paper's colour, where the picture's own edge strays. */
  readonly paper?: string;
  readonly unit: "in" | "mm";
  readonly sheet: readonly [width: number, height: number];
  /** The image's rectangle on the sheet, as it would lie at angle 0. */
  readonly image: Area;
  /** A hand-coated image's edge, within `image`. */
  readonly brushed?: Edge;
  /** A torn sheet's edge, within `sheet`. */
  readonly deckled?: Edge;
  readonly print?: Partial<NonNullable<ComposeDocument["print"]>>;
  readonly design: Omit<ComposeDocument, "print" | "unit">;
}

/** Both borders of the image from the sheet's left and top, and its size. */
export const area = (left: number, top: number, width: number, height: number): Area => ({
  left,
  top,
  width,
  height,
});

export const inches = (width: string, height: string): { width: string; height: string } => ({
  width: `${width} in`,
  height: `${height} in`,
});
