import { compose, type Composition, type Design } from "../../src/assembly/index.ts";
import { backView, frontView, PIXEL, sectionView } from "../../src/drawings/index.ts";
import { fromReal, type Length } from "../../src/lengths/index.ts";
import { WORDS } from "./words.ts";

export const px = (count: number): Length => fromReal(count * PIXEL, "nearest");

/** 24 pixels to the inch, as the page shows an 11 x 14 in package. */
export const SCALE = 1 / 4;

export const optionsFor = (composition: Composition, scale = SCALE) => ({
  scale,
  ruler: composition.design.ruler,
  words: WORDS,
});

export function viewsOf(design: Design, scale = SCALE) {
  const composition = compose(design);
  const options = optionsFor(composition, scale);
  return {
    composition,
    front: frontView(composition, options),
    back: backView(composition, options),
    section: sectionView(composition, options),
  };
}
