/**
 * The least number of equal sheets for a few pieces, by trying every way to part every board: an
 * answer from outside the planner.
 */
export function leastSheets(
  width: number,
  height: number,
  pieces: readonly (readonly [number, number])[],
): number {
  const memo = new Map<string, boolean>();
  const fits = (w: number, h: number, ids: readonly number[]): boolean => {
    const sizes = ids.map((id) => pieces[id] ?? ([0, 0] as const));
    if (sizes.length === 0) return true;
    if (sizes.reduce((sum, [a, b]) => sum + a * b, 0) > w * h) return false;
    const [only] = sizes;
    if (sizes.length === 1 && only !== undefined) {
      return (only[0] <= w && only[1] <= h) || (only[1] <= w && only[0] <= h);
    }
    const key = `${w} ${h} ${ids.join()}`;
    const known = memo.get(key);
    if (known !== undefined) return known;
    let found = false;
    for (let mask = 1; mask < 2 ** ids.length - 1 && !found; mask++) {
      const one = ids.filter((_, bit) => (mask >> bit) % 2 === 1);
      const two = ids.filter((_, bit) => (mask >> bit) % 2 === 0);
      for (let a = 1; a < w && !found; a++) found = fits(a, h, one) && fits(w - a, h, two);
      for (let b = 1; b < h && !found; b++) found = fits(w, b, one) && fits(w, h - b, two);
    }
    memo.set(key, found);
    return found;
  };
  const all = pieces.map((_, id) => id);
  const least = (ids: readonly number[]): number => {
    const [first, ...others] = ids;
    if (first === undefined) return 0;
    let best = ids.length;
    for (let mask = 0; mask < 2 ** others.length; mask++) {
      const here = [first, ...others.filter((_, bit) => (mask >> bit) % 2 === 1)];
      if (!fits(width, height, here)) continue;
      best = Math.min(best, 1 + least(others.filter((_, bit) => (mask >> bit) % 2 === 0)));
    }
    return best;
  };
  return least(all);
}
