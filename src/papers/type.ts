import type { Weight } from "../drawings/index.ts";
import { type Length, mm } from "../lengths/index.ts";
import { points } from "./paper.ts";

/** How a text is set. `leading` is the least distance from baseline to baseline. */
export interface TextStyle {
  readonly size: Length;
  readonly weight: Weight;
  readonly leading: Length;
  /** How large a figure in it stands, where whole and where it has a fraction. */
  readonly figures?: { readonly whole: Length; readonly stacked: Length };
}

const style = (size: number, weight: Weight, leading: number): TextStyle => ({
  size: points(size),
  weight,
  leading: points(leading),
});

/** Every way that text is set on a paper; nothing to act on is under 14 points. */
export const TYPE = {
  paperName: style(13, "bold", 16),
  headLine: style(10, "regular", 13),
  headLineStrong: style(10, "semibold", 13),
  title: style(23, "semibold", 27),
  line: style(10.5, "regular", 13.5),
  brief: style(11.5, "regular", 16),
  caption: style(9, "regular", 11),
  fine: style(8, "regular", 9.5),
  fact: style(10, "semibold", 13),
  band: style(10.5, "bold", 13),
  step: { ...style(10.5, "regular", 16), figures: { whole: points(15), stacked: points(17) } },
  caution: style(11, "semibold", 14.5),
  words: style(12, "semibold", 15),
  wordsBeside: style(9.5, "italic", 11.5),
  out: style(27, "black", 28),
  head: style(15, "black", 18),
  tag: style(9, "bold", 11),
} as const satisfies Readonly<Record<string, TextStyle>>;

/** Figures by what the hand does with them, in points. */
export const FIGURE = {
  /** The stop, largest on the page; where four stand in a column; where rows are at their least. */
  key: points(48),
  keyFour: points(38),
  keyUnit: points(16),
  set: points(26),
  scale: points(22),
} as const;

/** A row of a column that holds more than this many stops needs the smaller key figure. */
export const HAIR = mm(0.3);
