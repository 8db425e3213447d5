import type { Check } from "../assembly/index.ts";
import type { Side } from "../geometry/index.ts";
import { exactFigure, type Figure, figureOf, figureText, type Length, type Ruler } from "../lengths/index.ts";
import { sentence } from "./plain.ts";
import type { Language } from "./vocabulary.ts";
import { VOCABULARY } from "./vocabulary.ts";

/** What a sentence is said in: the ruler its figures are printed on, and the English of the trade. */
export interface Speech {
  readonly ruler: Ruler;
  readonly language: Language;
  /** How a figure stands in a sentence; plain text, `1 3/4 in`, where absent. */
  readonly set?: (figure: Figure) => string;
}

/** Where a side lies on the back, for the hand that marks it. */
const AT_HAND: Readonly<Record<Side, string>> = {
  head: "away from you on the back",
  left: "at your right hand on the back",
  right: "at your left hand on the back",
  foot: "next to you on the back",
};

/** A side as the front has it, in a sentence. */
export const sideName = (side: Side): string =>
  side === "head" || side === "foot" ? `the ${side}` : `the front's ${side}`;
const ofSheet = (sheet: string | null): string => (sheet === null ? "" : ` (sheet ${sheet})`);

/** A check as one or two sentences: the side, the figure and a way out. One case for every code, so that a missing sentence does not compile. */
export function sayCheck(check: Check, { ruler, language, set = figureText }: Speech): string {
  const word = VOCABULARY[language];
  const most = (length: Length): string => set(figureOf(length, ruler, "down"));
  const least = (length: Length): string => set(figureOf(length, ruler, "up"));
  const exact = (length: Length): string => set(exactFigure(length, ruler.unit));
  const place = (length: Length): string => set(figureOf(length, ruler, "nearest"));
  const carrierWay = (carrier: { width: Length; height: Length } | null): string =>
    carrier === null
      ? ""
      : `, or hinge it to a carrier sheet of ${place(carrier.width)} × ${place(carrier.height)}`;

  switch (check.code) {
    case "paper-ends":
      return `${sentence(sideName(check.side))}${ofSheet(check.sheet)}, ${AT_HAND[check.side]}: the paper ends ${least(check.by)} before the window. Do not cut. Show less there${carrierWay(check.carrier)}.`;
    case "hold-short":
      return `${sentence(sideName(check.side))}${ofSheet(check.sheet)}, ${AT_HAND[check.side]}: the paper reaches under by ${most(check.cover)} and must reach ${least(check.hold)}. It is short by ${least((check.hold - check.cover) as Length)}. Show less there${carrierWay(check.carrier)}.`;
    case "border-negative":
      return `${sentence(sideName(check.side))}: the window passes the edge of the board by ${least((0 - check.border) as Length)}. Take a larger board or a smaller window.`;
    case "border-small":
      return `${sentence(sideName(check.side))}: the border is ${most(check.border)}, narrower than your least of ${least(check.least)}. Take a larger board, or narrow the lift.`;
    case "border-uneven":
      return `What is left does not halve on this ruler: the front's left is ${exact(check.left)}, the front's right ${exact(check.right)}. The wider one lies at your left hand on the back.`;
    case "window-gone":
      return `No ${check.direction} is left for the window (${check.size < 0 ? "less than nothing" : "0"}). Cover less of the image.`;
    case "reveal-gone":
      return `The upper ${word.mat} would lie over the strip of the lower by ${least((0 - check.cut) as Length)}. Ask for a wider strip.`;
    case "reveal-off":
      return `The strip was asked as ${exact(check.asked)} and is cut as ${exact(check.cut)} on this ruler. Ask for another width, or mark to a finer graduation.`;
    case "no-size":
      return `No listed size is large enough: it takes at least ${least(check.width)} × ${least(check.height)}. Type a size, or narrow the borders.`;
    case "sheet-past-board":
      return `${sentence(sideName(check.side))}${ofSheet(check.sheet)}: the sheet is larger than the package by ${least(check.by)}. Take a larger board; a print is not trimmed to fit.`;
    case "sheet-turned":
      return `The image lies skew: turn the sheet ${degrees(check.angle, word.anticlockwise)} on the mount, and the image hangs level.`;
    case "image-skew":
      return `The image lies ${degrees(check.angle, word.anticlockwise)} skew on its sheet and stays so: the sheet's edge hangs level.`;
    case "image-hidden":
      return `The ${word.mat} hides ${percent(check.share)} of the image.`;
    case "pocket-small":
      return `A pocket would have a leg of only ${most(check.leg)} before it shows; ${least(check.least)} is the least that holds. Hold it with edge strips or hinges.`;
    case "holding-shows":
      return `The whole sheet is in sight: ${check.holding === "pockets" ? "corner pockets" : "edge strips"} would show. Hold it with hinges behind it.`;
    case "edition-outlier":
      return `${check.sheet === null ? "The first sheet" : `Sheet ${check.sheet}`}: the ${check.part} is ${place(check.size)} ${check.direction === "width" ? "wide" : "high"}, the edition's middle ${place(check.median)}. Measure it again before you cut.`;
  }
}

/** Degrees to a hundredth, with the way round in words. */
const degrees = (angle: number, anticlockwise: string): string =>
  `${Number(Math.abs(angle).toFixed(2))}° ${angle < 0 ? anticlockwise : "clockwise"}`;

/** A share of an area; small ones keep a digit that says something. */
function percent(share: number): string {
  const value = share * 100;
  if (value > 0 && value < 0.1) return "less than 0.1 %";
  return `${Number(value.toFixed(value < 10 ? 1 : 0))} %`;
}

/** What a check is about: the field of the document that mends it. */
export function aboutOf(check: Check): string {
  switch (check.code) {
    case "paper-ends":
    case "hold-short":
      return `cover.${check.side}`;
    case "border-negative":
    case "border-small":
      return `mats.${check.mat}.borders.${check.side}`;
    case "border-uneven":
      return "mats.0.borders";
    case "window-gone":
      return `window.${check.direction}`;
    case "reveal-gone":
    case "reveal-off":
      return `mats.${check.mat}.reveal`;
    case "no-size":
      return "outer";
    case "sheet-past-board":
      return `outer.${check.side === "left" || check.side === "right" ? "width" : "height"}`;
    case "sheet-turned":
    case "image-skew":
      return "print.angle";
    case "image-hidden":
      return "window";
    case "pocket-small":
    case "holding-shows":
      return "holding";
    case "edition-outlier":
      return `print.edition.${check.sheet ?? "first"}`;
  }
}
