import { type Act, ACTS, type Change } from "../show/index.ts";
import type { ChangeTable, Database } from "./tables.ts";

/** A change as it is kept: the page's own value, with who made it and when, and what it takes back. */
export interface Entry {
  /** Its place among the show's changes, from 1. */
  readonly number: number;
  /** Given by whoever made it, so that a change that is sent twice is made once. */
  readonly stamp: string;
  /** Which window made it. */
  readonly window: string;
  readonly at: string;
  readonly act: Act;
  /** The stamp of the change that is undone or done again; null where `act` is `do`. */
  readonly of: string | null;
  readonly change: Change;
  readonly inverse: Change;
}

/** The entry of a row: written by this code after its change was checked. */
function entryOf({ number, stamp, window, at, act, of, change, inverse }: ChangeTable): Entry {
  if (!isAct(act)) throw new Error(`no act of a change: ${act}`);
  return {
    number,
    stamp,
    window,
    at,
    act,
    of,
    change: JSON.parse(change) as Change,
    inverse: JSON.parse(inverse) as Change,
  };
}

const isAct = (act: string): act is Act => ACTS.some((one) => one === act);

export const rowOf = (show: string, { change, inverse, ...entry }: Entry): ChangeTable => ({
  ...entry,
  show,
  change: JSON.stringify(change),
  inverse: JSON.stringify(inverse),
});

/** A show's changes after a number, in the order in which they were made. */
export async function entriesSince(db: Database, show: string, number: number): Promise<Entry[]> {
  const rows = await db
    .selectFrom("changes")
    .selectAll()
    .where("show", "=", show)
    .where("number", ">", number)
    .orderBy("number")
    .execute();
  return rows.map(entryOf);
}

/** What a window can undo and do again, each list with its last one at the end. */
export interface Stacks {
  readonly done: readonly Entry[];
  readonly undone: readonly Entry[];
}

/** How far back a window undoes. */
const MOST_UNDONE = 500;

/** The lists of a window, from the history: they outlast the page, the server and the machine. */
export async function stacksOf(db: Database, show: string, window: string): Promise<Stacks> {
  const rows = await db
    .selectFrom("changes")
    .selectAll()
    .where("show", "=", show)
    .where("window", "=", window)
    .orderBy("number", "desc")
    .limit(2 * MOST_UNDONE)
    .execute();
  return stacked(rows.toReversed().map(entryOf));
}

/** What is left to undo and to do again after a window's entries, the oldest first. A new change forgets what was undone. */
export function stacked(entries: readonly Entry[]): Stacks {
  const done: Entry[] = [];
  const undone: Entry[] = [];
  for (const entry of entries) {
    if (entry.act === "do") {
      done.push(entry);
      undone.length = 0;
      continue;
    }
    const [from, to] = entry.act === "undo" ? [done, undone] : [undone, done];
    const at = from.findLastIndex(({ stamp }) => stamp === entry.of);
    // Past the far end of what is looked at: what it took back is not on the lists either.
    if (at >= 0) to.push(...from.splice(at, 1));
  }
  return { done, undone };
}
