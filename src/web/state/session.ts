import { following, signal } from "./signal.ts";
import type { PracticeDocument, Problem } from "../../show/index.ts";
import { apply, type Change, exactly, inverse, type KeptShow, type KeptWork } from "./change.ts";
import { newId, now } from "./chance.ts";
import {
  type Base,
  type Held,
  type Next,
  openId,
  type Pending,
  parseHeld,
  readHeld,
  relation,
  setOpen,
  type Store,
  keyOf,
  writeHeld,
  writeNew,
  type Written,
} from "./keeping.ts";

/** The show that is open, as the browser holds it; null before there is one. */
export const held = signal<Held | null>(null);

/** A change that can be taken back, or made again: as it was made, with the stamp by which the studio knows it. */
export type Made = Pick<Pending, "stamp" | "change">;

/** Edits made in this window, the last one at the end; a new edit forgets what was undone. */
export const history = signal<{ readonly done: readonly Made[]; readonly undone: readonly Made[] }>({
  done: [],
  undone: [],
});

/** Which window this is: whoever comes back after a restart undoes what it did. */
export const self = { window: newId() };

/** Where the open show lies; `sending`: the studio does not have all of it yet. */
export const whereKept = signal<"studio" | "sending" | "browser">("browser");

/** What brings changes to the studio, once its code is here. */
export const sender = { wake: (): void => undefined };

/**
 * What stands between this window and the store. `word`: another window changed the very thing that
 * this one changes. `show`: two windows kept the show without knowing of each other. `refused`: the
 * browser keeps nothing more. `unread`: there is a record that this version cannot read.
 */
export type Trouble =
  | { readonly kind: "word"; readonly mine: Change; readonly theirs: unknown; readonly against?: string }
  | { readonly kind: "show"; readonly mine: KeptShow; readonly theirs: Held }
  | { readonly kind: "refused" }
  | { readonly kind: "unread"; readonly id: string; readonly found: string }
  /** The show lies in this browser from before there was a studio. */
  | { readonly kind: "outside" }
  /** There is a record of this version, and one of its fields is not what it has to be. */
  | { readonly kind: "damaged"; readonly id: string; readonly problem: Problem | undefined };

export const trouble = signal<Trouble | null>(null);

/** What happened last, as the title block tells it. */
export const told = signal("");

const EMPTY: PracticeDocument = {};
export const show = following<KeptShow | null>(() => held.value?.show ?? null);
export const practice = following<PracticeDocument>(() => show.value?.practice ?? EMPTY);
export const language = following(() => practice.value.language ?? "en-US");

/** The browser's own store, once the page has begun; null where it keeps nothing. */
export let store: Store | null = null;

/** Opens what was open last and listens to other windows. Called once. */
export function begin(browser: Store | null): void {
  store = browser;
  const id = store === null ? null : openId(store);
  if (store !== null && id !== null) {
    const found = readHeld(store, id);
    if (found.kind === "held") take(found.held, (kept) => hold(kept));
    else if (found.kind === "unread") trouble.value = { kind: "unread", id, found: found.found };
  }
  addEventListener("storage", (event) => {
    if (held.value !== null && event.key === keyOf(held.value.id)) hear(event.newValue);
  });
}

/** Shows a state, and asks about what did not fit on those of others. */
export function hold(next: Held): void {
  held.value = next;
  const [first] = next.against;
  if (first === undefined || trouble.value !== null) return;
  const applied = apply(next.show, first.change);
  const theirs = applied.ok ? null : applied.theirs;
  trouble.value = { kind: "word", mine: first.change, theirs, against: first.stamp };
}

/** Takes up a record: at once where it is as the page wrote it, else when every field of it has been read. */
export function take(found: Held, then: (kept: Held) => void): void {
  if (found.whole) then(found);
  else void readOver(found, then);
}

async function readOver(found: Held, then: (kept: Held) => void): Promise<void> {
  const { readShow } = await import("./read-show.ts");
  const read = readShow(found.show);
  if (read.ok) then({ ...found, show: read.value, whole: true });
  else trouble.value = { kind: "damaged", id: found.id, problem: read.problems[0] };
}

/** The text of a record as it lies in the store, for a person to save; null where none lies there. */
export const recordOf = (id: string): string | null => store?.getItem(keyOf(id)) ?? null;

/** A newer state of the open show, kept by another window. */
function hear(text: string | null): void {
  const mine = held.value;
  if (mine === null) return;
  const found = parseHeld(mine.id, text);
  if (found.kind === "unread") trouble.value = { kind: "unread", id: mine.id, found: found.found };
  if (found.kind !== "held") return;
  take(found.held, (theirs) => {
    const newest = held.value;
    if (newest?.id !== theirs.id) return;
    const stands = relation(newest, theirs);
    if (stands === "later") {
      hold(theirs);
      sender.wake();
    } else if (stands === "apart") trouble.value = { kind: "show", mine: newest.show, theirs };
  });
}

/** Opens a show that is new to this browser: its own, or as the studio has it. */
export function openNew(newShow: KeptShow, base: Base = "new", id = newId()): void {
  const next: Next = { show: newShow, base, pending: [], against: [] };
  const fresh: Held = { ...next, id, stamp: newId(), line: [], at: now(), whole: true };
  held.value = fresh;
  history.value = { done: [], undone: [] };
  trouble.value = null;
  settle(store === null ? { kind: "refused" } : writeNew(store, fresh), next);
  sender.wake();
}

/** Opens a show that this browser keeps. */
export function openKept(kept: Held): void {
  trouble.value = null;
  take(kept, (read) => {
    history.value = { done: [], undone: [] };
    hold(read);
    if (store !== null) setOpen(store, read.id);
    sender.wake();
  });
}

/** Makes a change, keeps it and puts it on the list. False where another window's word stands against it. */
export function make(change: Change): boolean {
  const made = carry(change, "do");
  if (made === null) return false;
  history.value = { done: [...history.value.done, made], undone: [] };
  return true;
}

export function undo(): Change | null {
  const { done, undone } = history.value;
  const last = done.at(-1);
  if (last === undefined || carry(inverse(last.change), "undo", last.stamp) === null) return null;
  history.value = { done: done.slice(0, -1), undone: [...undone, last] };
  return last.change;
}

export function redo(): Change | null {
  const { done, undone } = history.value;
  const last = undone.at(-1);
  if (last === undefined || carry(last.change, "redo", last.stamp) === null) return null;
  history.value = { done: [...done, last], undone: undone.slice(0, -1) };
  return last.change;
}

/** Applies a change to the newest state, that of another window included, and keeps it; null where it does not fit. */
export function carry(change: Change, act: Pending["act"], of: string | null = null): Made | null {
  catchUp();
  const mine = held.value;
  if (mine === null) return null;
  const made = exactly(mine.show, change);
  const applied = apply(mine.show, made);
  if (!applied.ok) {
    trouble.value = { kind: "word", mine: change, theirs: applied.theirs };
    return null;
  }
  const stamp = newId();
  const { base, pending, against } = mine;
  const sent: Pending = { stamp, window: self.window, act, of, change: made };
  const waiting = base === "browser" ? pending : [...pending, sent];
  keep({ base: base === "with-a-change" ? "new" : base, show: applied.show, pending: waiting, against });
  sender.wake();
  return { stamp, change: made };
}

/** Takes up what another window kept and whose news has not arrived yet. */
function catchUp(): void {
  const mine = held.value;
  if (store === null || mine === null) return;
  const found = readHeld(store, mine.id);
  if (found.kind === "held" && found.held.whole && relation(mine, found.held) === "later")
    held.value = found.held;
}

/** Keeps a state that follows from the one held. False where another window has kept one that this does not know. */
export function keep(next: Next): boolean {
  const mine = held.value;
  if (mine === null) return false;
  const written = store === null ? refused : writeHeld(store, mine, next, newId(), now());
  settle(written, next);
  return written.kind !== "newer";
}

const refused: Written = { kind: "refused" };

/** Takes the outcome of a write; what could not be kept stays on the screen, and the strip says so. */
export function settle(written: Written, next: Next): void {
  const mine = held.value;
  if (mine === null) return;
  switch (written.kind) {
    case "written":
      if (trouble.value?.kind === "refused") trouble.value = null;
      hold(written.held);
      return;
    case "refused":
      held.value = { ...mine, ...next };
      trouble.value = { kind: "refused" };
      return;
    case "newer":
      held.value = { ...mine, ...next };
      trouble.value = { kind: "show", mine: next.show, theirs: written.theirs };
  }
}

export const workOf = (id: string): KeptWork | undefined => show.value?.works.find((work) => work.id === id);
