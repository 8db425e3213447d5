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
