import { fromReal, type Length } from "../../lengths/index.ts";
import { PIXEL } from "../../drawings/index.ts";

/** A place on a drawing in pixels of the page, to a hundredth. */
export const px = (length: number): number => Math.round((length / PIXEL) * 100) / 100;

/** A width of the page as a length on a drawing. */
export const fromPx = (pixels: number): Length => fromReal(pixels * PIXEL, "down");
