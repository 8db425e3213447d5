import { createRequire } from "node:module";
import { closeSync, fsyncSync, openSync, renameSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import type { Database as Connection, default as Connect } from "better-sqlite3";
import { Kysely, SqliteDialect } from "kysely";
import { STORAGE } from "../words/storage.ts";
import { CannotKeep } from "./cannot-keep.ts";
import type { Tables } from "./tables.ts";

/** How long a write waits for that of another program, in milliseconds. */
const PATIENCE = 5000;

/**
 * Opens the studio's file, made where there is none. WAL, so that reading never waits for a write;
 * FULL, so that what is acknowledged is on the disk. Rejects with CannotKeep where there is no SQLite
 * here or the file is none of its own.
 */
export function openSqlite(file: string): { readonly db: Kysely<Tables>; readonly connection: Connection } {
  const connection = connect(file);
  try {
    connection.pragma(`busy_timeout = ${PATIENCE}`);
    connection.pragma("journal_mode = WAL");
    connection.pragma("synchronous = FULL");
    connection.pragma("foreign_keys = ON");
  } catch (error) {
    connection.close();
    throw new CannotKeep(STORAGE.notOurs(file), { cause: error });
  }
  return { db: new Kysely<Tables>({ dialect: new SqliteDialect({ database: connection }) }), connection };
}

function connect(file: string, readonly = false): Connection {
  const Database = library();
  try {
    return new Database(file, { readonly, fileMustExist: readonly });
  } catch (error) {
    throw new CannotKeep(STORAGE.noSqlite(file, firstLine(error)), { cause: error });
  }
}

/** It is compiled for one machine, and may be missing where nothing could compile it. */
function library(): typeof Connect {
  try {
    const Database = createRequire(import.meta.url)("better-sqlite3") as typeof Connect;
    // What is compiled is loaded with the first database alone.
    new Database(":memory:").close();
    return Database;
  } catch (error) {
    throw new CannotKeep(STORAGE.withoutSqlite(firstLine(error)), { cause: error, withoutSqlite: true });
  }
}

const firstLine = (error: unknown): string =>
  error instanceof Error ? (error.message.split("\n")[0] ?? "") : String(error);

/** Copies the file while it is in use, whole: SQLite's own online backup, read through once, then moved into place. */
export async function backupTo(connection: Connection, file: string): Promise<void> {
  const fresh = `${file}.part-${process.pid}`;
  try {
    await connection.backup(fresh);
    // A copy is one file: nothing of it lies in a log beside it.
    const copy = connect(fresh);
    copy.pragma("journal_mode = DELETE");
    copy.close();
    checkFile(fresh);
    flush(fresh);
    renameSync(fresh, file);
    if (process.platform !== "win32") flush(dirname(file));
  } catch (error) {
    rmSync(fresh, { force: true });
    throw error;
  }
}

/** Reads a file through and tells the form of its tables. Throws CannotKeep where it is broken or none of ours. */
export function checkFile(file: string): number {
  const connection = connect(file, true);
  try {
    const found: unknown = connection.pragma("integrity_check(1)", { simple: true });
    if (found !== "ok") throw new CannotKeep(STORAGE.broken(file, String(found)));
    const form: unknown = connection.prepare("select max(form) from forms").pluck().get();
    return Number(form);
  } catch (error) {
    if (error instanceof CannotKeep) throw error;
    throw new CannotKeep(STORAGE.notOurs(file), { cause: error });
  } finally {
    connection.close();
  }
}

/** Puts the pages of a checked file in the place of those of an open one, by SQLite's own way. */
export async function restoreInto(file: string, from: string): Promise<void> {
  const connection = connect(from, true);
  try {
    await connection.backup(file);
  } finally {
    connection.close();
  }
}

function flush(path: string): void {
  const handle = openSync(path, "r");
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
