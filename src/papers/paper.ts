import type { Box } from "../geometry/index.ts";
import { add, fromReal, type Length, mm, subtract, TICKS_PER_INCH } from "../lengths/index.ts";
import type { Drawing, Typeface } from "../drawings/index.ts";

export type PaperSize = "a4" | "letter";

/** A sheet for the printer, and the box on it that a paper may fill. */
export interface Paper {
  readonly name: PaperSize;
  readonly width: Length;
  readonly height: Length;
  readonly content: Box;
}

/** One printed page: a drawing in its own true lengths, with the name that a reader's contents list gives it. */
export interface Page extends Drawing {
  readonly bookmark: string;
}

/** What every paper is laid out with. */
export interface Desk {
  readonly paper: Paper;
  readonly typeface: Typeface;
}

/** Left and foot belong to the corner rule, and 11 mm at the left to a clip or a punch. */
const LEFT = mm(18);
const RIGHT = mm(10);
const TOP = mm(10);
const FOOT = mm(17);

/** Where the corner rule has its nought, from the paper's left and foot. */
export const RULE_LEFT = mm(11);
export const RULE_FOOT = mm(10);

const SIZES: Readonly<Record<PaperSize, readonly [Length, Length]>> = {
  // ISO 216 A4; ANSI/ASME Y14.1 A, 8.5 by 11 in.
  a4: [mm(210), mm(297)],
  letter: [mm(215.9), mm(279.4)],
};

export function paperOf(name: PaperSize): Paper {
  const [width, height] = SIZES[name];
  return {
    name,
    width,
    height,
    content: {
      left: LEFT,
      top: TOP,
      width: subtract(width, add(LEFT, RIGHT)),
      height: subtract(height, add(TOP, FOOT)),
    },
  };
}

/** A size of type in printer's points, 72 to the inch; to the nearest tick. */
export const points = (value: number): Length => fromReal((value * TICKS_PER_INCH) / 72, "nearest");

/** A share of a length, to the nearest tick. */
export const part = (of: Length, share: number): Length => fromReal(of * share, "nearest");
