import { composeReference } from "./compose.ts";
import type { Design, Size } from "./document.ts";
import { Fraction } from "./fraction.ts";
import type { Pair } from "./size-lists.ts";

/**
 * The same design moved to stand exactly on an edge of a rule, where "at least" and "more than"
 * part: a listed size that is just large enough, a border just wide enough, a hold just met. `by`
 * moves it off the edge, in millimetres. Null where the design has no such edge.
 */
export function onEdge(design: Design, by: number): Design | null {
  const { outer } = design;
  if ("borders" in outer) {
    const own = composeReference({ ...design, outer: { borders: outer.borders } }, 0).outer;
    if (own === null || own.some((side) => side.sign() <= 0)) return null;
    return { ...design, outer: { borders: outer.borders, standard: [sized(own, by), sized(own, 50)] } };
  }
  if ("smallest" in outer) {
    const [mat] = composeReference(design, 0).mats;
    if (mat === undefined) return null;
    const { head, left, right, foot } = mat.borders;
    const least = Fraction.least([head, left, right, foot]);
    return { ...design, outer: { smallest: outer.smallest, border: written(least, by) } };
  }
  const { laid } = composeReference(design, 0);
  if (laid === null || laid.turn !== 0 || design.window.show === "sheet") return null;
  const cover = Fraction.least([laid.cover.head, laid.cover.left, laid.cover.right, laid.cover.foot]);
  const { sure: _, ...print } = design.print ?? { width: 0, height: 0 };
  return cover.sign() < 0 ? null : { ...design, print, hold: written(cover, by) };
}

const sized = ([width, height]: Pair, by: number): Size => ({
  width: written(width, by),
  height: written(height, by),
});

const written = (length: Fraction, by: number): string =>
  `${Math.max(0, Number((length.toNumber() + by).toFixed(7)))} mm`;
