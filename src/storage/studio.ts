import type { PracticeDocument } from "../show/index.ts";
import type { Store } from "./store.ts";

/** The studio's practice, with which new shows begin. Version 0: nobody has said anything yet. */
export interface StudioPractice {
  readonly practice: PracticeDocument;
  readonly version: number;
}

const ONLY = 1;

export async function readPractice({ db }: Pick<Store, "db">): Promise<StudioPractice> {
  const row = await db
    .selectFrom("studio")
    .select(["practice", "version"])
    .where("id", "=", ONLY)
    .executeTakeFirst();
  if (row === undefined) return { practice: {}, version: 0 };
  return { practice: JSON.parse(row.practice) as PracticeDocument, version: row.version };
}

/** Writes the practice upon the version it was read at; else what stands there now comes back, and nothing is written. */
export async function writePractice(
  store: Store,
  practice: PracticeDocument,
  base: number,
): Promise<{ readonly kept: boolean; readonly now: StudioPractice }> {
  const at = store.clock().toISOString();
  const row = { practice: JSON.stringify(practice), version: base + 1, at };
  const written =
    base === 0
      ? (
          await store.db
            .insertInto("studio")
            .values({ id: ONLY, ...row })
            .onConflict((conflict) => conflict.doNothing())
            .executeTakeFirst()
        ).numInsertedOrUpdatedRows
      : (
          await store.db
            .updateTable("studio")
            .set(row)
            .where("id", "=", ONLY)
            .where("version", "=", base)
            .executeTakeFirst()
        ).numUpdatedRows;
  return { kept: written === 1n, now: await readPractice(store) };
}
