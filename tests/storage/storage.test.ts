import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { apply, type Change, changeDocument, type KeptShow, validate } from "../../src/show/index.ts";
import {
  beginShow,
  entriesSince,
  type Entry,
  keepPicture,
  listPapers,
  listSheets,
  listShows,
  listWorks,
  makeChanges,
  notePaper,
  readPicture,
  readPractice,
  readShow,
  redo,
  removeShow,
  type Sent,
  type Store,
  undo,
  writePractice,
} from "../../src/storage/index.ts";
import { KINDS, open, type Place } from "./databases.ts";
import { plain, SHOW, type Wish, wishes, work } from "./shows.ts";

let stamps = 0;
const sent = (change: Change, window = "w"): Sent => ({
  stamp: `s${++stamps}`,
  window,
  act: "do",
  of: null,
  change: plain(change),
});
const title = (id: string, from: string, to: string): Change => ({
  kind: "facts",
  work: id,
  said: "title",
  before: { title: from },
  after: { title: to },
});
const undoing = (window: string) => ({ window, stamp: `s${++stamps}` });
const shown = async (store: Store, id: string): Promise<KeptShow> => {
  const found = await readShow(store, id);
  if (found === null) throw new Error(`no show ${id}`);
  return found.show;
};

describe.each(KINDS)("$name", ({ missing, runs, start, stop, place }) => {
  describe.skipIf(missing !== null)(missing ?? "a studio", () => {
    let at: Place;
    let store: Store;
    beforeAll(async () => {
      await start();
      at = await place();
      store = await open(at);
    });
    afterAll(async () => {
      await store?.close();
      await stop();
    });
    let shows = 0;
    const begin = async (show: KeptShow = SHOW): Promise<string> => {
      const id = `show${++shows}`;
      expect(await beginShow(store, id, show)).not.toBeNull();
      return id;
    };

    test("[ST1] a show comes back as it was written, and a second one of its id is refused", async () => {
      const id = await begin();
      store.known.clear();
      expect(await shown(store, id)).toEqual(SHOW);
      expect(await beginShow(store, id, { ...SHOW, name: "another" })).toBeNull();
      expect(await shown(store, id)).toEqual(SHOW);
      expect(await readShow(store, "none")).toBeNull();
      expect(await removeShow(store, id)).toBe(true);
      expect(await removeShow(store, id)).toBe(false);
      expect(await readShow(store, id)).toBeNull();
    });

    test("[ST3] a write against an old version of a row is refused with what has happened; other rows are in nobody's way", async () => {
      const id = await begin();
      const mine = title("a", "Work a", "Mine");
      expect(await makeChanges(store, id, 0, [sent(title("a", "Work a", "Theirs"))])).toMatchObject({
        kind: "kept",
        number: 1,
      });
      const refused = await makeChanges(store, id, 0, [sent(mine)]);
      expect(refused).toMatchObject({ kind: "behind", number: 1 });
      expect(refused.kind === "behind" && refused.entries.map(({ change }) => change)).toMatchObject([
        { after: { title: "Theirs" } },
      ]);
      const other = await makeChanges(store, id, 0, [sent(title("b", "Work b", "Other"))]);
      expect(other).toMatchObject({ kind: "kept", number: 2 });
      // It tells what the other hand did too, so that nobody has to ask again.
      expect(other.kind === "kept" && other.entries).toHaveLength(2);
      expect((await shown(store, id)).works.map((one) => one.title)).toEqual([
        "Theirs",
        "Other",
        "Work c",
        "Work d",
        "Work e",
      ]);
      const against = await makeChanges(store, id, 2, [sent(mine)]);
      expect(against).toMatchObject({ kind: "against", number: 2, theirs: "Theirs" });
      expect(await makeChanges(store, id, 99, [sent(title("c", "Work c", "x"))])).toMatchObject({
        kind: "behind",
        number: 2,
      });
      expect(await makeChanges(store, "none", 0, [sent(mine)])).toEqual({ kind: "none" });
    });

    test("[ST4] of changes that come together all are made or none", async () => {
      const id = await begin();
      const wrong = sent(title("b", "not its title", "x"));
      const outcome = await makeChanges(store, id, 0, [sent(title("a", "Work a", "A")), wrong]);
      expect(outcome).toMatchObject({ kind: "against", stamp: wrong.stamp, number: 0 });
      store.known.clear();
      expect(await shown(store, id)).toEqual(SHOW);
      expect(await entriesSince(store.db, id, 0)).toEqual([]);
    });

    test("[ST5] a change that is sent twice is made once", async () => {
      const id = await begin();
      const one = sent(title("a", "Work a", "A"));
      await makeChanges(store, id, 0, [one]);
      const again = await makeChanges(store, id, 1, [one, sent(title("a", "A", "B"))]);
      expect(again).toMatchObject({ kind: "kept", number: 2 });
      expect((await shown(store, id)).works[0]?.title).toBe("B");
      expect(await entriesSince(store.db, id, 0)).toHaveLength(2);
    });

    test("[ST5] of windows that write at once each change is made once, and none is lost", async () => {
      const id = await begin();
      const windows = SHOW.works.map(({ id: own }) => own);
      const outcomes = await Promise.all(
        windows.map((own) => makeChanges(store, id, 0, [sent(title(own, `Work ${own}`, "new"), own)])),
      );
      expect(outcomes.map(({ kind }) => kind)).toEqual(windows.map(() => "kept"));
      expect((await entriesSince(store.db, id, 0)).map(({ number }) => number)).toEqual([1, 2, 3, 4, 5]);
      store.known.clear();
      expect((await shown(store, id)).works.map((one) => one.title)).toEqual(windows.map(() => "new"));
    });

    test("[ST6] each window undoes its own, last first, also when everything was started anew", async () => {
      const id = await begin();
      await makeChanges(store, id, 0, [sent(title("a", "Work a", "A"), "left")]);
      await makeChanges(store, id, 1, [sent(title("b", "Work b", "B"), "right")]);
      await makeChanges(store, id, 2, [
        sent({ kind: "remove", work: work("c"), at: 2, said: "off" }, "left"),
      ]);
      await store.close();
      store = await open(at);
      const titles = async () => (await shown(store, id)).works.map((one) => one.title).join(", ");
      expect(await titles()).toBe("A, B, Work d, Work e");
      expect(await undo(store, id, undoing("left"))).toMatchObject({ kind: "kept", number: 4 });
      expect(await titles()).toBe("A, B, Work c, Work d, Work e");
      await undo(store, id, undoing("left"));
      expect(await titles()).toBe("Work a, B, Work c, Work d, Work e");
      expect(await undo(store, id, undoing("left"))).toEqual({ kind: "nothing" });
      await redo(store, id, undoing("left"));
      expect(await titles()).toBe("A, B, Work c, Work d, Work e");
      await undo(store, id, undoing("right"));
      await undo(store, id, undoing("left"));
      store.known.clear();
      expect(await shown(store, id)).toEqual(SHOW);
      // A new change forgets what was undone.
      const { number } = (await readShow(store, id)) ?? { number: 0 };
      await makeChanges(store, id, number, [sent(title("d", "Work d", "D"), "left")]);
      expect(await redo(store, id, undoing("left"))).toEqual({ kind: "nothing" });
      expect(await undo(store, "none", undoing("left"))).toEqual({ kind: "none" });
    });

    test("[ST6] what another hand has changed since is not undone over its head", async () => {
      const id = await begin();
      await makeChanges(store, id, 0, [sent(title("a", "Work a", "A"), "left")]);
      await makeChanges(store, id, 1, [sent(title("a", "A", "AA"), "right")]);
      expect(await undo(store, id, undoing("left"))).toMatchObject({ kind: "against", theirs: "AA" });
      expect((await shown(store, id)).works[0]?.title).toBe("AA");
    });

    test("[ST3, ST6] whatever windows do: no update is lost, the history tells all, and undone is as it was", async () => {
      type Step = readonly [window: number, wish: Wish, act: "do" | "undo" | "redo" | "look"];
      const act = fc.constantFrom("do" as const, "do" as const, "do" as const, "undo", "redo", "look");
      const steps: fc.Arbitrary<Step[]> = fc.array(fc.tuple(fc.nat({ max: 2 }), wishes, act), {
        minLength: 1,
        maxLength: 25,
      });
      await fc.assert(
        fc.asyncProperty(steps, async (story) => {
          const id = await begin();
          // Each window's own view: the show as it stood at its base.
          const views = [0, 1, 2].map(() => ({ base: 0, show: SHOW }));
          let model: KeptShow = SHOW;
          const told: Sent[] = [];
          const follow = (view: { base: number; show: KeptShow }, entries: readonly Entry[]) => {
            for (const entry of entries) {
              expect(entry.number).toBe(view.base + 1);
              const applied = apply(view.show, entry.change);
              if (!applied.ok) throw new Error("the history does not apply");
              view.show = applied.show;
              view.base = entry.number;
            }
          };
          for (const [window, wish, what] of story) {
            const view = views[window] ?? { base: 0, show: SHOW };
            const name = `w${window}`;
            if (what === "look") {
              follow(view, await entriesSince(store.db, id, view.base));
            } else if (what === "do") {
              const wanted = wish(view.show, `n${++stamps}`);
              if (wanted === null) continue;
              expect(validate(changeDocument, plain(wanted)).ok).toBe(true);
              const one = sent(wanted, name);
              const outcome = await makeChanges(store, id, view.base, [one]);
              if (outcome.kind === "none") throw new Error("no show");
              if (outcome.kind === "kept") told.push(one);
              follow(view, outcome.entries);
            } else {
              const outcome = await (what === "undo" ? undo : redo)(store, id, undoing(name));
              if (outcome.kind === "kept") told.push(...outcome.entries.slice(-1));
            }
          }
          const entries = await entriesSince(store.db, id, 0);
          expect(entries.map(({ stamp }) => stamp)).toEqual(told.map(({ stamp }) => stamp));
          const states: KeptShow[] = [model];
          for (const { change } of entries) {
            const applied = apply(model, change);
            if (!applied.ok) throw new Error("the history does not apply");
            model = applied.show;
            states.push(model);
          }
          store.known.clear();
          expect(await shown(store, id)).toEqual(plain(model));
          const rows = await listWorks(store, { show: id, most: 100 });
          expect(rows.map((row) => row.id)).toEqual(model.works.map((one) => one.id));
          expect(rows.map((row) => row.place)).toEqual(model.works.map((_, index) => index));
          // Backwards through all inverses, every state comes back.
          for (const [index, entry] of [...entries.entries()].toReversed()) {
            const back = apply(states[index + 1] ?? model, entry.inverse);
            expect(back.ok && plain(back.show)).toEqual(plain(states[index]));
          }
        }),
        { numRuns: runs },
      );
    });

    test("[ST8] lists and searches find what stands in the documents", async () => {
      const id = await begin({
        ...SHOW,
        name: "Ébb",
        works: [
          { ...work("x", "Café à l’aube, 100%"), process: "Cyanotype" },
          {
            ...work("y", "Weir"),
            design: { print: { width: "8", height: "10" }, outer: { width: "3", height: "4" } },
          },
          { ...work("z", "Odd"), design: { hold: "7 1/" } },
        ],
      });
      const found = async (search: string) =>
        (await listWorks(store, { show: id, search, most: 9 })).map((row) => row.id).join("");
      expect(await found("CAFE")).toBe("x");
      expect(await found("cyano")).toBe("x");
      expect(await found("100%")).toBe("x");
      expect(await found("0_%")).toBe("");
      expect(await found("ines")).toBe("xyz");
      expect(await found("")).toBe("xyz");
      const levels = await listWorks(store, { show: id, most: 9 });
      expect(levels.map(({ level }) => level)).toEqual([null, "stop", "unread"]);
      expect((await listWorks(store, { show: id, level: "stop", most: 9 })).map((row) => row.id)).toEqual([
        "y",
      ]);
      expect(await listWorks(store, { most: 2 })).toHaveLength(2);
      const listed = (await listShows(store)).find((row) => row.id === id);
      expect(listed).toMatchObject({ name: "Ébb", works: 3, number: 0, date: "2026-12-14" });
      const sheets = await listSheets(store, { show: id, search: "OFFCUT", most: 9 });
      expect(sheets).toMatchObject([{ name: "offcut 14", width: "13 1/2 in", copies: 1 }]);
      expect(await listSheets(store, { show: id, most: 9 })).toHaveLength(2);
    });

    test("[ST9] a picture is kept once, as it came, and small beside it; what is none is refused", async () => {
      const { default: sharp } = await import("sharp");
      const picture = new Uint8Array(
        await sharp({ create: { width: 2400, height: 1200, channels: 3, background: "#456" } })
          .png()
          .toBuffer(),
      );
      const kept = await keepPicture(store, picture);
      expect(kept).toMatchObject({ type: "image/png", width: 1600, height: 800 });
      expect(await keepPicture(store, picture)).toEqual(kept);
      const original = await readPicture(store, kept?.sum ?? "", "original");
      expect(original).toEqual({ bytes: picture, type: "image/png" });
      const small = await readPicture(store, kept?.sum ?? "", "preview");
      expect(small?.type).toBe("image/jpeg");
      expect(await sharp(small?.bytes).metadata()).toMatchObject({ width: 1600, height: 800 });
      expect(await keepPicture(store, picture.subarray(0, 60))).toBeNull();
      expect(await keepPicture(store, new TextEncoder().encode("<svg></svg>"))).toBeNull();
      expect(await readPicture(store, "0".repeat(64), "preview")).toBeNull();
    });

    test("[ST10] a paper says whether all that it was made from still stands", async () => {
      const id = await begin();
      const one = { stamp: "p1", paper: "bench-sheet", work: "a" };
      expect(await notePaper(store, id, one, SHOW)).toBe(true);
      expect(await notePaper(store, id, { stamp: "p2", paper: "packet", work: null }, SHOW)).toBe(true);
      expect(await notePaper(store, "none", one, SHOW)).toBe(false);
      const stand = async () =>
        Object.fromEntries((await listPapers(store, id)).map(({ paper, stands }) => [paper, stands]));
      expect(await stand()).toEqual({ "bench-sheet": true, packet: true });
      await makeChanges(store, id, 0, [sent(title("b", "Work b", "B"))]);
      expect(await stand()).toEqual({ "bench-sheet": true, packet: false });
      await makeChanges(store, id, 1, [sent(title("a", "Work a", "A"))]);
      expect(await stand()).toEqual({ "bench-sheet": false, packet: false });
      await undo(store, id, undoing("w"));
      expect(await stand()).toEqual({ "bench-sheet": true, packet: false });
    });

    test("[ST11] the studio's practice is written upon the version it was read at", async () => {
      expect(await readPractice(store)).toEqual({ practice: {}, version: 0 });
      expect(await writePractice(store, { unit: "mm" }, 0)).toMatchObject({
        kept: true,
        now: { version: 1 },
      });
      const late = await writePractice(store, { unit: "in" }, 0);
      expect(late).toEqual({ kept: false, now: { practice: { unit: "mm" }, version: 1 } });
      expect((await writePractice(store, { overlap: "1/4 in" }, 1)).kept).toBe(true);
      expect(await readPractice(store)).toEqual({ practice: { overlap: "1/4 in" }, version: 2 });
    });
  });
});
