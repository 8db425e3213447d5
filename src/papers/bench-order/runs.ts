import type { Mark } from "../../drawings/index.ts";
import {
  add,
  figureOf,
  larger,
  type Length,
  mm,
  type Ruler,
  smaller,
  subtract,
  sum,
  ticks,
  times,
  TICKS_PER_INCH,
  TICKS_PER_MILLIMETRE,
  ZERO,
} from "../../lengths/index.ts";
import {
  BENCH_ORDER_PAPER,
  cutItNow,
  handToTell,
  outBack,
  runGoesOn,
  runName,
  sidesLine,
} from "../../words/bench-order.ts";
import { matName } from "../../words/bench-sheet.ts";
import { outsAreBlanks } from "../../words/cut-plan.ts";
import { bold, bare, figureRuns, figureWords, NBSP, type Phrase } from "../../words/index.ts";
import { beside, type Block, block, gap, indented, placed, rule, stack } from "../block.ts";
import { part, points } from "../paper.ts";
import { type Column, type Flowing, tableHead } from "../table.ts";
import { caution, handTag, ringBlock, TICK, tickBox } from "../tags.ts";
import { paragraph, shortened, textAt, textLine, widthOf } from "../text.ts";
import { FIGURE, TYPE, type TextStyle } from "../type.ts";
import { act } from "./blanks.ts";
import type { OrderDesk } from "./desk.ts";
import type { CutOfDay, RunOfDay } from "./job.ts";
import { inPieces } from "./rings.ts";

const STOP = mm(46);
const SCALE = mm(27);
const BETWEEN = mm(3);
/** Parts the reading from the ticks. */
const GUTTER = mm(6);
const LEFT = sum([STOP, BETWEEN, SCALE, GUTTER]);
const LINE = mm(6.6);
const RING = mm(2.9);
/** Copies of one mat beside each other on a line. */
const RINGS_IN_LINE = 3;

const KEY: TextStyle = {
  size: points(28),
  weight: "bold",
  leading: points(30),
  figures: { whole: points(30), stacked: points(32) },
};
const READS: TextStyle = { size: FIGURE.scale, weight: "semibold", leading: FIGURE.scale };
const WORDS: TextStyle = { ...TYPE.words, size: points(11), leading: points(12.5) };

/**
 * Third act: one row for each setting of the stop, in order: the figure large and in words, what the scale
 * reads, and every mat that is cut at it with its sides. A long row goes on over the page's foot.
 */
export function cutRows(desk: OrderDesk, width: Length): readonly Flowing[] {
  const columns: readonly Column[] = [
    { name: BENCH_ORDER_PAPER.stop, width: STOP, align: "start" },
    { name: BENCH_ORDER_PAPER.scaleReads, width: SCALE, align: "end" },
    {
      name: BENCH_ORDER_PAPER.cuts,
      width: add(subtract(width, LEFT), subtract(GUTTER, BETWEEN)),
      align: "start",
    },
  ];
  const head = tableHead(desk, columns, BETWEEN);
  const says = stack([
    caution(desk, BENCH_ORDER_PAPER.freeHand, width),
    gap(mm(1)),
    paragraph(desk, BENCH_ORDER_PAPER.layAside, TYPE.line, width),
  ]);
  const opening = act(desk, BENCH_ORDER_PAPER.cutting, null, head, [], width);
  const [title, ...rest] = opening;
  return [
    ...(title === undefined ? [] : [{ block: stack([title.block, gap(mm(1)), says]), withNext: true }]),
    ...rest,
    ...desk.job.runs.flatMap((run, index) => runRows(desk, run, index, head, width)),
  ];
}

function runRows(
  desk: OrderDesk,
  run: RunOfDay,
  index: number,
  head: Block,
  width: Length,
): readonly Flowing[] {
  const room = subtract(width, LEFT);
  const lines = run.cuts.flatMap((cut) => cutLines(desk, cut, room));
  const key = keyCell(desk, run, index);
  // As many lines stand beside the figure as it is high.
  let shown = 0;
  let high = ZERO;
  while (shown < lines.length && (shown === 0 || add(high, lines[shown]?.height ?? ZERO) <= key.height)) {
    high = add(high, lines[shown]?.height ?? ZERO);
    shown += 1;
  }
  const first = beside([key, block(GUTTER, ZERO), stack([gap(mm(0.8)), ...lines.slice(0, shown)])]);
  const again = stack([head, paragraph(desk, runGoesOn(index + 1), TYPE.fact, width), gap(mm(0.8))]);
  const blocks = [stack([gap(mm(1.4)), first]), ...lines.slice(shown).map((line) => indented(line, LEFT))];
  return blocks.map((piece, place) => {
    const last = place === blocks.length - 1;
    return {
      block: last ? stack([piece, gap(mm(1)), rule(width, "rule-thin")]) : piece,
      again: place === 0 ? head : again,
    };
  });
}

/** Which stop it is, its figure with its unit, the same in words; and what the scale must read, on one baseline. */
function keyCell(desk: OrderDesk, { ruler, set, scale }: RunOfDay, index: number): Block {
  const figure: Phrase = [
    bold(bare(set, ruler)),
    { kind: "text", text: `${NBSP}${ruler.unit}`, weight: "regular", size: points(14) },
  ];
  const name = paragraph(desk, runName(index + 1, desk.job.runs.length), TYPE.fact, STOP);
  const key = textLine(desk, figure, KEY);
  const words = paragraph(desk, figureWords(figureOf(set, ruler)), WORDS, STOP);
  const column = stack([name, gap(mm(1)), key, gap(mm(1)), words]);
  const reading = scaleRuns(ruler, scale);
  const drop = key.marks.find((mark) => mark.kind === "text")?.at.y ?? ZERO;
  const baseline = sum([name.height, mm(1), drop]);
  const marks: readonly Mark[] = [
    ...column.marks,
    textAt(sum([STOP, BETWEEN, SCALE]), baseline, reading, READS, "end"),
  ];
  return block(sum([STOP, BETWEEN, SCALE]), column.height, marks);
}

/** What a scale reads: finer than the ruler, tenths always with their nought. */
function scaleRuns({ unit, graduation }: Ruler, scale: Length): Phrase {
  const finest = ticks(unit === "in" ? TICKS_PER_INCH / 64 : TICKS_PER_MILLIMETRE / 10);
  const figure = {
    ...figureOf(scale, { unit, graduation: smaller(graduation, finest) }),
    approximate: false,
  };
  return figureRuns(unit === "mm" && figure.decimals === "" ? { ...figure, decimals: "0" } : figure);
}

/** One mat, and its copies: tick and number of each, the work, the sides; below it what becomes of what falls out. */
function cutLines(desk: OrderDesk, cut: CutOfDay, width: Length): readonly Block[] {
  const pieces = inPieces(cut.blanks, RINGS_IN_LINE);
  const lines = pieces.map((blanks, place) => cutLine(desk, cut, blanks, place === 0, width));
  const says = afterwards(desk, cut, width);
  return says === null ? lines : [...lines.slice(0, -1), stack([...lines.slice(-1), says])];
}

function cutLine(
  desk: OrderDesk,
  cut: CutOfDay,
  blanks: readonly number[],
  named: boolean,
  width: Length,
): Block {
  const middle = part(LINE, 0.5);
  const baseline = add(middle, mm(1.3));
  const centred = (piece: Block, x: Length): readonly Mark[] =>
    placed(piece, x, subtract(middle, part(piece.height, 0.5)));
  const step = sum([TICK, mm(0.8), times(RING, 2), mm(1.2)]);
  const marks = blanks.flatMap((blank, place) => [
    ...centred(tickBox(), times(step, place)),
    ...centred(ringBlock(desk, String(blank), "white", RING), sum([times(step, place), TICK, mm(0.8)])),
  ]);
  if (!named) return block(width, LINE, marks);
  const hand = handToTell(cut.sides, cut.hands);
  const tag = hand === null ? null : handTag(desk, hand);
  const sides = sidesLine(cut.sides);
  const right = tag === null ? width : subtract(width, add(tag.width, mm(1.4)));
  const left = add(times(step, blanks.length), mm(0.6));
  const room = subtract(subtract(right, add(widthOf(desk, sides, TYPE.fact), mm(2.4))), left);
  return block(width, LINE, [
    ...marks,
    textAt(left, baseline, shortened(desk, nameOf(desk, cut), TYPE.line, larger(room, mm(12))), TYPE.line),
    textAt(right, baseline, sides, TYPE.fact, "end"),
    ...(tag === null ? [] : centred(tag, subtract(width, tag.width))),
  ]);
}

const nameOf = (desk: OrderDesk, { title, mat, mats }: CutOfDay): string =>
  mats === 1 ? title : `${title}, ${matName(mat, mats, desk.speech)}`;

/** Once a window is whole: back in, or kept because blanks come out of it. */
function afterwards(desk: OrderDesk, cut: CutOfDay, width: Length): Block | null {
  if (!cut.falls) return null;
  const indent = add(TICK, mm(0.8));
  const room = subtract(width, indent);
  if (cut.mat > 0) {
    return indented(paragraph(desk, outBack, TYPE.caption, room), indent);
  }
  if (cut.outs.length === 0) return null;
  const hosts = [...new Set(cut.outs.map(({ host }) => host))];
  const said = outsAreBlanks(
    hosts.map((host) => ({
      host,
      blanks: cut.outs.filter((out) => out.host === host).map(({ blank }) => blank),
    })),
  );
  return stack([
    gap(mm(0.6)),
    indented(
      stack([
        caution(desk, said, room),
        gap(mm(0.6)),
        ...cut.outs.map(({ blank, size, ruler }) =>
          paragraph(desk, cutItNow(blank, size, ruler), TYPE.step, room),
        ),
      ]),
      indent,
    ),
    gap(mm(1)),
  ]);
}
