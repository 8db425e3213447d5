import { apply, exactly, inverse, type KeptShow } from "./change.ts";
import type { Held, Next, Pending } from "./keeping.ts";
import type { Entry } from "./studio.ts";

/** The show without what the studio does not have yet; null where that cannot be taken back, which only a damaged record shows. */
export function confirmedOf({ show, pending }: Pick<Held, "show" | "pending">): KeptShow | null {
  let confirmed = show;
  for (const { change } of pending.toReversed()) {
    const back = apply(confirmed, inverse(change));
    if (!back.ok) return null;
    confirmed = back.show;
  }
  return confirmed;
}

/**
 * The state after what has happened at the studio: its changes first, then what waits here, made upon
 * them. Null where the studio's changes do not follow on what is known of it.
 */
export function caughtUp(mine: Next, entries: readonly Entry[]): Next | null {
  let base = typeof mine.base === "number" ? mine.base : 0;
  let show = confirmedOf(mine);
  const arrived = new Set<string>();
  for (const { number, stamp, change } of entries) {
    if (number <= base) continue;
    const applied = show !== null && number === base + 1 ? apply(show, change) : null;
    if (applied?.ok !== true) return null;
    show = applied.show;
    base = number;
    arrived.add(stamp);
  }
  return show === null ? null : madeUpon(show, base, mine, arrived);
}

/**
 * What waits here made upon a state of the studio. What no longer fits is laid aside in `against`, never
 * dropped; only a work that is gone and was to be taken off is as wished.
 */
export function madeUpon(
  studio: KeptShow,
  base: number,
  mine: Pick<Next, "pending" | "against">,
  arrived: ReadonlySet<string>,
): Next {
  let show = studio;
  const pending: Pending[] = [];
  const against = [...mine.against];
  for (const one of mine.pending) {
    if (arrived.has(one.stamp)) continue;
    const change = exactly(show, one.change);
    const applied = apply(show, change);
    if (applied.ok) {
      show = applied.show;
      pending.push({ ...one, change });
    } else if (change.kind !== "remove" || applied.theirs !== undefined) against.push(one);
  }
  return { base, show, pending, against };
}
