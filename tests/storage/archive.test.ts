import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { KeptShow } from "../../src/show/index.ts";
import {
  backup,
  beginShow,
  entriesSince,
  exported,
  importArchive,
  keepPicture,
  listPapers,
  listShows,
  makeChanges,
  notePaper,
  readPicture,
  readPractice,
  readShow,
  restore,
  type Store,
  undo,
  writePractice,
} from "../../src/storage/index.ts";
import { clock, KINDS, open, type Place } from "./databases.ts";
import { SHOW } from "./shows.ts";

let ids = 0;
const newId = (): string => `new${++ids}`;
const elsewhere = (address: string): Uint8Array | undefined =>
  address === "/api/example/pictures/bell.png" ? bell : undefined;
let bell = new Uint8Array();
let weir = new Uint8Array();

const png = async (background: string): Promise<Uint8Array<ArrayBuffer>> =>
  new Uint8Array(
    await sharp({ create: { width: 40, height: 30, channels: 3, background } })
      .png()
      .toBuffer(),
  );

async function whole(parts: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const taken: Uint8Array[] = [];
  for await (const part of parts) taken.push(part);
  return new Uint8Array(Buffer.concat(taken));
}

/** A studio with a show that has pictures, history and a printed paper, and a plain second one. */
async function furnish(store: Store): Promise<KeptShow> {
  const kept = await keepPicture(store, weir);
  const show: KeptShow = {
    ...SHOW,
    works: SHOW.works.map((work, index) => ({
      ...work,
      ...(index === 0 ? { picture: "/api/example/pictures/bell.png" } : {}),
      ...(index === 1 ? { picture: `/api/pictures/${kept?.sum}` } : {}),
    })),
  };
  await beginShow(store, "slack", show);
  await beginShow(store, "second", { ...SHOW, name: "Second", works: [] });
  await makeChanges(store, "slack", 0, [
    {
      stamp: "one",
      window: "w",
      act: "do",
      of: null,
      change: {
        kind: "facts",
        work: "b",
        said: "off",
        before: { picture: `/api/pictures/${kept?.sum}`, title: "Work b" },
        after: { title: "Weir" },
      },
    },
  ]);
  await notePaper(store, "slack", { stamp: "p", paper: "packet", work: null }, show);
  await writePractice(store, { unit: "mm" }, 0);
  return show;
}

/** All that an export must bring along, its pictures' bytes too. */
async function all(store: Store): Promise<unknown> {
  const shows = (await listShows(store)).toSorted((a, b) => (a.name < b.name ? -1 : 1));
  return {
    practice: (await readPractice(store)).practice,
    shows: await Promise.all(
      shows.map(async ({ id }) => ({
        show: (await readShow(store, id))?.show,
        entries: await entriesSince(store.db, id, 0),
        papers: await listPapers(store, id),
      })),
    ),
  };
}

describe.each(KINDS)("$name", ({ missing, start, stop, place }) => {
  describe.skipIf(missing !== null)(missing ?? "carried out and in", () => {
    let at: Place;
    let store: Store;
    let show: KeptShow;
    beforeAll(async () => {
      await start();
      [bell, weir] = await Promise.all([png("#a42"), png("#24a")]);
      at = await place();
      store = await open(at);
      show = await furnish(store);
    });
    afterAll(async () => {
      await store?.close();
      await stop();
    });

    test("[ST13] an export of the studio, taken in elsewhere, holds everything: works, history, papers, pictures, habits", async () => {
      const zip = await whole(exported(store, "studio", elsewhere));
      const other = await open(await place());
      const imported = await importArchive(other, zip, { newId });
      expect(imported.shows).toMatchObject([
        { id: "slack", name: "Slack Water", works: 5 },
        { id: "second", works: 0 },
      ]);
      expect(imported.pictures).toBe(2);
      const bellNow = (await readShow(other, "slack"))?.show.works[0]?.picture ?? "";
      expect((await readPicture(other, bellNow.slice(-64), "original"))?.bytes).toEqual(bell);
      // The example's picture is one of the studio's own now; everything else is the very same.
      const text = JSON.stringify(await all(other)).replaceAll(bellNow, "/api/example/pictures/bell.png");
      const before = (await all(store)) as { shows: { papers: { stands: boolean }[] }[] };
      const now = JSON.parse(text) as typeof before;
      for (const { papers } of [...before.shows, ...now.shows]) {
        for (const paper of papers) paper.stands = false;
      }
      expect(now).toEqual(before);
      // What was undone elsewhere comes back with its picture.
      await undo(other, "slack", { window: "w", stamp: "back" });
      expect((await readShow(other, "slack"))?.show.works[1]).toEqual(show.works[1]);
      expect((await readPicture(other, show.works[1]?.picture?.slice(-64) ?? "", "original"))?.bytes).toEqual(
        weir,
      );
      await other.close();
    });

    test("[ST13] a show's own export is a folder that any Margent reads: show.json and its pictures beside it", async () => {
      const zip = unzipSync(await whole(exported(store, { show: "slack" }, elsewhere)));
      const names = Object.keys(zip).toSorted();
      expect(names.filter((name) => name.endsWith(".json"))).toEqual([
        "export.json",
        "history.json",
        "papers.json",
        "show.json",
      ]);
      const document = JSON.parse(strFromU8(zip["show.json"] ?? new Uint8Array())) as KeptShow;
      expect(zip[document.works[0]?.picture ?? ""]).toEqual(bell);
      // It goes in a second time beside the first, under an id of its own.
      const again = await importArchive(store, zipSync(zip), { newId });
      expect(again.shows[0]?.id).toMatch(/^new/);
      await expect(whole(exported(store, { show: "none" }, elsewhere))).rejects.toThrow("no show none");
    });

    test("[ST13] a plain folder with a show.json comes in too, its pictures under their sums", async () => {
      const document = { ...SHOW, works: [{ ...SHOW.works[0], picture: "pictures/weir é.png" }] };
      const files = { "show.json": strToU8(JSON.stringify(document)), "pictures/weir é.png": weir };
      const { shows } = await importArchive(store, zipSync(files), { newId });
      const picture = (await readShow(store, shows[0]?.id ?? ""))?.show.works[0]?.picture ?? "";
      expect((await readPicture(store, picture.slice(-64), "original"))?.bytes).toEqual(weir);
    });

    test.each([
      ["no zip", strToU8("nothing"), "no zip"],
      ["an empty zip", zipSync({}), "show.json: is not there"],
      ["no JSON", zipSync({ "show.json": strToU8("{") }), "show.json: is no JSON"],
      ["a wrong field", zipSync({ "show.json": strToU8('{"format":"margent-show"}') }), "show.json, "],
      [
        "a picture that is none",
        zipSync({ "show.json": strToU8(JSON.stringify(SHOW)), "pictures/a.png": strToU8("<svg/>") }),
        "pictures/a.png: is no picture",
      ],
      [
        "a history with a gap",
        zipSync({
          "show.json": strToU8(JSON.stringify(SHOW)),
          "history.json": strToU8(
            JSON.stringify([
              {
                number: 2,
                stamp: "s",
                window: "w",
                at: "",
                act: "do",
                of: null,
                change: { kind: "move", said: "", work: "a", from: 0, to: 1 },
                inverse: { kind: "move", said: "", work: "a", from: 1, to: 0 },
              },
            ]),
          ),
        }),
        "change 1 is not where it belongs",
      ],
      [
        "a later export",
        zipSync({ "export.json": strToU8('{"format":"margent-export","version":9,"shows":[]}') }),
        "version 9",
      ],
    ])("[ST13] %s is refused in a sentence, and nothing of it is taken in", async (_, zip, says) => {
      const before = await all(store);
      await expect(importArchive(store, zip, { newId })).rejects.toThrow(says);
      expect(await all(store)).toEqual(before);
    });

    test("[ST12] a backup taken while changes are written is whole, and restored it is what stood then", async () => {
      const busy = await place();
      const writing = await open(busy);
      await furnish(writing);
      let number = 1;
      const end = new AbortController();
      const writer = (async () => {
        for (; !end.signal.aborted; number++) {
          const before = number === 1 ? {} : { notes: String(number - 1) };
          const outcome = await makeChanges(writing, "slack", number, [
            {
              stamp: `n${number}`,
              window: "w",
              act: "do",
              of: null,
              change: { kind: "facts", work: "a", said: "n", before, after: { notes: String(number) } },
            },
          ]);
          if (outcome.kind !== "kept") throw new Error(outcome.kind);
          // As between two requests.
          await new Promise((done) => setImmediate(done));
        }
      })();
      const file = join(busy.home, "backup");
      await backup(writing, elsewhere, file);
      end.abort();
      await writer;
      await writing.close();

      const target = await place();
      const options = { ...target, clock, report: (fault: Error) => expect(fault).toBeUndefined() };
      const empty = await restore(options, file, elsewhere, newId);
      expect(empty.shows).toBe(2);
      const restored = await open(target);
      const entries = await entriesSince(restored.db, "slack", 0);
      const stored = await readShow(restored, "slack");
      // As many changes as it says, each whole: the last one is what stands there.
      expect(stored?.number).toBe(entries.length);
      expect(stored?.show.works[0]?.notes).toBe(entries.length > 1 ? String(entries.length - 1) : undefined);
      await beginShow(restored, "third", SHOW);
      await restored.close();

      // Restored over a studio, what stood there lies beside it.
      const over = await restore(options, file, elsewhere, newId);
      expect(over.shows).toBe(2);
      expect(over.before !== null && existsSync(over.before)).toBe(true);
      const back = await restore(options, over.before ?? "", elsewhere, newId);
      expect(back.shows).toBe(3);
      expect(readdirSync(busy.home).filter((name) => name.includes(".part"))).toEqual([]);
    });
  });
});

describe("a restore", () => {
  test("[ST12] is refused where the backup is broken, is none, or a server is running", async () => {
    const [sqlite] = KINDS;
    const at = await sqlite?.place();
    if (at === undefined) throw new Error("no kind");
    const store = await open(at);
    await furnish(store);
    const file = join(at.home, "backup.db");
    await backup(store, elsewhere, file);
    const standing = await all(store);
    await store.close();
    const options = { ...at, clock, report: (fault: Error) => expect(fault).toBeUndefined() };
    const bytes = readFileSync(file);
    const broken = join(at.home, "broken.db");
    writeFileSync(broken, Buffer.concat([bytes.subarray(0, 8192), bytes.subarray(12_288)]));
    await expect(restore(options, broken, elsewhere, newId)).rejects.toThrow(/damaged|no file of a Margent/);
    await expect(restore(options, join(at.home, "none"), elsewhere, newId)).rejects.toThrow("is not there");
    // A process that lives: the one that started this one.
    writeFileSync(join(at.home, `serving-${process.ppid}`), "");
    await expect(restore(options, file, elsewhere, newId)).rejects.toThrow("stop it first");
    const after = await open(at);
    expect(await all(after)).toEqual(standing);
    await after.close();
    await sqlite?.stop();
  });
});
