import type { ComposedMat, Composition } from "../../assembly/index.ts";
import type { RealPoint } from "../../geometry/index.ts";
import { subtract } from "../../lengths/index.ts";
import type { Mark } from "../marks.ts";
import { type DimensionLine, type Dimensions, dimension, extensionLines, type Stretch } from "./dimension.ts";
import { finished } from "./finish.ts";
import { type HandWords, handMarks } from "./hands.ts";
import { headMark, needsRoomAbove, ROOM_ABOVE } from "./head.ts";
import { openingOf, sheetOn, type Surface, surfaceOf, type View } from "./layout.ts";
import { outMarks } from "./out.ts";
import { area, group, groupOf, type Pen, penFor, polyline, scaleOf, type ViewOptions } from "./pen.ts";
import { clipEdge, common, corners, isOpen, type Rect, thinned } from "./shapes.ts";

export interface BackWords extends HandWords {
  /** "HEAD". */
  readonly head: string;
  /** "OUT". */
  readonly out: string;
}

export interface BackOptions extends ViewOptions {
  readonly words: BackWords;
  /** Which mat is marked and cut, counted from the lowest; the lowest where absent. */
  readonly mat?: number;
}

/** Where the dimension lines lie, in pixels off the board: the chain next to it, the whole outermost. */
const ABOVE = { chain: 12, whole: 36 };
const BESIDE = { chain: 20, whole: 46 };
/** Room between what overhangs one row of figures and the next. */
const CLEAR = 8;
const MARGIN = 8;
const FINEST = 0.2;

/** What stands round the board, in pixels: the margins, two rows of figures, two lines of words. */
export const BACK_FURNITURE = { width: 2 * MARGIN + 50, height: 2 * MARGIN + 49 + 41 } as const;

/**
 * What the hand sees when it marks and cuts: the board turned over like a page, head still away,
 * mirrored left to right. HEAD by its arrow, the part that falls out hatched and named, every border
 * dimensioned, the paper's edge as a neighbouring part, and which of the front's sides lies at which
 * hand. Throws RangeError for a scale that is not above nought or a mat that is not there.
 */
export function backView(composition: Composition, options: BackOptions): View {
  const pen = penFor(options);
  const on = surfaceOf(composition, scaleOf(options.scale), true);
  return finished(pen, on, backMarks(composition, on, pen, options), MARGIN);
}

/** The back's marks alone, the board's corner at nought. */
export function backMarks(
  composition: Composition,
  on: Surface,
  pen: Pen,
  options: Pick<BackOptions, "words" | "mat">,
): Mark[] {
  const chosen = options.mat ?? 0;
  const mat = composition.mats[chosen];
  if (!mat) throw new RangeError(`there is no mat ${chosen} in this work`);
  const window = openingOf(composition, mat, "back", on);
  const sheet = sheetOn(composition, on);
  const paper = sheet && thinned(sheet, FINEST * pen.pixel);
  const highest = paper ? paper.reduce((top, point) => Math.min(top, point.y), Infinity) : Infinity;
  // Words under the board stand clear of paper or an opening that runs past its foot.
  const lowest = (paper ?? []).reduce((low, point) => Math.max(low, point.y), window.bottom);
  const strips = { board: on.board, window, paperTop: highest };
  const dimensions = dimensionMarks(composition, on, pen, mat, window, needsRoomAbove(pen, strips));
  return [
    group("board", [area(corners(on.board), "mat", "outline")]),
    ...groupOf("window", windowMarks(window, on.board)),
    ...groupOf("other-openings", otherOpenings(composition, on, chosen)),
    ...groupOf("paper", paper ? [closed(paper)] : []),
    ...dimensions.marks,
    ...outMarks(pen, common(window, on.board), on.board, options.words.out),
    group("head", headMark(pen, strips, options.words.head)),
    group(
      "hands",
      handMarks(
        pen,
        { ...on.board, bottom: Math.max(on.board.bottom, lowest) },
        mat.borders,
        options.words,
        dimensions.below,
      ),
    ),
  ];
}

const closed = (points: readonly RealPoint[]): Mark => area(points, "none", "phantom");

/** The opening hatched and outlined as far as there is board to cut; the rest of it thin and dashed. */
function windowMarks(window: Rect, board: Rect): Mark[] {
  if (!isOpen(window)) return [area(corners(window), "none", "hidden")];
  const cut = common(window, board);
  return [
    ...(isOpen(cut) ? [area(corners(cut), "hatch-out")] : []),
    ...insideEdges(window, board),
    ...clipEdge(corners(window), board, "outside").map((piece) => polyline(piece, "hidden")),
  ];
}

function insideEdges(window: Rect, board: Rect): Mark[] {
  const pieces = clipEdge(corners(window), board, "inside");
  const whole =
    window.left > board.left &&
    window.right < board.right &&
    window.top > board.top &&
    window.bottom < board.bottom;
  return whole ? [area(corners(window), "none", "edge")] : pieces.map((piece) => polyline(piece, "edge"));
}

/** The openings of the mats that are not being cut, as hidden edges. */
const otherOpenings = (composition: Composition, on: Surface, chosen: number): Mark[] =>
  composition.mats.flatMap((mat, index) =>
    index === chosen ? [] : [area(corners(openingOf(composition, mat, "back", on)), "none", "hidden")],
  );

function dimensionMarks(
  composition: Composition,
  on: Surface,
  pen: Pen,
  mat: ComposedMat,
  window: Rect,
  roomAbove: boolean,
): { readonly marks: Mark[]; readonly below: number } {
  const px = (count: number): number => count * pen.pixel;
  const { borders } = mat;
  const { outer } = composition;
  const { board } = on;
  const lift = roomAbove ? ROOM_ABOVE : 0;
  const openingWidth = subtract(subtract(outer.width, borders.left), borders.right);
  const openingHeight = subtract(subtract(outer.height, borders.head), borders.foot);

  const acrossChain = dimensioned(
    pen,
    { along: "x", at: board.top - px(ABOVE.chain + lift), outline: board.top },
    [
      { name: "border-right", from: board.left, to: window.left, length: borders.right },
      { name: "window-width", from: window.left, to: window.right, length: openingWidth },
      { name: "border-left", from: window.right, to: board.right, length: borders.left },
    ],
  );
  const acrossWhole = dimensioned(
    pen,
    { along: "x", at: board.top - px(ABOVE.whole + lift), outline: board.top },
    [{ name: "outer-width", from: board.left, to: board.right, length: outer.width }],
  );
  // What overhangs the row above at its right end pushes the column out, so that no figure meets another.
  const overhang = Math.max(acrossChain.set.after, acrossWhole.set.after);
  const beside = overhang > 0 ? overhang + px(CLEAR) : 0;
  const column = board.right + Math.max(px(BESIDE.chain), beside + px(BESIDE.chain));
  const downChain = dimensioned(pen, { along: "y", at: column, outline: board.right }, [
    { name: "border-head", from: board.top, to: window.top, length: borders.head },
    { name: "window-height", from: window.top, to: window.bottom, length: openingHeight },
    { name: "border-foot", from: window.bottom, to: board.bottom, length: borders.foot },
  ]);
  const downWhole = dimensioned(
    pen,
    { along: "y", at: column + px(BESIDE.whole - BESIDE.chain), outline: board.right },
    [{ name: "outer-height", from: board.top, to: board.bottom, length: outer.height }],
  );
  return {
    marks: [
      group("extension-lines", [
        ...extensionLines(pen, [acrossChain, acrossWhole]),
        ...extensionLines(pen, [downChain, downWhole]),
      ]),
      ...[acrossChain, acrossWhole, downChain, downWhole].flatMap(({ set }) => set.marks),
    ],
    below: Math.max(downChain.set.after, downWhole.set.after),
  };
}

const dimensioned = (
  pen: Pen,
  on: DimensionLine,
  stretches: readonly Stretch[],
): { readonly on: DimensionLine; readonly set: Dimensions } => ({ on, set: dimension(pen, on, stretches) });
