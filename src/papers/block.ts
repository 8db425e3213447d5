import type { Box, Point } from "../geometry/index.ts";
import { add, type Length, larger, subtract, sum, ZERO } from "../lengths/index.ts";
import type { LineKind, Mark } from "../drawings/index.ts";
import { part } from "./paper.ts";

/** A piece of a page: marks with the origin at its own top-left corner, and the room it takes. */
export interface Block {
  readonly width: Length;
  readonly height: Length;
  readonly marks: readonly Mark[];
}

export const block = (width: Length, height: Length, marks: readonly Mark[] = []): Block => ({
  width,
  height,
  marks,
});

/** Room left free. */
export const gap = (height: Length): Block => block(ZERO, height);

/** The same marks further right by `by.x` and down by `by.y`. */
function shifted(marks: readonly Mark[], by: Point): readonly Mark[] {
  if (by.x === 0 && by.y === 0) return marks;
  const move = ({ x, y }: Point): Point => ({ x: add(x, by.x), y: add(y, by.y) });
  return marks.map((mark): Mark => {
    switch (mark.kind) {
      case "line":
        return { ...mark, from: move(mark.from), to: move(mark.to) };
      case "polyline":
        return { ...mark, points: mark.points.map(move) };
      case "area":
        return {
          ...mark,
          points: mark.points.map(move),
          ...(mark.holes ? { holes: mark.holes.map((hole) => hole.map(move)) } : {}),
        };
      case "circle":
        return { ...mark, centre: move(mark.centre) };
      case "arrowhead":
      case "text":
        return { ...mark, at: move(mark.at) };
      case "picture":
        return {
          ...mark,
          left: add(mark.left, by.x),
          top: add(mark.top, by.y),
          ...(mark.clip ? { clip: mark.clip.map(move) } : {}),
        };
      case "group":
        return { ...mark, marks: shifted(mark.marks, by) };
    }
  });
}

/** A block's marks where its corner is put at `x`, `y`. */
export const placed = (piece: Block, x: Length, y: Length): readonly Mark[] => shifted(piece.marks, { x, y });

/** One below another, left edges together, `between` apart. */
export function stack(pieces: readonly Block[], between: Length = ZERO): Block {
  const marks: Mark[] = [];
  let y = ZERO;
  pieces.forEach((piece, index) => {
    if (index > 0) y = add(y, between);
    marks.push(...placed(piece, ZERO, y));
    y = add(y, piece.height);
  });
  return block(
    pieces.reduce((width, piece) => larger(width, piece.width), ZERO),
    y,
    marks,
  );
}

export type Across = "top" | "middle" | "foot";

/** One beside another, `between` apart. */
export function beside(pieces: readonly Block[], between: Length = ZERO, across: Across = "top"): Block {
  const height = pieces.reduce((most, piece) => larger(most, piece.height), ZERO);
  const marks: Mark[] = [];
  let x = ZERO;
  pieces.forEach((piece, index) => {
    if (index > 0) x = add(x, between);
    const spare = subtract(height, piece.height);
    marks.push(...placed(piece, x, across === "top" ? ZERO : across === "foot" ? spare : part(spare, 0.5)));
    x = add(x, piece.width);
  });
  return block(x, height, marks);
}

export type Align = "start" | "middle" | "end";

/** A piece in a wider room. */
export function aligned(piece: Block, width: Length, align: Align): Block {
  const spare = subtract(width, piece.width);
  const x = align === "start" ? ZERO : align === "end" ? spare : part(spare, 0.5);
  return block(width, piece.height, placed(piece, x, ZERO));
}

/** A piece moved in from the left. */
export const indented = (piece: Block, by: Length): Block =>
  block(add(piece.width, by), piece.height, placed(piece, by, ZERO));

/** A rule across, that takes no room. */
export const rule = (width: Length, line: LineKind): Block =>
  block(width, ZERO, [{ kind: "line", from: { x: ZERO, y: ZERO }, to: { x: width, y: ZERO }, line }]);

/** The corners of a box, clockwise from its top left. */
export const cornersOf = ({ left, top, width, height }: Box): readonly [Point, Point, Point, Point] => [
  { x: left, y: top },
  { x: add(left, width), y: top },
  { x: add(left, width), y: add(top, height) },
  { x: left, y: add(top, height) },
];

/** A column's share of a width: `shares` are parts of what the fixed gaps leave. */
export function columns(width: Length, between: Length, shares: readonly number[]): readonly Length[] {
  const whole = shares.reduce((total, share) => total + share, 0);
  const free = subtract(width, sum(shares.slice(1).map(() => between)));
  return shares.map((share) => part(free, share / whole));
}

/** What fixed columns leave of a width for one more, a gap between it and each of them. */
export const restOf = (width: Length, between: Length, fixed: readonly Length[]): Length =>
  subtract(width, sum(fixed.flatMap((one) => [one, between])));
