import { strToU8, Zip, ZipDeflate, ZipPassThrough } from "fflate";
import type { ShowDocument } from "../show/index.ts";
import { STORAGE } from "../words/storage.ts";
import { ARCHIVE, EXPORT_FORMAT, EXPORT_VERSION, folderOf, PICTURES } from "./archive-names.ts";
import { CannotKeep } from "./cannot-keep.ts";
import { entriesSince } from "./entries.ts";
import { pictureEnd } from "./pictures.ts";
import { readShow, type StoredShow } from "./shows.ts";
import type { Store } from "./store.ts";
import { readPractice } from "./studio.ts";

/** A zip of this kind counts its bytes in 32 bits. */
const MOST_BYTES = 4_000_000_000;

/** What is exported: one show, or all of them with the studio's practice. */
export type Exported = { readonly show: string } | "studio";

/** The bytes behind a picture's address that is not the store's own, such as the example's. */
export type Elsewhere = (address: string) => Uint8Array | undefined;

/**
 * A zip that holds everything of a show or a studio, part by part, so that it never lies in memory whole.
 * Rejects with CannotKeep where there is no such show, or more than one zip can hold.
 */
export async function* exported(
  store: Store,
  what: Exported,
  elsewhere: Elsewhere,
): AsyncGenerator<Uint8Array> {
  const { db } = store;
  const ids =
    what === "studio"
      ? (await db.selectFrom("shows").select("id").orderBy("begun").orderBy("id").execute()).map(
          ({ id }) => id,
        )
      : [what.show];
  const made = store.clock();
  const parts: Uint8Array[] = [];
  let written = 0;
  const zip = new Zip((error, part) => {
    if (error) throw error;
    written += part.length;
    if (written > MOST_BYTES) throw new CannotKeep(STORAGE.tooMuch);
    parts.push(part);
  });
  const add = (name: string, bytes: Uint8Array, plain = false): void => {
    const file = plain ? new ZipPassThrough(name) : new ZipDeflate(name, { level: 6 });
    // The zip's own dates are of local time, and the first that it can name is in 1980.
    file.mtime = made.getFullYear() < 1980 ? new Date(1980, 0, 1) : made;
    zip.add(file);
    file.push(bytes, true);
  };
  const json = (name: string, value: unknown): void => add(name, strToU8(JSON.stringify(value, null, 1)));

  const shows: { id: string; folder: string }[] = [];
  for (const [index, id] of ids.entries()) {
    const stored = await readShow(store, id);
    if (stored === null) {
      // Of a studio, a show that was taken off meanwhile is none of it.
      if (what === "studio") continue;
      throw new CannotKeep(STORAGE.noShow(id));
    }
    const folder = what === "studio" ? folderOf(index) : "";
    shows.push({ id, folder });
    const pictures = await texts(store, stored, folder, add, elsewhere);
    yield* parts.splice(0);
    for (const [address, name] of pictures) {
      const sum = name.slice(0, 64);
      const row = address.endsWith(sum)
        ? await db.selectFrom("pictures").select("bytes").where("sum", "=", sum).executeTakeFirst()
        : undefined;
      const bytes = row?.bytes ?? elsewhere(address);
      if (bytes === undefined) throw new Error(`picture ${address} is not there`);
      add(`${folder}${PICTURES}${name}`, new Uint8Array(bytes), true);
      yield* parts.splice(0);
    }
  }
  const studio = what === "studio" ? { practice: (await readPractice(store)).practice } : {};
  const head = { format: EXPORT_FORMAT, version: EXPORT_VERSION, made: made.toISOString(), ...studio, shows };
  json(ARCHIVE.head, head);
  zip.end();
  yield* parts.splice(0);
}

/** Writes a show's texts and gives the pictures that they name: each address with its name in the zip. */
async function texts(
  { db }: Store,
  { id, number, show }: StoredShow,
  folder: string,
  add: (name: string, bytes: Uint8Array) => void,
  elsewhere: Elsewhere,
): Promise<Map<string, string>> {
  const document: ShowDocument = { ...show, works: [...show.works] };
  const entries = (await entriesSince(db, id, 0)).filter((entry) => entry.number <= number);
  const papers = await db
    .selectFrom("papers")
    .select(["stamp", "paper", "number", "work", "rests", "at"])
    .where("show", "=", id)
    .orderBy("at")
    .orderBy("stamp")
    .execute();
  const written = [
    [ARCHIVE.show, JSON.stringify(document, null, 2)],
    [ARCHIVE.history, JSON.stringify(entries, null, 1)],
    [ARCHIVE.papers, JSON.stringify(papers, null, 1)],
  ] as const;
  const rows = await db.selectFrom("pictures").select(["sum", "type"]).execute();
  const types = new Map(rows.map(({ sum, type }) => [sum, type]));
  const named = new Map<string, string>();
  for (const [name, text] of written) {
    const inside = text.replace(/"(\/api\/[\w./-]+)"/g, (whole, address: string) => {
      const last = address.split("/").at(-1) ?? "";
      const type = types.get(last);
      if (type === undefined && elsewhere(address) === undefined) return whole;
      const file = type === undefined ? last : `${last}.${pictureEnd(type)}`;
      named.set(address, file);
      return `"${PICTURES}${file}"`;
    });
    add(`${folder}${name}`, strToU8(inside));
  }
  return named;
}
