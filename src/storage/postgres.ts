import { Kysely, PostgresDialect } from "kysely";
import type { CustomTypesConfig } from "pg";
import { STORAGE } from "../words/storage.ts";
import { CannotKeep } from "./cannot-keep.ts";
import type { Tables } from "./tables.ts";

/** The type numbers of int8, and of numeric, which a sum of int8 is: PostgreSQL's own, in its table `pg_type`. */
const INT8 = 20;
const NUMERIC = 1700;

/** A whole number that a JavaScript number holds exactly; anything else is a fault, never a rounded one. */
export function checkedWhole(text: string): number {
  const value = Number(text);
  if (!Number.isSafeInteger(value)) throw new RangeError(`${text} is no whole number that can be held`);
  return value;
}

/** Opens a PostgreSQL by its address. Rejects with CannotKeep, without the password, where it does not answer. */
export async function openPostgres(address: string, report: (fault: Error) => void): Promise<Kysely<Tables>> {
  const { default: pg } = await import("pg");
  const types: CustomTypesConfig = {
    getTypeParser: (type, format) =>
      type === INT8 || type === NUMERIC ? checkedWhole : pg.types.getTypeParser(type, format),
  };
  const pool = new pg.Pool({ connectionString: address, max: 8, types, connectionTimeoutMillis: 5000 });
  // A connection that breaks while it lies idle is thrown away by the pool; the next question opens another.
  pool.on("error", report);
  try {
    // What is acknowledged is on the disk: refused where the server was told otherwise.
    const { rows } = await pool.query<{ off: boolean }>(
      "select current_setting('fsync') = 'off' or current_setting('synchronous_commit') = 'off' as off",
    );
    if (rows[0]?.off === true) throw new CannotKeep(STORAGE.notDurable);
  } catch (error) {
    await pool.end();
    if (error instanceof CannotKeep) throw error;
    const why = error instanceof Error ? error.message : String(error);
    throw new CannotKeep(STORAGE.noPostgres(nameOf(address), why), { cause: error });
  }
  return new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) });
}

/** Where it lies, without who asks and by which password. */
export function nameOf(address: string): string {
  if (!URL.canParse(address)) return "PostgreSQL";
  const { host, pathname } = new URL(address);
  return `${host}${pathname}`;
}
