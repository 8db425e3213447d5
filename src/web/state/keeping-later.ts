import {
  type Held,
  type Next,
  PREFIX,
  put,
  readHeld,
  REMEMBERED,
  type Store,
  type Written,
} from "./keeping.ts";

/** Keeps `mine` as the successor of both itself and `theirs`. */
export function writeOver(
  store: Store,
  mine: Held,
  theirs: Held,
  next: Next,
  stamp: string,
  at: string,
): Written {
  const line = [...new Set([theirs.stamp, mine.stamp, ...mine.line, ...theirs.line])].slice(0, REMEMBERED);
  return put(store, { ...next, id: mine.id, stamp, at, line, whole: true });
}

/** Every show kept in this browser that can be read, the last kept first. */
export function keptShows(store: Store): Held[] {
  const kept: Held[] = [];
  for (let index = 0; index < store.length; index++) {
    const key = store.key(index);
    if (key === null || !key.startsWith(PREFIX)) continue;
    const found = readHeld(store, key.slice(PREFIX.length));
    if (found.kind === "held") kept.push(found.held);
  }
  return kept.toSorted((a, b) => (a.at < b.at ? 1 : -1));
}
