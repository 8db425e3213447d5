/** The figures that every benchmark prints: minimum, median, maximum. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)];
  if (middle === undefined) throw new Error("no value to take the median of");
  return middle;
}

export const spread = (values: readonly number[], digits = 3): string =>
  `min ${Math.min(...values).toFixed(digits)}, median ${median(values).toFixed(digits)}, max ${Math.max(...values).toFixed(digits)}`;
