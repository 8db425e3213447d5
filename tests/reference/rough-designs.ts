import { Chance } from "./chance.ts";
import type { Design, Print, Written } from "./document.ts";
import { randomDesign } from "./random-designs.ts";
import { readMillimetres } from "./read-length.ts";

/** A rectangle in whole micrometres. */
export interface Rectangle {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}
type Corner = readonly [x: number, y: number];

/** The print of the open document with its edges told point by point. */
interface RoughPrint extends Omit<Print, "image" | "paper"> {
  readonly outline: readonly (readonly [Written, Written])[];
  readonly sheetOutline?: readonly (readonly [Written, Written])[];
}

export interface RoughDesign {
  /** What the engine is given. */
  readonly told: Omit<Design, "print"> & { readonly print: RoughPrint };
  /** The same with rectangles, found by trying all, in place of the outlines. */
  readonly plain: Design;
}

/**
 * A random design whose image, and now and then whose sheet, has an edge of steps: an outline of level
 * and upright edges, in which the largest rectangle lies on the lines of its own edges, so that trying
 * them all finds it exactly. The image may be skew. Null where the design has no image, where two
 * rectangles are as good as equal, or where the last digit of a turn decides how the window is rounded:
 * nobody can say then which it is.
 */
export function roughDesign(seed: number): RoughDesign | null {
  const design = randomDesign(seed);
  const { print } = design;
  if (print?.image === undefined) return null;
  const chance = new Chance(seed ^ 0x5eed);
  const whole = (said: Written): number =>
    Math.round(readMillimetres(said, design.unit).toNumber() * 1000) + chance.whole(-400, 400);
  const [left, top] = [whole(print.image.left), whole(print.image.top)];
  const [right, bottom] = [left + whole(print.image.width), top + whole(print.image.height)];
  if (right - left < 30_000 || bottom - top < 30_000) return null;
  const edge = steps(chance, { left, top, right, bottom }, chance.pick([300, 1500, 6000]));
  const around = boundsOf(edge);
  const inner = largestInside(edge);
  if (inner === null) return null;

  const torn = chance.happens(0.4);
  const size = { left: 0, top: 0, right: whole(print.width), bottom: whole(print.height) };
  if (torn && (size.right < 60_000 || size.bottom < 60_000)) return null;
  const paperEdge = torn ? movedToNought(steps(chance, size, chance.pick([500, 4000]))) : null;
  const paper = paperEdge === null ? size : largestInside(paperEdge);
  if (paper === null) return null;
  const sheet = paperEdge === null ? size : boundsOf(paperEdge);

  const angle = print.angle ?? 0;
  const middle: Corner = [(around.left + around.right) / 2, (around.top + around.bottom) / 2];
  const shown = design.window.show === "overlap" ? inner : around;
  if (angle !== 0 && isOnMark(design, shown)) return null;
  const { image: _, ...rest } = print;
  const written = { width: millimetres(sheet.right), height: millimetres(sheet.bottom) };
  return {
    told: {
      ...design,
      print: {
        ...rest,
        ...written,
        outline: edge.map((corner) => turned(corner, middle, angle)).map(pair),
        ...(paperEdge === null ? {} : { sheetOutline: paperEdge.map(pair) }),
      },
    },
    plain: {
      ...design,
      print: { ...rest, ...written, image: box(levelled(shown, middle, angle)), paper: box(paper) },
    },
  };
}

/** Whether the window that a rectangle asks for stands within a ten-thousandth of a millimetre of where its rounding changes. */
function isOnMark(design: Design, shown: Rectangle): boolean {
  const read = (said: Written): number => readMillimetres(said, design.unit).toNumber();
  const { window } = design;
  const [wider, higher] =
    window.show === "overlap"
      ? [-2 * read(window.overlap), -2 * read(window.overlap)]
      : window.show === "margins"
        ? [2 * read(window.side), read(window.top) + read(window.foot)]
        : [0, 0];
  const half = read(design.graduation) / 2;
  return [(shown.right - shown.left) / 1000 + wider, (shown.bottom - shown.top) / 1000 + higher].some(
    (asked) => Math.abs(asked - Math.round(asked / half) * half) < 1e-4,
  );
}

const millimetres = (micrometres: number): string => `${(micrometres / 1000).toFixed(12)} mm`;
const pair = ([x, y]: Corner): readonly [string, string] => [millimetres(x), millimetres(y)];
const box = ({ left, top, right, bottom }: Rectangle): NonNullable<Print["paper"]> => ({
  left: millimetres(left),
  top: millimetres(top),
  width: millimetres(right - left),
  height: millimetres(bottom - top),
});

/** Clockwise as seen from the front, y down. */
function turned([x, y]: Corner, [mx, my]: Corner, degrees: number): Corner {
  if (degrees === 0) return [x, y];
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return [mx + (x - mx) * cos - (y - my) * sin, my + (x - mx) * sin + (y - my) * cos];
}

/** A rectangle of a skew image as the document has it: as it would lie were it turned about its own middle. */
function levelled(shown: Rectangle, middle: Corner, degrees: number): Rectangle {
  const [width, height] = [shown.right - shown.left, shown.bottom - shown.top];
  const [x, y] = turned([shown.left + width / 2, shown.top + height / 2], middle, degrees);
  return { left: x - width / 2, top: y - height / 2, right: x + width / 2, bottom: y + height / 2 };
}

/** An edge of level and upright steps going round inside a rectangle, none further in than `rough`. */
function steps(chance: Chance, { left, top, right, bottom }: Rectangle, rough: number): Corner[] {
  const inward = (): number => chance.whole(0, rough);
  const some = (): number[] => Array.from({ length: chance.whole(1, 5) }, inward);
  const [head, east, foot, west] = [some(), some(), some(), some()];
  const last = (all: readonly number[]): number => all.at(-1) ?? 0;
  const between = (count: number, from: number, to: number): number[] =>
    Array.from({ length: count - 1 }, () => chance.whole(from, to))
      .toSorted((a, b) => a - b)
      // No two at one place, where the edge would fold back on itself.
      .map((place, index) => place + index);
  const xs = (count: number): number[] => between(count, left + rough + 1, right - rough - 6);
  const ys = (count: number): number[] => between(count, top + rough + 1, bottom - rough - 6);
  // Each side from where the one before it ends to where the next begins.
  const headAt = [left + last(west), ...xs(head.length), right - (east[0] ?? 0)];
  const eastAt = [top + last(head), ...ys(east.length), bottom - (foot[0] ?? 0)];
  const footAt = [right - last(east), ...xs(foot.length).toReversed(), left + (west[0] ?? 0)];
  const westAt = [bottom - last(foot), ...ys(west.length).toReversed(), top + (head[0] ?? 0)];
  const run = (
    depths: readonly number[],
    places: readonly number[],
    at: (place: number, depth: number) => Corner,
  ): Corner[] =>
    depths.flatMap((depth, index) => [at(places[index] ?? 0, depth), at(places[index + 1] ?? 0, depth)]);
  const round = [
    ...run(head, headAt, (x, depth) => [x, top + depth]),
    ...run(east, eastAt, (y, depth) => [right - depth, y]),
    ...run(foot, footAt, (x, depth) => [x, bottom - depth]),
    ...run(west, westAt, (y, depth) => [left + depth, y]),
  ];
  return round.filter(([x, y], index) => {
    const [px, py] = round.at(index - 1) ?? [NaN, NaN];
    return px !== x || py !== y;
  });
}

function boundsOf(edge: readonly Corner[]): Rectangle {
  const [xs, ys] = [edge.map(([x]) => x), edge.map(([, y]) => y)];
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

function movedToNought(edge: readonly Corner[]): Corner[] {
  const { left, top } = boundsOf(edge);
  return edge.map(([x, y]) => [x - left, y - top]);
}

/** The largest rectangle inside an edge of steps, by trying all; null where another is as large to a millionth. */
export function largestInside(edge: readonly Corner[]): Rectangle | null {
  const lines = (axis: 0 | 1): number[] =>
    [...new Set(edge.map((corner) => corner[axis]))].toSorted((a, b) => a - b);
  const [xs, ys] = [lines(0), lines(1)];
  const [columns, rows] = [xs.length - 1, ys.length - 1];
  // How many cells above and left of each crossing are not inside.
  const outside = Array.from({ length: rows + 1 }, () => Array.from({ length: columns + 1 }, () => 0));
  const at = (row: number, column: number): number => outside[row]?.[column] ?? 0;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const [x, y] = [middleOf(xs, column), middleOf(ys, row)];
      const above = at(row, column + 1) + at(row + 1, column) - at(row, column);
      (outside[row + 1] as number[])[column + 1] = above + (isInside(edge, x, y) ? 0 : 1);
    }
  }
  let best: Rectangle | null = null;
  let [most, second] = [0, 0];
  for (let a = 0; a < rows; a++) {
    for (let b = a + 1; b <= rows; b++) {
      for (let c = 0; c < columns; c++) {
        for (let d = c + 1; d <= columns; d++) {
          if (at(b, d) - at(a, d) - at(b, c) + at(a, c) !== 0) break;
          const found = { left: xs[c] ?? 0, top: ys[a] ?? 0, right: xs[d] ?? 0, bottom: ys[b] ?? 0 };
          const area = (found.right - found.left) * (found.bottom - found.top);
          if (area > most) [best, most, second] = [found, area, most];
          else if (area > second) second = area;
        }
      }
    }
  }
  return second > most * (1 - 1e-6) ? null : best;
}

const middleOf = (lines: readonly number[], index: number): number =>
  ((lines[index] ?? 0) + (lines[index + 1] ?? 0)) / 2;

/** By the upright edges that a ray to the left meets. */
const isInside = (edge: readonly Corner[], x: number, y: number): boolean =>
  edge.filter(([ax, ay], index) => {
    const [, by] = edge[(index + 1) % edge.length] ?? [0, ay];
    return ax < x && ay > y !== by > y;
  }).length %
    2 ===
  1;
