import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { sql } from "kysely";
import type { KeptShow } from "../show/index.ts";
import { STORAGE } from "../words/storage.ts";
import { CannotKeep } from "./cannot-keep.ts";
import { migrate } from "./migrate.ts";
import type { Bare, Kind } from "./migrations.ts";
import { nameOf, openPostgres } from "./postgres.ts";
import { backupTo, openSqlite } from "./sqlite.ts";
import type { Database } from "./tables.ts";

/** A show as it was read last, with the versions of its rows: right as long as its number and time are the row's own. */
export interface Known {
  readonly number: number;
  readonly at: string;
  readonly version: number;
  readonly placed: number;
  readonly show: KeptShow;
  readonly versions: ReadonlyMap<string, number>;
}

/** An open database, with all that the functions of this folder need. */
export interface Store {
  readonly kind: Kind;
  /** Where it lies, as it is told to people: the file, or the server without its password. */
  readonly place: string;
  readonly db: Database;
  readonly clock: () => Date;
  /** Shows that were read last, so that a change need not read two hundred works. */
  readonly known: Map<string, Known>;
  /** Who hears that a show has a new change. */
  readonly listeners: Set<(show: string) => void>;
  /** A copy while it is in use; null where the database has no such way of its own. */
  readonly copyTo: ((file: string) => Promise<void>) | null;
  close(): Promise<void>;
}

export interface StoreOptions {
  /** The folder of the studio's file; made where there is none. Not touched when `database` is given. */
  readonly home: string;
  /** `postgres://…`; absent or empty: the file. */
  readonly database?: string | undefined;
  readonly clock: () => Date;
  /** Hears of a connection that broke while nobody used it. */
  readonly report: (fault: Error) => void;
}

/** The studio's file in its home folder. */
export const FILE = "studio.db";

/** Opens the database and brings its tables to their newest form. Rejects with CannotKeep and a sentence. */
export async function openStore({ home, database = "", clock, report }: StoreOptions): Promise<Store> {
  const opened = database === "" ? openFile(home) : await openServer(database, report);
  const store: Store = { ...opened, clock, known: new Map(), listeners: new Set() };
  try {
    await migrate(store.db as unknown as Bare, store.kind);
    return store;
  } catch (error) {
    await store.close();
    throw error;
  }
}

type Opened = Pick<Store, "kind" | "place" | "db" | "copyTo" | "close">;

function openFile(home: string): Opened {
  try {
    mkdirSync(home, { recursive: true });
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new CannotKeep(STORAGE.noHome(home, why), { cause: error });
  }
  const place = join(home, FILE);
  const { db, connection } = openSqlite(place);
  return {
    kind: "sqlite",
    place,
    db,
    copyTo: (file) => backupTo(connection, file),
    close: () => db.destroy(),
  };
}

async function openServer(address: string, report: (fault: Error) => void): Promise<Opened> {
  if (!/^postgres(ql)?:\/\//.test(address)) throw new CannotKeep(STORAGE.badAddress);
  const db = await openPostgres(address, report);
  return { kind: "postgres", place: nameOf(address), db, copyTo: null, close: () => db.destroy() };
}

/** Whether the database answers. */
export async function answers({ db }: Store): Promise<boolean> {
  const { rows } = await sql<{ one: number }>`select 1 as one`.execute(db);
  return rows[0]?.one === 1;
}
