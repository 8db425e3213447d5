import type { ComposedMat } from "../../assembly/index.ts";
import type { Mark } from "../../drawings/index.ts";
import { add, type Length, larger, mm, smaller, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import { backViewAtScale, BENCH_SHEET, overrunLine, scaleWords } from "../../words/bench-sheet.ts";
import { EVERY_PAPER } from "../../words/papers.ts";
import { type Block, block, cornersOf, placed } from "../block.ts";
import { tailOf } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { caution, headArrow, ring } from "../tags.ts";
import { textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import {
  type BackLayout,
  endFigure,
  footOf,
  middleX,
  middleY,
  rightOf,
  sideFigure,
} from "./border-figures.ts";
import { drawn, fittingScale } from "../scale.ts";
import { type BenchDesk, fineRuler, type NumberedStop } from "./desk.ts";
import { outField } from "./out-field.ts";

/** Room above the board for HEAD and its figure, and below it for FOOT and its own. */
const ABOVE = mm(11.8);
const BELOW = mm(11.8);
/** Room at each side for a hand's figure, its words, its tag; more where arrows stand outside a narrow border. */
const SIDE_COLUMN = mm(24);
const WIDER_COLUMN = mm(28.2);
/** Under a drawing among others: the caution and the overrun, since its page is the one in the hand at the cut. */
const CUT_LINE = mm(8);

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

/**
 * One mat as the hand sees it: from the back, head away, what falls out hatched, every border with
 * its figure at its own side. Fills `width` by `height`; the scale is the largest that fits.
 */
export function backView(desk: BenchDesk, of: BackViewOf, width: Length, height: Length): Block {
  const below = of.among === null ? ZERO : CUT_LINE;
  const layout = layOut(desk, of.mat, width, subtract(height, below));
  return block(width, height, [
    ...caption(of, layout),
    ...board(desk, layout),
    ...windowMarks(desk, of, layout),
    ...sideFigure(desk, of.mat, layout, "right"),
    ...sideFigure(desk, of.mat, layout, "left"),
    ...endFigure(desk, of.mat, layout, "head"),
    ...endFigure(desk, of.mat, layout, "foot"),
    ...cutRings(desk, of, layout),
    ...(of.among === null ? [] : placed(cutLine(desk, width), ZERO, subtract(height, below))),
  ]);
}

function layOut(desk: BenchDesk, { borders, back }: ComposedMat, width: Length, height: Length): BackLayout {
  const { outer } = desk.job.composition;
  const roomHeight = subtract(height, add(ABOVE, BELOW));
  const scaleWith = (column: Length): number =>
    fittingScale(outer.width, outer.height, subtract(width, times(column, 2)), roomHeight);
  const usual = scaleWith(SIDE_COLUMN);
  const narrow = tailOf(ZERO, drawn(smaller(borders.left, borders.right), usual)) > 0;
  const over = narrow ? scaleWith(WIDER_COLUMN) : usual;
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
    height,
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

function caption({ among }: BackViewOf, { over }: BackLayout): readonly Mark[] {
  if (among === null) {
    return [
      textAt(ZERO, mm(4.3), BENCH_SHEET.backView, TYPE.band),
      textAt(ZERO, mm(8.6), scaleWords(over), TYPE.caption),
    ];
  }
  return [
    textAt(ZERO, mm(4.3), among.name.toUpperCase(), TYPE.band),
    textAt(ZERO, mm(8.6), backViewAtScale(over), TYPE.caption),
    textAt(ZERO, mm(13), among.order, TYPE.fact),
  ];
}

function board(desk: BenchDesk, { board: box }: BackLayout): readonly Mark[] {
  const arrow = headArrow(desk);
  const centre = middleX(box);
  // On the head edge, clear of the figure that stands right of the centre line.
  const arrowLeft = smaller(add(box.left, mm(0.5)), subtract(subtract(centre, mm(2.5)), arrow.width));
  const footWidth = widthOf(desk, EVERY_PAPER.foot, TYPE.fact);
  const footLeft = smaller(add(box.left, mm(3.5)), subtract(subtract(centre, mm(2.5)), footWidth));
  return [
    { kind: "area", points: cornersOf(box), fill: "none", line: "outline" },
    ...placed(arrow, arrowLeft, subtract(subtract(box.top, arrow.height), mm(0.35))),
    textAt(footLeft, add(footOf(box), mm(5.2)), EVERY_PAPER.foot, TYPE.fact),
  ];
}

const cut = (x1: Length, y1: Length, x2: Length, y2: Length): Mark => ({
  kind: "line",
  from: { x: x1, y: y1 },
  to: { x: x2, y: y2 },
  line: "edge",
});

/** Four cuts that run past their lines, what falls out hatched, the board's centre line. */
function windowMarks(
  desk: BenchDesk,
  { mat, fate }: BackViewOf,
  { board: box, window, over }: BackLayout,
): readonly Mark[] {
  const past = larger(drawn(desk.job.bench.overrun, over), mm(1.2));
  const [left, top, far, low] = [window.left, window.top, rightOf(window), footOf(window)];
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
      to: { x: centre, y: add(footOf(box), mm(3)) },
      line: "centre",
    },
    ...outField(desk, mat, fate, window, over),
  ];
}

/** A window smaller than this has no room for rings; its cuts are told by their sides alone. */
const RINGED = mm(14);

/** Every cut's number on its own line, black; at head and foot left of the centre, at the sides above the middle. */
function cutRings(desk: BenchDesk, { stops }: BackViewOf, { window }: BackLayout): readonly Mark[] {
  if (smaller(window.width, window.height) < RINGED) return [];
  const across = subtract(middleX(window), smaller(mm(9), part(window.width, 0.3)));
  const down = subtract(middleY(window), smaller(part(window.height, 0.26), mm(14)));
  return stops.flatMap(({ cuts }) =>
    cuts.flatMap(({ number, side }) => {
      const x = side === "left" ? rightOf(window) : side === "right" ? window.left : across;
      const y = side === "head" ? window.top : side === "foot" ? footOf(window) : down;
      return placed(block(ZERO, ZERO, ring(desk, String(number), "black")), x, y);
    }),
  );
}

const OVERRUN: TextStyle = { ...TYPE.line, figures: { whole: points(15), stacked: points(16) } };

function cutLine(desk: BenchDesk, width: Length): Block {
  const words = caution(desk, BENCH_SHEET.freeHandShort, part(width, 0.5), {
    ...TYPE.fact,
    leading: points(12),
  });
  const past = overrunLine(desk.job.bench.overrun, { ...desk.speech, ruler: fineRuler(desk) });
  const top = mm(1.6);
  return block(width, CUT_LINE, [
    ...placed(words, ZERO, top),
    textAt(width, sum([top, mm(2.9)]), past, OVERRUN, "end"),
  ]);
}
