/**
 * A length is a whole number of ticks, 80,000 to the millimetre, so that 0.01 mm (800 ticks),
 * 0.001 in (2,032) and 1/128 in (15,875) are all exact and no sum ever drifts.
 * The inch is 25.4 mm exactly (international yard and pound agreement, 1959).
 */
declare const unit: unique symbol;
export type Length = number & { readonly [unit]: "tick" };

/** Which way a value that falls between two marks is taken. "nearest" is half away from zero. */
export type Rounding = "down" | "up" | "nearest";

export const TICKS_PER_MILLIMETRE = 80_000;
export const TICKS_PER_METRE = 1000 * TICKS_PER_MILLIMETRE;
export const TICKS_PER_INCH = 2_032_000;

/** Nothing in this trade is longer; past it a sum of products could leave the safe integers unseen. */
export const LONGEST = (100_000 * TICKS_PER_MILLIMETRE) as Length;

export const ZERO = 0 as Length;

/** A length from a whole number of ticks. Throws RangeError when the number is not whole or not safe. */
export function ticks(value: number): Length {
  if (!Number.isSafeInteger(value)) throw new RangeError(`${value} is not a whole number of ticks`);
  // Never minus zero, which would compare equal yet print a sign.
  return (value + 0) as Length;
}

/** A length from millimetres. Throws RangeError when it falls between two ticks. */
export function mm(value: number): Length {
  return exactly(value * TICKS_PER_MILLIMETRE, `${value} mm`);
}

/** A length from inches, `inch(7)`, or from a fraction of one, `inch(1, 16)`. Throws RangeError when it falls between two ticks. */
export function inch(value: number, over = 1): Length {
  return exactly((value * TICKS_PER_INCH) / over, over === 1 ? `${value} in` : `${value}/${over} in`);
}

function exactly(value: number, said: string): Length {
  const whole = Math.round(value);
  if (Math.abs(value - whole) > 1e-6) {
    throw new RangeError(`${said} falls between two ticks; say whether to round it up or down`);
  }
  return ticks(whole);
}

/** A length from a real number of ticks, taken the named way. A value within a millionth of a tick of a whole one is that whole one. */
export function fromReal(value: number, rounding: Rounding): Length {
  const near = Math.round(value);
  if (Math.abs(value - near) < 1e-6) return ticks(near);
  return ticks(wholeNumber(value, rounding));
}

/** A real number to a whole one, the named way; "nearest" is half away from zero. */
export function wholeNumber(value: number, rounding: Rounding): number {
  switch (rounding) {
    case "down":
      return Math.floor(value);
    case "up":
      return Math.ceil(value);
    case "nearest":
      return value < 0 ? -Math.round(-value) : Math.round(value);
  }
}

export const add = (a: Length, b: Length): Length => (a + b) as Length;
export const subtract = (a: Length, b: Length): Length => (a - b) as Length;
export const negate = (a: Length): Length => (0 - a) as Length;
export const absolute = (a: Length): Length => Math.abs(a) as Length;
export const larger = (a: Length, b: Length): Length => (a > b ? a : b);
export const smaller = (a: Length, b: Length): Length => (a < b ? a : b);
export const sum = (all: readonly Length[]): Length => all.reduce(add, ZERO);

/** A whole number of times a length. Throws RangeError when `count` is not whole or the result is not safe. */
export const times = (a: Length, count: number): Length => ticks(a * count);

/** Half a length; an odd tick goes the named way. */
export const half = (a: Length, rounding: Rounding): Length => fromReal(a / 2, rounding);

/**
 * `a * numerator / denominator`, exact before it is rounded once, the named way.
 * BigInt, because the products leave the safe integers. Throws RangeError when the denominator is nought.
 */
export function scale(a: Length, numerator: bigint, denominator: bigint, rounding: Rounding): Length {
  return ticks(Number(divide(BigInt(a) * numerator, denominator, rounding)));
}

/** Whole-number division, the named way. Throws RangeError when the divisor is nought. */
export function divide(dividend: bigint, divisor: bigint, rounding: Rounding): bigint {
  const [n, d] = divisor < 0n ? [-dividend, -divisor] : [dividend, divisor];
  const floor = n / d - (n % d < 0n ? 1n : 0n);
  switch (rounding) {
    case "down":
      return floor;
    case "up":
      return floor * d === n ? floor : floor + 1n;
    case "nearest":
      return n < 0n ? -((-2n * n + d) / (2n * d)) : (2n * n + d) / (2n * d);
  }
}

/** To a whole number of graduations, the named way. The graduation must be above nought. */
export function toGraduation(a: Length, graduation: Length, rounding: Rounding): Length {
  return ticks(wholeNumber(a / graduation, rounding) * graduation);
}

/** Whether a length is a whole number of graduations. */
export const isWholeIn = (a: Length, graduation: Length): boolean => a % graduation === 0;

/** Exact to the last printed digit: a double keeps the 7 decimals of a tick for every length up to LONGEST. */
export const toMillimetres = (a: Length): number => a / TICKS_PER_MILLIMETRE;
export const toInches = (a: Length): number => a / TICKS_PER_INCH;
