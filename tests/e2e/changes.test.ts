import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  apply,
  type Change,
  designChange,
  factsChange,
  inverse,
  type KeptShow,
  practiceChange,
  showChange,
  upon,
} from "../../src/web/state/change.ts";
import { firstDifference } from "../../src/web/state/difference.ts";
import { asKept, withIds } from "../../src/web/state/kept-show.ts";
import {
  parseHeld,
  relation,
  type Held,
  type Next,
  type Store,
  writeHeld,
  writeNew,
} from "../../src/web/state/keeping.ts";
import { writeOver } from "../../src/web/state/keeping-later.ts";
import { DOCUMENTS } from "./documents.ts";

const SHOW: KeptShow = withIds({
  format: "margent-show",
  version: 1,
  name: "Slack Water",
  works: DOCUMENTS.map((design, index) => ({ title: `Work ${index + 1}`, design })),
});

const store = (): Store & { readonly texts: Map<string, string> } => {
  const texts = new Map<string, string>();
  return {
    texts,
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, text) => void texts.set(key, text),
    removeItem: (key) => void texts.delete(key),
    key: (index) => [...texts.keys()][index] ?? null,
    get length() {
      return texts.size;
    },
  };
};

describe("a change", () => {
  const ofShow = [
    showChange(SHOW, { name: "Neap", room: "The long room", stock: { sheets: [] } }, "renamed"),
    showChange({ ...SHOW, date: "2026-12-14" }, { date: "2026-12-15" }, "a day later"),
    practiceChange({}, { overlap: "3/16 in", lift: { rule: "none" } }, "covered 3/16 in"),
  ].filter((change) => change !== null);
  const ofWorks: readonly Change[] = SHOW.works.flatMap((work, at): Change[] => [
    ...[
      designChange(
        work.id,
        work.design,
        { ...work.design, hold: "1/4 in", lift: { rule: "none" } },
        "changed",
      ),
    ].filter((change) => change !== null),
    ...[factsChange(work, { maker: "Ines Okonedo-Vale", title: "Weir" }, "named")].filter(
      (change) => change !== null,
    ),
    { kind: "remove", work, at, said: "took off" },
    { kind: "move", work: work.id, from: at, to: (at + 2) % SHOW.works.length, said: "moved" },
    { kind: "add", work: { ...work, id: `new-${at}` }, at, said: "added" },
  ]);

  test.each([...ofShow, ...ofWorks].map((change) => [change.kind, change] as const))(
    "[PG36] %s: made and taken back gives the very same show",
    (_, change) => {
      const show: KeptShow = { ...SHOW, date: "2026-12-14", practice: {} };
      const made = apply(show, change);
      if (!made.ok) throw new Error("the change was not made");
      expect(made.show).not.toEqual(show);
      const back = apply(made.show, inverse(change));
      if (!back.ok) throw new Error("the change was not taken back");
      expect(JSON.parse(JSON.stringify(back.show))).toEqual(JSON.parse(JSON.stringify(show)));
    },
  );

  test("[PG36] what a show says of itself is not written over, and two habits do not stand in each other's way", () => {
    const mine = showChange(SHOW, { name: "mine" }, "mine");
    const theirs = showChange(SHOW, { name: "theirs" }, "theirs");
    const [hold, play, other] = [{ hold: "1/4 in" }, { play: "1/8 in" }, { hold: "1/2 in" }].map((habit) =>
      practiceChange({}, habit, "a habit"),
    );
    if (!mine || !theirs || !hold || !play || !other) throw new Error("nothing differs");
    const renamed = apply(SHOW, theirs);
    if (!renamed.ok) throw new Error("not made");
    expect(apply(renamed.show, mine)).toEqual({ ok: false, theirs: "theirs" });
    expect(apply(renamed.show, upon(renamed.show, mine))).toMatchObject({ ok: true, show: { name: "mine" } });
    const held = apply(renamed.show, hold);
    if (!held.ok) throw new Error("not made");
    expect(apply(held.show, play)).toMatchObject({
      ok: true,
      show: { name: "theirs", practice: { hold: "1/4 in", play: "1/8 in" } },
    });
    expect(apply(held.show, other)).toEqual({ ok: false, theirs: "1/4 in" });
    expect(showChange(SHOW, { name: SHOW.name }, "the same")).toBeNull();
  });

  test("[PG36] it is not made upon a value that somebody else has changed, and anything else of theirs stays", () => {
    const [work] = SHOW.works;
    if (work === undefined) throw new Error("no work");
    const mine = designChange(work.id, work.design, { ...work.design, hold: "1/4 in" }, "mine");
    const same = designChange(work.id, work.design, { ...work.design, hold: "1/2 in" }, "theirs");
    const other = designChange(work.id, work.design, { ...work.design, play: "1/8 in" }, "theirs");
    if (mine === null || same === null || other === null) throw new Error("nothing differs");
    const taken = apply(SHOW, same);
    const apart = apply(SHOW, other);
    if (!taken.ok || !apart.ok) throw new Error("not made");
    expect(apply(taken.show, mine)).toEqual({ ok: false, theirs: "1/2 in" });
    const both = apply(apart.show, mine);
    expect(both.ok && both.show.works[0]?.design).toMatchObject({ hold: "1/4 in", play: "1/8 in" });
    const anyway = apply(taken.show, upon(taken.show, mine));
    expect(anyway.ok && anyway.show.works[0]?.design.hold).toBe("1/4 in");
  });

  test("[PG16] the first place at which two states differ is told, each side as one reads it", () => {
    expect(
      firstDifference(
        { outer: { width: "11 in", height: "14 in" } },
        { outer: { width: "12 in", height: "14 in" } },
      ),
    ).toEqual({
      mine: "11 in",
      theirs: "12 in",
    });
    expect(firstDifference({ a: [1, { b: 2 }] }, { a: [1, { b: 2 }] })).toBeNull();
    expect(firstDifference({}, { lift: { rule: "none" } })).toEqual({ mine: "nothing", theirs: "none" });
  });
});

describe("what is kept", () => {
  const next: Next = { show: SHOW, base: 0, pending: [], against: [] };
  const first: Held = { ...next, id: "a", stamp: "1", line: [], at: "2026-11-25T09:00:00Z", whole: true };

  test("[PG17] a write from a state that has been overtaken is refused with the newer one, and written over only when asked", () => {
    const browser = store();
    expect(writeNew(browser, first).kind).toBe("written");
    const second = writeHeld(browser, first, { ...next, show: { ...SHOW, name: "theirs" } }, "2", first.at);
    if (second.kind !== "written") throw new Error("not written");
    const late = writeHeld(browser, first, { ...next, show: { ...SHOW, name: "mine" } }, "3", first.at);
    expect(late).toMatchObject({ kind: "newer", theirs: { stamp: "2" } });
    expect(relation(first, second.held)).toBe("later");
    expect(relation(second.held, first)).toBe("earlier");
    const over = writeOver(
      browser,
      first,
      second.held,
      { ...next, show: { ...SHOW, name: "mine" } },
      "4",
      first.at,
    );
    if (over.kind !== "written") throw new Error("not written");
    expect(relation(second.held, over.held)).toBe("later");
    expect(relation({ ...first, stamp: "x" }, over.held)).toBe("apart");
  });

  test("[PG19] whatever lies there is either read or said to be unread; nothing throws", () => {
    fc.assert(
      fc.property(fc.oneof(fc.json(), fc.string(), fc.constant(null)), (text) => {
        expect(["none", "held", "unread"]).toContain(parseHeld("a", text).kind);
      }),
    );
    fc.assert(
      fc.property(fc.anything(), (value) => {
        const kept = asKept(value);
        if (kept !== null) expect(kept.works.every(({ id }) => id !== "")).toBe(true);
      }),
    );
  });

  test("[PG14] a show comes back as it was kept, every work with an id of its own", () => {
    const browser = store();
    writeNew(browser, first);
    const found = parseHeld("a", browser.getItem("margent.show.a"));
    expect(found.kind === "held" && found.held).toEqual(JSON.parse(JSON.stringify(first)));
    const twice = withIds({ ...SHOW, works: [...SHOW.works, ...SHOW.works] });
    expect(new Set(twice.works.map(({ id }) => id)).size).toBe(2 * SHOW.works.length);
  });
});
