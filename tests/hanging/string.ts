/**
 * A second way to where a frame hangs: the lowest place that its wire allows, found by search alone, and
 * forces as the change of its energy. Nothing of the formulas under test.
 */

interface String {
  readonly wire: number;
  readonly apart: number;
  readonly hooksApart: number;
}

/** How much wire it takes from ring to ring over the hooks when the frame's middle hangs at (x, -depth) below the hooks' middle. */
function taken({ apart, hooksApart }: String, x: number, depth: number): number {
  const left = Math.hypot(x - apart / 2 + hooksApart / 2, depth);
  const right = Math.hypot(x + apart / 2 - hooksApart / 2, depth);
  return left + hooksApart + right;
}

/** How low the frame can hang at x: as low as the wire reaches, by halving. */
function lowest(string: String, x: number): number {
  let [low, high] = [0, string.wire];
  if (taken(string, x, 0) > string.wire) return -(taken(string, x, 0) - string.wire);
  for (let turn = 0; turn < 200; turn++) {
    const middle = (low + high) / 2;
    if (taken(string, x, middle) <= string.wire) low = middle;
    else high = middle;
  }
  return low;
}

/** The rings' depth below the hooks where the energy is least: a golden-section search across. */
export function restingDepth(string: String): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [from, to] = [-string.wire, string.wire];
  for (let turn = 0; turn < 120; turn++) {
    const left = to - ratio * (to - from);
    const right = from + ratio * (to - from);
    if (lowest(string, left) > lowest(string, right)) to = right;
    else from = left;
  }
  return lowest(string, (from + to) / 2);
}

/** A force as energy over way: what a weight of one gains when one measure of the string grows. */
export function pull(string: String, along: keyof String): number {
  const step = string.wire * 1e-4;
  const grown = restingDepth({ ...string, [along]: string[along] + step });
  const shrunk = restingDepth({ ...string, [along]: string[along] - step });
  return Math.abs(grown - shrunk) / (2 * step);
}
