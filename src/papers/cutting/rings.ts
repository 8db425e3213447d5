import type { Mark } from "../../drawings/index.ts";
import type { Box, Point, Size } from "../../geometry/index.ts";
import { add, type Length, mm, subtract, times, ZERO } from "../../lengths/index.ts";
import type { Cut } from "../../plans/cutting/index.ts";
import { drawn } from "../scale.ts";
import { type Block, block, placed } from "../block.ts";
import { part, points } from "../paper.ts";
import { ring } from "../tags.ts";
import type { TextStyle } from "../type.ts";
import type { CuttingDesk } from "./desk.ts";
import { fieldOf } from "./label.ts";

const RADIUS = mm(2.7);
const CLEAR = mm(0.4);
/** From an end of the line to the ring's middle, tried before places further in. */
const FROM_END = mm(4.5);
const SHARES = [0.5, 0.25, 0.75, 0.35, 0.65, 0.15, 0.85];
export const LETTER: TextStyle = { size: points(9.5), weight: "bold", leading: points(11) };

/** A ring's middle, and where its letter lies beside the line. */
interface Place {
  readonly at: Point;
  readonly letter: Box | null;
}

/**
 * The number of every cut in a black ring on its own line, where it hides nothing if there is such a
 * place; beside it the letter of the board that the cut is made in, where that has room.
 */
export function cutRings(
  desk: CuttingDesk,
  cuts: readonly Cut[],
  letters: readonly (string | null)[],
  over: number,
  sheet: Size,
  words: readonly Box[],
): readonly Mark[] {
  const taken = [...words];
  const rings: Point[] = [];
  return cuts.flatMap((cut, index) => {
    const letter = letters[index] ?? null;
    const field = letter === null ? null : fieldOf(desk, [[letter, LETTER]], mm(0.5));
    const middles = middlesOn(cut, over);
    const places = middles.flatMap((at): Place[] =>
      field === null
        ? []
        : besides(cut, at, field)
            .filter((box) => within(box, sheet))
            .map((box) => ({ at, letter: box })),
    );
    const alone = middles.map((at): Place => ({ at, letter: null }));
    // Where every place hides something a ring may lie on a blank's words, but never on another ring.
    const place =
      [...places, ...alone].find((one) => isClear(one, rings, taken)) ??
      alone.find((one) => isClear(one, rings, [])) ??
      alone[0];
    if (place === undefined) return [];
    rings.push(place.at);
    const diameter = times(RADIUS, 2);
    const number = block(diameter, diameter, ring(desk, String(index + 1), "black", RADIUS));
    const marks = placed(number, place.at.x, place.at.y);
    if (field === null || place.letter === null) return marks;
    taken.push(place.letter);
    return [...marks, ...placed(field, place.letter.left, place.letter.top)];
  });
}

/** Beside the ring, on either side of its line. */
function besides({ across }: Cut, at: Point, { width, height }: Block): readonly Box[] {
  const off = add(RADIUS, mm(0.1));
  const [left, top] = [subtract(at.x, part(width, 0.5)), subtract(at.y, part(height, 0.5))];
  return across === "x"
    ? [
        { left: add(at.x, off), top, width, height },
        { left: subtract(at.x, add(off, width)), top, width, height },
      ]
    : [
        { left, top: subtract(at.y, add(off, height)), width, height },
        { left, top: add(at.y, off), width, height },
      ];
}

function middlesOn({ from, to }: Cut, over: number): readonly Point[] {
  const start = { x: drawn(from.x, over), y: drawn(from.y, over) };
  const end = { x: drawn(to.x, over), y: drawn(to.y, over) };
  const upright = start.x === end.x;
  const long = upright ? subtract(end.y, start.y) : subtract(end.x, start.x);
  const along = (length: Length): Point =>
    upright ? { x: start.x, y: add(start.y, length) } : { x: add(start.x, length), y: start.y };
  const ends = long > times(FROM_END, 2) ? [along(FROM_END), along(subtract(long, FROM_END))] : [];
  return [...ends, ...SHARES.map((share) => along(part(long, share)))];
}

/** Whether ring and letter hide no ring and no words. */
function isClear({ at, letter }: Place, rings: readonly Point[], taken: readonly Box[]): boolean {
  const least = add(times(RADIUS, 2), CLEAR);
  if (rings.some((other) => Math.hypot(other.x - at.x, other.y - at.y) < least)) return false;
  const reach = add(RADIUS, CLEAR);
  const own = squareAround(at, reach);
  if (!taken.every((box) => apart(own, box))) return false;
  return (
    letter === null ||
    (taken.every((box) => apart(letter, box)) &&
      rings.every((other) => apart(letter, squareAround(other, RADIUS))))
  );
}

const squareAround = ({ x, y }: Point, reach: Length): Box => ({
  left: subtract(x, reach),
  top: subtract(y, reach),
  width: times(reach, 2),
  height: times(reach, 2),
});

/** Whether a box lies on the sheet as it is drawn. */
const within = ({ left, top, width, height }: Box, sheet: Size): boolean =>
  left >= 0 && top >= 0 && add(left, width) <= sheet.width && add(top, height) <= sheet.height;

const apart = (a: Box, b: Box): boolean =>
  subtract(add(a.left, a.width), b.left) <= ZERO ||
  subtract(add(b.left, b.width), a.left) <= ZERO ||
  subtract(add(a.top, a.height), b.top) <= ZERO ||
  subtract(add(b.top, b.height), a.top) <= ZERO;
