import { type Money, minorUnits } from "./price.ts";

/**
 * A sum shared out by weights, in whole minor units that add up to it exactly: each has its part rounded down, and
 * what is left goes to those who lost most by that, the first of equals first. Without any weight all goes to the
 * first. Throws RangeError where there is nobody, or a weight below nought.
 */
export function shareOut(sum: Money, weights: readonly bigint[]): readonly Money[] {
  if (weights.length === 0) throw new RangeError("nobody to share with");
  if (weights.some((weight) => weight < 0n)) throw new RangeError("a weight below nought");
  const all = weights.reduce((total, weight) => total + weight, 0n);
  if (all === 0n) return weights.map((_, index) => minorUnits(index === 0 ? sum : 0));
  const parts = weights.map((weight, index) => {
    const product = BigInt(sum) * weight;
    return { index, part: product / all, lost: product % all };
  });
  const left = BigInt(sum) - parts.reduce((total, { part }) => total + part, 0n);
  const more = new Set(
    parts
      .toSorted((a, b) => (a.lost === b.lost ? a.index - b.index : a.lost > b.lost ? -1 : 1))
      .slice(0, Number(left))
      .map(({ index }) => index),
  );
  return parts.map(({ index, part }) => minorUnits(part + (more.has(index) ? 1n : 0n)));
}
