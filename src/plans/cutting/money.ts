/** Decimals of prices of one and more; smaller prices have as many more as they need. */
const DECIMALS = 6;
/** Ten to more than this is no number any more. */
const MOST_DECIMALS = 300;

/** The unit that all prices are whole numbers of, such as a cent or a quarter, and the power of ten that its sums are whole numbers in; null where there is none within six decimals. */
function wholeMoney(prices: readonly number[]): { readonly unit: number; readonly scale: number } | null {
  const least = prices.reduce((low, price) => (price > 0 ? Math.min(low, price) : low), 1);
  const decimals = Math.min(MOST_DECIMALS, DECIMALS - Math.floor(Math.log10(least)));
  for (let count = 0; count <= decimals; count++) {
    const scale = 10 ** count;
    const whole = prices.map((price) => Math.round(price * scale));
    const exact = prices.every((price, index) => {
      const near = whole[index] ?? 0;
      return (
        Number.isSafeInteger(near) &&
        Math.abs(price * scale - near) <= 1e-9 * Math.min(1, near) + 1e-15 * near
      );
    });
    if (!exact) continue;
    let unit = 0;
    for (let price of whole) while (price !== 0) [unit, price] = [price, unit % price];
    return unit === 0 ? null : { unit: unit / scale, scale };
  }
  return null;
}

/** The unit that all prices are whole numbers of, of cents or smaller; null where there is none. */
export const moneyUnit = (prices: readonly number[]): number | null => wholeMoney(prices)?.unit ?? null;

/**
 * A sum of some of the prices as it would add up by hand: tenths and cents are not whole in binary.
 * Prices without a common unit stay as they are.
 */
export function inMoney(sum: number, prices: readonly number[]): number {
  const money = wholeMoney(prices);
  return money === null ? sum : Math.round(sum * money.scale) / money.scale;
}

/** The most sums that are looked through before `nextSum` is content with a multiple of the unit. */
const MOST_SUMS = 2_000_000;

/**
 * The least cost that whole sheets at these prices can add up to, no less than `least` (which may lie
 * a hair above the truth for its rounding). Without a common unit it is `least` itself.
 */
export function nextSum(prices: readonly number[], least: number): number {
  const unit = moneyUnit(prices);
  if (unit === null || least <= 0) return Math.max(0, least);
  // Whatever costs anything costs a unit.
  const from = Math.max(1, Math.ceil(least / unit - 1e-7));
  const steps = [...new Set(prices.map((price) => Math.round(price / unit)))].filter((step) => step > 0);
  const largest = Math.max(...steps);
  if (from + largest > MOST_SUMS) return from * unit;
  const reached = new Uint8Array(from + largest + 1);
  reached[0] = 1;
  for (let sum = 0; sum <= from + largest; sum++) {
    if (reached[sum] === 1 && sum >= from) return sum * unit;
    if (reached[sum] === 1)
      for (const step of steps) if (sum + step < reached.length) reached[sum + step] = 1;
  }
  return from * unit;
}
