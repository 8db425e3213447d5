/** The first place at which two JSON values differ, each side as one would read it. Null where they say the same. */
export function firstDifference(
  mine: unknown,
  theirs: unknown,
): { readonly mine: string; readonly theirs: string } | null {
  if (mine === theirs) return null;
  if (isOpen(mine) && isOpen(theirs)) {
    for (const key of new Set([...Object.keys(mine), ...Object.keys(theirs)])) {
      const inner = firstDifference(Reflect.get(mine, key), Reflect.get(theirs, key));
      if (inner !== null) return inner;
    }
    return null;
  }
  return { mine: plain(mine), theirs: plain(theirs) };
}

const isOpen = (value: unknown): value is object => typeof value === "object" && value !== null;

/** A value in a few words: its leaves, joined. */
function plain(value: unknown): string {
  if (value === undefined || value === null) return "nothing";
  if (!isOpen(value)) return String(value);
  const leaves = Object.values(value).map(plain).join(" × ");
  return leaves.length > 40 ? `${leaves.slice(0, 39)}…` : leaves;
}
