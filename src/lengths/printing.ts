import {
  inch,
  isWholeIn,
  type Length,
  mm,
  type Rounding,
  smaller,
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

/** Finer than borders are marked, 1/32 in or 0.1 mm: for what a board is thick, and what paper moves. */
export const fineRuler = ({ unit, graduation }: Ruler): Ruler => ({
  unit,
  graduation: smaller(graduation, unit === "in" ? inch(1, 32) : mm(0.1)),
});

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

/** Into how many binary parts a ruler divides the inch; 0 where it does not, or more finely than figures show. */
export function partsOfInch({ unit, graduation }: Ruler): number {
  if (unit !== "in" || !isWholeIn(TICKS_PER_INCH as Length, graduation)) return 0;
  const parts = TICKS_PER_INCH / graduation;
  return parts > FINEST || (parts & (parts - 1)) !== 0 ? 0 : parts;
}

const FINEST = 128;

/** The binary fractions of an inch in lowest terms, by how many of the finest parts they are. */
const FRACTIONS = Array.from({ length: FINEST }, (_, finest) => {
  let [numerator, denominator] = [finest, FINEST];
  while (numerator !== 0 && numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  return numerator === 0
    ? { numerator: "", denominator: "" }
    : { numerator: String(numerator), denominator: String(denominator) };
});

/** So many of so many parts of an inch in lowest terms, `parts` a power of two up to 128; without signs where it is whole inches. */
export const fractionOfInch = (marks: number, parts: number): Pick<Figure, "numerator" | "denominator"> =>
  FRACTIONS[(marks % parts) * (FINEST / parts)] ?? { numerator: "", denominator: "" };

/** Inches in whole and binary fraction, where the ruler has such; otherwise undefined. */
function fractionParts(length: Length, ruler: Ruler): Figure | undefined {
  const parts = partsOfInch(ruler);
  if (parts === 0) return undefined;
  const size = Math.abs(length);
  const marks = wholeNumber(size / ruler.graduation, "nearest");
  const { numerator, denominator } = fractionOfInch(marks, parts);
  const whole = Math.floor(marks / parts);
  return {
    negative: length < 0 && marks !== 0,
    whole: whole === 0 && numerator !== "" ? "" : String(whole),
    numerator,
    denominator,
    decimals: "",
    unit: "in",
    approximate: marks * ruler.graduation !== size,
  };
}

/** Decimals that a figure shows at most, where a ruler has no binary fractions. */
export const MOST_DECIMALS: Readonly<Record<Unit, number>> = { in: 3, mm: 2 };

const TENS = [1, 10, 100, 1000, 10_000, 100_000, 1_000_000, 10_000_000] as const;

/** Ten to the power of `places`, up to 7: a power that is looked up, for it is taken at every figure. */
export const tens = (places: number): number => TENS[places] ?? 10 ** places;

/**
 * A length as `over` / `under` whole parts of its unit, ten to the power of `places` to the unit. Whole
 * numbers throughout, that stay safe up to LONGEST. A tick is 0.0000125 mm exactly, so millimetres
 * always end by the seventh decimal.
 */
export const overOf = (size: number, unit: Unit, places: number): number =>
  unit === "mm" ? size * 125 : size * tens(places);
export const underOf = (unit: Unit, places: number): number =>
  unit === "mm" ? tens(7 - places) : TICKS_PER_INCH;

/** Whole-number division of what is not below nought, to the nearest. */
export const toNearest = (over: number, under: number): number =>
  Math.floor((2 * over + under) / (2 * under));

/** Decimals of the unit: as few as are exact, at most `most`; then marked approximate. */
function decimalParts(length: Length, unit: Unit, most = MOST_DECIMALS[unit]): Figure {
  const size = Math.abs(length);
  const parts = tens(most);
  const over = overOf(size, unit, most);
  const under = underOf(unit, most);
  const scaled = toNearest(over, under);
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
