import { type Length, scale } from "../lengths/index.ts";

/** Scales that a drawing may have; past the last, whole hundreds. The largest that fits is taken. */
const SCALES = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 25, 30, 40, 50, 60, 75, 100];

/** How many times smaller than the thing a drawing must be to fit a room. */
export function fittingScale(width: Length, height: Length, roomWidth: Length, roomHeight: Length): number {
  const needed = Math.max(width / roomWidth, height / roomHeight);
  return SCALES.find((over) => over >= needed) ?? Math.ceil(needed / 100) * 100;
}

/** A length of the thing as it is drawn. */
export const drawn = (length: Length, over: number): Length => scale(length, 1n, BigInt(over), "nearest");

/** A length of the thing drawn larger. */
export const enlarged = (length: Length, by: number): Length => scale(length, BigInt(by), 1n, "nearest");
