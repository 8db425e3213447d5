import type { Mark } from "../../drawings/index.ts";
import { add, type Length, mm, subtract, times, ZERO } from "../../lengths/index.ts";
import type { Phrase } from "../../words/index.ts";
import { missingSigns } from "../../words/papers.ts";
import { type Block, beside, block, gap, rule, stack } from "../block.ts";
import { bodyHeight } from "../frame.ts";
import type { Desk } from "../paper.ts";
import { flow, type Flowing } from "../table.ts";
import { paragraph } from "../text.ts";
import { TYPE } from "../type.ts";

/** Air between labels, so that a cut has a side that does not matter. */
export const BETWEEN = mm(4);
/** From a label's edge to its words. */
export const PADDING = mm(6);
const CROP = mm(3.6);

/** A sheet of labels says what is on it and how to cut it. */
export function sheetTitle(desk: Desk, title: string, below: Phrase, missing: number): Block {
  const { width } = desk.paper.content;
  const text = stack(
    [
      gap(mm(0.4)),
      paragraph(desk, title, TYPE.title, width),
      paragraph(desk, below, TYPE.line, width),
      ...(missing > 0 ? [paragraph(desk, missingSigns(missing), TYPE.fact, width)] : []),
    ],
    mm(1.2),
  );
  return stack([text, gap(mm(1.6)), rule(width, "rule-thin"), gap(mm(4))]);
}

/** Rows of labels under a title that every page repeats. */
export function pagesOfRows(desk: Desk, title: Block, rows: readonly Block[]): readonly Block[] {
  const room = subtract(bodyHeight(desk.paper), title.height);
  const flowing: readonly Flowing[] = rows.map((row) => ({ block: stack([row, gap(BETWEEN)]) }));
  return rows.length === 0 ? [] : flow(flowing, room, room).map((column) => stack([title, column]));
}

/** Labels two and two. */
export function inTwos(cells: readonly Block[]): readonly Block[] {
  return cells.flatMap((_, index) =>
    index % 2 === 0 ? [beside(cells.slice(index, index + 2), BETWEEN)] : [],
  );
}

const cropCorner = (x: Length, y: Length, right: 1 | -1, down: 1 | -1): readonly Mark[] => [
  { kind: "line", from: { x, y }, to: { x: add(x, times(CROP, right)), y }, line: "thin" },
  { kind: "line", from: { x, y }, to: { x, y: add(y, times(CROP, down)) }, line: "thin" },
];

/** Four corners to cut between. */
export function cropped(label: Block): Block {
  const { width, height } = label;
  return block(width, height, [
    ...label.marks,
    ...cropCorner(ZERO, ZERO, 1, 1),
    ...cropCorner(width, ZERO, -1, 1),
    ...cropCorner(ZERO, height, 1, -1),
    ...cropCorner(width, height, -1, -1),
  ]);
}
