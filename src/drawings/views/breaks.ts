/**
 * A long part drawn short: the stretches between the places that matter are taken out where they are
 * longest, until the whole fits. What is shown keeps its scale; where something was taken out stands a
 * break line, and figures still give the true length (ISO 128-3, interrupted views).
 */
export interface Shortened {
  /** One of the places that matter to where it is drawn. */
  readonly map: (x: number) => number;
  /** Where the breaks stand, as drawn. */
  readonly breaks: readonly number[];
}

/**
 * `places` are what must be seen; no stretch between two of them is drawn shorter than `least`. `room`
 * is what the whole may take; where even that cannot be, it is as short as it can be.
 */
export function shorten(places: readonly number[], room: number, least: number): Shortened {
  const at = [...new Set(places)].toSorted((a, b) => a - b);
  const first = at[0] ?? 0;
  const spans = at.slice(1).map((x, index) => x - (at[index] ?? x));
  const cap = cappedAt(spans, room, least);
  const drawn = spans.map((span) => Math.min(span, cap));
  const starts = drawn.reduce<number[]>((all, span) => [...all, (all.at(-1) ?? first) + span], [first]);
  const map = (x: number): number => {
    if (x <= first) return x;
    const index = at.findLastIndex((place) => place <= x);
    const [from, start] = [at[index] ?? first, starts[index] ?? first];
    return start + Math.min(x - from, drawn[index] ?? Infinity);
  };
  const breaks = spans.flatMap((span, index) => {
    const short = drawn[index] ?? span;
    return short < span ? [(starts[index] ?? first) + short / 2] : [];
  });
  return { map, breaks };
}

/** The length to which the longest stretches are cut down so that all of them take `room`; never under `least`. */
function cappedAt(spans: readonly number[], room: number, least: number): number {
  const falling = [...spans].toSorted((a, b) => b - a);
  let rest = falling.reduce((all, span) => all + span, 0);
  if (rest <= room) return Infinity;
  for (const [index, span] of falling.entries()) {
    rest -= span;
    const cap = (room - rest) / (index + 1);
    if (cap >= (falling[index + 1] ?? 0)) return Math.max(cap, least);
  }
  return least;
}
