import { makeChanges, type Outcome } from "./changes.ts";
import { type Entry, stacksOf } from "./entries.ts";
import type { Store } from "./store.ts";

/** Who undoes, and the stamp that the undoing itself gets. */
export interface Undoing {
  readonly window: string;
  readonly stamp: string;
}

export type Undone = Outcome | { readonly kind: "nothing" };

/** Takes back the last change of a window that is not taken back yet. */
export const undo = (store: Store, show: string, undoing: Undoing): Promise<Undone> =>
  again(store, show, undoing, "undo");

/** Makes the change again that a window took back last. */
export const redo = (store: Store, show: string, undoing: Undoing): Promise<Undone> =>
  again(store, show, undoing, "redo");

async function again(
  store: Store,
  show: string,
  { window, stamp }: Undoing,
  act: "undo" | "redo",
): Promise<Undone> {
  const row = await store.db.selectFrom("shows").select("number").where("id", "=", show).executeTakeFirst();
  if (row === undefined) return { kind: "none" };
  const { done, undone } = await stacksOf(store.db, show, window);
  const last: Entry | undefined = (act === "undo" ? done : undone).at(-1);
  if (last === undefined) return { kind: "nothing" };
  const made = act === "undo" ? last.inverse : last.change;
  return makeChanges(store, show, row.number, [{ stamp, window, act, of: last.stamp, change: made }]);
}
