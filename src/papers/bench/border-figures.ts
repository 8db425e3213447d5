import type { ComposedMat } from "../../assembly/index.ts";
import type { Mark } from "../../drawings/index.ts";
import { FRACTION_DOWN, FRACTION_UP } from "../../drawings/index.ts";
import type { Box, Side } from "../../geometry/index.ts";
import { add, figureOf, type Length, larger, mm, smaller, subtract, sum, ZERO } from "../../lengths/index.ts";
import { AWAY, sideWords } from "../../words/bench-sheet.ts";
import { bold, bare, figureWords, flat, NBSP, type Phrase } from "../../words/index.ts";
import { type Block, placed } from "../block.ts";
import { dimensionLine, tailOf } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { handTag } from "../tags.ts";
import { fitting, paragraph, textAt, widthOf } from "../text.ts";
import { FIGURE, TYPE, type TextStyle } from "../type.ts";
import type { BenchDesk } from "./desk.ts";

/** Where board and window lie in a back view of a width and height. */
export interface BackLayout {
  readonly over: number;
  readonly board: Box;
  readonly window: Box;
  readonly width: Length;
  readonly height: Length;
}

export const rightOf = (box: Box): Length => add(box.left, box.width);
export const footOf = (box: Box): Length => add(box.top, box.height);
export const middleX = (box: Box): Length => add(box.left, part(box.width, 0.5));
export const middleY = (box: Box): Length => add(box.top, part(box.height, 0.5));

const SETS: readonly TextStyle[] = [FIGURE.set, FIGURE.scale, points(19)].map((size) => ({
  size,
  weight: "bold",
  leading: size,
}));
const SET: TextStyle = { size: FIGURE.set, weight: "bold", leading: FIGURE.set };

const setFigure = (desk: BenchDesk, length: Length): Phrase =>
  flat([
    bold(bare(length, desk.speech.ruler)),
    { kind: "text", text: `${NBSP}${desk.speech.ruler.unit}`, weight: "regular", size: points(14) },
  ]);

/** From the figure's middle up to its words and down past the front's name: what a hand's column takes. */
const COLUMN_UP = mm(9.4);
const COLUMN_DOWN = mm(18);
/** Between a figure's foot and the rule under the drawing: round figures hang a little below their line. */
const CLEAR = mm(0.6);
/** The corner that the drawing's own caption fills. */
const CAPTION = { width: mm(26), height: mm(14.4) };

/** The border that lies at a hand: figure, words, the hand, and the front's name for it in small. */
export function sideFigure(
  desk: BenchDesk,
  mat: ComposedMat,
  layout: BackLayout,
  hand: "left" | "right",
): readonly Mark[] {
  const { board: box, window, width } = layout;
  // What lies at the left hand on the back is the front's right.
  const side: Side = hand === "left" ? "right" : "left";
  const border = mat.borders[side];
  const y = middleY(window);
  const atLeft = hand === "left";
  const edge = atLeft ? box.left : rightOf(box);
  const inner = atLeft ? window.left : rightOf(window);
  const off = add(tailOf(edge, inner), mm(2.8));
  const x = atLeft ? subtract(edge, off) : add(edge, off);
  const anchor = atLeft ? "end" : "start";
  const room = atLeft ? x : subtract(width, x);
  const figure = setFigure(desk, border);
  const style = fitting(desk, figure, SETS, room) ?? SETS.at(-1) ?? SET;
  const tag = handTag(desk, hand);
  const baseline = add(y, part(style.size, 0.33));
  const from = (piece: Block): Length => (atLeft ? subtract(x, piece.width) : x);
  const tagTop = add(baseline, mm(3.4));
  return [
    ...dimensionLine("x", edge, inner, y),
    {
      kind: "line",
      from: { x: edge, y },
      to: { x: atLeft ? subtract(edge, mm(2)) : add(edge, mm(2)), y },
      line: "thin",
    },
    textAt(x, baseline, figure, style, anchor),
    ...spokenAbove(desk, border, layout, {
      x,
      room,
      atLeft,
      foot: subtract(baseline, part(style.size, FRACTION_UP)),
    }),
    ...placed(tag, from(tag), tagTop),
    textAt(x, sum([tagTop, tag.height, mm(4.2)]), sideWords(side), TYPE.line, anchor),
  ];
}

/** The figure in words above it, in lines as wide as its column; left out where they would meet the caption or the head's figure. */
function spokenAbove(
  desk: BenchDesk,
  border: Length,
  layout: BackLayout,
  at: { readonly x: Length; readonly room: Length; readonly atLeft: boolean; readonly foot: Length },
): readonly Mark[] {
  const words = figureWords(figureOf(border, desk.speech.ruler));
  const spoken = paragraph(desk, words, TYPE.wordsBeside, at.room, at.atLeft ? "end" : "start");
  const top = subtract(at.foot, add(spoken.height, mm(1)));
  const ceiling = at.atLeft ? CAPTION.height : add(headBaseline(layout), mm(2.8));
  return top < ceiling ? [] : placed(spoken, at.atLeft ? subtract(at.x, at.room) : at.x, top);
}

/** Above the board, and above the hands' columns where the board is low. */
const headBaseline = ({ board: box, window }: BackLayout): Length =>
  smaller(subtract(box.top, mm(3.2)), subtract(middleY(window), add(COLUMN_UP, mm(2.6))));

const footTop = ({ board: box, window }: BackLayout): Length =>
  larger(add(footOf(box), mm(1.8)), add(middleY(window), COLUMN_DOWN));

/** The border away from the hand or next to it, right of its dimension line. */
export function endFigure(
  desk: BenchDesk,
  mat: ComposedMat,
  layout: BackLayout,
  side: "head" | "foot",
): readonly Mark[] {
  const { board: box, window, width, height } = layout;
  const x = add(middleX(box), smaller(mm(5), part(window.width, 0.3)));
  const atHead = side === "head";
  const edge = atHead ? box.top : footOf(box);
  const border = mat.borders[side];
  const figure = setFigure(desk, border);
  const stacked = figureOf(border, desk.speech.ruler).numerator !== "";
  const up = part(SET.size, stacked ? FRACTION_UP : 0.66);
  const down = stacked ? part(SET.size, FRACTION_DOWN) : ZERO;
  const baseline = atHead
    ? larger(headBaseline(layout), up)
    : smaller(add(footTop(layout), up), subtract(height, add(down, CLEAR)));
  const outer = atHead
    ? smaller(subtract(edge, mm(3)), subtract(baseline, mm(1)))
    : larger(add(edge, mm(3)), subtract(baseline, mm(2)));
  const figureLeft = add(
    x,
    add(mm(1.6), tailOf(edge, atHead ? window.top : footOf(window)) > 0 ? mm(0.6) : ZERO),
  );
  const after = sum([figureLeft, widthOf(desk, figure, SET), mm(2.4)]);
  const words = figureWords(figureOf(border, desk.speech.ruler));
  const spoken = add(after, widthOf(desk, words, TYPE.wordsBeside)) <= width;
  return [
    ...dimensionLine("y", edge, atHead ? window.top : footOf(window), x),
    { kind: "line", from: { x, y: edge }, to: { x, y: outer }, line: "thin" },
    textAt(figureLeft, baseline, figure, SET),
    ...(spoken ? [textAt(after, subtract(baseline, mm(4.3)), words, TYPE.wordsBeside)] : []),
    textAt(after, baseline, AWAY[side], TYPE.caption),
  ];
}
