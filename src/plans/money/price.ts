import { divide } from "../../lengths/index.ts";

/** A price as it was written, exactly: so many units of ten to the power of minus `places`. */
export interface Price {
  readonly units: bigint;
  readonly places: number;
}

declare const minor: unique symbol;
/** A sum of money in whole minor units of its currency: cents, pence, øre, grosze. */
export type Money = number & { readonly [minor]: "minor unit" };

export const NOTHING = 0 as Money;

/** So many minor units. Throws RangeError where that is not whole or not safe. */
export function minorUnits(value: number | bigint): Money {
  const number = Number(value);
  if (!Number.isSafeInteger(number)) throw new RangeError(`${value} is not a whole number of minor units`);
  return (number + 0) as Money;
}

export const totalOf = (all: readonly Money[]): Money => minorUnits(all.reduce((sum, one) => sum + one, 0));

/** Currencies whose minor unit is no hundredth (ISO 4217, from memory). */
const DIGITS: Readonly<Record<string, number>> = {
  JPY: 0,
  KRW: 0,
  ISK: 0,
  CLP: 0,
  VND: 0,
  BHD: 3,
  IQD: 3,
  JOD: 3,
  KWD: 3,
  LYD: 3,
  OMR: 3,
  TND: 3,
};

/** How many decimals a currency's sums have; two where it is not told or not known. */
export const minorDigits = (currency: string | null): number =>
  DIGITS[(currency ?? "").trim().toUpperCase()] ?? 2;

const WRITTEN = /^(\d{1,9})(?:([.,])(\d{1,6}))?$/;

/**
 * A price as people write it, `11.50`, `11,5` or `24`: nought or more, at most six decimals. Null for anything
 * else, and for a comma before exactly three figures, which may part thousands.
 */
export function readPrice(written: string | number): Price | null {
  const text = String(written)
    .replace(/[\u00a0\u2009\u202f ]/g, "")
    .trim();
  const match = WRITTEN.exec(text);
  if (match === null) return null;
  const [, whole = "", sign = "", decimals = ""] = match;
  if (sign === "," && decimals.length === 3) return null;
  return { units: BigInt(whole + decimals), places: decimals.length };
}

/** A number of a document that was found to be a price already, to its last decimal, or the sixth. */
export function priceOf(value: number): Price {
  const price = readPrice(value) ?? readPrice(value.toFixed(6));
  if (price === null) throw new RangeError(`${value} is no price`);
  return price;
}

/** So many at a price, rounded once, to the nearest minor unit. */
export const priced = (price: Price, count: bigint, digits: number): Money =>
  pricedPart(price, count, 1n, digits);

/** The part `over / under` of a price, rounded once, to the nearest minor unit. */
export const pricedPart = (price: Price, over: bigint, under: bigint, digits: number): Money =>
  minorUnits(
    divide(price.units * over * 10n ** BigInt(digits), under * 10n ** BigInt(price.places), "nearest"),
  );

/** Which of two prices is the lower for their measures: whether `a` over `ofA` is below `b` over `ofB`. */
export const cheaper = (a: Price, ofA: bigint, b: Price, ofB: bigint): boolean =>
  a.units * 10n ** BigInt(b.places) * ofB < b.units * 10n ** BigInt(a.places) * ofA;
