import type { ComposedMat } from "../../assembly/index.ts";
import type { Mark } from "../../drawings/index.ts";
import { FRACTION_UP } from "../../drawings/index.ts";
import type { Box, Size } from "../../geometry/index.ts";
import { add, larger, type Length, mm, smaller, subtract, ZERO } from "../../lengths/index.ts";
import { type Phrase, sizeRuns } from "../../words/index.ts";
import { EVERY_PAPER } from "../../words/papers.ts";
import { type Block, block, cornersOf, placed } from "../block.ts";
import { tailOf } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { type BenchDesk, drawn } from "./desk.ts";

/** Size of OUT and how many lines stand in the field, from the best down: its size is kept as long as it can be. */
const FIELDS: readonly (readonly [size: number, lines: number])[] = [
  [27, 3],
  [22, 3],
  [18, 3],
  [22, 2],
  [18, 2],
  [15, 2],
  [18, 1],
  [12, 2],
  [12, 1],
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

function fieldOf(desk: BenchDesk, back: Size, fate: string, size: number, lines: number): Block {
  const share = size / 27;
  const styles: readonly [Phrase, TextStyle][] = [
    [EVERY_PAPER.out, { size: points(size), weight: "black", leading: points(size) }],
    [
      sizeRuns(back, desk.speech.ruler),
      {
        size: points(9.5),
        weight: "regular",
        leading: points(20),
        figures: { whole: points(Math.max(14, 17 * share)), stacked: points(Math.max(14, 19 * share)) },
      },
    ],
    [fate, TYPE.caption],
  ];
  const shown = styles
    .slice(0, lines)
    .map(([phrase, style]) => ({ phrase, style, wide: widthOf(desk, phrase, style) }));
  const width = add(
    shown.reduce((widest, { wide }) => larger(widest, wide), ZERO),
    mm(5),
  );
  const centre = part(width, 0.5);
  const marks: Mark[] = [];
  let y = mm(2);
  shown.forEach(({ phrase, style }, index) => {
    const figures = style.figures;
    const up = index === 1 && figures ? part(figures.stacked, FRACTION_UP) : part(style.size, 0.68);
    y = add(y, add(up, index === 0 ? ZERO : mm(2)));
    marks.push(textAt(centre, y, phrase, style, "middle"));
    if (index === 1 && figures) y = add(y, part(figures.stacked, 0.22));
  });
  const height = add(y, mm(2));
  return block(width, height, [
    { kind: "area", points: cornersOf({ left: ZERO, top: ZERO, width, height }), fill: "paper", line: null },
    ...marks,
  ]);
}
