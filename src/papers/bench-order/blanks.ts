import { type Length, mm, ZERO } from "../../lengths/index.ts";
import { alikeWords, BENCH_ORDER_PAPER, comesLater } from "../../words/bench-order.ts";
import { sizeRuns } from "../../words/index.ts";
import { type Block, block, gap, stack, restOf } from "../block.ts";
import { points } from "../paper.ts";
import { type Column, type Flowing, tableHead, tableRow } from "../table.ts";
import { ruledHead } from "../tags.ts";
import { paragraph, textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { OrderDesk } from "./desk.ts";
import { inPieces, MOST_IN_ROW, tickedRings } from "./rings.ts";

const BETWEEN = mm(3);
const SIZE: TextStyle = { ...TYPE.fact, figures: { whole: points(15), stacked: points(17) } };
const TIGHT = { above: mm(1.2), below: mm(1.2), line: "rule-thin" } as const;

/** First act: every blank by its size and board, with a box to tick; those that only come out of a window are told. */
export function blankRows(desk: OrderDesk, width: Length): readonly Flowing[] {
  const { job } = desk;
  const [size, board] = [mm(42), mm(40)];
  const numbers = restOf(width, BETWEEN, [size, board]);
  const columns: readonly Column[] = [
    { name: BENCH_ORDER_PAPER.size, width: size, align: "start" },
    { name: BENCH_ORDER_PAPER.board, width: board, align: "start" },
    { name: BENCH_ORDER_PAPER.numbers, width: numbers, align: "start" },
  ];
  const head = tableHead(desk, columns, BETWEEN);
  const rows = job.sizes.flatMap((one) =>
    inPieces(one.blanks, MOST_IN_ROW).map((piece): Block => {
      const later = one.later.filter(({ blank }) => piece.includes(blank));
      return tableRow(
        columns,
        [
          textLine(desk, sizeRuns(one.size, one.ruler), SIZE),
          paragraph(desk, one.board, TYPE.line, board),
          stack([
            tickedRings(desk, piece, numbers),
            ...(later.length === 0
              ? []
              : [gap(mm(1)), paragraph(desk, comesLater(later), TYPE.fact, numbers)]),
          ]),
        ],
        BETWEEN,
        TIGHT,
      );
    }),
  );
  return act(desk, BENCH_ORDER_PAPER.blanks, null, head, rows, width);
}

/** Second act: mats with the same borders on the same size are marked together. */
export function markRows(desk: OrderDesk, width: Length): readonly Flowing[] {
  const { job } = desk;
  const [size, titles] = [mm(42), mm(62)];
  const numbers = restOf(width, BETWEEN, [size, titles]);
  const columns: readonly Column[] = [
    { name: BENCH_ORDER_PAPER.size, width: size, align: "start" },
    { name: BENCH_ORDER_PAPER.marked, width: titles, align: "start" },
    { name: BENCH_ORDER_PAPER.markedNumbers, width: numbers, align: "start" },
  ];
  const head = tableHead(desk, columns, BETWEEN);
  const row = (what: Block, says: string, blanks: readonly number[]): readonly Block[] =>
    inPieces(blanks, MOST_IN_ROW).map((piece) => {
      const cells = [what, paragraph(desk, says, TYPE.line, titles), tickedRings(desk, piece, numbers)];
      return tableRow(columns, cells, BETWEEN, TIGHT);
    });
  const alone = job.marked.filter(({ blanks }) => blanks.length === 1).flatMap(({ blanks }) => blanks);
  const rows = [
    ...job.marked
      .filter(({ blanks }) => blanks.length > 1)
      .flatMap((one) =>
        row(textLine(desk, sizeRuns(one.size, one.ruler), SIZE), alikeWords(one.titles), one.blanks),
      ),
    ...row(block(ZERO, ZERO), BENCH_ORDER_PAPER.byItself, alone),
  ];
  return act(desk, BENCH_ORDER_PAPER.marking, BENCH_ORDER_PAPER.eachBySheet, head, rows, width);
}

/** An act's name, what it says first, and its rows; the table's head stands again on each page. */
export function act(
  desk: OrderDesk,
  name: string,
  says: string | null,
  head: Block,
  rows: readonly Block[],
  width: Length,
): readonly Flowing[] {
  const title = stack([
    gap(mm(3)),
    ruledHead(desk, name, width),
    ...(says === null ? [] : [gap(mm(0.8)), paragraph(desk, says, TYPE.line, width)]),
  ]);
  return [
    { block: title, withNext: true },
    { block: head, withNext: true },
    ...rows.map((row) => ({ block: row, again: head })),
  ];
}
