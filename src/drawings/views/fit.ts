import type { Composition } from "../../assembly/index.ts";
import type { Length } from "../../lengths/index.ts";
import { BACK_FURNITURE, type BackOptions, type BackWords, backView } from "./back.ts";
import { PIXEL } from "./pen.ts";

/** The space a drawing may take; null where that way is free. */
export interface Room {
  readonly width: Length | null;
  readonly height: Length | null;
}

export type FitOptions = Partial<Omit<BackOptions, "scale" | "ruler">>;

/** Below this scale a package of any size is a dot: 1 : 2,000. */
const LEAST_SCALE = 1 / 2000;
/** A smaller scale may push a figure out of its border, which takes room again: look so many times. */
const LOOKS = 5;
/** For a caller who only asks for room: figures count, words do not. */
const NO_WORDS: BackWords = {
  head: "",
  out: "",
  atLeftHand: { side: "", hand: "" },
  atRightHand: { side: "", hand: "" },
};

/**
 * The largest scale, at most full size, at which the back view fits the room with its figures and, where
 * they are given, its words: front and back share it. A room too small for any figure gets the least scale.
 */
export function fitScale(composition: Composition, room: Room, options: FitOptions = {}): number {
  const pixel = options.pixel ?? PIXEL;
  const size = { width: Math.max(composition.outer.width, 1), height: Math.max(composition.outer.height, 1) };
  const scaleBeside = (across: number, down: number): number => {
    const wide = room.width === null ? Infinity : (room.width - across) / size.width;
    const high = room.height === null ? Infinity : (room.height - down) / size.height;
    return Math.max(Math.min(wide, high, 1), LEAST_SCALE);
  };
  let scale = scaleBeside(BACK_FURNITURE.width * pixel, BACK_FURNITURE.height * pixel);
  for (let look = 0; look < LOOKS; look += 1) {
    const view = backView(composition, {
      words: NO_WORDS,
      ...options,
      scale,
      ruler: composition.design.ruler,
    });
    const fitsWide = room.width === null || view.width <= room.width;
    const fitsHigh = room.height === null || view.height <= room.height;
    if (fitsWide && fitsHigh) break;
    scale = scaleBeside(view.width - size.width * scale, view.height - size.height * scale);
  }
  return scale;
}
