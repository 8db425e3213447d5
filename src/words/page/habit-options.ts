import { type Language, VOCABULARY } from "../vocabulary.ts";
import type { Options } from "./options.ts";

/** What a habit may be, in the words of its sentence. */

export const mountKindOptions = (language: Language): Options<"mat" | "own"> => [
  { key: "mat", words: `the board of its ${VOCABULARY[language].mat}` },
  { key: "own", words: "a board of its own" },
];
export const HOLD_KIND_OPTIONS: Options<"moves" | "own"> = [
  { key: "moves", words: "what the paper needs" },
  { key: "own", words: "a length" },
];
export const OUTER_HABIT_OPTIONS: Options<"inch" | "metric" | "iso" | "borders" | "size" | "own"> = [
  { key: "inch", words: "the least inch size" },
  { key: "metric", words: "the least metric size" },
  { key: "iso", words: "the least ISO size" },
  { key: "own", words: "the least of our sizes" },
  { key: "borders", words: "a board with borders" },
  { key: "size", words: "a board of one size" },
];
export const HOLDS_OPTIONS: Options<"yes" | "no"> = [
  { key: "yes", words: "holds the whole sheet" },
  { key: "no", words: "need not hold a sheet" },
];
export const HAND_OPTIONS: Options<"right" | "left"> = [
  { key: "right", words: "right-handed" },
  { key: "left", words: "left-handed" },
];
export const SCALE_OPTIONS: Options<"true" | "below" | "above"> = [
  { key: "true", words: "to the border itself" },
  { key: "below", words: "below the border" },
  { key: "above", words: "above the border" },
];
export const MOULDING_OPTIONS: Options<"none" | "own"> = [
  { key: "none", words: "nothing: none is made" },
  { key: "own", words: "a length called" },
];
export const GLAZING_OPTIONS: Options<"none" | "glass" | "acrylic"> = [
  { key: "none", words: "no glazing" },
  { key: "glass", words: "glass" },
  { key: "acrylic", words: "acrylic" },
];
export const BACKING_OPTIONS: Options<"none" | "own"> = [
  { key: "none", words: "nothing" },
  { key: "own", words: "a board" },
];
export const FITTING_OPTIONS: Options<"rings" | "plates"> = [
  { key: "rings", words: "two rings" },
  { key: "plates", words: "two plates" },
];
export const INSET_OPTIONS: Options<"middle" | "own"> = [
  { key: "middle", words: "mid-rail" },
  { key: "own", words: "in by" },
];
export const DROP_OPTIONS: Options<"unknown" | "own"> = [
  { key: "unknown", words: "is not measured yet" },
  { key: "own", words: "it is" },
];
export const GUIDANCE_OPTIONS: Options<"cie-157" | "science-museum"> = [
  { key: "cie-157", words: "CIE 157:2004" },
  { key: "science-museum", words: "a science museum" },
];
export const WORK_OPTIONS: Options<"free" | "paid"> = [
  { key: "free", words: "not reckoned" },
  { key: "paid", words: "reckoned at" },
];
export const SIZE_OPTIONS: Options<"letter" | "a4"> = [
  { key: "letter", words: "Letter" },
  { key: "a4", words: "A4" },
];
export const LANGUAGE_OPTIONS: Options<Language> = [
  { key: "en-US", words: "mat and rabbet" },
  { key: "en-GB", words: "mount and rebate" },
];

/** What a new board, pane or length is called until it has its own name. */
export const NEW_HABIT = {
  moulding: "new",
  glass: "picture glass",
  acrylic: "acrylic",
  backing: "backing",
} as const;
