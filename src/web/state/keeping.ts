import type { Act, Change, KeptShow } from "./change.ts";
import { asKept } from "./kept-show.ts";

/** A change that was made here, on its way to the studio: the same stamp is never made twice. */
export interface Pending {
  readonly stamp: string;
  readonly window: string;
  readonly act: Act;
  /** The stamp of the change that is taken back or done again. */
  readonly of: string | null;
  readonly change: Change;
}

/**
 * What of a show the studio has: up to which of its changes; or that it is to be begun there, at once or
 * with its first change; or that it is kept in this browser alone.
 */
export type Base = number | "new" | "with-a-change" | "browser";

/**
 * How a show lies in the browser's own store: one record a show, and which show was open last. Every
 * record carries a stamp of its own and the stamps it descends from, so that a window that missed
 * news can tell a later state of its own show from one that never knew its last change.
 */
export interface Held {
  readonly id: string;
  readonly stamp: string;
  /** Stamps that this state descends from, the nearest first. */
  readonly line: readonly string[];
  /** When it was kept, ISO 8601. */
  readonly at: string;
  readonly show: KeptShow;
  readonly base: Base;
  /** What the studio does not have yet, the oldest first; all of it is made in `show`. */
  readonly pending: readonly Pending[];
  /** What does not fit on what others have made meanwhile, until somebody who has seen both chooses. */
  readonly against: readonly Pending[];
  /** Whether it is, letter by letter, what the page wrote, which was read field by field when it first came in. */
  readonly whole: boolean;
}

/** What the store must be able to do: the browser's `localStorage`, or a stand-in. */
export type Store = Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">;

const FORMAT = 1;
export const PREFIX = "margent.show.";
const OPEN = "margent.open";
/** Windows that slept through more changes than this are asked, never overruled. */
export const REMEMBERED = 64;

export const keyOf = (id: string): string => PREFIX + id;

export type Found =
  | { readonly kind: "held"; readonly held: Held }
  | { readonly kind: "none" }
  /** There is a record, and this version of the page cannot read it. It is left as it is. */
  | { readonly kind: "unread"; readonly found: string };

export function readHeld(store: Store, id: string): Found {
  return parseHeld(id, store.getItem(keyOf(id)));
}

export function parseHeld(id: string, text: string | null): Found {
  if (text === null) return { kind: "none" };
  let record: unknown;
  try {
    record = JSON.parse(text);
  } catch (fault) {
    return { kind: "unread", found: fault instanceof Error ? fault.message : "no JSON" };
  }
  if (typeof record !== "object" || record === null) return { kind: "unread", found: typeof record };
  const format: unknown = Reflect.get(record, "format");
  if (format !== FORMAT) return { kind: "unread", found: `format ${String(format)}` };
  const stamp: unknown = Reflect.get(record, "stamp");
  const line: unknown = Reflect.get(record, "line");
  const at: unknown = Reflect.get(record, "at");
  const show = asKept(Reflect.get(record, "show"));
  if (typeof stamp !== "string" || typeof at !== "string" || !Array.isArray(line)) {
    return { kind: "unread", found: "a record without its stamp" };
  }
  if (show === null) return { kind: "unread", found: "a record without its show" };
  const whole = Reflect.get(record, "sum") === sumOf(JSON.stringify(Reflect.get(record, "show")));
  return {
    kind: "held",
    held: { id, stamp, at, line: line.map(String), show, ...wayOf(record), whole },
  };
}

/** How far it has got to the studio. A record from before there was one is kept in this browser alone. */
function wayOf(record: object): Pick<Held, "base" | "pending" | "against"> {
  const base: unknown = Reflect.get(record, "base");
  const list = (key: string): readonly Pending[] => {
    const value: unknown = Reflect.get(record, key);
    return Array.isArray(value) ? value : [];
  };
  if (typeof base !== "number" && base !== "new" && base !== "with-a-change")
    return { base: "browser", pending: [], against: [] };
  return { base, pending: list("pending"), against: list("against") };
}

/** FNV-1a over a text (Fowler, Noll and Vo; 32 bits): it tells what was written from what somebody changed or cut off. */
function sumOf(text: string): number {
  let sum = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) sum = Math.imul(sum ^ text.charCodeAt(at), 0x01000193);
  return sum >>> 0;
}

export type Written =
  | { readonly kind: "written"; readonly held: Held }
  /** Another window has kept a state that this one has not seen. Nothing was written. */
  | { readonly kind: "newer"; readonly theirs: Held }
  /** The browser refused: full, or switched off. */
  | { readonly kind: "refused" };

/** What a new state says besides when it was kept and what it comes from. */
export type Next = Pick<Held, "show" | "base" | "pending" | "against">;

/** Keeps a state that was made from `from`; refused where the store holds something that `from` does not descend to. */
export function writeHeld(store: Store, from: Held, next: Next, stamp: string, at: string): Written {
  const found = readHeld(store, from.id);
  if (found.kind === "held" && found.held.stamp !== from.stamp && !from.line.includes(found.held.stamp)) {
    return { kind: "newer", theirs: found.held };
  }
  const line = [from.stamp, ...from.line].slice(0, REMEMBERED);
  return put(store, { ...next, id: from.id, stamp, at, line, whole: true });
}

/** A show's first record, and the show that opens next time. */
export function writeNew(store: Store, held: Held): Written {
  const written = put(store, held);
  if (written.kind === "written") setOpen(store, held.id);
  return written;
}

export function put(store: Store, held: Held): Written {
  const { stamp, line, at, show, base, pending, against } = held;
  try {
    store.setItem(
      keyOf(held.id),
      JSON.stringify({
        format: FORMAT,
        stamp,
        line,
        at,
        base,
        pending,
        against,
        sum: sumOf(JSON.stringify(show)),
        show,
      }),
    );
  } catch (fault) {
    // A full or forbidden store throws; the caller says so and the change stays on the screen.
    if (fault instanceof DOMException) return { kind: "refused" };
    throw fault;
  }
  return { kind: "written", held };
}

/** How another window's state stands to this one's. */
export function relation(mine: Held, theirs: Held): "same" | "later" | "earlier" | "apart" {
  if (theirs.stamp === mine.stamp) return "same";
  if (theirs.line.includes(mine.stamp)) return "later";
  return mine.line.includes(theirs.stamp) ? "earlier" : "apart";
}

export const openId = (store: Store): string | null => store.getItem(OPEN);

export function setOpen(store: Store, id: string | null): void {
  if (id === null) store.removeItem(OPEN);
  else store.setItem(OPEN, id);
}
