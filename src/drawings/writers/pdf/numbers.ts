import type { Length } from "../../../lengths/index.ts";
import { TICKS_PER_INCH, TICKS_PER_MILLIMETRE } from "../../../lengths/index.ts";

const POINTS_PER_INCH = 72;
const TICKS_PER_POINT = TICKS_PER_INCH / POINTS_PER_INCH;

/** A length, or a real number of ticks, in the file's own unit of 1/72 in. */
export const inPoints = (ticks: Length | number): number => ticks / TICKS_PER_POINT;

/** Real millimetres in points. */
export const millimetresInPoints = (value: number): number =>
  (value * TICKS_PER_MILLIMETRE) / TICKS_PER_POINT;

/** A number as it stands in the file: four decimals (0.00004 mm), none that say nothing. */
export function operand(value: number): string {
  const text = value.toFixed(4).replace(/\.?0+$/, "");
  return text === "-0" || text === "" ? "0" : text;
}
