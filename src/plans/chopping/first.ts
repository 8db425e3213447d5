import { at } from "../at.ts";
import { type RoughChopping, roughOf } from "./patterns.ts";
import type { WholeChopping } from "./whole.ts";

interface OpenBar {
  readonly stock: number;
  readonly kinds: number[];
  readonly counts: number[];
  room: number;
}

/**
 * Best-fit decreasing: each rail, the longest first, into the bar with the least room that still
 * holds it (first-fit: into the first), else into a new length, the one with the least price for what it holds.
 */
export function decreasing(whole: WholeChopping, fit: "best" | "first"): RoughChopping {
  const copies = whole.stocks.map((stock) => stock.copies);
  const bars: OpenBar[] = [];
  whole.kinds.forEach(({ weight, count }, kind) => {
    for (let copy = 0; copy < count; copy++) {
      const bar = placeFor(bars, weight, fit) ?? opened(whole, copies, weight);
      if (bar === null) return;
      if (bar.kinds.length === 0) bars.push(bar);
      if (bar.kinds.at(-1) === kind) bar.counts.push((bar.counts.pop() ?? 0) + 1);
      else {
        bar.kinds.push(kind);
        bar.counts.push(1);
      }
      bar.room -= weight;
    }
  });
  return roughOf(whole, bars);
}

function placeFor(bars: readonly OpenBar[], weight: number, fit: "best" | "first"): OpenBar | null {
  let best: OpenBar | null = null;
  for (const bar of bars) {
    if (bar.room < weight) continue;
    if (fit === "first") return bar;
    if (best === null || bar.room < best.room) best = bar;
  }
  return best;
}

/** A new length that holds the weight; null when there is none left. */
function opened(whole: WholeChopping, copies: number[], weight: number): OpenBar | null {
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  whole.stocks.forEach(({ capacity, price }, index) => {
    const ratio = price / capacity;
    if (capacity < weight || at(copies, index) < 1 || ratio >= least) return;
    best = index;
    least = ratio;
  });
  if (best < 0) return null;
  copies[best] = at(copies, best) - 1;
  return { stock: best, kinds: [], counts: [], room: at(whole.stocks, best).capacity };
}
