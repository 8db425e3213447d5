import type { Sides } from "../../geometry/index.ts";
import type { Mark } from "../marks.ts";
import { BESIDE } from "./borders.ts";
import { lettering, type Pen, place, textRun } from "./pen.ts";
import { type Rect, widthOf } from "./shapes.ts";

/** Two lines for each hand: the front's name of the side, and the hand at which it lies. */
export interface HandWords {
  /** "front’s right," and "at your LEFT hand". */
  readonly atLeftHand: { readonly side: string; readonly hand: string };
  /** "front’s left," and "at your RIGHT hand". */
  readonly atRightHand: { readonly side: string; readonly hand: string };
}

const SIZE = 14;
const FIRST_LINE = 20;
const LEADING = 17;
const GAP = 12;

/**
 * Under the board, which of the front's sides lies at which hand; heavy where the two borders differ,
 * since that is where a board turned the wrong way is lost. `below` is how far figures hang under the
 * board at its right: the words stand clear of them.
 */
export function handMarks(pen: Pen, board: Rect, borders: Sides, words: HandWords, below: number): Mark[] {
  const px = (count: number): number => count * pen.pixel;
  const weight = borders.left === borders.right ? "regular" : "bold";
  const width = (text: string): number => pen.measure(text, weight, place(px(SIZE)));
  const widest = (side: { readonly side: string; readonly hand: string }): number =>
    Math.max(width(side.side), width(side.hand));
  const [left, right] = [widest(words.atLeftHand), widest(words.atRightHand)];
  const needed = left + right + px(GAP);
  const wide = needed <= widthOf(board);
  // Words a little wider than the board run on to the right, under the columns of figures; on a narrow
  // board they part at its middle.
  const runsOn = needed <= widthOf(board) + px(BESIDE.whole);
  const middle = (board.left + board.right) / 2;
  const leftAt = runsOn ? board.left : middle - px(GAP / 2) - left;
  const rightAt = wide ? board.right : leftAt + needed;
  const clear = wide || below <= 0 ? 0 : below + px(4);
  const two = (lines: { readonly side: string; readonly hand: string }, x: number, anchor: "start" | "end") =>
    [lines.side, lines.hand].map((text, index) =>
      lettering(pen, x, board.bottom + clear + px(FIRST_LINE + index * LEADING), [textRun(text)], {
        size: SIZE,
        anchor,
        weight: index === 1 ? weight : "regular",
      }),
    );
  return [...two(words.atLeftHand, leftAt, "start"), ...two(words.atRightHand, rightAt, "end")];
}
