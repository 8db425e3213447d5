import type { Mark } from "../../drawings/index.ts";
import type { Box, Point } from "../../geometry/index.ts";
import { add, type Length, mm, subtract, times } from "../../lengths/index.ts";
import type { Cut } from "../../plans/cutting/index.ts";
import { drawn } from "../bench/desk.ts";
import { block, placed } from "../block.ts";
import { part } from "../paper.ts";
import { ring } from "../tags.ts";
import type { CuttingDesk } from "./desk.ts";

const RADIUS = mm(2.7);
const CLEAR = mm(0.4);
/** From an end of the line to the ring's middle, tried before places further in. */
const FROM_END = mm(4.5);
const SHARES = [0.5, 0.25, 0.75, 0.35, 0.65, 0.15, 0.85];

/** The number of every cut in a black ring on its own line, where it hides nothing if there is such a place. */
export function cutRings(
  desk: CuttingDesk,
  cuts: readonly Cut[],
  over: number,
  taken: readonly Box[],
): readonly Mark[] {
  const rings: Point[] = [];
  return cuts.flatMap((cut, index) => {
    const places = placesOn(cut, over);
    const free = places.find((at) => isClear(at, rings, taken));
    // Where every place hides something a ring may lie on a blank's words, but never on another ring.
    const at = free ?? places.find((one) => isClear(one, rings, [])) ?? places[0];
    if (at === undefined) return [];
    rings.push(at);
    const diameter = times(RADIUS, 2);
    return placed(block(diameter, diameter, ring(desk, String(index + 1), "black", RADIUS)), at.x, at.y);
  });
}

function placesOn({ from, to }: Cut, over: number): readonly Point[] {
  const start = { x: drawn(from.x, over), y: drawn(from.y, over) };
  const end = { x: drawn(to.x, over), y: drawn(to.y, over) };
  const upright = start.x === end.x;
  const long = upright ? subtract(end.y, start.y) : subtract(end.x, start.x);
  const along = (length: Length): Point =>
    upright ? { x: start.x, y: add(start.y, length) } : { x: add(start.x, length), y: start.y };
  const ends = long > times(FROM_END, 2) ? [along(FROM_END), along(subtract(long, FROM_END))] : [];
  return [...ends, ...SHARES.map((share) => along(part(long, share)))];
}

function isClear(at: Point, rings: readonly Point[], taken: readonly Box[]): boolean {
  const least = add(times(RADIUS, 2), CLEAR);
  if (rings.some((other) => Math.hypot(other.x - at.x, other.y - at.y) < least)) return false;
  const reach = add(RADIUS, CLEAR);
  return taken.every(
    (box) =>
      at.x + reach <= box.left ||
      at.x - reach >= box.left + box.width ||
      at.y + reach <= box.top ||
      at.y - reach >= box.top + box.height,
  );
}
