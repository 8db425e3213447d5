import { sql, type Transaction } from "kysely";
import { STORAGE } from "../words/storage.ts";
import { CannotKeep } from "./cannot-keep.ts";
import { type Bare, type Kind, MIGRATIONS } from "./migrations.ts";

/** The newest form of the tables that this version knows. */
export const FORM = MIGRATIONS.length;

/** Two programs that start at once on one database go one after the other. From memory, any number serves. */
const LOCK = 4817_2026;

/**
 * Brings the tables to their newest form, all steps in one transaction: whatever stops it, the database
 * is as it was. Rejects with CannotKeep where a later version has written it.
 */
export async function migrate(db: Bare, kind: Kind, migrations = MIGRATIONS): Promise<void> {
  await db.transaction().execute(async (step) => {
    if (kind === "postgres") await sql`select pg_advisory_xact_lock(${LOCK})`.execute(step);
    const form = await formOf(step);
    if (form > migrations.length) throw new CannotKeep(STORAGE.newer(form, migrations.length));
    for (const [index, migration] of migrations.entries()) {
      if (index < form) continue;
      await migration(step, kind);
      await step
        .insertInto("forms")
        .values({ form: index + 1 })
        .execute();
    }
  });
}

/** How many steps the database has behind it. Every step is a row, so that what happened to it can be read. */
async function formOf(step: Transaction<Record<string, Record<string, unknown>>>): Promise<number> {
  await step.schema
    .createTable("forms")
    .ifNotExists()
    .addColumn("form", "integer", (column) => column.primaryKey().notNull())
    .execute();
  const { form } = await step
    .selectFrom("forms")
    .select(({ fn }) => fn.max<number | null>("form").as("form"))
    .executeTakeFirstOrThrow();
  return Number(form ?? 0);
}
