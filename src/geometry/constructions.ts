import {
  add,
  fromReal,
  type Length,
  larger,
  mm,
  scale,
  smaller,
  subtract,
  sum,
  times,
} from "../lengths/index.ts";
import type { Size } from "./types.ts";

/**
 * Small constructions that the bench knows by heart. Each is a pure function of lengths; where a
 * result falls between two ticks it goes to the nearest.
 */

export interface EllipsePins {
  /** From pin to pin, along the longer axis and centred on it. */
  readonly apart: Length;
  /** The whole loop of string, round both pins and the pencil. */
  readonly loop: Length;
}

/**
 * Pins and string for an ellipse of this width and height: the pins stand sqrt(L² - H²) apart, the
 * loop is L and that distance together. A circle has both pins in one place. Throws RangeError
 * unless both are above nought.
 */
export function ellipsePins(width: Length, height: Length): EllipsePins {
  if (!(width > 0 && height > 0)) throw new RangeError("an ellipse has a width and a height");
  const long = larger(width, height);
  const short = smaller(width, height);
  const apart = fromReal(Math.sqrt(subtract(long, short)) * Math.sqrt(add(long, short)), "nearest");
  return { apart, loop: add(long, apart) };
}

export interface NinthsMargins {
  /** At the fold. */
  readonly inner: Length;
  readonly outer: Length;
  readonly head: Length;
  readonly foot: Length;
}

/**
 * Margins of a book's page by ninths (Van de Graaf, Rosarivo): one ninth of the width inside, two
 * outside, one ninth of the height above, two below; what they leave has the page's own proportion.
 */
export const ninthsMargins = (page: Size): NinthsMargins => ({
  inner: scale(page.width, 1n, 9n, "nearest"),
  outer: scale(page.width, 2n, 9n, "nearest"),
  head: scale(page.height, 1n, 9n, "nearest"),
  foot: scale(page.height, 2n, 9n, "nearest"),
});

/**
 * How far a trimmed side may be off its nominal size, either way: 1.5 mm up to 150 mm, 2 mm up to
 * 600 mm, 3 mm above (ISO 216:2007).
 */
export function isoTolerance(nominal: Length): Length {
  if (nominal <= mm(150)) return mm(1.5);
  return nominal <= mm(600) ? mm(2) : mm(3);
}

/** What a rail's length hangs on, besides the side of the package that it runs along. */
export interface RailMeasures {
  /** From the lip's sight edge to the outermost edge of the back. */
  readonly overall: Length;
  /** How far the rabbet reaches under the lip. */
  readonly rabbet: Length;
  /** The room between the package and the rabbet, both ends together. */
  readonly allowance: Length;
}

/**
 * A mitred rail from long point to long point: the package's side, the allowance, and at each end
 * what the moulding measures beyond its rabbet.
 */
export const railLongPoint = (side: Length, rail: RailMeasures): Length =>
  sum([side, rail.allowance, times(subtract(rail.overall, rail.rabbet), 2)]);

/** The same rail from short point to short point, along its lip: the sight size. */
export const railShortPoint = (side: Length, rail: RailMeasures): Length =>
  subtract(railLongPoint(side, rail), times(rail.overall, 2));

/** The moulding for one frame's four rails, cut one after another: `loss` is what each of the three joints on the stick takes. */
export const frameMoulding = (frame: Size, rail: RailMeasures, loss: Length): Length =>
  sum([
    times(railLongPoint(frame.width, rail), 2),
    times(railLongPoint(frame.height, rail), 2),
    times(loss, 3),
  ]);
