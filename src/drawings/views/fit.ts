import type { Composition } from "../../assembly/index.ts";
import type { Length } from "../../lengths/index.ts";
import { BACK_FURNITURE } from "./back.ts";
import { PIXEL } from "./pen.ts";

/** The space a drawing may take; null where that way is free. */
export interface Room {
  readonly width: Length | null;
  readonly height: Length | null;
}

/** Below this scale a package of any size is a dot: 1 : 2,000. */
const LEAST_SCALE = 1 / 2000;

/**
 * The largest scale at which the back view, with its figures and words, fits the room: front and back
 * share it. Where borders are too small for their figures the view may stand out by their width.
 */
export function fitScale(composition: Composition, room: Room, pixel: number = PIXEL): number {
  const { width, height } = composition.outer;
  const across =
    room.width === null ? Infinity : (room.width - BACK_FURNITURE.width * pixel) / Math.max(width, 1);
  const down =
    room.height === null ? Infinity : (room.height - BACK_FURNITURE.height * pixel) / Math.max(height, 1);
  const scale = Math.min(across, down, 1);
  return Math.max(scale, LEAST_SCALE);
}
