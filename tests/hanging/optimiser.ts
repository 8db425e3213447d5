/** General-purpose least-value search, written for these tests; it knows nothing of strings. */

export type Real = (at: readonly number[]) => number;

/** The slope of a function by central differences. */
function slopeOf(of: Real, at: readonly number[], step: number): number[] {
  return at.map((value, index) => {
    const moved = (by: number): readonly number[] =>
      at.map((one, other) => (other === index ? value + by : one));
    return (of(moved(step)) - of(moved(-step))) / (2 * step);
  });
}

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, index) => sum + value * (b[index] ?? 0), 0);
const stepped = (from: readonly number[], along: readonly number[], by: number): number[] =>
  from.map((value, index) => value + by * (along[index] ?? 0));

/** The least value near `from`, by the quasi-Newton method of Broyden, Fletcher, Goldfarb and Shanno. */
export function least(of: Real, from: readonly number[], step: number): readonly number[] {
  const size = from.length;
  let inverse: number[][] = Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (__, column) => (row === column ? 1 : 0)),
  );
  let at = [...from];
  let slope = slopeOf(of, at, step);
  for (let turn = 0; turn < 100; turn++) {
    const way = inverse.map((row) => -dot(row, slope));
    const falls = dot(way, slope);
    if (falls > -1e-14) break;
    let by = 1;
    const now = of(at);
    while (by > 1e-14 && of(stepped(at, way, by)) > now + 1e-4 * by * falls) by /= 2;
    if (by <= 1e-14) break;
    const next = stepped(at, way, by);
    const nextSlope = slopeOf(of, next, step);
    const s = stepped(next, at, -1);
    const y = stepped(nextSlope, slope, -1);
    const sy = dot(s, y);
    if (sy > 0) {
      const hy = inverse.map((row) => dot(row, y));
      const scale = (1 + dot(y, hy) / sy) / sy;
      inverse = inverse.map((row, i) =>
        row.map(
          (value, j) =>
            value +
            scale * (s[i] ?? 0) * (s[j] ?? 0) -
            ((hy[i] ?? 0) * (s[j] ?? 0) + (s[i] ?? 0) * (hy[j] ?? 0)) / sy,
        ),
      );
    }
    at = next;
    slope = nextSlope;
  }
  return at;
}

/** The least value of `of` where `bound` is at most nought, by an augmented Lagrangian, and what the bound is worth there. */
export function leastWithin(
  of: Real,
  bound: Real,
  from: readonly number[],
  step: number,
): { readonly at: readonly number[]; readonly worth: number } {
  let at = from;
  let worth = 1;
  let stiff = 10;
  for (let turn = 0; turn < 14; turn++) {
    const [price, weight] = [worth, stiff];
    at = least((x) => of(x) + Math.max(0, price + weight * bound(x)) ** 2 / (2 * weight), at, step);
    worth = Math.max(0, price + weight * bound(at));
    if (Math.abs(worth - price) < 1e-6 * worth) break;
    stiff = Math.min(2000, stiff * 3);
  }
  return { at, worth };
}
