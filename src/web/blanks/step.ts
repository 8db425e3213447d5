import {
  add,
  inch,
  isWholeIn,
  larger,
  type Length,
  mm,
  type Ruler,
  subtract,
  ticks,
  times,
  toGraduation,
  ZERO,
} from "../../lengths/index.ts";

/** How far one press of an arrow goes: a mark of the ruler, a whole unit with Shift, the finest step with Alt. */
export type Stride = "mark" | "whole" | "finest";

export const strideOf = (keys: { readonly shiftKey: boolean; readonly altKey: boolean }): Stride =>
  keys.shiftKey ? "whole" : keys.altKey ? "finest" : "mark";

/** A whole unit is an inch, or ten millimetres: the numbered marks of either ruler. */
export function strideLength(stride: Stride, ruler: Ruler): Length {
  if (stride === "mark") return ruler.graduation;
  if (ruler.unit === "in") return stride === "whole" ? inch(1) : inch(1, 128);
  return stride === "whole" ? mm(10) : mm(0.1);
}

/** The length one stride up or down, never below `least`. From between two marks it goes to the next mark. */
export function stepped(
  length: Length,
  way: 1 | -1,
  stride: Stride,
  ruler: Ruler,
  least: Length = ZERO,
): Length {
  const by = strideLength(stride, ruler);
  if (stride === "whole") return larger(least, way === 1 ? add(length, by) : subtract(length, by));
  if (isWholeIn(length, by)) return larger(least, way === 1 ? add(length, by) : subtract(length, by));
  return larger(least, toGraduation(length, by, way === 1 ? "up" : "down"));
}

/** Five neighbouring marks of the ruler with the length among them, none below nought. */
export function rungsOf(length: Length, ruler: Ruler): readonly Length[] {
  const middle = Math.max(2, Math.floor(length / ruler.graduation));
  return [-2, -1, 0, 1, 2].map((offset) => times(ruler.graduation, middle + offset));
}

/** A length dragged to a real place, on the ruler's nearest mark, or with `free` on the finest step. */
export function snapped(place: number, ruler: Ruler, free: boolean): Length {
  const whole = ticks(Math.round(place));
  return toGraduation(whole, free ? strideLength("finest", ruler) : ruler.graduation, "nearest");
}
