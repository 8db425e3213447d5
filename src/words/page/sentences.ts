import { capital } from "./capital.ts";
import type { Composition, Design, LiftRule, OuterRule, WindowRule } from "../../assembly/index.ts";
import { figureOf, type Length, printExact } from "../../lengths/index.ts";
import { articleOf, wholeWords } from "../figures.ts";
import { type Language, VOCABULARY } from "../vocabulary.ts";

/**
 * The page's sentences, with their blanks in place. A sentence is written as `Show the [show], covered
 * [overlap] all round`: a name in brackets is a blank, `~` a space at which no line may end. The page
 * sets a control where a blank stands and knows nothing of the words round it.
 */
export type BlankName =
  | "sheetWidth"
  | "sheetHeight"
  | "thickness"
  | "imageKind"
  | "imageWidth"
  | "imageHeight"
  | "imageLeft"
  | "imageTop"
  | "lie"
  | "angle"
  | "level"
  | "unit"
  | "graduation"
  | "sure"
  | "show"
  | "overlap"
  | "marginTop"
  | "marginSide"
  | "marginFoot"
  | "gap"
  | "windowWidth"
  | "windowHeight"
  | "matCount"
  | `board.${number}`
  | `reveal.${number}`
  | `boardThickness.${number}`
  | `bevel.${number}`
  | "outer"
  | "outerWidth"
  | "outerHeight"
  | "borderHead"
  | "borderSide"
  | "borderFoot"
  | "leastBorder"
  | "lift"
  | "liftBy"
  | "liftRatio"
  | "holding"
  | "mount"
  | "hold"
  | "play"
  | "title"
  | `wall.${string}`
  | `rack.${string}`
  | `habit.${string}`;

export type Piece =
  | { readonly kind: "words"; readonly text: string }
  | { readonly kind: "blank"; readonly blank: BlankName };

/** Pieces between which no line may end: a blank with its comma, the two sides of a size. */
export type Token = readonly Piece[];

/** A sentence in its tokens; between two tokens there is a space. */
export function tokensOf(sentence: string): readonly Token[] {
  return sentence.split(" ").map((token) =>
    token
      .split(/(\[[^\]]+\])/)
      .filter((part) => part !== "")
      .map((part): Piece => {
        // A test reads every sentence and finds a label for every name in brackets.
        if (part.startsWith("[")) return { kind: "blank", blank: part.slice(1, -1) as BlankName };
        return { kind: "words", text: part.replaceAll("~", "\u00a0") };
      }),
  );
}

/** Whether the image is said to be the whole sheet. */
export const isWholeSheet = ({ print }: Design): boolean =>
  print !== null &&
  print.image.left === 0 &&
  print.image.top === 0 &&
  print.image.width === print.sheet.width &&
  print.image.height === print.sheet.height;

/** The print's own facts, as one would say them with the ruler in the hand. */
export function factsSentence(design: Design): string {
  const { print } = design;
  const measured = "measured in [unit] with a ruler marked in [graduation]";
  if (print === null) return `No print yet: a mat by itself, ${measured}.`;
  const sheet =
    print.sheetOutline === null
      ? "The print is a sheet [sheetWidth]~×~[sheetHeight], [thickness] thick,"
      : `The print is a torn sheet, [thickness] thick, its edge known at ${print.sheetOutline.length} points,`;
  const edition = print.edition.length;
  const others =
    edition === 0
      ? ""
      : ` ${edition === 1 ? "One more sheet" : `${capital(wholeWords(edition))} more sheets`} of its edition share${edition === 1 ? "s" : ""} this window.`;
  return `${sheet} ${imageOf(design)} It is ${measured}, to within~[sure].${others}`;
}

function imageOf(design: Design): string {
  const outline = design.print?.outline ?? null;
  if (outline !== null) return `with an image whose own edge is known at ${outline.length} points.`;
  if (isWholeSheet(design)) return "with [imageKind].";
  return `with [imageKind] [imageWidth]~×~[imageHeight] on it, [imageLeft] from the left and [imageTop] from the top, lying ${lieOf(design)}.`;
}

function lieOf({ print, window }: Design): string {
  if (print === null || print.angle === 0) return "[lie]";
  const turned = "[lie], [angle] clockwise";
  return window.show === "sheet" ? turned : `${turned}; hang [level] level`;
}

/** The brief: what is to be made, in the order in which one would say it. */
export function briefSentence({ design, outer }: Composition, language: Language): string {
  const { centre } = VOCABULARY[language];
  const { ruler } = design;
  const size = `${printExact(outer.width, ruler.unit)} × ${printExact(outer.height, ruler.unit)}`;
  const article = articleOf(figureOf(outer.width, ruler));
  const lift = design.outer.kind === "borders" ? "" : `, ${liftOf(design.lift, centre)}`;
  const holding = design.print === null ? "" : "; hold it with [holding]";
  return `Show the ${windowOf(design.window)}, in ${matsOf(design.mats.length)}, ${outerOf(design.outer, article, size)}${lift}${holding}.`;
}

function windowOf(window: WindowRule): string {
  switch (window.show) {
    case "overlap":
      return "[show], covered [overlap] all round";
    case "margins":
      return "[show], [marginTop] at the head, [marginSide] at the sides and [marginFoot] at the foot";
    case "sheet":
      return "[show], floated, [gap] clear all round";
    case "typed":
      return "[show] [windowWidth]~×~[windowHeight]";
  }
}

function matsOf(mats: number): string {
  if (mats === 1) return "[matCount] of [board.0]";
  const lower = Array.from({ length: mats - 1 }, (_, index) => mats - 2 - index);
  const seen = lower.map((mat) => `[reveal.${mat + 1}] of [board.${mat}]`).join(" and ");
  return `[matCount], [board.${mats - 1}] on top, then ${seen} in sight`;
}

function outerOf(outer: OuterRule, article: string, size: string): string {
  const found = size.replaceAll(" ", "~");
  switch (outer.kind) {
    case "size":
      return `on ${article} [outer] board`;
    case "borders":
      return `with borders of [borderHead] at the head, [borderSide] at the sides and [borderFoot] at the foot, on [outer]${outer.standard === null ? "" : ` of~${found}`}`;
    case "smallest":
      return `on [outer] that leaves borders of [leastBorder] or more, ${found}`;
  }
}

function liftOf(lift: LiftRule, centre: string): string {
  switch (lift.rule) {
    case "fixed":
      return `[lift] [liftBy] above ${centre}`;
    case "ratio":
      return "[lift], the foot [liftRatio] times the head";
    case "none":
    case "optical":
      return "[lift]";
  }
}

/** What keeps the paper: said small, under the brief. Null where there is no paper. */
export function keepingSentence({ print, window, holding }: Design, language: Language): string | null {
  if (print === null) return null;
  const mounted = "It is mounted on [mount].";
  if (window.show === "sheet") return mounted;
  const { mat } = VOCABULARY[language];
  const play = holding === "pockets" ? "; a pocket leaves its corner [play] to move" : "";
  return `The ${mat} lies on the paper by at least [hold]${play}. ${mounted}`;
}

/** The first print of a new show. */
export const FIRST_SENTENCE =
  "My first print is a sheet [sheetWidth]~×~[sheetHeight] with an image [imageWidth]~×~[imageHeight] on it. I call it [title] and measure in [unit].";

/** What hangs under an open lift: the same distance as the foot has more than the head. */
export const liftOtherWay = (more: string): string => `The other way to say it: ${more} more at the foot.`;
export const lengthOtherWay = (length: Length, unit: "in" | "mm"): string =>
  `The other way to say it: ${printOther(length, unit)}.`;

/** The same length in the other unit: millimetres to a hundredth, inches to a thousandth. */
function printOther(length: Length, unit: "in" | "mm"): string {
  const millimetres = length / 80_000;
  const value = unit === "in" ? Number(millimetres.toFixed(2)) : Number((millimetres / 25.4).toFixed(3));
  const back = unit === "in" ? value : value * 25.4;
  return `${Math.abs(back - millimetres) < 1e-7 ? "" : "≈ "}${value} ${unit === "in" ? "mm" : "in"}`;
}
