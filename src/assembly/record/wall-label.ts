import { inch, type Length, mm, type Unit } from "../../lengths/index.ts";
import type { Known } from "../hold/index.ts";

/** What a wall label may hold, so that a visitor standing before it reads it. */
export interface LabelLimits {
  /** Characters a line: the most, and what reads better. */
  readonly line: { readonly most: number; readonly better: number };
  /** Words a sentence. */
  readonly sentence: { readonly most: number; readonly better: number };
  /** Words a label. */
  readonly label: { readonly most: number; readonly better: number };
  readonly source: string;
  readonly known: Known;
}

/** At most 55 characters a line, 45 to 50 better; sentences of at most 25 words, 15 better; at most 75 to 100 words in all. */
export const LABEL_LIMITS: LabelLimits = {
  line: { most: 55, better: 45 },
  sentence: { most: 25, better: 15 },
  label: { most: 100, better: 75 },
  source: "Smithsonian Guidelines for Accessible Exhibition Design, section III",
  known: "read",
};

/** How high above the floor a wall label hangs: from and to, and what is best. */
export interface LabelHeight {
  readonly from: Length;
  readonly to: Length;
  readonly best: Length;
}

/** 48 to 67 in, 54 in best (an accessibility page that follows the Smithsonian's guidance, second-hand); in whole centimetres beside a metric ruler. */
export const LABEL_HEIGHT: Readonly<Record<Unit, LabelHeight>> = {
  in: { from: inch(48), to: inch(67), best: inch(54) },
  mm: { from: mm(1220), to: mm(1700), best: mm(1370) },
};

/** Something in a wall label's text that a visitor will not read to its end, as a record; `words` says it. */
export type LabelCheck =
  | { readonly level: "warn" | "note"; readonly code: "label-long"; readonly words: number }
  | { readonly level: "warn"; readonly code: "sentence-long"; readonly words: number };

const wordsOf = (text: string): number =>
  text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;

/** Sentences end at a full stop, a question or exclamation mark before a space or the end. */
const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.!?…]["'”’)]*)\s+/);

/** What a wall label's text breaks of the published limits: more words than most, or than better; its longest sentence where that is too long. */
export function labelChecks(text: string): readonly LabelCheck[] {
  const words = wordsOf(text);
  const longest = Math.max(0, ...sentencesOf(text).map(wordsOf));
  const { label, sentence } = LABEL_LIMITS;
  return [
    ...(words > label.better
      ? [{ code: "label-long", level: words > label.most ? "warn" : "note", words } as const]
      : []),
    ...(longest > sentence.most ? [{ code: "sentence-long", level: "warn", words: longest } as const] : []),
  ];
}
