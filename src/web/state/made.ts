import { compose, type Composition } from "../../assembly/index.ts";
import { type ComposeDocument, type PracticeDocument, type Problem, readDesign } from "../../show/index.ts";

/** A document composed, or the reasons why it cannot be read. */
export type Made =
  | { readonly ok: true; readonly composition: Composition }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const known = new WeakMap<ComposeDocument, { readonly practice: PracticeDocument; readonly made: Made }>();

/** Composes a document; the same document under the same practice is composed once. */
export function madeOf(document: ComposeDocument, practice: PracticeDocument): Made {
  const before = known.get(document);
  if (before?.practice === practice) return before.made;
  const read = readDesign(document, practice);
  const made: Made = read.ok
    ? { ok: true, composition: compose(read.value) }
    : { ok: false, problems: read.problems };
  known.set(document, { practice, made });
  return made;
}
