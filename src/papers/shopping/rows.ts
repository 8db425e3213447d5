import { add, inch, type Length, mm, type Ruler, subtract, sum } from "../../lengths/index.ts";
import { type Phrase, strong, weighted } from "../../words/index.ts";
import {
  askFor,
  askForLength,
  boardWhat,
  inPacks,
  money,
  packsWord,
  SHOPPING,
  savedLine,
  sheetsWord,
  sticksWord,
  takeOut,
  tapeSize,
  timesEach,
} from "../../words/shopping.ts";
import { beside, type Block, block, gap, placed, rule, stack, restOf } from "../block.ts";
import { part, points } from "../paper.ts";
import { type Column, type Flowing, tableHead, tableRow } from "../table.ts";
import { caution, tickBox } from "../tags.ts";
import { paragraph, textAt, textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { costOf, type LengthsToGet, lengthsToGet, type SheetsToGet } from "./items.ts";
import type { ShoppingDesk } from "./desk.ts";

const COUNT: TextStyle = { size: points(20), weight: "bold", leading: points(22) };
const WHAT: TextStyle = { ...TYPE.line, weight: "semibold" };
const SIZE: TextStyle = { ...TYPE.line, figures: { whole: points(14), stacked: points(16) } };
const MONEY: TextStyle = { size: points(12), weight: "regular", leading: points(14) };
const GROUP: TextStyle = { size: points(11.5), weight: "bold", leading: points(14) };
const TOTAL: TextStyle = { size: points(18), weight: "bold", leading: points(20) };

/** 1 in gummed cloth tape is enough for most mats (exhibit-preparation handbook, "Mounting artwork or documents"). */
const TAPE_WIDTH = { in: inch(1), mm: mm(25) } as const;
/** Tape is bought by the roll: whole inches, whole centimetres. */
const COARSE: Readonly<Record<Ruler["unit"], Ruler>> = {
  in: { unit: "in", graduation: inch(1) },
  mm: { unit: "mm", graduation: mm(10) },
};

const BETWEEN = mm(3);

function columnsOf(width: Length): readonly Column[] {
  const [count, reckoned, paid] = [mm(34), mm(36), mm(20)];
  const what = restOf(width, BETWEEN, [count, reckoned, paid]);
  return [
    { name: SHOPPING.howMany, width: count, align: "start" },
    { name: SHOPPING.what, width: what, align: "start" },
    { name: SHOPPING.reckoned, width: reckoned, align: "end" },
    { name: SHOPPING.paid, width: paid, align: "end" },
  ];
}

interface Line {
  readonly count: number;
  readonly of: string;
  readonly what: string;
  readonly size: Phrase;
  /** What one costs; null: not known, or nothing. */
  readonly each: number | null;
  /** What they come to, packs counted. */
  readonly cost: number;
  readonly pays: boolean;
}

/** The list's rows, group by group, and what it comes to. */
export function rowsOf(
  desk: ShoppingDesk,
  sheets: readonly SheetsToGet[],
  width: Length,
): readonly Flowing[] {
  const { job } = desk;
  const { ruler, priced } = job;
  const columns = columnsOf(width);
  const head = tableHead(desk, columns, BETWEEN);
  const bought = sheets.filter((one) => !one.fromRack);
  const lineOf = (one: SheetsToGet): Line => ({
    count: one.count,
    of: sheetsWord(one.count),
    what: boardWhat(one.board),
    size: one.fromRack
      ? takeOut(one.name, one.size, one.ruler)
      : [askFor(one.size, one.needs, one.ruler), ...packWords(one)],
    each: priced && !one.fromRack ? one.each : null,
    cost: one.buying.cost,
    pays: !one.fromRack,
  });
  const stickOf = (one: LengthsToGet): Line => ({
    count: one.count,
    of: sticksWord(one.count),
    what: boardWhat(one.moulding),
    size: askForLength(one.length, ruler),
    each: priced && !one.fromRack ? one.each : null,
    cost: one.buying.cost,
    pays: !one.fromRack,
  });
  const sticks = lengthsToGet(job.mouldings);
  const boughtSticks = sticks.filter((one) => !one.fromRack);
  const [glazing, board] = [
    bought.filter(({ material }) => material !== "board"),
    bought.filter(({ material }) => material === "board"),
  ];
  const inAll = costOf([...bought, ...boughtSticks]);
  const small: Line[] = [
    ...(job.tape === null
      ? []
      : [
          {
            count: 1,
            of: SHOPPING.roll,
            what: SHOPPING.tape,
            size: tapeSize(job.tape, TAPE_WIDTH[ruler.unit], COARSE[ruler.unit]),
            each: null,
            cost: 0,
            pays: true,
          },
        ]),
    {
      count: 1,
      of: packsWord(1),
      what: SHOPPING.blades,
      size: SHOPPING.newBlade,
      each: null,
      cost: 0,
      pays: true,
    },
  ];
  const groups: readonly (readonly [string, number | null, readonly Line[]])[] = [
    [SHOPPING.board, priced ? costOf(board) : null, board.map(lineOf)],
    [SHOPPING.glazing, priced ? costOf(glazing) : null, glazing.map(lineOf)],
    [SHOPPING.moulding, priced ? costOf(boughtSticks) : null, boughtSticks.map(stickOf)],
    [
      SHOPPING.rack,
      null,
      [
        ...sheets.filter((one) => one.fromRack).map(lineOf),
        ...sticks.filter((one) => one.fromRack).map(stickOf),
      ],
    ],
    [SHOPPING.small, null, small],
  ];
  return [
    { block: head, withNext: true },
    ...groups.flatMap(([name, total, lines]) =>
      lines.length === 0 ? [] : groupRows(desk, columns, head, name, total, lines),
    ),
    { block: closing(desk, priced ? inAll : null, width), again: head },
  ];
}

function groupRows(
  desk: ShoppingDesk,
  columns: readonly Column[],
  head: Block,
  name: string,
  total: number | null,
  lines: readonly Line[],
): readonly Flowing[] {
  const width = sum(
    columns.map((column, index) => (index === 0 ? column.width : add(column.width, BETWEEN))),
  );
  const reckoned = subtract(width, add(columns.at(-1)?.width ?? mm(0), BETWEEN));
  const title = paragraph(desk, name, GROUP, width);
  const group = stack([
    gap(mm(3)),
    block(width, title.height, [
      ...title.marks,
      ...(total === null ? [] : [textAt(reckoned, part(title.height, 0.78), money(total), GROUP, "end")]),
    ]),
    gap(mm(1.6)),
    rule(width, "rule"),
  ]);
  return [
    { block: group, again: head, withNext: true },
    ...lines.map((line) => ({ block: lineRow(desk, columns, line), again: head })),
  ];
}

function lineRow(desk: ShoppingDesk, columns: readonly Column[], line: Line): Block {
  const wide = columns[1]?.width ?? mm(0);
  const paid = columns[3]?.width ?? mm(0);
  const count = beside(
    [
      tickBox(),
      textLine(desk, weighted("bold", String(line.count)), COUNT),
      textLine(desk, line.of, TYPE.caption),
    ],
    mm(2.2),
    "middle",
  );
  const what = stack([
    paragraph(desk, line.what, WHAT, wide),
    gap(mm(1)),
    paragraph(desk, line.size, SIZE, wide),
  ]);
  const reckoned =
    line.each === null
      ? block(mm(0), mm(0))
      : beside(
          [
            ...(line.count > 1 && line.cost === line.count * line.each
              ? [textLine(desk, timesEach(line.count, line.each), TYPE.caption)]
              : []),
            textLine(desk, money(line.cost), MONEY),
          ],
          mm(2.4),
          "foot",
        );
  return tableRow(
    columns,
    [count, what, reckoned, line.pays ? writeLine(paid) : block(mm(0), mm(0))],
    BETWEEN,
  );
}

/** How sheets are bought, where that is by the pack. */
function packWords({ pack, buying, count }: SheetsToGet): readonly Phrase[] {
  if (pack === null || buying.packs === 0) return [];
  const over = buying.packs * pack.of + buying.singles - count;
  return [`; ${inPacks(buying.packs, pack.of, buying.singles, over)}`];
}

/** A line to write a sum on. */
const writeLine = (width: Length): Block => block(width, mm(9), placed(rule(width, "thin"), mm(0), mm(8)));

/** What it comes to, and the caution that saves a board. */
function closing(desk: ShoppingDesk, total: number | null, width: Length): Block {
  const said = textLine(desk, strong(SHOPPING.inAll), GROUP);
  const columns = columnsOf(width);
  const paid = columns[3]?.width ?? mm(0);
  const right = subtract(width, add(paid, BETWEEN));
  const sumRow =
    total === null
      ? []
      : [
          gap(mm(3)),
          rule(width, "rule-strong"),
          gap(mm(2)),
          block(width, mm(9), [
            ...placed(said, mm(0), mm(1.6)),
            textAt(right, mm(6.4), money(total), TOTAL, "end"),
            ...placed(rule(paid, "edge"), subtract(width, paid), mm(8)),
          ]),
        ];
  const { boards, priced } = desk.job;
  const saved = boards.flatMap((one) =>
    one.saved === null ? [] : [paragraph(desk, savedLine(one.board, one.saved, priced), TYPE.line, width)],
  );
  return stack([
    ...sumRow,
    gap(mm(3)),
    caution(desk, SHOPPING.caution, width),
    ...(saved.length === 0 ? [] : [gap(mm(2.4)), stack(saved, mm(1))]),
  ]);
}
