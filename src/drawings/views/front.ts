import type { Composition, ComposedMat } from "../../assembly/index.ts";
import type { RealPoint } from "../../geometry/index.ts";
import type { Fill, Mark } from "../marks.ts";
import { finished } from "./finish.ts";
import { imageOn, isFloated, openingOf, sheetOn, type Surface, surfaceOf, type View } from "./layout.ts";
import {
  area,
  group,
  groupOf,
  type Pen,
  penFor,
  place,
  polyline,
  scaleOf,
  spots,
  type ViewOptions,
} from "./pen.ts";
import { clipEdge, clipPolygon, common, corners, isOpen, type Rect, thinned } from "./shapes.ts";

export interface FrontOptions extends ViewOptions {
  /** The name of the image's picture; it fills the image's own box. */
  readonly picture?: string;
  /** For a small drawing: a thin edge, no shade, and no bevels under half a pixel. */
  readonly plain?: boolean;
}

/** Room round the board in pixels, for a handle on its edge. */
const MARGIN = 10;
/** Points of a torn edge nearer than this, in pixels, are one. */
const FINEST = 0.2;

/**
 * The package as it will hang, seen from the front and lit from the upper left: mats from the lowest
 * up, bevels, the print in its true place and turn, what is bare. What cannot be as drawn is thin and
 * dashed. Throws RangeError for a scale that is not above nought.
 */
export function frontView(composition: Composition, options: FrontOptions): View {
  const pen = penFor(options);
  const on = surfaceOf(composition, scaleOf(options.scale), false);
  return finished(pen, on, frontMarks(composition, on, pen, options), MARGIN);
}

/** The front's marks alone, the board's corner at nought, for a sheet that holds more than this view. */
export function frontMarks(
  composition: Composition,
  on: Surface,
  pen: Pen,
  options: Pick<FrontOptions, "picture" | "plain">,
): Mark[] {
  const lowest = composition.mats[0];
  const window = lowest ? common(openingOf(composition, lowest, "back", on), on.board) : on.board;
  const sheet = thinnedFor(pen, sheetOn(composition, on));
  const image = thinnedFor(pen, imageOn(composition, on));
  return [
    group("mount", [area(corners(on.board), "mount")]),
    ...groupOf("paper", sheet ? paperMarks(composition, sheet, window) : []),
    ...groupOf("image", image ? imageMarks(composition, image, window, options.picture) : []),
    ...composition.mats.flatMap((mat, index) =>
      matMarks(composition, on, pen, mat, index, options.plain ?? false),
    ),
    group("board", [area(corners(on.board), "none", options.plain ? "thin" : "edge")]),
    ...groupOf("cannot-be", offending(composition, on, sheet)),
  ];
}

const thinnedFor = (pen: Pen, points: RealPoint[] | null): RealPoint[] | null =>
  points && thinned(points, FINEST * pen.pixel);

/** The paper in sight, and its edge where that is seen: solid when it is meant to be, dashed when the window passes it. */
function paperMarks(composition: Composition, sheet: readonly RealPoint[], window: Rect): Mark[] {
  const seen = clipPolygon(sheet, window);
  const kind = isFloated(composition) ? "thin" : "hidden";
  return [
    ...(seen.length === 0 ? [] : [area(seen, "print-paper")]),
    ...clipEdge(sheet, window, "inside").map((piece) => polyline(piece, kind)),
  ];
}

/** The image in its place, trimmed to the window and to its own rough edge. */
function imageMarks(
  composition: Composition,
  image: readonly RealPoint[],
  window: Rect,
  picture: string | undefined,
): Mark[] {
  const seen = clipPolygon(image, window);
  if (seen.length === 0) return [];
  const edges = clipEdge(image, window, "inside").map((piece) => polyline(piece, "thin"));
  if (picture === undefined) return [area(seen, "image"), ...edges];
  const degrees = (composition.design.print?.angle ?? 0) + (composition.print?.angle ?? 0);
  return [{ kind: "picture", source: picture, ...pictureBox(image, degrees), clip: spots(seen) }];
}

/** The box of an image in its own direction, standing upright about its own centre, and the turn that lays it down. */
function pictureBox(image: readonly RealPoint[], degrees: number) {
  const turn = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const along = image.map((point) => point.x * cos + point.y * sin);
  const down = image.map((point) => point.y * cos - point.x * sin);
  const [left, right, top, bottom] = [least(along), most(along), least(down), most(down)];
  const [u, v] = [(left + right) / 2, (top + bottom) / 2];
  const centre = { x: u * cos - v * sin, y: u * sin + v * cos };
  return {
    left: place(centre.x - (right - left) / 2),
    top: place(centre.y - (bottom - top) / 2),
    width: place(right - left),
    height: place(bottom - top),
    ...(Math.abs(degrees) < 1e-9 ? {} : { degrees }),
  };
}

const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b), Infinity);
const most = (values: readonly number[]): number => values.reduce((a, b) => Math.max(a, b), -Infinity);

/** One mat: its shade on what lies below, its face, its bevel and the edge of its face. */
function matMarks(
  composition: Composition,
  on: Surface,
  pen: Pen,
  mat: ComposedMat,
  index: number,
  plain: boolean,
): Mark[] {
  const back = openingOf(composition, mat, "back", on);
  const face = openingOf(composition, mat, "face", on);
  const top = index === composition.mats.length - 1;
  const hole = common(face, on.board);
  const bevelWidth = mat.bevel.plan * on.scale;
  const shade = plain ? [] : shadeOf(common(back, on.board), mat.thickness * on.scale);
  const field: Mark = {
    kind: "area",
    points: spots(corners(on.board)),
    ...(isOpen(hole) ? { holes: [spots(corners(hole))] } : {}),
    fill: top ? "mat" : "mat-lower",
    line: null,
  };
  const bevel = plain && bevelWidth < pen.pixel / 2 ? [] : bevelMarks(back, face, on.board);
  const edge = clipEdge(corners(face), on.board, "inside").map((piece) => polyline(piece, "thin"));
  return [
    ...groupOf(`shadow-${index}`, shade),
    group(`mat-${index}`, isOpen(face) ? [field, ...edge] : [field]),
    ...groupOf(`bevel-${index}`, bevel),
  ];
}

/** Along the head and the left, as wide as the board is thick: light falls from the upper left at 45 degrees. */
function shadeOf(opening: Rect, thickness: number): Mark[] {
  if (!isOpen(opening)) return [];
  const right = Math.min(opening.left + thickness, opening.right);
  const bottom = Math.min(opening.top + thickness, opening.bottom);
  return [
    area(
      [
        { x: opening.left, y: opening.top },
        { x: opening.right, y: opening.top },
        { x: opening.right, y: bottom },
        { x: right, y: bottom },
        { x: right, y: opening.bottom },
        { x: opening.left, y: opening.bottom },
      ],
      "shadow",
    ),
  ];
}

/** The four faces of the cut, mitred; each in its own light. A square cut has none. */
function bevelMarks(back: Rect, face: Rect, board: Rect): Mark[] {
  if (!isOpen(back) || back.left === face.left) return [];
  const [b, f] = [corners(back), corners(face)];
  const fills: readonly Fill[] = ["bevel-head", "bevel-right", "bevel-foot", "bevel-left"];
  return fills.flatMap((fill, index) => {
    const next = (index + 1) % 4;
    const quad = [f[index], f[next], b[next], b[index]].filter((point) => point !== undefined);
    const seen = clipPolygon(quad, board);
    return seen.length === 0 ? [] : [area(seen, fill)];
  });
}

const dashed = (points: readonly RealPoint[], rect: Rect): Mark[] =>
  clipEdge(points, rect, "outside").map((piece) => polyline(piece, "hidden"));

/** What cannot be as asked, thin and dashed: an opening past the board or closed up, a strip covered, paper past the board. */
function offending(composition: Composition, on: Surface, sheet: readonly RealPoint[] | null): Mark[] {
  const openings = composition.mats.flatMap((mat) => {
    const back = openingOf(composition, mat, "back", on);
    if (!isOpen(back)) return [area(corners(back), "none", "hidden")];
    return dashed(corners(back), on.board);
  });
  const covered = composition.mats.flatMap((mat, index) => {
    const lower = composition.mats[index - 1];
    if (!lower || mat.revealAsCut === null || mat.revealAsCut >= 0) return [];
    return [area(corners(openingOf(composition, lower, "face", on)), "none", "hidden")];
  });
  return [...openings, ...covered, ...(sheet ? dashed(sheet, on.board) : [])];
}
