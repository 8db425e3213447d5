import { figureOf, type Length, mm, times } from "../../lengths/index.ts";
import { type SawStop, sawStops } from "../../plans/index.ts";
import { CHOP_LIST } from "../../words/chop-list.ts";
import { bare, figureWords, NBSP, ordinal, type Phrase, strong, weighted } from "../../words/index.ts";
import { beside, type Block, block, gap, placed, stack, restOf } from "../block.ts";
import { points } from "../paper.ts";
import { SET_FIGURE, setFigure } from "../set-figure.ts";
import { type Column, type Flowing, tableHead, tableRow } from "../table.ts";
import { ringBlock, tickBox } from "../tags.ts";
import { textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { type ChoppingDesk, markOf, type RailMark } from "./desk.ts";

const BETWEEN = mm(3);
const SHORT: TextStyle = {
  size: points(20),
  weight: "semibold",
  leading: points(23),
  figures: { whole: points(20), stacked: points(23) },
};
const COUNT: TextStyle = { size: points(16), weight: "semibold", leading: points(18) };
const TICK_WIDE = mm(25);
const TICK_HIGH = mm(6.2);
/** As many as a row holds before it goes on in another. */
const MOST_TICKS = 48;

function columnsOf(width: Length): readonly Column[] {
  const fixed = [mm(11), mm(40), mm(28), mm(9)] as const;
  return [
    { name: CHOP_LIST.stop, width: fixed[0], align: "start" },
    { name: strong(CHOP_LIST.longPoint), width: fixed[1], align: "start" },
    { name: strong(CHOP_LIST.shortPoint), width: fixed[2], align: "start" },
    { name: CHOP_LIST.rails, width: fixed[3], align: "start" },
    {
      name: CHOP_LIST.ticks,
      width: restOf(width, BETWEEN, fixed),
      align: "start",
    },
  ];
}

/** One row for each stop of the saw, the longest first: both lengths, and a tick for each rail by its frame and side. */
export function stopRows(desk: ChoppingDesk, width: Length): readonly Flowing[] {
  const columns = columnsOf(width);
  const head = tableHead(desk, columns, BETWEEN);
  const rows = sawStops(desk.job.job).flatMap((stop, index) => {
    const marks = marksAt(desk, stop);
    const parts = Math.max(1, Math.ceil(marks.length / MOST_TICKS));
    return Array.from({ length: parts }, (_, part) =>
      tableRow(
        columns,
        cellsOf(
          desk,
          stop,
          index + 1,
          part > 0,
          marks.slice(part * MOST_TICKS, (part + 1) * MOST_TICKS),
          columns,
        ),
        BETWEEN,
        { above: mm(1), below: mm(1.2), line: "rule-thin" },
      ),
    );
  });
  return [{ block: head, withNext: true }, ...rows.map((row) => ({ block: row, again: head }))];
}

/** Every rail of a stop that the plan makes, frame by frame. */
function marksAt({ job }: ChoppingDesk, stop: SawStop): readonly RailMark[] {
  const here = new Set(stop.rails);
  return job.plan.sticks
    .flatMap(({ rails }) => rails)
    .filter(({ rail }) => here.has(rail))
    .toSorted((a, b) => a.rail - b.rail || a.copy - b.copy)
    .map(({ rail, copy }) => markOf(job, rail, copy))
    .toSorted((a, b) => (a.frame ?? 0) - (b.frame ?? 0));
}

function cellsOf(
  desk: ChoppingDesk,
  stop: SawStop,
  number: number,
  further: boolean,
  marks: readonly RailMark[],
  columns: readonly Column[],
): readonly Block[] {
  const { ruler } = desk.speech;
  const unit: Phrase = {
    kind: "text",
    text: `${NBSP}${ruler.unit}`,
    weight: "regular",
    size: points(11),
  };
  const name = textLine(desk, strong(ordinal(number)), TYPE.line);
  return [
    further ? stack([name, gap(mm(0.8)), textLine(desk, CHOP_LIST.continues, TYPE.fine)]) : name,
    stack([
      textLine(desk, setFigure(stop.longPoint, ruler), SET_FIGURE),
      gap(mm(0.5)),
      textLine(desk, figureWords(figureOf(stop.longPoint, ruler)), TYPE.wordsBeside),
    ]),
    stop.shortPoint === null
      ? block(mm(0), mm(0))
      : textLine(desk, [weighted("semibold", bare(stop.shortPoint, ruler)), unit], SHORT),
    textLine(desk, String(marks.length), COUNT),
    ticks(desk, marks, columns[4]?.width ?? mm(0)),
  ];
}

/** A box to tick, the frame's ring and the rail's side, as many to a line as there is room for. */
function ticks(desk: ChoppingDesk, marks: readonly RailMark[], width: Length): Block {
  const perLine = Math.max(1, Math.floor(width / TICK_WIDE));
  const all = marks.flatMap((mark, index) =>
    placed(
      tickOf(desk, mark),
      times(TICK_WIDE, index % perLine),
      times(TICK_HIGH, Math.floor(index / perLine)),
    ),
  );
  return block(width, times(TICK_HIGH, Math.max(1, Math.ceil(marks.length / perLine))), all);
}

const tickOf = (desk: ChoppingDesk, { frame, side }: RailMark): Block =>
  beside(
    [
      tickBox(),
      ...(frame === null ? [] : [ringBlock(desk, String(frame), "white")]),
      textLine(desk, side === null ? CHOP_LIST.noSide : CHOP_LIST.sides[side], TYPE.line),
    ],
    mm(1),
    "middle",
  );
