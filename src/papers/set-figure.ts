import type { Length, Ruler } from "../lengths/index.ts";
import { bold, bare, NBSP, type Phrase } from "../words/index.ts";
import { points } from "./paper.ts";
import { FIGURE, type TextStyle } from "./type.ts";

/** How a figure stands in a row by which a fence, a saw or a nail is set. */
export const SET_FIGURE: TextStyle = {
  size: FIGURE.set,
  weight: "bold",
  leading: points(28),
  figures: { whole: FIGURE.set, stacked: points(28) },
};

/** The length that a tool is set to, its unit small. */
export const setFigure = (length: Length, ruler: Ruler): Phrase => [
  bold(bare(length, ruler)),
  { kind: "text", text: `${NBSP}${ruler.unit}`, weight: "regular", size: points(12) },
];
