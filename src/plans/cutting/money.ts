/** The unit that all prices are whole numbers of, such as a cent or a quarter; null where there is none within six decimals. */
export function moneyUnit(prices: readonly number[]): number | null {
  for (let decimals = 0; decimals <= 6; decimals++) {
    const scale = 10 ** decimals;
    const whole = prices.map((price) => Math.round(price * scale));
    const exact = prices.every((price, index) => {
      const near = whole[index] ?? 0;
      return Number.isSafeInteger(near) && Math.abs(price * scale - near) <= 1e-9 * Math.max(1, near);
    });
    if (!exact) continue;
    let unit = 0;
    for (let price of whole) while (price !== 0) [unit, price] = [price, unit % price];
    return unit === 0 ? null : unit / scale;
  }
  return null;
}

/**
 * A sum of some of the prices as it would add up by hand: tenths and cents are not whole in binary.
 * Prices without a common unit within six decimals stay as they are.
 */
export const inMoney = (sum: number, prices: readonly number[]): number =>
  moneyUnit(prices) === null ? sum : Math.round(sum * 1e6) / 1e6;

/** The most sums that are looked through before `nextSum` is content with a multiple of the unit. */
const MOST_SUMS = 2_000_000;

/**
 * The least cost that whole sheets at these prices can add up to, no less than `least` (which may lie
 * a hair above the truth for its rounding). Without a common unit it is `least` itself.
 */
export function nextSum(prices: readonly number[], least: number): number {
  const unit = moneyUnit(prices);
  if (unit === null || least <= 0) return Math.max(0, least);
  const from = Math.ceil(least / unit - 1e-7);
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
