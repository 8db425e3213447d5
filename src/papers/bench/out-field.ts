import type { ComposedMat } from "../../assembly/index.ts";
import type { Mark } from "../../drawings/index.ts";
import { FRACTION_DOWN, FRACTION_UP } from "../../drawings/index.ts";
import type { Box, Size } from "../../geometry/index.ts";
import { add, larger, type Length, mm, smaller, subtract, ZERO } from "../../lengths/index.ts";
import { type Phrase, sizeRuns } from "../../words/index.ts";
import { EVERY_PAPER } from "../../words/papers.ts";
import { type Block, block, cornersOf, placed } from "../block.ts";
import { tailOf } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { drawn } from "../scale.ts";
import { type BenchDesk } from "./desk.ts";

type Line = "out" | "size" | "fate";

/** Size of OUT and what stands in the field, from the best down: what becomes of it is said longer than its size, which the marks' sum repeats. */
const FIELDS: readonly (readonly [size: number, lines: readonly Line[]])[] = [
  [27, ["out", "size", "fate"]],
  [22, ["out", "size", "fate"]],
  [18, ["out", "size", "fate"]],
  [22, ["out", "fate"]],
  [18, ["out", "fate"]],
  [15, ["out", "fate"]],
  [18, ["out"]],
  [12, ["out"]],
];

/** Room left between the field and two cuts: more where a narrow border's arrow reaches in. */
const clear = (a: Length, b: Length, over: number): Length =>
  tailOf(ZERO, drawn(smaller(a, b), over)) > 0 ? mm(8.8) : mm(4.4);

/** OUT, its size and what becomes of it, in a clear field that never reaches the window's outline. */
export function outField(
  desk: BenchDesk,
  { back, borders }: ComposedMat,
  fate: string,
  window: Box,
  over: number,
): readonly Mark[] {
  const most = {
    width: subtract(window.width, clear(borders.left, borders.right, over)),
    height: subtract(window.height, clear(borders.head, borders.foot, over)),
  };
  const field = firstFitting(desk, back, fate, most);
  if (field === undefined) return [];
  return placed(
    field,
    add(window.left, part(subtract(window.width, field.width), 0.5)),
    add(window.top, part(subtract(window.height, field.height), 0.5)),
  );
}

function firstFitting(desk: BenchDesk, back: Size, fate: string, most: Size): Block | undefined {
  for (const [size, lines] of FIELDS) {
    const field = fieldOf(desk, back, fate, size, lines);
    if (field.width <= most.width && field.height <= most.height) return field;
  }
  return undefined;
}

function fieldOf(desk: BenchDesk, back: Size, fate: string, size: number, lines: readonly Line[]): Block {
  const share = size / 27;
  const figures = { whole: points(Math.max(14, 17 * share)), stacked: points(Math.max(14, 19 * share)) };
  const set: Readonly<
    Record<Line, { readonly words: Phrase; readonly style: TextStyle; readonly up: Length }>
  > = {
    out: line(EVERY_PAPER.out, { size: points(size), weight: "black", leading: points(size) }),
    size: {
      words: sizeRuns(back, desk.speech.ruler),
      style: { size: points(9.5), weight: "regular", leading: points(20), figures },
      up: part(figures.stacked, FRACTION_UP),
    },
    fate: line(fate, TYPE.caption),
  };
  const shown = lines.map((each) => set[each]);
  const width = add(
    shown.reduce((widest, { words, style }) => larger(widest, widthOf(desk, words, style)), ZERO),
    mm(5),
  );
  const marks: Mark[] = [];
  let y = mm(2);
  shown.forEach(({ words, style, up }, index) => {
    y = add(y, add(up, index === 0 ? ZERO : mm(2)));
    marks.push(textAt(part(width, 0.5), y, words, style, "middle"));
    if (style.figures !== undefined) y = add(y, part(style.figures.stacked, FRACTION_DOWN));
  });
  const height = add(y, mm(2));
  return block(width, height, [
    { kind: "area", points: cornersOf({ left: ZERO, top: ZERO, width, height }), fill: "paper", line: null },
    ...marks,
  ]);
}

const line = (words: string, style: TextStyle): { words: Phrase; style: TextStyle; up: Length } => ({
  words,
  style,
  up: part(style.size, 0.68),
});
