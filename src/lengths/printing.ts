import {
  isWholeIn,
  type Length,
  type Rounding,
  TICKS_PER_INCH,
  toGraduation,
  toMillimetres,
  wholeNumber,
} from "./length.ts";
import type { Unit } from "./reading.ts";

/** How one person's lengths are printed: their unit, and the finest mark of their own ruler. */
export interface Ruler {
  readonly unit: Unit;
  readonly graduation: Length;
}

/**
 * A printed length in its parts, so that a figure can be drawn without ever reading a text again:
 * `1 3/4` has whole "1", numerator "3", denominator "4"; `44.5` has whole "44", decimals "5".
 * A fraction alone has no whole. `approximate` says that the parts are not the length exactly.
 */
export interface Figure {
  readonly negative: boolean;
  readonly whole: string;
  readonly numerator: string;
  readonly denominator: string;
  readonly decimals: string;
  readonly unit: Unit;
  readonly approximate: boolean;
}

/**
 * The parts of a length on a ruler, rounded the named way to its graduation (a maximum is printed
 * rounded down, a minimum up, a place to the nearest). Inches in binary fractions where the ruler
 * has them, otherwise decimals.
 */
export function figureOf(length: Length, ruler: Ruler, rounding: Rounding = "nearest"): Figure {
  const rounded = toGraduation(length, ruler.graduation, rounding);
  const parts = fractionParts(rounded, ruler) ?? decimalParts(rounded, ruler.unit);
  return rounded === length || parts.approximate ? parts : { ...parts, approximate: true };
}

/** The exact length in the given unit: the coarsest fraction of an inch down to 1/128, else exact decimals (in millimetres where inches have none). */
export function exactFigure(length: Length, unit: Unit): Figure {
  if (unit === "in") {
    const fraction = fractionParts(length, { unit, graduation: (TICKS_PER_INCH / 128) as Length });
    if (fraction && !fraction.approximate) return fraction;
    const decimal = decimalParts(length, "in", 4);
    if (!decimal.approximate) return decimal;
  }
  return decimalParts(length, "mm", 7);
}

/** A figure as plain text, `1 3/4 in`; `≈` goes first when it is not exact. */
export function figureText(figure: Figure, withUnit = true): string {
  const { whole, decimals, numerator } = figure;
  const number = decimals === "" ? whole : `${whole}.${decimals}`;
  const fraction = numerator === "" ? "" : `${numerator}/${figure.denominator}`;
  const gap = number !== "" && fraction !== "" ? " " : "";
  const unit = withUnit ? ` ${figure.unit}` : "";
  return `${figure.approximate ? "≈ " : ""}${figure.negative ? "-" : ""}${number}${gap}${fraction}${unit}`;
}

/** A length as text on a ruler, `1 3/4 in`. */
export const printLength = (length: Length, ruler: Ruler, rounding: Rounding = "nearest"): string =>
  figureText(figureOf(length, ruler, rounding));

/** The exact length as text: it reads back to the same ticks. */
export const printExact = (length: Length, unit: Unit): string =>
  // A number prints itself in the fewest decimals that are it, and a tick has no more than seven.
  unit === "mm" ? `${toMillimetres(length)} mm` : figureText(exactFigure(length, unit));

/** Inches in whole and binary fraction, where the graduation is one over a power of two of an inch; otherwise undefined. */
function fractionParts(length: Length, ruler: Ruler): Figure | undefined {
  if (ruler.unit !== "in" || !isWholeIn(TICKS_PER_INCH as Length, ruler.graduation)) return undefined;
  const parts = TICKS_PER_INCH / ruler.graduation;
  if (parts > 128 || (parts & (parts - 1)) !== 0) return undefined;
  const size = Math.abs(length);
  const marks = wholeNumber(size / ruler.graduation, "nearest");
  let numerator = marks % parts;
  let denominator = parts;
  while (numerator !== 0 && numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  const whole = Math.floor(marks / parts);
  return {
    negative: length < 0 && marks !== 0,
    whole: whole === 0 && numerator !== 0 ? "" : String(whole),
    numerator: numerator === 0 ? "" : String(numerator),
    denominator: numerator === 0 ? "" : String(denominator),
    decimals: "",
    unit: "in",
    approximate: marks * ruler.graduation !== size,
  };
}

/** Decimals of the unit: as few as are exact, at most `most`; then marked approximate. Whole numbers throughout: they stay safe up to LONGEST. */
function decimalParts(length: Length, unit: Unit, most = unit === "in" ? 3 : 2): Figure {
  const size = Math.abs(length);
  const parts = 10 ** most;
  // A tick is 0.0000125 mm exactly, so millimetres always end by the seventh decimal.
  const [over, under] = unit === "mm" ? [size * 125, 10_000_000 / parts] : [size * parts, TICKS_PER_INCH];
  const scaled = Math.floor((2 * over + under) / (2 * under));
  const rest = scaled % parts;
  return {
    negative: length < 0 && scaled !== 0,
    whole: String((scaled - rest) / parts),
    numerator: "",
    denominator: "",
    decimals: rest === 0 ? "" : withoutNoughts(String(rest).padStart(most, "0")),
    unit,
    approximate: scaled * under !== over,
  };
}

function withoutNoughts(digits: string): string {
  let end = digits.length;
  while (digits.charCodeAt(end - 1) === 48) end--;
  return digits.slice(0, end);
}
