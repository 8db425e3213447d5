import type { Design } from "../../assembly/index.ts";
import type { ComposeDocument } from "../../show/index.ts";
import { sayCheck } from "../../words/index.ts";
import { figureInSentence } from "../blanks/set-length.ts";
import { type BlankName, keptSays } from "../../words/page.ts";
import { designChange, type KeptWork } from "../state/change.ts";
import { draft, setUnread } from "../state/draft.ts";
import { madeOf } from "../state/made.ts";
import { language, make, practice, told, trouble, workOf } from "../state/session.ts";

/** The drawings follow a document that is not kept yet; null while its text cannot be read. */
export function follow(work: KeptWork, blank: BlankName, document: ComposeDocument | null): void {
  const readable = document !== null && madeOf(document, practice.value).ok;
  draft.value = { blank, seen: seenBy(work, blank), document: readable ? document : null };
}

const seenBy = (work: KeptWork, blank: BlankName): ComposeDocument =>
  draft.value?.blank === blank ? draft.value.seen : work.design;

export function putBack(blank: BlankName): void {
  if (draft.value?.blank === blank) draft.value = null;
  setUnread(blank, null);
}

/** Keeps a document that a blank, a drag or a way out has made. False where the design cannot take it; then the blank says why. */
export function keep(work: KeptWork, blank: BlankName, document: ComposeDocument, said: string): boolean {
  if (trouble.value?.kind === "word" && draft.value?.blank === blank) return false;
  const made = madeOf(document, practice.value);
  if (!made.ok) {
    const problem = made.problems[0];
    if (problem !== undefined) setUnread(blank, { code: "refused", problem });
    return false;
  }
  const change = designChange(work.id, work.design, document, said, seenBy(work, blank));
  // What stands against another window's word waits there until a person has settled it.
  if (change !== null && !make(change)) return false;
  putBack(blank);
  if (change === null) return true;
  tell(said, workOf(work.id)?.design ?? document);
  return true;
}

/** One sentence: what changed, and the heaviest check. */
function tell(said: string, document: ComposeDocument): void {
  const made = madeOf(document, practice.value);
  if (!made.ok) return;
  const { checks, design } = made.composition;
  const heaviest = checks.find(({ level }) => level !== "note");
  told.value = keptSays(said, heaviest === undefined ? null : sayCheck(heaviest, speechOf(design)));
}

export const speechOf = (design: Design) => ({
  ruler: design.ruler,
  language: language.value,
  set: figureInSentence,
});
