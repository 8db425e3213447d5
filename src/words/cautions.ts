import type { Check } from "../assembly/index.ts";
import type { Length, Ruler } from "../lengths/index.ts";
import type { Speech } from "./checks.ts";
import { type Phrase, runs, sizeRuns, withUnit } from "./runs.ts";
import { VOCABULARY } from "./vocabulary.ts";

const named = (sheet: string | null): string => (sheet === null ? "the first sheet" : `sheet ${sheet}`);

/**
 * A check as a caution on a paper, at the step where the hand meets it: the act first, at most twelve
 * words a sentence, figures as runs. A stop's caution is its ways out, since its side and figure stand
 * large beside it.
 */
export function cautionWords(check: Check, { ruler, language }: Speech): Phrase {
  const { mat } = VOCABULARY[language];
  switch (check.code) {
    case "paper-ends":
      return runs`Show at least ${withUnit(check.by, ruler, "up")} less there, or show the whole sheet.${carrierWay(check.carrier, ruler)}`;
    case "hold-short":
      return runs`The ${mat} must lie on ${withUnit(check.hold, ruler, "up")} of paper; it lies on ${withUnit(check.cover, ruler, "down")}. Show less there, or show the whole sheet.${carrierWay(check.carrier, ruler)}`;
    case "border-negative":
      return "Take a larger board, or a smaller window.";
    case "border-small":
      return runs`Look again: the ${check.side} border is only ${withUnit(check.border, ruler, "down")}.`;
    case "border-uneven":
      return runs`Left and right differ: ${withUnit(check.left, ruler)} and ${withUnit(check.right, ruler)}.`;
    case "window-gone":
      return "Cover less of the image, or measure it again.";
    case "reveal-gone":
      return "Ask for a wider strip of the lower one.";
    case "reveal-off":
      return runs`The strip comes out at ${withUnit(check.cut, ruler)}, not ${withUnit(check.asked, ruler)}.`;
    case "no-size":
      return runs`Take a board of at least ${sizeRuns(check, ruler, "up")}, or narrow the borders.`;
    case "sheet-past-board":
      return "Take a larger board. A print is not trimmed to fit.";
    case "sheet-turned":
      return "Turn the sheet, so that the image hangs level.";
    case "image-skew":
      return "The image stays skew: the sheet’s edge hangs level.";
    case "image-hidden":
      return `The ${mat} hides a part of the image.`;
    case "pocket-small":
      return runs`Pockets show past ${withUnit(check.leg, ruler, "down")}. Hinge it at the head.`;
    case "holding-shows":
      return `Hinge it from behind: ${check.holding === "pockets" ? "corner pockets" : "edge strips"} would show.`;
    case "edition-outlier":
      return runs`Measure ${named(check.sheet)} again. Its ${check.part} is ${withUnit(check.size, ruler)} ${check.direction === "width" ? "wide" : "high"}, the others ${withUnit(check.median, ruler)}.`;
  }
}

/** A wider sheet to hinge the print to, where one would serve. */
const carrierWay = (
  carrier: { readonly width: Length; readonly height: Length } | null,
  ruler: Ruler,
): Phrase =>
  carrier === null ? "" : runs` Or hinge it to a carrier sheet ${sizeRuns(carrier, ruler, "up")}.`;
