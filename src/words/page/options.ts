import type { Design, LiftRule, OuterRule, WindowRule } from "../../assembly/index.ts";
import { printExact, type Ruler } from "../../lengths/index.ts";
import { wholeWords } from "../figures.ts";
import { type Language, VOCABULARY } from "../vocabulary.ts";

/** A choice's options: the key that the document keeps, and the words in the sentence, at most 22 characters. */
export type Options<Key extends string> = readonly { readonly key: Key; readonly words: string }[];

export const SHOW_OPTIONS: Options<WindowRule["show"]> = [
  { key: "overlap", words: "image" },
  { key: "margins", words: "image and its margins" },
  { key: "sheet", words: "whole sheet" },
  { key: "typed", words: "part in a window of" },
];

export const HOLDING_OPTIONS: Options<Design["holding"]> = [
  { key: "pockets", words: "corner pockets" },
  { key: "hinges", words: "hinges at the head" },
  { key: "strips", words: "edge strips" },
];

export const liftOptions = (language: Language): Options<LiftRule["rule"]> => [
  { key: "fixed", words: "raised" },
  { key: "none", words: "kept in the middle" },
  { key: "ratio", words: "heavier at the foot" },
  { key: "optical", words: `at the optical ${VOCABULARY[language].centre}` },
];

export const matOptions = (mats: number, language: Language): Options<string> => {
  const { mat, mats: plural } = VOCABULARY[language];
  const numbers = [1, 2, 3, ...(mats > 3 ? [mats] : [])];
  return numbers.map((number) => ({
    key: String(number),
    words: `${wholeWords(number)} ${number === 1 ? mat : plural}`,
  }));
};

export const IMAGE_OPTIONS: Options<"image" | "whole"> = [
  { key: "image", words: "an image" },
  { key: "whole", words: "an image to its edges" },
];

export const LIE_OPTIONS: Options<"straight" | "skew"> = [
  { key: "straight", words: "straight" },
  { key: "skew", words: "skew" },
];

export const LEVEL_OPTIONS: Options<"image" | "sheet"> = [
  { key: "image", words: "the image" },
  { key: "sheet", words: "the sheet" },
];

const metre = (language: Language): string => (language === "en-US" ? "meter" : "metre");

export const unitOptions = (language: Language): Options<"in" | "mm"> => [
  { key: "in", words: "inches" },
  { key: "mm", words: `milli${metre(language)}s` },
];

/** Rulers one can buy, by the mark they end in, and the one in use where it is none of them. */
export function rulerOptions({ unit, graduation }: Ruler, language: Language): Options<string> {
  const usual: Options<string> =
    unit === "in"
      ? [
          { key: "1/8 in", words: "eighths" },
          { key: "1/16 in", words: "sixteenths" },
          { key: "1/32 in", words: "thirty-seconds" },
          { key: "1/64 in", words: "sixty-fourths" },
        ]
      : [
          { key: "1 mm", words: `milli${metre(language)}s` },
          { key: "0.5 mm", words: `half milli${metre(language)}s` },
        ];
  const own = printExact(graduation, unit);
  return usual.some(({ key }) => key === own) ? usual : [...usual, { key: own, words: `steps of ${own}` }];
}

/** Lists of ready-made sizes. */
export const LIST_OPTIONS: Options<"inch" | "metric" | "iso"> = [
  { key: "inch", words: "inch sizes" },
  { key: "metric", words: "metric sizes" },
  { key: "iso", words: "ISO A and B sizes" },
];

/** How an outer size may be said, in the dialog that chooses it. */
export const OUTER_OPTIONS: Options<OuterRule["kind"]> = [
  { key: "size", words: "A size that I name" },
  { key: "smallest", words: "The smallest of a list that leaves wide enough borders" },
  { key: "borders", words: "Borders that I name" },
];

/** What the outer blank says. */
export function outerText(outer: OuterRule, list: "inch" | "metric" | "iso" | null, size: string): string {
  switch (outer.kind) {
    case "size":
      return size;
    case "borders":
      return outer.standard === null ? "a board cut to them" : `the next ${listText(list)}`;
    case "smallest":
      return `the smallest ${listText(list)}`;
  }
}

const LIST_TEXT = { inch: "inch size", metric: "metric size", iso: "ISO size" } as const;
const listText = (list: keyof typeof LIST_TEXT | null): string =>
  list === null ? "listed size" : LIST_TEXT[list];
