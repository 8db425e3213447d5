import { compose, type Composition, isStopped } from "../assembly/index.ts";
import { sayWanted, type Speech } from "../words/index.ts";
import { compositionText } from "./composition-text.ts";
import type { Problem } from "./problem.ts";
import { readDesign } from "./read-design.ts";
import { composeDocument, type PracticeDocument } from "./schema.ts";
import { type Read, validate } from "./validate.ts";

export interface ProblemJson {
  readonly field: string;
  readonly found: string;
  readonly wanted: string;
}

export const problemJson = ({ field, found, wanted }: Problem): ProblemJson => ({
  field,
  found,
  wanted: sayWanted(wanted),
});

/** One object for all who have no habits, so that they are read once. */
const NO_HABITS: PracticeDocument = {};

/** Validates, reads and composes one document. */
export function composeFrom(document: unknown, practice: PracticeDocument = NO_HABITS): Read<Composition> {
  const valid = validate(composeDocument, document);
  if (!valid.ok) return valid;
  const design = readDesign(valid.value, practice);
  return design.ok ? { ok: true, value: compose(design.value) } : design;
}

/** One document in, the composed work or its problem out, as plain JSON. */
export const composeJson = (document: unknown, practice: PracticeDocument = NO_HABITS): object =>
  JSON.parse(composeResult(document, practice).text) as object;

/** As JSON text, with whether it cannot be made as asked (a check of level "stop", or a problem). */
export function composeResult(
  document: unknown,
  practice: PracticeDocument = NO_HABITS,
): { readonly text: string; readonly stopped: boolean } {
  const composed = composeFrom(document, practice);
  if (!composed.ok) {
    const [first, ...more] = composed.problems.map(problemJson);
    const json = more.length === 0 ? { error: first } : { error: first, more };
    return { text: JSON.stringify(json), stopped: true };
  }
  return {
    text: compositionText(composed.value, practice.language ?? "en-US"),
    stopped: isStopped(composed.value),
  };
}

/** A composition in the open format. */
export const compositionJson = (composition: Composition, language: Speech["language"]): object =>
  JSON.parse(compositionText(composition, language)) as object;
