import { strFromU8, type UnzipFileInfo, unzipSync } from "fflate";
import * as z from "zod/mini";
import {
  foundText,
  type KeptShow,
  type Problem,
  SHOW_VERSION,
  showDocument,
  validate,
  withIds,
} from "../show/index.ts";
import { STORAGE } from "../words/storage.ts";
import { ARCHIVE, EXPORT_VERSION, PICTURES } from "./archive-names.ts";
import { headDocument, historyDocument, papersDocument } from "./archive-schema.ts";
import { CannotKeep } from "./cannot-keep.ts";
import { type Entry, rowOf } from "./entries.ts";
import { keepPicture, MOST_PICTURE_BYTES, PICTURE_ADDRESS } from "./pictures.ts";
import { portions } from "./rows.ts";
import { insertShow, tell } from "./shows.ts";
import type { Store } from "./store.ts";
import type { Database, PaperTable } from "./tables.ts";

// A text of an export is data and never becomes code.
z.config({ jitless: true });

/** The largest text inside an export. */
const MOST_TEXT_BYTES = 512_000_000;

export interface Imported {
  readonly shows: readonly { readonly id: string; readonly name: string; readonly works: number }[];
  readonly pictures: number;
}

interface Read {
  readonly id: string;
  readonly show: KeptShow;
  readonly entries: readonly Entry[];
  readonly papers: readonly Omit<PaperTable, "show">[];
}

export interface Importing {
  /** A new id: of a show whose own is taken, of a work that has none. */
  readonly newId: () => string;
  /** Puts the export in the place of all that is there, instead of beside it. */
  readonly replace?: boolean;
}

/**
 * Takes in an export, or any zip with a show.json: all of it or nothing. A show whose id is taken comes
 * beside the other under a new one. Rejects with CannotKeep and a sentence where something cannot be read.
 */
export async function importArchive(
  store: Store,
  bytes: Uint8Array,
  { newId, replace = false }: Importing,
): Promise<Imported> {
  const zip = new Archive(bytes);
  const head = zip.has(ARCHIVE.head) ? zip.read(ARCHIVE.head, headDocument) : null;
  if (head !== null && head.version > EXPORT_VERSION) throw new CannotKeep(STORAGE.laterExport(head.version));
  const listed = head?.shows ?? [{ id: newId(), folder: "" }];
  const read: Read[] = [];
  const sums = new Set<string>();
  for (const { id, folder } of listed) read.push(await readFolder(store, zip, id, folder, newId, sums));
  await store.db.transaction().execute(async (step) => {
    if (replace) {
      await step.deleteFrom("shows").execute();
      await step.deleteFrom("studio").execute();
    }
    for (const [index, one] of read.entries()) {
      const id = (await writeOne(store, step, one.id, one)) ? one.id : newId();
      if (id !== one.id && !(await writeOne(store, step, id, one))) throw new Error(`id ${id} is taken`);
      read[index] = { ...one, id };
    }
    const practice = head?.practice;
    // A studio that has said its habits already keeps them.
    if (practice !== undefined) {
      const row = { id: 1, practice: JSON.stringify(practice), version: 1, at: store.clock().toISOString() };
      await step
        .insertInto("studio")
        .values(row)
        .onConflict((conflict) => conflict.doNothing())
        .execute();
    }
  });
  if (replace) store.known.clear();
  for (const { id } of read) tell(store, id);
  return {
    shows: read.map(({ id, show }) => ({ id, name: show.name, works: show.works.length })),
    pictures: sums.size,
  };
}

async function readFolder(
  store: Store,
  zip: Archive,
  id: string,
  folder: string,
  newId: () => string,
  sums: Set<string>,
): Promise<Read> {
  const addresses = new Map<string, string>();
  for (const [name, bytes] of zip.pictures(`${folder}${PICTURES}`)) {
    const kept = await keepPicture(store, bytes);
    if (kept === null) throw new CannotKeep(STORAGE.noPicture(name));
    sums.add(kept.sum);
    addresses.set(name.slice(folder.length), PICTURE_ADDRESS + kept.sum);
  }
  const document = zip.read(`${folder}${ARCHIVE.show}`, showDocument, addresses);
  if (document.version > SHOW_VERSION)
    throw new CannotKeep(STORAGE.laterShow(document.version, SHOW_VERSION));
  const has = (name: string): boolean => zip.has(`${folder}${name}`);
  const history = has(ARCHIVE.history)
    ? zip.read(`${folder}${ARCHIVE.history}`, historyDocument, addresses)
    : [];
  const gap = history.findIndex(({ number }, index) => number !== index + 1);
  if (gap >= 0) throw new CannotKeep(STORAGE.gap(`${folder}${ARCHIVE.history}`, gap + 1));
  return {
    id,
    show: withIds(document, newId),
    // Checked field by field just now.
    entries: history as unknown as readonly Entry[],
    papers: has(ARCHIVE.papers) ? zip.read(`${folder}${ARCHIVE.papers}`, papersDocument) : [],
  };
}

async function writeOne(
  store: Store,
  step: Database,
  id: string,
  { show, entries, papers }: Read,
): Promise<boolean> {
  const number = entries.length;
  const at = entries.at(-1)?.at ?? store.clock().toISOString();
  if (!(await insertShow(step, id, show, { number, at }))) return false;
  for (const rows of portions(entries.map((entry) => rowOf(id, entry)))) {
    await step.insertInto("changes").values(rows).execute();
  }
  for (const rows of portions(papers.map((paper) => ({ ...paper, show: id })))) {
    await step.insertInto("papers").values(rows).execute();
  }
  return true;
}

/** The files of a zip, each unpacked when it is asked for and no further than it may be. */
class Archive {
  readonly #bytes: Uint8Array;
  readonly #sizes = new Map<string, number>();

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
    this.#unzip(({ name, originalSize }) => {
      this.#sizes.set(name, originalSize);
      return false;
    });
  }

  has(name: string): boolean {
    return this.#sizes.has(name);
  }

  /** A text as its document, with the names of pictures made the addresses under which they are kept. */
  read<Schema extends z.ZodMiniType>(
    name: string,
    schema: Schema,
    addresses: ReadonlyMap<string, string> = new Map(),
  ): z.infer<Schema> {
    if (!this.has(name)) throw new CannotKeep(STORAGE.missing(name));
    if ((this.#sizes.get(name) ?? 0) > MOST_TEXT_BYTES) throw new CannotKeep(STORAGE.tooLarge(name));
    const bytes = this.#unzip((file) => file.name === name)[name];
    const text = strFromU8(bytes ?? new Uint8Array());
    let json: unknown;
    try {
      json = JSON.parse(text, (_, value: unknown) =>
        typeof value === "string" ? (addresses.get(value) ?? value) : value,
      );
    } catch (error) {
      throw new CannotKeep(STORAGE.noJson(name), { cause: error });
    }
    const read = validate(schema, json);
    if (read.ok) return read.value;
    const problem: Problem = read.problems[0] ?? {
      field: "",
      found: foundText(json),
      wanted: { kind: "json" },
    };
    throw new CannotKeep(STORAGE.wrong(name, problem.field, problem.found, problem.wanted));
  }

  /** The pictures of a folder, one at a time. */
  *pictures(folder: string): Generator<readonly [string, Uint8Array]> {
    for (const [name, size] of this.#sizes) {
      if (!name.startsWith(folder) || name.endsWith("/")) continue;
      if (size > MOST_PICTURE_BYTES) throw new CannotKeep(STORAGE.tooLarge(name));
      const bytes = this.#unzip((file) => file.name === name)[name];
      if (bytes !== undefined) yield [name, bytes];
    }
  }

  #unzip(wanted: (file: UnzipFileInfo) => boolean): Record<string, Uint8Array> {
    try {
      return unzipSync(this.#bytes, { filter: wanted });
    } catch (error) {
      throw new CannotKeep(STORAGE.noZip, { cause: error });
    }
  }
}
