import { fromReal, type Length, LONGEST, negate, TICKS_PER_INCH, TICKS_PER_MILLIMETRE } from "./length.ts";
import { typedTicks, VULGAR } from "./typed.ts";

export type Unit = "in" | "mm";

/**
 * Why a text was not read as a length. A record, no sentence: `words` makes one.
 * `meant` are ways to write what may have been meant, ready to be offered.
 */
export type LengthFault =
  | { readonly code: "not-a-length" }
  | { readonly code: "empty" }
  | { readonly code: "negative" }
  | { readonly code: "improper-fraction"; readonly meant: readonly string[] }
  | { readonly code: "either-comma"; readonly meant: readonly string[] }
  | { readonly code: "nought-denominator" }
  | { readonly code: "unknown-unit"; readonly unit: string }
  | { readonly code: "too-long" };

export type LengthRead =
  | { readonly ok: true; readonly length: Length }
  | { readonly ok: false; readonly fault: LengthFault };

const MILLIMETRE = TICKS_PER_MILLIMETRE;
const INCH = TICKS_PER_INCH;

/** Ticks in one of each unit that may be written. A metre and a foot are here because people write them. */
const UNITS: ReadonlyMap<string, number> = new Map([
  ...["mm", "millimetre", "millimetres", "millimeter", "millimeters"].map(
    (name) => [name, MILLIMETRE] as const,
  ),
  ...["cm", "centimetre", "centimetres", "centimeter", "centimeters"].map(
    (name) => [name, 10 * MILLIMETRE] as const,
  ),
  ...["m", "metre", "metres", "meter", "meters"].map((name) => [name, 1000 * MILLIMETRE] as const),
  ...["in", "in.", "inch", "inches", '"', "″", "”"].map((name) => [name, INCH] as const),
  ...["ft", "ft.", "foot", "feet", "'"].map((name) => [name, 12 * INCH] as const),
]);

const refuse = (fault: LengthFault): LengthRead => ({ ok: false, fault });
const NOT_A_LENGTH = refuse({ code: "not-a-length" });

/** The same text with every printed variant of a sign written one way. */
function plain(text: string): string {
  return text
    .replace(/[\u00a0\u2000-\u200a\u202f\u205f\u3000\t]/g, " ")
    .replace(/[\u2044\u2215\uff0f]/g, "/")
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]/g, (sign) => ` ${VULGAR[sign]?.join("/")}`)
    .replace(/[\u2032\u2018\u2019]/g, "'")
    .replace(/[\u2033\u201c\u201d]|''/g, '"')
    .replace(/\u2212/g, "-")
    .replace(/(\d)[\u2010\u2011\u2013-](?=\s?\d+\s*\/)/g, "$1 ")
    .replace(/ +/g, " ")
    .trim();
}

// whole-or-decimal, fraction, both; the unit is whatever letters or marks follow.
const QUANTITY = /^(?:(\d+(?:[.,]\d+)?|[.,]\d+)(?: (\d+)\/(\d+))?|(\d+)\/(\d+))? ?([a-z]+\.?|["'])?$/i;
/** No length takes more signs than this. */
const LONGEST_TEXT = 60;
const FEET_AND_MORE = /^(\d+) ?(ft\.?|foot|feet|')[ -]?(.+)$/i;

/**
 * Reads a length as people write it: `7`, `7.25`, `7 1/4`, `7-1/4 in`, `7¼"`, `1' 2 1/2"`, `18,5 cm`.
 * A bare number takes `unit`. What falls between two ticks goes to the nearest.
 * Refused, with the reason: a negative (unless `signed`), an improper fraction, a comma that may part
 * decimals or thousands, an unknown unit, anything past 100 m.
 */
export function readLength(text: string, unit: Unit, signed = false): LengthRead {
  const ticks = typedTicks(text, unit === "in" ? INCH : MILLIMETRE, UNITS);
  return ticks <= LONGEST
    ? { ok: true, length: fromReal(ticks, "nearest") }
    : readAnyLength(text, unit, signed);
}

/** The same for every form, the plain ones among them. */
export function readAnyLength(text: string, unit: Unit, signed = false): LengthRead {
  const written = plain(text);
  if (written === "") return refuse({ code: "empty" });
  if (written.length > LONGEST_TEXT) return NOT_A_LENGTH;
  if (written.startsWith("-")) {
    if (!signed) return refuse({ code: "negative" });
    const read = readAnyLength(written.slice(1).trimStart(), unit);
    return read.ok ? { ok: true, length: negate(read.length) } : read;
  }
  const quantity = QUANTITY.exec(written);
  if (quantity) return fromQuantity(quantity, unit);
  const feet = FEET_AND_MORE.exec(written);
  const inches = QUANTITY.exec(feet?.[3] ?? "");
  if (!feet || !inches) return NOT_A_LENGTH;
  const rest = fromQuantity(inches, "in");
  return rest.ok ? within(Number(feet[1]) * TICKS_PER_INCH * 12 + rest.length) : rest;
}

function fromQuantity(match: RegExpExecArray, unit: Unit): LengthRead {
  const [, number, over, under, loneOver, loneUnder, unitText] = match;
  if (number === undefined && loneOver === undefined) return NOT_A_LENGTH;
  const perUnit = UNITS.get(unitText === undefined ? unit : unitText.toLowerCase());
  if (perUnit === undefined) return refuse({ code: "unknown-unit", unit: unitText ?? "" });

  const numerator = Number(over ?? loneOver ?? 0);
  const denominator = Number(under ?? loneUnder ?? 1);
  if (denominator === 0) return refuse({ code: "nought-denominator" });
  if (over !== undefined && /[.,]/.test(number ?? "")) return NOT_A_LENGTH;
  if (numerator >= denominator && (over ?? loneOver) !== undefined) {
    return refuse({
      code: "improper-fraction",
      meant: properForms(number, over ?? loneOver ?? "", denominator),
    });
  }
  if (number !== undefined && unitText === undefined && /^[1-9]\d{0,2},\d{3}$/.test(number)) {
    return refuse({ code: "either-comma", meant: [number.replace(",", "."), number.replace(",", "")] });
  }
  const whole = number === undefined ? 0 : decimalTicks(number.replace(",", "."), perUnit);
  return within(whole + (numerator * perUnit) / denominator);
}

/** Ticks of a decimal; split at the point so that seven decimals of a millimetre stay exact. */
function decimalTicks(number: string, perUnit: number): number {
  const point = number.indexOf(".");
  if (point < 0) return Number(number) * perUnit;
  const decimals = number.slice(point + 1);
  return Number(number.slice(0, point)) * perUnit + (Number(decimals) * perUnit) / 10 ** decimals.length;
}

function within(value: number): LengthRead {
  if (!(value <= LONGEST)) return refuse({ code: "too-long" });
  return { ok: true, length: fromReal(value, "nearest") };
}

/** What an improper fraction may have meant: `71/4` is 7 1/4 with its space lost, or 17 3/4. */
function properForms(whole: string | undefined, over: string, denominator: number): string[] {
  const forms: string[] = [];
  if (whole === undefined) {
    for (let cut = 1; cut < over.length; cut++) {
      const numerator = Number(over.slice(cut));
      if (over[cut] !== "0" && numerator < denominator)
        forms.push(`${over.slice(0, cut)} ${numerator}/${denominator}`);
    }
  }
  const total = Number(whole ?? 0) + Math.floor(Number(over) / denominator);
  const left = Number(over) % denominator;
  const mixed = left === 0 ? `${total}` : `${total} ${left}/${denominator}`;
  return forms.includes(mixed) ? forms : [...forms, mixed];
}
