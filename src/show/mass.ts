import { KILOGRAMS_PER_POUND } from "../assembly/index.ts";
import type { Unit } from "../lengths/index.ts";

/** Kilograms in one of each unit that may be written. */
const UNITS: ReadonlyMap<string, number> = new Map([
  ...["kg", "kilo", "kilos", "kilogram", "kilograms"].map((name) => [name, 1] as const),
  ...["g", "gram", "grams"].map((name) => [name, 0.001] as const),
  ...["lb", "lb.", "lbs", "lbs.", "pound", "pounds"].map((name) => [name, KILOGRAMS_PER_POUND] as const),
  ...["oz", "oz.", "ounce", "ounces"].map((name) => [name, KILOGRAMS_PER_POUND / 16] as const),
]);

const PART = /^(\d+(?:[.,]\d+)?|[.,]\d+) ?([a-z]+\.?)?$/i;
const KILOGRAMS_PER_POUNDS_AND_OUNCES = /^(\d+) ?(?:lb\.?|lbs\.?|pounds?),? (.+(?:oz\.?|ounces?))$/i;

/**
 * A weight as people write it, in kilograms: `3.2 kg`, `800 g`, `7 lb`, `7 lb 4 oz`. A bare number is in
 * kilograms beside millimetres, in pounds beside inches. Null for anything else, and for nought or less.
 */
export function readMass(written: string | number, unit: Unit): number | null {
  const text = String(written)
    .replace(/[\u00a0\u2000-\u200a\u202f\t]/g, " ")
    .trim();
  const both = KILOGRAMS_PER_POUNDS_AND_OUNCES.exec(text);
  if (both !== null) {
    const ounces = readMass(both[2] ?? "", unit);
    return ounces === null ? null : Number(both[1]) * KILOGRAMS_PER_POUND + ounces;
  }
  const part = PART.exec(text);
  if (part === null) return null;
  const each = UNITS.get((part[2] ?? (unit === "in" ? "lb" : "kg")).toLowerCase());
  const mass = Number((part[1] ?? "").replace(",", ".")) * (each ?? Number.NaN);
  return mass > 0 && mass <= MOST ? mass : null;
}

/** Ten tonnes: no wall of this trade carries more. */
const MOST = 10_000;

const PER = /^(.+?) ?(?:\/|per) ?(m|metre|meter|ft|foot|m2|m²|sq ?m|ft2|ft²|sq ?ft)\.?$/i;
/** Metres in a foot, exactly (international yard and pound agreement, 1959). */
const FOOT = 0.3048;

/**
 * A weight of a length or of an area as people write it, in kilograms a metre or a square metre: `0.4 kg/m`,
 * `0.27 lb/ft`, `0.9 kg/m2`, `900 g/m²`, `900 gsm`. A bare number is of a metre beside millimetres, of a foot beside
 * inches. Null for anything else, and for nought or less.
 */
export function readMassPer(written: string | number, of: "length" | "area", unit: Unit): number | null {
  const text = String(written)
    .trim()
    .replace(/ ?gsm$/i, " g/m2");
  const per = PER.exec(text);
  const each = (per?.[2] ?? (unit === "in" ? "ft" : "m") + (of === "area" ? "2" : "")).toLowerCase();
  if (/2|²|sq/.test(each) !== (of === "area")) return null;
  const mass = readMass(per?.[1] ?? text, unit);
  const metres = /^f|ft/.test(each) ? FOOT : 1;
  return mass === null ? null : mass / (of === "area" ? metres * metres : metres);
}
