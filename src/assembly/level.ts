import type { Box, FourCorners, Outline, RealPoint } from "../geometry/index.ts";
import { largestUprightRectangle, smallestUprightRectangle, turned } from "../geometry/index.ts";
import { ZERO } from "../lengths/index.ts";
import type { EditionSheet, Print, WindowRule } from "./design.ts";

/**
 * One sheet in the level frame: the sheet frame, turned about the image's centre so that what is to
 * hang level is upright. Everything about the window is found here; nothing knows the borders yet.
 */
export interface LevelSheet {
  readonly name: string | null;
  /** Degrees clockwise that the sheet was turned. */
  readonly angle: number;
  /** Largest upright rectangle that is all image; null when the outline holds none. */
  readonly inner: Box | null;
  /** Smallest upright rectangle that holds all of the image. */
  readonly around: Box;
  /** The smallest upright rectangle that holds the whole sheet as it lies unturned. */
  readonly sheetAround: Box;
  /** Corners of the rectangle that certainly is paper (top-left, top-right, bottom-right, bottom-left before turning). */
  readonly paper: FourCorners;
  /** Corners of the sheet as measured. */
  readonly sheet: FourCorners;
  /** The edge of image and torn sheet as they lie in this frame. */
  readonly imageOutline: readonly RealPoint[];
  readonly sheetOutline: readonly RealPoint[] | null;
  /** Whether the image's edge was given point by point. */
  readonly rough: boolean;
}

/** The print and every further sheet of its edition, each in its own level frame. */
export function levelSheets(print: Print, window: WindowRule): readonly LevelSheet[] {
  const first = levelPrint(print, window);
  if (print.edition.length === 0) return [first];
  return [first, ...print.edition.map((sheet) => levelPrint(asPrint(print, sheet), window, sheet.name))];
}

function asPrint(print: Print, sheet: EditionSheet): Print {
  return { ...print, sheet: sheet.sheet, image: sheet.image, outline: null, sheetOutline: null, edition: [] };
}

function levelPrint(print: Print, window: WindowRule, name: string | null = null): LevelSheet {
  const sheetBox: Box = { left: ZERO, top: ZERO, ...print.sheet };
  const centre: RealPoint = centreOf(
    print.outline === null ? print.image : smallestUprightRectangle(print.outline),
  );
  // A floated sheet is never turned: the eye reads the paper's edge.
  const angle = window.show === "sheet" || print.level === "sheet" || print.angle === 0 ? 0 : -print.angle;
  const turn = (points: readonly RealPoint[]): readonly RealPoint[] =>
    angle === 0 ? points : turned(points, centre, angle);

  const paperBox = print.sheetOutline === null ? sheetBox : (envelope(print.sheetOutline).inner ?? sheetBox);
  const image = imageEdge(print, angle, centre);
  return {
    name,
    angle,
    ...image,
    sheetAround: print.sheetOutline === null ? sheetBox : envelope(print.sheetOutline).around,
    paper: quad(turn(cornersOf(paperBox))),
    sheet: quad(turn(cornersOf(sheetBox))),
    sheetOutline: print.sheetOutline === null ? null : turn(print.sheetOutline),
    rough: print.outline !== null,
  };
}

/** The image in the level frame: upright at once when it has straight edges and is levelled. */
function imageEdge(
  print: Print,
  angle: number,
  centre: RealPoint,
): Pick<LevelSheet, "inner" | "around" | "imageOutline"> {
  if (print.outline !== null) {
    const { inner, around, points } = envelope(print.outline, angle, centre);
    return { inner, around, imageOutline: points };
  }
  if (print.angle + angle === 0) {
    return { inner: print.image, around: print.image, imageOutline: cornersOf(print.image) };
  }
  const points = turned(cornersOf(print.image), centre, print.angle + angle);
  return {
    inner: largestUprightRectangle(points),
    around: smallestUprightRectangle(points),
    imageOutline: points,
  };
}

interface Envelope {
  readonly angle: number;
  readonly points: readonly RealPoint[];
  readonly inner: Box | null;
  readonly around: Box;
}

/** An outline of thousands of points is searched once, not at every change of a border beside it. */
const envelopes = new WeakMap<Outline, Envelope>();

function envelope(outline: Outline, angle = 0, centre: RealPoint = { x: 0, y: 0 }): Envelope {
  const known = envelopes.get(outline);
  if (known !== undefined && known.angle === angle) return known;
  const points = angle === 0 ? outline : turned(outline, centre, angle);
  const found: Envelope = {
    angle,
    points,
    inner: largestUprightRectangle(points),
    around: smallestUprightRectangle(points),
  };
  envelopes.set(outline, found);
  return found;
}

const centreOf = (box: Box): RealPoint => ({ x: box.left + box.width / 2, y: box.top + box.height / 2 });

/** Corners of a box, going round clockwise from the top left. */
function cornersOf(box: Box): FourCorners {
  const right = box.left + box.width;
  const bottom = box.top + box.height;
  return [
    { x: box.left, y: box.top },
    { x: right, y: box.top },
    { x: right, y: bottom },
    { x: box.left, y: bottom },
  ];
}

function quad(points: readonly RealPoint[]): FourCorners {
  const [a, b, c, d] = points;
  if (a === undefined || b === undefined || c === undefined || d === undefined)
    throw new RangeError("a sheet has four corners");
  return [a, b, c, d];
}
