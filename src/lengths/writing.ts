import {
  isWholeIn,
  type Length,
  type Rounding,
  TICKS_PER_INCH,
  TICKS_PER_MILLIMETRE,
  toGraduation,
} from "./length.ts";
import type { Pen } from "./pen.ts";
import {
  fractionOfInch,
  MOST_DECIMALS,
  overOf,
  partsOfInch,
  type Ruler,
  tens,
  toNearest,
  underOf,
} from "./printing.ts";
import type { Unit } from "./reading.ts";

/**
 * Lengths written straight into bytes, sign by sign what `printLength`, `printExact` and
 * `toMillimetres` make of them (a test holds the two together), for runs that write hundreds of
 * thousands.
 */

/** What `printLength` prints. */
export function writeLength(pen: Pen, length: Length, ruler: Ruler, rounding: Rounding): void {
  const { unit, graduation } = ruler;
  const rounded = toGraduation(length, graduation, rounding);
  const size = Math.abs(rounded);
  const parts = partsOfInch(ruler);
  if (parts > 0) {
    writeFraction(pen, rounded, size / graduation, parts, rounded !== length);
    return;
  }
  const places = MOST_DECIMALS[unit];
  const over = overOf(size, unit, places);
  const under = underOf(unit, places);
  const scaled = toNearest(over, under);
  if (rounded !== length || scaled * under !== over) pen.text("≈ ");
  writeDecimal(pen, rounded, scaled, unit, places);
}

/** What `printExact` prints. */
export function writeExact(pen: Pen, length: Length, unit: Unit): void {
  const size = Math.abs(length);
  if (unit === "in") {
    if (isWholeIn(length, FINEST)) {
      writeFraction(pen, length, size / FINEST, 128, false);
      return;
    }
    const over = overOf(size, "in", 4);
    if (over % TICKS_PER_INCH === 0) {
      writeDecimal(pen, length, over / TICKS_PER_INCH, "in", 4);
      return;
    }
  }
  writeMillimetres(pen, length);
  pen.text(" mm");
}

/** Millimetres as a number, to the last tick. */
export function writeMillimetres(pen: Pen, length: Length): void {
  const size = Math.abs(length);
  const whole = Math.floor(size / TICKS_PER_MILLIMETRE);
  if (length < 0) pen.text("-");
  pen.decimal(whole, overOf(size - whole * TICKS_PER_MILLIMETRE, "mm", 7), 7);
}

const FINEST = (TICKS_PER_INCH / 128) as Length;

function writeFraction(pen: Pen, length: Length, marks: number, parts: number, approximate: boolean): void {
  if (approximate) pen.text("≈ ");
  if (length < 0) pen.text("-");
  const whole = Math.floor(marks / parts);
  const { numerator, denominator } = fractionOfInch(marks, parts);
  if (whole !== 0 || numerator === "") pen.whole(whole);
  if (numerator !== "") {
    if (whole !== 0) pen.text(" ");
    pen.text(numerator);
    pen.text("/");
    pen.text(denominator);
  }
  pen.text(" in");
}

function writeDecimal(pen: Pen, length: Length, scaled: number, unit: Unit, places: number): void {
  const parts = tens(places);
  const rest = scaled % parts;
  if (length < 0 && scaled !== 0) pen.text("-");
  pen.decimal((scaled - rest) / parts, rest, places);
  pen.text(unit === "in" ? " in" : " mm");
}
