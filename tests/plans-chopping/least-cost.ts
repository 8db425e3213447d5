import type { ChoppingJob } from "../../src/plans/index.ts";

/**
 * The least cost of a small job, by trying every way to part its rails over lengths: for every set of
 * rails the cheapest way to make it. Copies are counted along every way. Null where no way makes all.
 */
export function leastCost(job: ChoppingJob): number | null {
  const rails = job.rails.flatMap(({ length, count }) => Array.from({ length: count }, () => length));
  const all = (1 << rails.length) - 1;
  const known = new Map<string, number>();
  const used = (set: number): number => {
    let sum = 2 * job.waste - job.kerf;
    for (const [index, rail] of rails.entries()) if (set & (1 << index)) sum += rail + job.kerf;
    return sum;
  };
  const best = (left: number, copies: readonly (number | null)[]): number => {
    if (left === 0) return 0;
    const key = `${left} ${copies.join()}`;
    const seen = known.get(key);
    if (seen !== undefined) return seen;
    const first = left & -left;
    const others = left ^ first;
    let least = Number.POSITIVE_INFINITY;
    // Every set that holds the first rail left is the next length's.
    for (let set = others; ; set = (set - 1) & others) {
      const taken = set | first;
      for (const [index, { length, cost }] of job.lengths.entries()) {
        const there = copies[index] ?? null;
        if (used(taken) > length || there === 0) continue;
        const after = copies.map((count, at) => (at === index && count !== null ? count - 1 : count));
        least = Math.min(least, cost + best(left ^ taken, after));
      }
      if (set === 0) break;
    }
    known.set(key, least);
    return least;
  };
  const cost = best(
    all,
    job.lengths.map(({ copies }) => copies),
  );
  return Number.isFinite(cost) ? cost : null;
}
