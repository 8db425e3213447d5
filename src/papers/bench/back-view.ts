import type { ComposedMat } from "../../assembly/index.ts";
import type { Mark } from "../../drawings/index.ts";
import { FRACTION_UP } from "../../drawings/index.ts";
import type { Box, Side } from "../../geometry/index.ts";
import {
  add,
  figureOf,
  type Length,
  larger,
  mm,
  smaller,
  subtract,
  sum,
  times,
  ZERO,
} from "../../lengths/index.ts";
import { AWAY, backViewAtScale, BENCH_SHEET, scaleWords, sideWords } from "../../words/bench-sheet.ts";
import { bare, figureWords, flat, NBSP, type Phrase, withUnit } from "../../words/index.ts";
import { EVERY_PAPER } from "../../words/papers.ts";
import { type Block, block, cornersOf, placed } from "../block.ts";
import { dimensionLine, tailOf } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { caution, handTag, headArrow, ring } from "../tags.ts";
import { paragraph, textAt, widthOf } from "../text.ts";
import { FIGURE, TYPE, type TextStyle } from "../type.ts";
import { outField } from "./out-field.ts";
import { type BenchDesk, drawn, fineRuler, fittingScale, type NumberedStop } from "./desk.ts";

/** Room above the board for HEAD and its figure, and below it for FOOT and its own. */
const ABOVE = mm(11.8);
const BELOW = mm(11.8);
const SIDE_COLUMN = mm(23);
const SIDE_GAP = mm(1);

export const LEAST_VIEW = mm(78);

/** One mat of the sheet, as its back view needs it. */
export interface BackViewOf {
  readonly mat: ComposedMat;
  readonly stops: readonly NumberedStop[];
  /** TOP MAT and when it is cut; null where there is only one. */
  readonly among: { readonly name: string; readonly order: string } | null;
  /** What becomes of the drop-out. */
  readonly fate: string;
}

interface Layout {
  readonly over: number;
  readonly board: Box;
  readonly window: Box;
  readonly width: Length;
}

/**
 * One mat as the hand sees it: from the back, head away, what falls out hatched, every border with
 * its figure at its own side. Fills `width` by `height`; the scale is the largest that fits.
 */
export function backView(desk: BenchDesk, of: BackViewOf, width: Length, height: Length): Block {
  const layout = layOut(desk, of.mat, width, height);
  return block(width, height, [
    ...caption(desk, of, layout),
    ...board(desk, layout),
    ...windowMarks(desk, of, layout),
    ...sideFigure(desk, of, layout, "right"),
    ...sideFigure(desk, of, layout, "left"),
    ...endFigure(desk, of, layout, "head"),
    ...endFigure(desk, of, layout, "foot"),
    ...cutRings(desk, of, layout),
    ...(of.among === null ? [] : pastTheLine(desk, layout)),
  ]);
}

function layOut(desk: BenchDesk, { borders, back }: ComposedMat, width: Length, height: Length): Layout {
  const { outer } = desk.job.composition;
  const roomWidth = subtract(width, times(add(SIDE_COLUMN, SIDE_GAP), 2));
  const roomHeight = subtract(height, add(ABOVE, BELOW));
  const over = fittingScale(outer.width, outer.height, roomWidth, roomHeight);
  const [boardWidth, boardHeight] = [drawn(outer.width, over), drawn(outer.height, over)];
  const box = {
    left: part(subtract(width, boardWidth), 0.5),
    top: add(ABOVE, part(subtract(roomHeight, boardHeight), 0.5)),
    width: boardWidth,
    height: boardHeight,
  };
  return {
    over,
    width,
    board: box,
    // Turned over like a page: the front's right border lies at the left.
    window: {
      left: add(box.left, drawn(borders.right, over)),
      top: add(box.top, drawn(borders.head, over)),
      width: drawn(back.width, over),
      height: drawn(back.height, over),
    },
  };
}

const right = (box: Box): Length => add(box.left, box.width);
const foot = (box: Box): Length => add(box.top, box.height);
const middleX = (box: Box): Length => add(box.left, part(box.width, 0.5));
const middleY = (box: Box): Length => add(box.top, part(box.height, 0.5));

function caption(desk: BenchDesk, { among }: BackViewOf, { over }: Layout): readonly Mark[] {
  if (among === null) {
    return [
      textAt(ZERO, mm(3.7), BENCH_SHEET.backView, TYPE.band),
      textAt(ZERO, mm(8), scaleWords(over), TYPE.caption),
    ];
  }
  return [
    textAt(ZERO, mm(3.7), among.name.toUpperCase(), TYPE.band),
    textAt(ZERO, mm(8), backViewAtScale(over), TYPE.caption),
    textAt(ZERO, mm(12.6), among.order, TYPE.fact),
    ...placed(
      caution(desk, BENCH_SHEET.freeHandShort, SIDE_COLUMN, { ...TYPE.fact, leading: points(12.5) }),
      ZERO,
      mm(17),
    ),
  ];
}

function board(desk: BenchDesk, { board: box }: Layout): readonly Mark[] {
  const arrow = headArrow(desk);
  const centre = middleX(box);
  // On the head edge, clear of the figure that stands right of the centre line.
  const arrowLeft = smaller(add(box.left, mm(0.5)), subtract(subtract(centre, mm(2.5)), arrow.width));
  return [
    { kind: "area", points: cornersOf(box), fill: "none", line: "outline" },
    ...placed(arrow, arrowLeft, subtract(subtract(box.top, arrow.height), mm(0.35))),
    textAt(add(box.left, mm(3.5)), add(foot(box), mm(5.2)), EVERY_PAPER.foot, TYPE.fact),
  ];
}

const cut = (x1: Length, y1: Length, x2: Length, y2: Length): Mark => ({
  kind: "line",
  from: { x: x1, y: y1 },
  to: { x: x2, y: y2 },
  line: "edge",
});

function windowMarks(
  desk: BenchDesk,
  { mat, fate }: BackViewOf,
  { board: box, window, over }: Layout,
): readonly Mark[] {
  const past = larger(drawn(desk.job.bench.overrun, over), mm(1.2));
  const [left, top, far, low] = [window.left, window.top, right(window), foot(window)];
  const centre = middleX(box);
  return [
    { kind: "area", points: cornersOf(window), fill: "hatch-out", line: null },
    cut(subtract(left, past), top, add(far, past), top),
    cut(subtract(left, past), low, add(far, past), low),
    cut(left, subtract(top, past), left, add(low, past)),
    cut(far, subtract(top, past), far, add(low, past)),
    {
      kind: "line",
      from: { x: centre, y: subtract(box.top, mm(3)) },
      to: { x: centre, y: add(foot(box), mm(3)) },
      line: "centre",
    },
    ...outField(desk, mat, fate, window),
  ];
}

const SET: TextStyle = { size: FIGURE.set, weight: "bold", leading: FIGURE.set };

const setFigure = (desk: BenchDesk, length: Length): Phrase =>
  flat([
    bare(length, desk.speech.ruler).map((run) => ({ ...run, weight: "bold" as const })),
    { kind: "text", text: `${NBSP}${desk.speech.ruler.unit}`, weight: "regular", size: points(14) },
  ]);

/** The border that lies at a hand: figure, words, the hand, and the front's name for it in small. */
function sideFigure(
  desk: BenchDesk,
  { mat }: BackViewOf,
  { board: box, window, width }: Layout,
  hand: "left" | "right",
): readonly Mark[] {
  // What lies at the left hand on the back is the front's right.
  const side: Side = hand === "left" ? "right" : "left";
  const border = mat.borders[side];
  const y = middleY(window);
  const atLeft = hand === "left";
  const edge = atLeft ? box.left : right(box);
  const inner = atLeft ? window.left : right(window);
  const off = add(tailOf(edge, inner), mm(2.8));
  const x = atLeft ? subtract(edge, off) : add(edge, off);
  const anchor = atLeft ? "end" : "start";
  const words = figureWords(figureOf(border, desk.speech.ruler));
  const room = atLeft ? x : subtract(width, x);
  const spoken = paragraph(desk, words, TYPE.wordsBeside, room, anchor);
  const tag = handTag(desk, hand);
  const baseline = add(y, part(FIGURE.set, 0.33));
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
    textAt(x, baseline, setFigure(desk, border), SET, anchor),
    ...placed(
      spoken,
      from(spoken),
      subtract(subtract(baseline, part(FIGURE.set, FRACTION_UP)), add(spoken.height, mm(1))),
    ),
    ...placed(tag, from(tag), tagTop),
    textAt(x, sum([tagTop, tag.height, mm(4.2)]), sideWords(side), TYPE.line, anchor),
  ];
}

/** The border away from the hand or next to it, right of its dimension line. */
function endFigure(
  desk: BenchDesk,
  { mat }: BackViewOf,
  { board: box, window, width }: Layout,
  side: "head" | "foot",
): readonly Mark[] {
  const x = add(middleX(box), mm(5));
  const atHead = side === "head";
  const edge = atHead ? box.top : foot(box);
  const border = mat.borders[side];
  const figure = setFigure(desk, border);
  const stacked = figureOf(border, desk.speech.ruler).numerator !== "";
  const up = part(FIGURE.set, stacked ? FRACTION_UP : 0.66);
  const baseline = atHead ? subtract(edge, mm(3.2)) : sum([edge, mm(1.8), up]);
  const outer = atHead ? subtract(edge, mm(3)) : add(edge, mm(3));
  const after = sum([x, mm(1.6), widthOf(desk, figure, SET), mm(2.4)]);
  const words = figureWords(figureOf(border, desk.speech.ruler));
  const spoken = add(after, widthOf(desk, words, TYPE.wordsBeside)) <= width;
  return [
    ...dimensionLine("y", edge, atHead ? window.top : foot(window), x),
    { kind: "line", from: { x, y: edge }, to: { x, y: outer }, line: "thin" },
    textAt(add(x, mm(1.6)), baseline, figure, SET),
    ...(spoken ? [textAt(after, subtract(baseline, mm(4.3)), words, TYPE.wordsBeside)] : []),
    textAt(after, baseline, AWAY[side], TYPE.caption),
  ];
}

/** Every cut's number on its own line, black; at the head and foot left of the centre, at the sides above the middle. */
function cutRings(desk: BenchDesk, { stops }: BackViewOf, { window }: Layout): readonly Mark[] {
  const radius = smaller(mm(2.7), larger(part(smaller(window.width, window.height), 0.11), mm(1.7)));
  const across = subtract(middleX(window), smaller(mm(9), part(window.width, 0.3)));
  const down = subtract(middleY(window), larger(part(window.height, 0.26), mm(4)));
  return stops.flatMap(({ cuts }) =>
    cuts.flatMap(({ number, side }) => {
      const x = side === "left" ? right(window) : side === "right" ? window.left : across;
      const y = side === "head" ? window.top : side === "foot" ? foot(window) : down;
      return placed(block(ZERO, ZERO, ring(desk, String(number), "black", radius)), x, y);
    }),
  );
}

/** On a page that holds only cuts, how far each runs past its line stands by the drawing. */
function pastTheLine(desk: BenchDesk, { board: box }: Layout): readonly Mark[] {
  const x = add(right(box), mm(2.8));
  const top = add(box.top, mm(3));
  return [
    textAt(x, top, BENCH_SHEET.pastTheLineShort, TYPE.caption),
    textAt(x, add(top, mm(7.2)), withUnit(desk.job.bench.overrun, fineRuler(desk)), {
      size: points(10.5),
      weight: "regular",
      leading: points(20),
      figures: { whole: points(18), stacked: points(18) },
    }),
    textAt(x, add(top, mm(12.2)), BENCH_SHEET.bothEnds, TYPE.caption),
  ];
}
