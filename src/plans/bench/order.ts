import { arrowsOf } from "./arrows.ts";
import { type BenchState, settled } from "./bench-state.ts";
import type { Kinds } from "./kinds.ts";
import { fewestTurns, someTurns } from "./turns.ts";

/** A batch this small has every figure weighed at every turn: kinds times figures. */
const SMALL = 8000;
/** How many orders are followed side by side: more where judging them is quick. */
const beamOf = ({ own, figures }: Kinds): number =>
  Math.max(1, Math.min(8, Math.floor(150_000 / (own.length * figures.length))));

interface Judged {
  readonly state: BenchState;
  /** Figures that will have to be set again from here on, as far as can be seen. */
  readonly again: readonly number[];
  /** How often the stop is set in all, as far as can be seen from here. */
  readonly runs: number;
}

/**
 * A good order: figures that need be set only once more are set, and where there is none the figure whose
 * setting leaves the fewest to be set again, several orders being followed side by side.
 */
export function goodOrder(start: BenchState): BenchState {
  const width = beamOf(start.kinds);
  let beam: readonly Judged[] = [judged(settled(start))];
  for (;;) {
    const done = beam.find(({ state }) => state.isDone);
    if (done !== undefined) return done.state;
    const next = new Map<string, Judged>();
    for (const { state, again } of beam) {
      for (const figure of worthSetting(state, again)) {
        const one = judged(settled(state.set(figure)));
        const known = next.get(one.state.key);
        if (known === undefined || one.state.path.length < known.state.path.length)
          next.set(one.state.key, one);
      }
    }
    beam = [...next.values()].toSorted(better).slice(0, width);
  }
}

const better = (a: Judged, b: Judged): number => a.runs - b.runs || a.state.cutsLeft - b.state.cutsLeft;

function judged(state: BenchState): Judged {
  const again = someTurns(arrowsOf(state.kinds, state));
  return { state, again, runs: state.path.length + state.figuresLeft + again.length };
}

/** Figures to set next: those that must be set again anyway, where some of them can cut something. */
function worthSetting(state: BenchState, again: readonly number[]): readonly number[] {
  const ready = state.ready;
  if (state.kinds.own.length * state.kinds.figures.length <= SMALL) return ready;
  const both = ready.filter((figure) => again.includes(figure));
  return both.length > 0 ? both : ready;
}

/** Outcome of trying every order that sets the stop at most `most` times. */
export type Tried =
  | { readonly found: BenchState }
  /** `all`: every such order was tried, and there is none; false: the steps ran out before that. */
  | { readonly found: null; readonly all: boolean };

/** Tries every order that sets the stop at most `most` times, `steps` branchings at the most. */
export function tryOrders(start: BenchState, most: number, steps: number): Tried {
  const seen = new Map<string, number>();
  let left = steps;
  const follow = (from: BenchState): BenchState | null => {
    const state = settled(from);
    if (state.isDone) return state.path.length <= most ? state : null;
    const { length } = state.path;
    if (length + state.figuresLeft + 1 > most) return null;
    const before = seen.get(state.key);
    if (before !== undefined && before <= length) return null;
    seen.set(state.key, length);
    if (left <= 0) return null;
    left -= 1;
    const again = fewestTurns(arrowsOf(state.kinds, state), 0).atLeast;
    if (length + state.figuresLeft + Math.max(1, again) > most) return null;
    const ways = state.ready.map((figure) => state.set(figure)).toSorted((a, b) => a.cutsLeft - b.cutsLeft);
    for (const way of ways) {
      const found = follow(way);
      if (found !== null) return found;
    }
    return null;
  };
  const found = follow(start);
  return found !== null ? { found } : { found, all: left > 0 };
}
