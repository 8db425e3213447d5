import { type Lane, type Slope, type Span, xAt } from "./bands.ts";

/** A rectangle by its four sides, with its area. */
export interface Found {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly area: number;
}

/**
 * One cell of the search: the rectangle's head lies somewhere in one undivided band, its foot in
 * another (or the same), between the edges of one lane in each, and within `between`.
 */
export interface Cell {
  readonly headFrom: number;
  readonly headTo: number;
  readonly footFrom: number;
  readonly footTo: number;
  readonly upper: Lane;
  readonly lower: Lane;
  readonly between: Span;
}

/**
 * The largest rectangle of a cell, if it is larger than `best`; otherwise `best` itself.
 *
 * Its width is the least of three right limits less the greatest of three left limits, each of them
 * straight in head or foot: concave. Where the limits that bind are the same, the area is a product
 * of two linear functions, which is largest on the rim of that part of the plane or, when it is level
 * along a line, on that line, which reaches the rim. So the optimum lies on the cell's own rim or on
 * a line where two right limits, or two left limits, are equal; and on such a line where a product
 * is stationary, at an end, or where the limit that binds changes. All of these are tried.
 */
export function largestInCell(cell: Cell, best: Found | null): Found | null {
  const { headFrom, headTo, footFrom, footTo, upper, lower, between } = cell;
  let found = best;
  const heads = [headFrom, headTo, yWhere(upper.right, between.right), yWhere(upper.left, between.left)];
  for (const head of heads) {
    if (head >= headFrom && head <= headTo) found = largestOnPath(cell, head, head, footFrom, footTo, found);
  }
  const feet = [footFrom, footTo, yWhere(lower.right, between.right), yWhere(lower.left, between.left)];
  for (const foot of feet) {
    if (foot >= footFrom && foot <= footTo) found = largestOnPath(cell, headFrom, headTo, foot, foot, found);
  }
  found = largestWhereEqual(cell, upper.right, lower.right, found);
  return largestWhereEqual(cell, upper.left, lower.left, found);
}

/** Where an edge passes over x; not a number, or outside every band, when it does not. */
const yWhere = (edge: Slope, x: number): number => edge.topY + (x - edge.topX) / edge.lean;

/** Along the heads and feet at which an edge of the upper lane and one of the lower lane have the same x. */
function largestWhereEqual(cell: Cell, upper: Slope, lower: Slope, best: Found | null): Found | null {
  if (upper === lower) return best;
  const { headFrom, headTo, footFrom, footTo } = cell;
  const [a, b, c, d] = [xAt(upper, headFrom), xAt(upper, headTo), xAt(lower, footFrom), xAt(lower, footTo)];
  const left = Math.max(Math.min(a, b), Math.min(c, d));
  const right = Math.min(Math.max(a, b), Math.max(c, d));
  if (!(left < right)) return best;
  return largestOnPath(
    cell,
    held(yWhere(upper, left), headFrom, headTo),
    held(yWhere(upper, right), headFrom, headTo),
    held(yWhere(lower, left), footFrom, footTo),
    held(yWhere(lower, right), footFrom, footTo),
    best,
  );
}

const held = (value: number, from: number, to: number): number => Math.min(Math.max(value, from), to);

/**
 * The largest along a straight path on which head and foot move evenly from one pair to another.
 * Every limit is linear along it: its value at the start, and `…By`, its change over the whole path.
 */
function largestOnPath(
  { upper, lower, between }: Cell,
  head: number,
  headEnd: number,
  foot: number,
  footEnd: number,
  best: Found | null,
): Found | null {
  const { left, right } = between;
  const leftAbove = xAt(upper.left, head);
  const leftAboveBy = xAt(upper.left, headEnd) - leftAbove;
  const leftBelow = xAt(lower.left, foot);
  const leftBelowBy = xAt(lower.left, footEnd) - leftBelow;
  const rightAbove = xAt(upper.right, head);
  const rightAboveBy = xAt(upper.right, headEnd) - rightAbove;
  const rightBelow = xAt(lower.right, foot);
  const rightBelowBy = xAt(lower.right, footEnd) - rightBelow;
  const tall = foot - head;
  const tallBy = footEnd - headEnd - tall;
  // Where a limit above equals `left` or `right` is a path of its own, on which all its crossings are tried.
  const trials = [
    0,
    1,
    equalAt(leftBelow - left, leftBelowBy),
    equalAt(leftAbove - leftBelow, leftAboveBy - leftBelowBy),
    equalAt(rightBelow - right, rightBelowBy),
    equalAt(rightAbove - rightBelow, rightAboveBy - rightBelowBy),
    levelAt(tall, tallBy, right - leftAbove, -leftAboveBy),
    levelAt(tall, tallBy, right - leftBelow, -leftBelowBy),
    levelAt(tall, tallBy, rightAbove - left, rightAboveBy),
    levelAt(tall, tallBy, rightAbove - leftAbove, rightAboveBy - leftAboveBy),
    levelAt(tall, tallBy, rightAbove - leftBelow, rightAboveBy - leftBelowBy),
    levelAt(tall, tallBy, rightBelow - left, rightBelowBy),
    levelAt(tall, tallBy, rightBelow - leftAbove, rightBelowBy - leftAboveBy),
    levelAt(tall, tallBy, rightBelow - leftBelow, rightBelowBy - leftBelowBy),
  ];
  let found = best;
  let most = best?.area ?? 0;
  for (const at of trials) {
    if (!(at >= 0 && at <= 1)) continue;
    const from = Math.max(left, leftAbove + at * leftAboveBy, leftBelow + at * leftBelowBy);
    const to = Math.min(right, rightAbove + at * rightAboveBy, rightBelow + at * rightBelowBy);
    const height = tall + at * tallBy;
    const area = (to - from) * height;
    if (!(to > from && height > 0 && area > most)) continue;
    most = area;
    found = {
      left: from,
      right: to,
      top: head + at * (headEnd - head),
      bottom: foot + at * (footEnd - foot),
      area,
    };
  }
  return found;
}

/** Where two linear functions meet, from their difference at the start and its change. */
const equalAt = (difference: number, by: number): number => -difference / by;

/** Where the product of two linear functions is level. */
const levelAt = (a: number, aBy: number, b: number, bBy: number): number =>
  -(a * bBy + b * aBy) / (2 * aBy * bBy);
