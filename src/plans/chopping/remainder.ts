import { at } from "../at.ts";
import { looseOn, type Shared } from "./assemble.ts";
import { loadOf, patternOf, takeOff } from "./patterns.ts";
import type { Pricing } from "./pricing.ts";
import type { Pattern, WholeChopping } from "./whole.ts";

/**
 * The same plan with a longer single remainder: the length with most room gives its rails to the
 * others, one after the other, each of which is filled as far as it can be out of what lies on the
 * two. Frames that are whole on one length stay where they are.
 */
export function remaindersTogether(
  whole: WholeChopping,
  start: Shared,
  pricing: Pricing,
  timeIsUp: () => boolean,
): Shared {
  if (start.bars.length < 2) return start;
  const left = looseOn(start);
  const loose = left.map((slots) => {
    const counts = new Int32Array(whole.kinds.length);
    for (const [kind, count] of slots) counts[kind] = count;
    return counts;
  });
  const rooms = start.bars.map((bar) => at(whole.stocks, bar.stock).capacity - loadOf(whole, bar));
  const last = rooms.reduce((best, room, bar) => (room > at(rooms, best) ? bar : best), 0);
  const weightOf = (counts: Int32Array): number =>
    counts.reduce((sum, count, kind) => sum + count * at(whole.kinds, kind).weight, 0);
  const lengths = whole.kinds.map(({ weight }) => weight);
  rooms.forEach((room, bar) => {
    if (bar === last || room === 0 || timeIsUp()) return;
    const both = at(loose, bar).map((count, kind) => count + at(at(loose, last), kind));
    const capacity = room + weightOf(at(loose, bar));
    const stock = { ...at(whole.stocks, at(start.bars, bar).stock), capacity, copies: 1 };
    const [filled = null] = pricing.best([stock], lengths, both).patterns;
    if (filled === null) return;
    const rest = both.slice();
    takeOff(rest, filled);
    const gain = weightOf(at(loose, last)) - weightOf(rest);
    // A length that would fall empty is a plan of its own, found by the search or not at all.
    if (gain <= 0 || at(rooms, last) + gain >= at(whole.stocks, at(start.bars, last).stock).capacity) return;
    const taken = both.map((count, kind) => count - at(rest, kind));
    loose[bar] = taken;
    loose[last] = rest;
    rooms[last] = at(rooms, last) + gain;
  });
  const bars = start.bars.map((bar, index): Pattern => {
    const counts = at(loose, index).slice();
    bar.kinds.forEach((kind, place) => {
      // What was not loose belongs to whole frames.
      counts[kind] = at(counts, kind) + at(bar.counts, place) - (at(left, index).get(kind) ?? 0);
    });
    return patternOf(bar.stock, counts);
  });
  return { bars, barOf: start.barOf };
}
