import type { KeptShow, KeptWork, ShowDocument } from "../show/index.ts";
import { showFields, portions, workFields, writeSheets } from "./rows.ts";
import type { Known, Store } from "./store.ts";
import type { Database } from "./tables.ts";

/** How many shows are kept in memory as they were read last. */
const MOST_KNOWN = 8;

/** A show with the number of its last change. */
export interface StoredShow {
  readonly id: string;
  readonly number: number;
  readonly at: string;
  readonly show: KeptShow;
}

/** What begins a show: nothing of it is in the history. Null: there is one of this id already, and nothing was written. */
export async function beginShow(store: Store, id: string, show: KeptShow): Promise<StoredShow | null> {
  const at = store.clock().toISOString();
  const begun = await store.db.transaction().execute((step) => insertShow(step, id, show, { number: 0, at }));
  if (!begun) return null;
  remember(store, id, freshly(show, 0, at));
  tell(store, id);
  return { id, number: 0, at, show };
}

/** Writes a whole show; false where there is one of this id. */
export async function insertShow(
  db: Database,
  id: string,
  show: KeptShow,
  { number, at }: { readonly number: number; readonly at: string },
): Promise<boolean> {
  const written = await db
    .insertInto("shows")
    .values({ id, ...showFields(show), number, version: number, placed: number, begun: at, at })
    .onConflict((conflict) => conflict.doNothing())
    .executeTakeFirst();
  if (written.numInsertedOrUpdatedRows !== 1n) return false;
  const works = show.works.map((work, place) => ({
    show: id,
    id: work.id,
    place,
    version: number,
    ...workFields(work, show.practice),
  }));
  for (const rows of portions(works)) await db.insertInto("works").values(rows).execute();
  await writeSheets(db, id, show.stock);
  return true;
}

const freshly = (show: KeptShow, number: number, at: string): Known => ({
  number,
  at,
  version: number,
  placed: number,
  show,
  versions: new Map(show.works.map(({ id }) => [id, number])),
});

/** A whole show; null where there is none. */
export async function readShow(store: Store, id: string): Promise<StoredShow | null> {
  // One transaction, so that its row and those of its works are of one moment.
  return store.db
    .transaction()
    .setIsolationLevel("repeatable read")
    .execute(async (step) => {
      const row = await step.selectFrom("shows").selectAll().where("id", "=", id).executeTakeFirst();
      if (row === undefined) return null;
      const { show } = await knownShow(store, step, row);
      return { id, number: row.number, at: row.at, show };
    });
}

interface Row {
  readonly id: string;
  readonly document: string;
  readonly number: number;
  readonly at: string;
  readonly version: number;
  readonly placed: number;
}

/** The show behind a row that was read in the same transaction: as it is known, or read anew. */
export async function knownShow(store: Store, db: Database, row: Row): Promise<Known> {
  const known = store.known.get(row.id);
  if (known?.number === row.number && known.at === row.at) return known;
  const rows = await db
    .selectFrom("works")
    .select(["id", "document", "version"])
    .where("show", "=", row.id)
    .orderBy("place")
    .execute();
  const read: Known = {
    number: row.number,
    at: row.at,
    version: row.version,
    placed: row.placed,
    // Written by this code after it was checked field by field.
    show: {
      ...(JSON.parse(row.document) as Omit<ShowDocument, "works">),
      works: rows.map(({ document }) => JSON.parse(document) as KeptWork),
    },
    versions: new Map(rows.map(({ id, version }) => [id, version])),
  };
  remember(store, row.id, read);
  return read;
}

/** Keeps a show in memory, and lets go of the one that was not asked for longest. */
export function remember({ known }: Store, id: string, show: Known): void {
  known.delete(id);
  known.set(id, show);
  const [oldest] = known.keys();
  if (known.size > MOST_KNOWN && oldest !== undefined) known.delete(oldest);
}

/** How far every show has come, for whoever looks for what others have made. */
export const showStates = ({ db }: Store): Promise<readonly Pick<StoredShow, "id" | "number" | "at">[]> =>
  db.selectFrom("shows").select(["id", "number", "at"]).execute();

/** Takes a show off the list with all that belongs to it. False where there is none. */
export async function removeShow(store: Store, id: string): Promise<boolean> {
  const { numDeletedRows } = await store.db.deleteFrom("shows").where("id", "=", id).executeTakeFirst();
  store.known.delete(id);
  return numDeletedRows > 0n;
}

export function tell({ listeners }: Store, id: string): void {
  for (const listener of listeners) listener(id);
}
