import { fromReal } from "../lengths/index.ts";
import type { MeasureText, Weight } from "./marks.ts";

// Advance widths of the printable ASCII signs from the space on, in thousandths of the em: Source
// Sans 3 regular, read from the font's own metrics (SIL Open Font License). Its figures are tabular.
const ADVANCES = [
  200, 289, 426, 497, 497, 824, 609, 249, 303, 303, 418, 497, 249, 311, 249, 350, 497, 497, 497, 497, 497,
  497, 497, 497, 497, 497, 249, 249, 497, 497, 497, 425, 847, 544, 588, 571, 615, 527, 494, 617, 652, 263,
  480, 579, 486, 727, 647, 664, 566, 664, 569, 534, 536, 645, 515, 786, 513, 476, 539, 303, 350, 303, 497,
  500, 542, 504, 553, 456, 555, 496, 292, 504, 544, 246, 247, 495, 255, 829, 547, 542, 555, 555, 347, 419,
  338, 544, 467, 719, 446, 467, 425, 303, 241, 303, 497,
];
/** For a sign that the table does not hold: wider than nearly every letter, so that an estimate errs on the roomy side. */
const OTHER_ADVANCE = 664;
const NARROW_MARKS = /[\u2018\u2019\u2009\u202f]/;
const NARROW_ADVANCE = 249;

/** How much wider the figures of a weight are than the regular ones. */
const WEIGHT_FACTOR: Readonly<Record<Weight, number>> = {
  light: 0.964,
  regular: 1,
  semibold: 1.032,
  bold: 1.062,
  black: 1.087,
  italic: 0.964,
};

/**
 * An estimate of a text's width for places that own no font: exact for figures, within a few
 * hundredths for words. Whoever has the font passes their own measure instead.
 */
export const estimateText: MeasureText = (text, weight, size) => {
  let thousandths = 0;
  for (const sign of text) {
    const known = ADVANCES[(sign.codePointAt(0) ?? 0) - 32];
    thousandths += known ?? (NARROW_MARKS.test(sign) ? NARROW_ADVANCE : OTHER_ADVANCE);
  }
  return fromReal((thousandths / 1000) * WEIGHT_FACTOR[weight] * size, "nearest");
};
