import type { LineKind } from "../drawings/index.ts";
import { add, type Length, larger, mm, subtract, sum, ZERO } from "../lengths/index.ts";
import type { Phrase } from "../words/runs.ts";
import { type Align, aligned, type Block, block, placed, rule, stack } from "./block.ts";
import type { Desk } from "./paper.ts";
import { part } from "./paper.ts";
import { paragraph } from "./text.ts";
import { TYPE } from "./type.ts";

export interface Column {
  readonly name: Phrase;
  readonly width: Length;
  readonly align: Align;
}

/** What flows down a paper: a block that is never parted. */
export interface Flowing {
  readonly block: Block;
  /** Stands again at the top of a page that this would begin, as a table's head does. */
  readonly again?: Block;
  /** Never the last on a page: a group's title, its first row. */
  readonly withNext?: boolean;
}

/** Columns' names, small, over their columns. */
export function tableHead(desk: Desk, columns: readonly Column[], between: Length): Block {
  const cells = columns.map(({ name, width, align }) => paragraph(desk, name, TYPE.caption, width, align));
  return tableRow(columns, cells, between, { above: mm(0.8), below: mm(0.8), line: null });
}

export interface RowStyle {
  readonly above: Length;
  readonly below: Length;
  /** The rule under the row. */
  readonly line: LineKind | null;
}

const ROW: RowStyle = { above: mm(1.6), below: mm(1.6), line: "rule-thin" };

/** One row: a cell for each column, their middles on one line, a rule below. */
export function tableRow(
  columns: readonly Column[],
  cells: readonly Block[],
  between: Length,
  style: RowStyle = ROW,
): Block {
  const inner = cells.reduce((most, cell) => larger(most, cell.height), ZERO);
  const height = sum([style.above, inner, style.below]);
  let x = ZERO;
  const marks = columns.flatMap(({ width, align }, index) => {
    const cell = cells[index];
    const left = x;
    x = sum([x, width, between]);
    if (cell === undefined) return [];
    return placed(
      aligned(cell, width, align),
      left,
      add(style.above, part(subtract(inner, cell.height), 0.5)),
    );
  });
  const width = subtract(x, between);
  const line = style.line === null ? [] : placed(rule(width, style.line), ZERO, height);
  return block(width, height, [...marks, ...line]);
}

/**
 * Parts what flows into pages: `first` is the room on the first, `next` on each after it. What must
 * stand again at a page's top does, what may not be last is carried on. Throws RangeError when one
 * block alone is higher than a page.
 */
export function flow(all: readonly Flowing[], first: Length, next: Length): readonly Block[] {
  const pages: Block[][] = [[]];
  let left = first;
  let index = 0;
  while (index < all.length) {
    const group = groupFrom(all, index);
    const needs = sum(group.map(({ block: piece }) => piece.height));
    const page = pages.at(-1);
    if (needs > left && ((page !== undefined && page.length > 0) || left < next)) {
      const again = group[0]?.again;
      pages.push(again ? [again] : []);
      left = subtract(next, again?.height ?? ZERO);
    }
    if (needs > left) throw new RangeError("one row is higher than a page");
    pages.at(-1)?.push(...group.map(({ block: piece }) => piece));
    left = subtract(left, needs);
    index += group.length;
  }
  return pages.map((page) => stack(page));
}

/** A piece and those that may not be parted from it. */
function groupFrom(all: readonly Flowing[], from: number): readonly Flowing[] {
  let to = from;
  while (all[to]?.withNext === true && to + 1 < all.length) to++;
  return all.slice(from, to + 1);
}
