import { following, signal } from "./signal.ts";
import type { PracticeDocument, Problem } from "../../show/index.ts";
import { apply, type Change, inverse, type KeptShow, type KeptWork } from "./change.ts";
import { newId, now } from "./chance.ts";
import {
  type Held,
  openId,
  parseHeld,
  readHeld,
  relation,
  setOpen,
  type Store,
  keyOf,
  writeHeld,
  writeNew,
  writeOver,
  type Written,
} from "./keeping.ts";

/** The show that is open, as the browser holds it; null before there is one. */
export const held = signal<Held | null>(null);

/** Edits made in this window, the last one at the end; a new edit forgets what was undone. */
export const history = signal<{ readonly done: readonly Change[]; readonly undone: readonly Change[] }>({
  done: [],
  undone: [],
});

/**
 * What stands between this window and the store. `word`: another window changed the very thing that
 * this one changes. `show`: two windows kept the show without knowing of each other. `refused`: the
 * browser keeps nothing more. `unread`: there is a record that this version cannot read.
 */
export type Trouble =
  | { readonly kind: "word"; readonly mine: Change; readonly theirs: unknown }
  | { readonly kind: "show"; readonly mine: KeptShow; readonly theirs: Held }
  | { readonly kind: "refused" }
  | { readonly kind: "unread"; readonly id: string; readonly found: string }
  /** There is a record of this version, and one of its fields is not what it has to be. */
  | { readonly kind: "damaged"; readonly id: string; readonly problem: Problem | undefined };

export const trouble = signal<Trouble | null>(null);

/** What happened last, as the title block tells it. */
export const told = signal("");

const EMPTY: PracticeDocument = {};
export const show = following<KeptShow | null>(() => held.value?.show ?? null);
export const practice = following<PracticeDocument>(() => show.value?.practice ?? EMPTY);
export const language = following(() => practice.value.language ?? "en-US");

let store: Store | null = null;

/** Opens what was open last and listens to other windows. Called once. */
export function begin(browser: Store | null): void {
  store = browser;
  const id = store === null ? null : openId(store);
  if (store !== null && id !== null) {
    const found = readHeld(store, id);
    if (found.kind === "held") take(found.held, (kept) => (held.value = kept));
    else if (found.kind === "unread") trouble.value = { kind: "unread", id, found: found.found };
  }
  addEventListener("storage", (event) => {
    if (held.value !== null && event.key === keyOf(held.value.id)) hear(event.newValue);
  });
}

/** Takes up a record: at once where it is as the page wrote it, else when every field of it has been read. */
function take(found: Held, then: (kept: Held) => void): void {
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
    if (stands === "later") held.value = theirs;
    else if (stands === "apart") trouble.value = { kind: "show", mine: newest.show, theirs };
  });
}

/** Opens a show that is new to this browser. */
export function openNew(newShow: KeptShow): void {
  const fresh: Held = { id: newId(), stamp: newId(), line: [], at: now(), show: newShow, whole: true };
  held.value = fresh;
  history.value = { done: [], undone: [] };
  trouble.value = null;
  settle(store === null ? { kind: "refused" } : writeNew(store, fresh), newShow);
}

/** Opens a show that this browser keeps. */
export function openKept(kept: Held): void {
  trouble.value = null;
  take(kept, (read) => {
    held.value = read;
    history.value = { done: [], undone: [] };
    if (store !== null) setOpen(store, read.id);
  });
}

/** Makes a change, keeps it and puts it on the list. False where another window's word stands against it. */
export function make(change: Change): boolean {
  if (!carry(change)) return false;
  history.value = { done: [...history.value.done, change], undone: [] };
  return true;
}

export function undo(): Change | null {
  const { done, undone } = history.value;
  const last = done.at(-1);
  if (last === undefined || !carry(inverse(last))) return null;
  history.value = { done: done.slice(0, -1), undone: [...undone, last] };
  return last;
}

export function redo(): Change | null {
  const { done, undone } = history.value;
  const last = undone.at(-1);
  if (last === undefined || !carry(last)) return null;
  history.value = { done: [...done, last], undone: undone.slice(0, -1) };
  return last;
}

/** Applies a change to the newest state, that of another window included, and keeps it. */
function carry(change: Change, anyway = false): boolean {
  catchUp();
  const mine = held.value;
  if (mine === null) return false;
  const applied = apply(mine.show, change, anyway);
  if (!applied.ok) {
    trouble.value = { kind: "word", mine: change, theirs: applied.theirs };
    return false;
  }
  keep(applied.show);
  return true;
}

/** Takes up what another window kept and whose news has not arrived yet. */
function catchUp(): void {
  const mine = held.value;
  if (store === null || mine === null) return;
  const found = readHeld(store, mine.id);
  if (found.kind === "held" && found.held.whole && relation(mine, found.held) === "later")
    held.value = found.held;
}

function keep(next: KeptShow): void {
  const mine = held.value;
  if (mine === null) return;
  settle(store === null ? { kind: "refused" } : writeHeld(store, mine, next, newId(), now()), next);
}

/** Takes the outcome of a write; what could not be kept stays on the screen, and the strip says so. */
function settle(written: Written, next: KeptShow): void {
  const mine = held.value;
  if (mine === null) return;
  switch (written.kind) {
    case "written":
      held.value = written.held;
      if (trouble.value?.kind === "refused") trouble.value = null;
      return;
    case "refused":
      held.value = { ...mine, show: next };
      trouble.value = { kind: "refused" };
      return;
    case "newer":
      held.value = { ...mine, show: next };
      trouble.value = { kind: "show", mine: next, theirs: written.theirs };
  }
}

/** Settles a trouble for this window's side. */
export function keepMine(): void {
  const stands = trouble.value;
  const mine = held.value;
  trouble.value = null;
  if (stands?.kind === "word" && carry(stands.mine, true)) {
    history.value = { done: [...history.value.done, stands.mine], undone: [] };
  }
  if (stands?.kind === "show" && mine !== null && store !== null) {
    settle(writeOver(store, mine, stands.theirs, stands.mine, newId(), now()), stands.mine);
  }
}

/** Settles a trouble for the other window's side. */
export function takeTheirs(): void {
  const stands = trouble.value;
  trouble.value = null;
  if (stands?.kind !== "show") return;
  take(stands.theirs, (read) => {
    held.value = read;
    history.value = { done: [], undone: [] };
  });
}

export const workOf = (id: string): KeptWork | undefined => show.value?.works.find((work) => work.id === id);
