import { closeSync, existsSync, openSync, readFileSync, readSync } from "node:fs";
import { open as openFile, rename, rm } from "node:fs/promises";
import { join } from "node:path";
import { STORAGE } from "../words/storage.ts";
import { type Elsewhere, type Exported, exported } from "./archive-out.ts";
import { importArchive, type Importing } from "./archive-in.ts";
import { CannotKeep } from "./cannot-keep.ts";
import { FORM } from "./migrate.ts";
import { servingIn } from "./serving.ts";
import { checkFile, restoreInto } from "./sqlite.ts";
import { FILE, openStore, type Store, type StoreOptions } from "./store.ts";

/** Writes an export to a file, whole or not at all, and on the disk before this settles. */
export async function exportTo(
  store: Store,
  what: Exported,
  elsewhere: Elsewhere,
  file: string,
): Promise<void> {
  const fresh = `${file}.part-${process.pid}`;
  try {
    const handle = await openFile(fresh, "w");
    try {
      for await (const part of exported(store, what, elsewhere)) await handle.writeFile(part);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(fresh, file);
  } catch (error) {
    await rm(fresh, { force: true });
    throw error;
  }
}

/** A backup while the studio is in use: a copy of its file, or of a PostgreSQL the export of the studio. */
export async function backup(store: Store, elsewhere: Elsewhere, file: string): Promise<void> {
  if (store.copyTo === null) await exportTo(store, "studio", elsewhere, file);
  else await store.copyTo(file);
}

export interface Restored {
  /** Where what was there before lies now; null: there was nothing. */
  readonly before: string | null;
  readonly shows: number;
}

/**
 * Puts a backup in the place of all that is there. What was there is copied aside first. Rejects with
 * CannotKeep where a server is running on the studio, or the backup is broken or of a later version.
 */
export async function restore(
  options: StoreOptions,
  file: string,
  elsewhere: Elsewhere,
  newId: Importing["newId"],
): Promise<Restored> {
  const { home, database = "", clock } = options;
  if (!existsSync(file)) throw new CannotKeep(STORAGE.missing(file));
  const running = servingIn(home);
  if (running.length > 0) throw new CannotKeep(STORAGE.running(running.join(", ")));
  const isFile = startsWith(file, "SQLite format 3\0");
  if (isFile && database !== "") throw new CannotKeep(STORAGE.otherKind);
  if (isFile) {
    const form = checkFile(file);
    if (form > FORM) throw new CannotKeep(STORAGE.newer(form, FORM));
  }
  const there = database !== "" || existsSync(join(home, FILE));
  const day = clock()
    .toISOString()
    .replaceAll(/[-:]|\.\d+/g, "");
  let before: string | null = null;
  const first = await openStore(options);
  try {
    if (there) {
      before = join(home, `before-restore-${day}.${first.copyTo === null ? "zip" : "db"}`);
      await backup(first, elsewhere, before);
    }
    if (!isFile) await importArchive(first, readFileSync(file), { newId, replace: true });
  } finally {
    await first.close();
  }
  if (isFile) await restoreInto(join(home, FILE), file);
  // Opened once more: an earlier form is brought up, and what stands there is counted.
  const store = await openStore(options);
  try {
    const { shows } = await store.db
      .selectFrom("shows")
      .select(({ fn }) => fn.countAll<number>().as("shows"))
      .executeTakeFirstOrThrow();
    return { before, shows: Number(shows) };
  } finally {
    await store.close();
  }
}

function startsWith(file: string, sign: string): boolean {
  const handle = openSync(file, "r");
  try {
    const bytes = Buffer.alloc(sign.length);
    readSync(handle, bytes, 0, sign.length, 0);
    return bytes.toString("latin1") === sign;
  } finally {
    closeSync(handle);
  }
}
