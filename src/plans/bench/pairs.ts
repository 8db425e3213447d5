import { at } from "../at.ts";
import { arrowsOf } from "./arrows.ts";
import type { BenchState } from "./bench-state.ts";
import type { Kinds } from "./kinds.ts";
import { fewestTurns } from "./turns.ts";

/** Two figures, and how often they must be set by themselves, all others left out. */
interface Pair {
  readonly a: number;
  readonly b: number;
  readonly runs: number;
}

/** Four settings of two figures: one more than a ring of arrows asks of them. */
const WORTH_PAIRING = 4;

/**
 * A number of settings that no order can go below, for batches whose mats wait for one another in long
 * chains: figures taken apart into pairs and a rest, each with what it needs by itself. What any order
 * sets of a part of the figures is an order for that part alone, so the parts add up.
 */
export function boundByPairs(kinds: Kinds, start: BenchState, steps: number): number {
  const pairs = strongPairs(kinds);
  let best = 0;
  for (const least of new Set(pairs.map(({ runs }) => runs))) {
    const taken = new Set<number>();
    let runs = 0;
    for (const pair of pairs) {
      if (pair.runs < least || taken.has(pair.a) || taken.has(pair.b)) continue;
      taken.add(pair.a).add(pair.b);
      runs += pair.runs;
    }
    const arrows = arrowsOf(kinds, start);
    for (const figure of taken) arrows.remove(figure);
    best = Math.max(best, runs + kinds.figures.length - taken.size + fewestTurns(arrows, steps).atLeast);
  }
  return best;
}

/** The pairs that need more than three settings, those that need the most first. */
function strongPairs(kinds: Kinds): readonly Pair[] {
  const pairs: Pair[] = [];
  for (let a = 0; a < kinds.figures.length; a++) {
    for (let b = a + 1; b < kinds.figures.length; b++) {
      const runs = Math.min(alternating(kinds, a, b), alternating(kinds, b, a));
      if (runs >= WORTH_PAIRING) pairs.push({ a, b, runs });
    }
  }
  return pairs.toSorted((x, y) => y.runs - x.runs);
}

/** How many settings two figures need, the one set first, then the other, in turn. */
function alternating(kinds: Kinds, first: number, second: number): number {
  let most = 0;
  /** For each kind the setting at which it is whole. */
  const whole = new Int32Array(kinds.own.length);
  kinds.own.forEach((places, kind) => {
    let from = 0;
    for (const other of at(kinds.after, kind)) from = Math.max(from, at(whole, other));
    let until = from;
    for (const figure of places) {
      if (figure === first) until = Math.max(until, from + (from % 2));
      else if (figure === second) until = Math.max(until, from + 1 - (from % 2));
    }
    whole[kind] = until;
    most = Math.max(most, until);
  });
  return most + 1;
}
