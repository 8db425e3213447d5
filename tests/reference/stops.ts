import type { Setting } from "./compose.ts";
import type { Composed } from "./composed.ts";
import type { Fraction } from "./fraction.ts";

/** What is wrong with the settings of a work; `mats` are the settings expected of each, from the lowest up. */
export function stopFaults(composed: Composed, mats: readonly (readonly Setting[])[]): string[] {
  const { stops } = composed;
  const found = mats.flatMap((settings, number) => settingFaults(composed, number, settings));
  if (stops.some(({ mat }, index) => mat > (stops[index - 1]?.mat ?? mat))) {
    found.push("not from the top mat down");
  }
  const changes = stops.filter(({ set }, index) => set.mm !== stops[index - 1]?.set.mm).length;
  const fewest = fewestChanges(mats.toReversed());
  if (changes !== fewest) found.push(`the stop is set ${changes} times, ${fewest} would do`);
  return found;
}

/** How often the stop must be set for mats cut one after another, each setting of a mat once, in the best order. */
function fewestChanges(mats: readonly (readonly Setting[])[]): number {
  // For each border that a mat can end on: the fewest settings up to there.
  let ends: { readonly at: Fraction; readonly count: number }[] = [];
  for (const settings of mats) {
    const before = ends;
    ends = settings.flatMap((last) =>
      settings
        .filter((first) => settings.length === 1 || first !== last)
        .flatMap((first) => {
          const starts =
            before.length === 0 ? [1] : before.map((end) => end.count + (end.at.same(first.at) ? 0 : 1));
          return { at: last.at, count: Math.min(...starts) + settings.length - 1 };
        }),
    );
  }
  return Math.min(...ends.map(({ count }) => count));
}

/** Where a side of the front lies for the hand on the back: turned over like a page, left and right change places. */
const SEEN: Readonly<Record<string, readonly string[]>> = {
  head: ["head", "away"],
  left: ["right"],
  right: ["left"],
  foot: ["foot", "near"],
};

/** What is wrong with the settings of one mat: each border once, its sides and the hand that sees them on the back. */
function settingFaults(composed: Composed, number: number, settings: readonly Setting[]): string[] {
  const found: string[] = [];
  const own = composed.stops.filter((stop) => stop.mat === number);
  if (own.length !== settings.length)
    found.push(`mat ${number}: ${own.length} settings for ${settings.length} borders`);
  for (const { set, scale, edges, hand } of own) {
    const sides = settings.find(({ at }) => Math.abs(at.toNumber() - set.mm) <= 1e-8)?.sides ?? [];
    if (edges.toSorted().join() !== sides.toSorted().join()) {
      found.push(`mat ${number}: ${set.text} set for ${edges}, expected ${sides}`);
    }
    if (
      edges.length !== hand.length ||
      edges.some((side, index) => !SEEN[side]?.includes(hand[index] ?? ""))
    ) {
      found.push(`mat ${number}: ${edges} said to lie at ${hand}`);
    }
    if (scale.mm !== set.mm) found.push(`mat ${number}: the scale reads ${scale.text} with no test cut`);
  }
  return found;
}
