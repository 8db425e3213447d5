import type { KeptShow } from "../show/index.ts";
import { fingerprint } from "./rows.ts";
import { readShow } from "./shows.ts";
import type { Store } from "./store.ts";

export interface Printed {
  readonly stamp: string;
  readonly paper: string;
  /** The show's number when it was made. */
  readonly number: number;
  /** The work it is of; null: the whole show. */
  readonly work: string | null;
  readonly at: string;
  /** Whether all that it was made from still stands as it did. */
  readonly stands: boolean;
}

/** What a paper rests on: the show's own fields, and its work or all of them. */
export function restsOf({ works, ...own }: KeptShow, work: string | null): string {
  return fingerprint({ own, works: work === null ? works : works.filter(({ id }) => id === work) });
}

/** Notes that a paper was made from a show as it was handed over. False where there is no such show. */
export async function notePaper(
  store: Store,
  show: string,
  printed: { readonly stamp: string; readonly paper: string; readonly work: string | null },
  from: KeptShow,
): Promise<boolean> {
  const row = await store.db.selectFrom("shows").select("number").where("id", "=", show).executeTakeFirst();
  if (row === undefined) return false;
  const { number } = row;
  const rests = restsOf(from, printed.work);
  await store.db
    .insertInto("papers")
    .values({ ...printed, show, number, rests, at: store.clock().toISOString() })
    .execute();
  return true;
}

/** The papers that were made of a show, the last one first, each with whether it still says what stands. */
export async function listPapers(store: Store, show: string): Promise<Printed[]> {
  const stored = await readShow(store, show);
  if (stored === null) return [];
  const rows = await store.db
    .selectFrom("papers")
    .selectAll()
    .where("show", "=", show)
    .orderBy("at", "desc")
    .orderBy("stamp")
    .execute();
  const now = new Map<string | null, string>();
  return rows.map(({ rests, stamp, paper, number, work, at }) => {
    const stands = now.get(work) ?? restsOf(stored.show, work);
    now.set(work, stands);
    return { stamp, paper, number, work, at, stands: rests === stands };
  });
}
