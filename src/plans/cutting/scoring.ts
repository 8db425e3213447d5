/** As a further child: the piece fills the waste rectangle's other side exactly. */
export const BESIDE = 0;
/** In a strip of its own, cut off along the node's axis; the rest of the strip is waste. */
export const STRIP = 1;
/** The whole waste rectangle is split the other way first, then the piece cut from that shelf. */
export const SHELF = 2;

/**
 * What makes one place better than another.
 * "squares": the change in the sum of squared waste areas; one large remainder beats two small ones.
 * "tight": the smallest waste rectangle that takes the piece. "side": the closest side.
 */
export type Preference = "squares" | "tight" | "side";

/** How good a place is: higher is better. The piece is p by q, the waste rectangle f by c. */
export function scored(
  f: number,
  c: number,
  p: number,
  q: number,
  how: number,
  preference: Preference,
): number {
  const one = how === SHELF ? f * (c - q) : p * (c - q);
  const two = how === SHELF ? (f - p) * q : (f - p) * c;
  switch (preference) {
    case "squares":
      return one * one + two * two - f * c * (f * c);
    case "tight":
      return (one > two ? one : two) * 1e-6 - f * c;
    case "side":
      return (one > two ? one : two) / (f * c) - (f - p < c - q ? f - p : c - q);
  }
}
