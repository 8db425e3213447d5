import { at } from "../at.ts";

/** The largest point no greater than `value`. */
export function indexBelow(points: Int32Array, value: number): number {
  let low = 0;
  let high = points.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (at(points, middle) <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** For each point, the pairs of points (smaller first) that it can be split into; of pairs with one larger half, only the best. */
export function splitsOf(points: Int32Array): Int32Array[] {
  return Array.from(points, (whole, index) => {
    const pairs: number[] = [];
    let two = index;
    for (let one = 1; one < index; one++) {
      while (at(points, two) > whole - at(points, one)) two--;
      if (two < one) break;
      if (pairs[pairs.length - 1] === two) pairs[pairs.length - 2] = one;
      else pairs.push(one, two);
    }
    return Int32Array.from(pairs);
  });
}

/** All sums of the sides up to `most`, nought included, rising; null where there are more than `limit`. */
export function rasterPoints(sides: readonly number[], most: number, limit: number): Int32Array | null {
  const distinct = [...new Set(sides)].filter((side) => side <= most);
  const seen = new Set([0]);
  const queue = [0];
  for (const sum of queue) {
    for (const side of distinct) {
      const next = sum + side;
      if (next > most || seen.has(next)) continue;
      if (seen.size > limit) return null;
      seen.add(next);
      queue.push(next);
    }
  }
  return Int32Array.from(queue).toSorted();
}
