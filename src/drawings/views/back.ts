import type { Composition } from "../../assembly/index.ts";
import type { Mark } from "../marks.ts";
import { ABOVE, BESIDE, borderDimensions } from "./borders.ts";
import { finished } from "./finish.ts";
import { type HandWords, handMarks } from "./hands.ts";
import { headMark, needsRoomAbove } from "./head.ts";
import { openingOf, sheetOn, type Surface, surfaceOf, type View } from "./layout.ts";
import { outMarks } from "./out.ts";
import { area, group, groupOf, type Pen, penFor, polyline, scaleOf, type ViewOptions } from "./pen.ts";
import { aroundAll, clipEdge, common, contains, corners, isOpen, type Rect, thinned } from "./shapes.ts";

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

const MARGIN = 8;
const FINEST = 0.2;

/** The outermost figure above its line; two lines of words under the board. */
const FIGURE_ROOM = 22;
const HANDS_ROOM = 42;

/** What stands round the board, in pixels: the margins, two rows of figures, two lines of words. */
export const BACK_FURNITURE = {
  width: 2 * MARGIN + BESIDE.whole + 4,
  height: 2 * MARGIN + ABOVE.whole + FIGURE_ROOM + HANDS_ROOM,
} as const;

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
  // Figures and words stand clear of the board, and of paper or an opening that runs past it.
  const drawn = aroundAll([...corners(on.board), ...corners(window), ...(paper ?? [])]);
  const others = composition.mats.map((each) => openingOf(composition, each, "back", on).top);
  const edges = [...others, ...(paper ? [aroundAll(paper).top] : [])];
  const strips = { board: on.board, window, edges };
  const headAbove = needsRoomAbove(pen, strips, options.words.head);
  const dimensions = borderDimensions(composition, mat, pen, { on, window, drawn, headAbove });
  const words = handMarks(
    pen,
    { ...on.board, bottom: drawn.bottom },
    mat.borders,
    options.words,
    dimensions.below,
  );
  return [
    group("ground", [area(corners(on.board), "mat")]),
    ...groupOf("window", windowMarks(window, on.board)),
    ...groupOf("other-openings", otherOpenings(composition, on, chosen)),
    ...groupOf("paper", paper ? [area(paper, "none", "phantom")] : []),
    group("board", [area(corners(on.board), "none", "outline")]),
    group("extension-lines", dimensions.extensions),
    ...dimensions.stretches,
    ...outMarks(pen, common(window, on.board), on.board, options.words.out),
    group("head", headMark(pen, strips, options.words.head)),
    group("hands", words),
  ];
}

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

const insideEdges = (window: Rect, board: Rect): Mark[] =>
  contains(board, window)
    ? [area(corners(window), "none", "edge")]
    : clipEdge(corners(window), board, "inside").map((piece) => polyline(piece, "edge"));

/** The openings of the mats that are not being cut, as hidden edges. */
const otherOpenings = (composition: Composition, on: Surface, chosen: number): Mark[] =>
  composition.mats.flatMap((mat, index) =>
    index === chosen ? [] : [area(corners(openingOf(composition, mat, "back", on)), "none", "hidden")],
  );
