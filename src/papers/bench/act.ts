import type { Check } from "../../assembly/index.ts";
import { cautionWords } from "../../words/cautions.ts";
import type { Phrase } from "../../words/index.ts";
import type { BenchDesk } from "./desk.ts";

/** One line of the steps: a thing to do and tick, a caution where the hand is about to do it, a title. */
export type Act =
  | { readonly kind: "do"; readonly words: Phrase }
  | { readonly kind: "caution"; readonly words: Phrase }
  | { readonly kind: "title"; readonly words: string };

export const act = (words: Phrase): Act => ({ kind: "do", words });
export const warning = (words: Phrase): Act => ({ kind: "caution", words });

export const title = (words: string): Act => ({
  kind: "title",
  words: words.charAt(0).toUpperCase() + words.slice(1),
});

/** Cautions that a check of level "warn" puts at a step. */
export const warned = (desk: BenchDesk, about: (check: Check) => boolean): readonly Act[] =>
  desk.job.composition.checks
    .filter((check) => check.level === "warn" && about(check))
    .map((check) => warning(cautionWords(check, desk.speech)));
