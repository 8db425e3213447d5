import { signal } from "./signal.ts";
import type { BlankFault } from "../blanks/fault.ts";
import type { ComposeDocument } from "../../show/index.ts";
import type { BlankName } from "../../words/page.ts";

/**
 * What is being typed or dragged and is not kept yet. The drawings follow it; the reckoning, the
 * checks and the list of changes wait until it is kept. `document` is null while it cannot be read.
 */
export interface Draft {
  readonly blank: BlankName;
  /** What stood on the screen when the typing began. */
  readonly seen: ComposeDocument;
  readonly document: ComposeDocument | null;
}

export const draft = signal<Draft | null>(null);

/** Blanks whose text cannot be read, with why; each stays until it is mended or put back. */
export const unread = signal<ReadonlyMap<BlankName, BlankFault>>(new Map());

export function setUnread(blank: BlankName, fault: BlankFault | null): void {
  if (fault === null && !unread.value.has(blank)) return;
  const next = new Map(unread.value);
  if (fault === null) next.delete(blank);
  else next.set(blank, fault);
  unread.value = next;
}

/** The blank that is open or pointed at: the drawings thicken what it speaks of. */
export const lit = signal<BlankName | null>(null);
/** The part of a drawing that is pointed at: the sentence washes its blank. */
export const pointed = signal<string | null>(null);

/** Counts how often all that was being typed has been put aside: each blank drops its text when it moves on. */
export const putAside = signal(0);

export function clearDrafts(): void {
  putAside.value = putAside.value + 1;
  draft.value = null;
  unread.value = new Map();
  lit.value = null;
  pointed.value = null;
}

/** Another work is shown: nothing of the last one stays open. */
export function clearAll(): void {
  clearDrafts();
  openDialog.value = null;
}

/** The blank whose dialog is open. */
export const openDialog = signal<BlankName | null>(null);

/** Which view a phone shows. */
export const chosenView = signal<"front" | "back" | "section">("front");

/** What of the list that was brought in last could not be read, a sentence each. */
export const leftOut = signal<readonly string[]>([]);

/** Whether a paper is being made; its act waits for it. */
export const making = signal(false);
