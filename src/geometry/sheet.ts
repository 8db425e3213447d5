import type { Corner, FourCorners, RealBox, RealPoint, RealSides } from "./types.ts";

/**
 * A rectangular sheet under an upright window, turned by any angle. Its corners come in the order
 * top-left, top-right, bottom-right, bottom-left before turning, so they go round clockwise as seen.
 */

interface Direction {
  readonly dx: number;
  readonly dy: number;
}

/** In reading order, as they are listed wherever each is told. */
export const CORNERS: readonly Corner[] = ["topLeft", "topRight", "bottomLeft", "bottomRight"];

/** One edge of the sheet, with the way out of the paper, one tick long. */
interface PaperEdge {
  readonly from: RealPoint;
  readonly outward: Direction;
}

const HEAD: Direction = { dx: 0, dy: -1 };
const RIGHT: Direction = { dx: 1, dy: 0 };
const FOOT: Direction = { dx: 0, dy: 1 };
const LEFT: Direction = { dx: -1, dy: 0 };

/**
 * How far the paper reaches beyond each edge of a window, in real ticks: the least distance, square
 * to the window's edge, from any of its points out to the paper's edge. Below nought the paper ends
 * before the window, by that much. Exact for a sheet that is not turned.
 *
 * The least is found at an end of the window's edge, for the distance to a straight line changes
 * evenly along it. From each end counts the line of the sheet's own edge of that side (at turns past
 * 45 degrees: of the edge that faces that way), on either side of it; and from an end that lies on
 * the paper also whichever edge is met first on the way out.
 */
export function reach(window: RealBox, sheet: FourCorners): RealSides {
  const { left, top } = window;
  const right = left + window.width;
  const bottom = top + window.height;
  const edges = paperEdges(sheet);
  const least = (outward: Direction, x1: number, y1: number, x2: number, y2: number): number =>
    Math.min(reachFrom({ x: x1, y: y1 }, outward, edges), reachFrom({ x: x2, y: y2 }, outward, edges));
  return {
    head: least(HEAD, left, top, right, top),
    left: least(LEFT, left, top, left, bottom),
    right: least(RIGHT, right, top, right, bottom),
    foot: least(FOOT, left, bottom, right, bottom),
  };
}

function paperEdge(from: RealPoint, to: RealPoint): PaperEdge {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { from, outward: { dx: (to.y - from.y) / length, dy: (from.x - to.x) / length } };
}

function paperEdges([topLeft, topRight, bottomRight, bottomLeft]: FourCorners): readonly PaperEdge[] {
  return [
    paperEdge(topLeft, topRight),
    paperEdge(topRight, bottomRight),
    paperEdge(bottomRight, bottomLeft),
    paperEdge(bottomLeft, topLeft),
  ];
}

function reachFrom(point: RealPoint, outward: Direction, edges: readonly PaperEdge[]): number {
  let facing = -Infinity;
  let own = Infinity;
  let first = Infinity;
  let onPaper = true;
  for (const { from, outward: normal } of edges) {
    const towards = normal.dx * outward.dx + normal.dy * outward.dy;
    const inside = (from.x - point.x) * normal.dx + (from.y - point.y) * normal.dy;
    if (inside < 0) onPaper = false;
    // An edge that runs along the way out, or behind, is never met on it.
    if (towards > 0) first = Math.min(first, inside / towards);
    if (towards > facing) {
      facing = towards;
      own = inside / towards;
    }
  }
  return onPaper ? first : own;
}

/**
 * Where a window's corner lies, measured from one corner of the sheet along the sheet's own edges: u
 * along its head or foot, v along its sides, both above nought towards the middle of the sheet. Real
 * ticks; exact for a sheet that is not turned.
 */
export function cornerInSheetAxes(
  point: RealPoint,
  sheet: FourCorners,
  corner: Corner,
): { readonly u: number; readonly v: number } {
  const [topLeft, topRight, bottomRight, bottomLeft] = sheet;
  const along = (from: RealPoint, to: RealPoint): number => {
    const x = to.x - from.x;
    const y = to.y - from.y;
    const length = Math.hypot(x, y);
    return (point.x - from.x) * (x / length) + (point.y - from.y) * (y / length);
  };
  switch (corner) {
    case "topLeft":
      return { u: along(topLeft, topRight), v: along(topLeft, bottomLeft) };
    case "topRight":
      return { u: along(topRight, topLeft), v: along(topRight, bottomRight) };
    case "bottomLeft":
      return { u: along(bottomLeft, bottomRight), v: along(bottomLeft, topLeft) };
    case "bottomRight":
      return { u: along(bottomRight, bottomLeft), v: along(bottomRight, topRight) };
  }
}
