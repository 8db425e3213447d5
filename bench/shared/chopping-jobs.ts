import { ticks, ZERO } from "../../src/lengths/index.ts";
import type { ChoppingJob } from "../../src/plans/index.ts";
import { Chance } from "../../tests/reference/chance.ts";

/** A job of one kind of length that costs 1, rails of one length together. */
export function choppingJob(length: number, rails: readonly number[]): ChoppingJob {
  const counts = new Map<number, number>();
  for (const rail of rails) counts.set(rail, (counts.get(rail) ?? 0) + 1);
  return {
    lengths: [{ name: String(length), length: ticks(length), cost: 1, copies: null }],
    rails: [...counts].map(([rail, count]) => ({
      name: String(rail),
      length: ticks(rail),
      shortPoint: null,
      count,
      frame: null,
    })),
    frames: [],
    kerf: ZERO,
    waste: ZERO,
  };
}

/** So many rails, drawn evenly (after Scholl, Klein and Jürgens, Computers and Operations Research 24, 1997, and Falkenauer, Journal of Heuristics 2, 1996). */
export function evenRails(length: number, least: number, most: number, count: number, seed: number) {
  const chance = new Chance(seed);
  return choppingJob(
    length,
    Array.from({ length: count }, () => chance.whole(least, most)),
  );
}

/** Threes that fill a length of 1000 exactly, from 250 to 500 each but one (after Falkenauer 1996): the least is a third of `count`. */
export function tripletRails(count: number, seed: number): ChoppingJob {
  const chance = new Chance(seed);
  const rails: number[] = [];
  while (rails.length < count) {
    const first = chance.whole(380, 490);
    const rest = 1000 - first;
    const second = chance.whole(250, Math.floor(rest / 2) - 1);
    rails.push(first, second, rest - second);
  }
  return choppingJob(1000, rails);
}

/** How many lengths first-fit decreasing takes. */
export function firstFit({ lengths, rails }: ChoppingJob): number {
  const whole = lengths[0]?.length ?? 0;
  const left: number[] = [];
  const all = rails.flatMap(({ length, count }) => Array.from({ length: count }, () => length as number));
  for (const rail of all.toSorted((a, b) => b - a)) {
    const place = left.findIndex((room) => room >= rail);
    if (place < 0) left.push(whole - rail);
    else left[place] = (left[place] ?? 0) - rail;
  }
  return left.length;
}
