import { at } from "../at.ts";

/**
 * Which sizes to choose, as bare numbers: works alike in the sizes that serve them are one row with a
 * weight, and each size has one price for whatever it serves.
 */
export interface Choice {
  /** Whole numbers. */
  readonly prices: readonly number[];
  readonly rows: readonly Row[];
}

export interface Row {
  /** Sizes that serve it, the cheapest first; at least one. */
  readonly servedBy: readonly number[];
  /** How many works it stands for. */
  readonly weight: number;
}

/** What the rows cost when only these sizes can be had; Infinity where one is not served. */
export function costOf({ prices, rows }: Choice, sizes: readonly number[]): number {
  const chosen = new Uint8Array(prices.length);
  for (const size of sizes) chosen[size] = 1;
  let sum = 0;
  for (const { servedBy, weight } of rows) {
    let price = Number.POSITIVE_INFINITY;
    for (const size of servedBy) {
      if (chosen[size] !== 1) continue;
      price = at(prices, size);
      break;
    }
    sum += weight * price;
  }
  return sum;
}

/** The fewest sizes that serve every row, and a number that surely no fewer do. */
export interface Cover {
  readonly chosen: readonly number[];
  readonly atLeast: number;
}

/**
 * The fewest sizes that serve all: the row with the fewest sizes left is served in each of its ways in
 * turn. After `steps` of them the best so far is given, with the number below which all was tried.
 */
export function fewestSizes(choice: Choice, steps: number): Cover {
  let left = steps;
  const within = (rows: readonly Row[], most: number): readonly number[] | null => {
    if (rows.length === 0) return [];
    if (apart(rows) > most || left <= 0) return null;
    left -= 1;
    const [first] = rows.toSorted((a, b) => a.servedBy.length - b.servedBy.length);
    if (first === undefined) return [];
    const ways = first.servedBy
      .map((size) => ({ size, rest: rows.filter(({ servedBy }) => !servedBy.includes(size)) }))
      .toSorted((a, b) => a.rest.length - b.rest.length);
    for (const { size, rest } of ways) {
      const more = within(rest, most - 1);
      if (more !== null) return [size, ...more];
    }
    return null;
  };
  const greedy = greedyCover(choice.rows);
  for (let most = apart(choice.rows); most < greedy.length; most++) {
    const found = within(choice.rows, most);
    if (found !== null) return { chosen: found, atLeast: most };
    if (left <= 0) return { chosen: greedy, atLeast: most };
  }
  return { chosen: greedy, atLeast: greedy.length };
}

/** Rows no two of which any size serves together: each takes a size of its own. */
function apart(rows: readonly Row[]): number {
  const taken = new Set<number>();
  let count = 0;
  for (const { servedBy } of rows.toSorted((a, b) => a.servedBy.length - b.servedBy.length)) {
    if (servedBy.some((size) => taken.has(size))) continue;
    count += 1;
    for (const size of servedBy) taken.add(size);
  }
  return count;
}

function greedyCover(rows: readonly Row[]): readonly number[] {
  const chosen: number[] = [];
  for (let rest = rows; rest.length > 0; ) {
    const counts = new Map<number, number>();
    for (const { servedBy } of rest)
      for (const size of servedBy) counts.set(size, (counts.get(size) ?? 0) + 1);
    const [best] = [...counts].reduce((most, one) => (one[1] > most[1] ? one : most));
    chosen.push(best);
    rest = rest.filter(({ servedBy }) => !servedBy.includes(best));
  }
  return chosen;
}
