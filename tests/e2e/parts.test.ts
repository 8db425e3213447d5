import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compose, type Design } from "../../src/assembly/index.ts";
import { inch, type Length, mm, type Ruler } from "../../src/lengths/index.ts";
import { type ComposeDocument, readDesign } from "../../src/show/index.ts";
import { rungsOf, snapped, stepped, strideLength } from "../../src/web/blanks/step.ts";
import {
  apply,
  type Change,
  designChange,
  factsChange,
  inverse,
  type KeptShow,
} from "../../src/web/state/change.ts";
import { firstDifference } from "../../src/web/state/difference.ts";
import { asKept, withIds } from "../../src/web/state/kept-show.ts";
import {
  parseHeld,
  relation,
  type Held,
  type Store,
  writeHeld,
  writeNew,
  writeOver,
} from "../../src/web/state/keeping.ts";
import { documentOf } from "../../src/web/work/document-of.ts";
import { fieldOf } from "../../src/web/work/fields.ts";
import { waysOf } from "../../src/web/work/ways.ts";
import {
  type BlankName,
  blankWords,
  boardDialog,
  briefSentence,
  FIRST_SENTENCE,
  factsSentence,
  keepingSentence,
  OUTER_DIALOG,
  tokensOf,
} from "../../src/words/page.ts";

const DOCUMENTS: readonly ComposeDocument[] = [
  {
    unit: "in",
    print: {
      width: "9 1/2",
      height: "12",
      image: { left: "1 1/8", top: "3/4", width: "7 1/4", height: "10 1/4" },
    },
  },
  { unit: "in", print: { width: 8.5, height: 11 }, window: { show: "sheet" }, holding: "hinges" },
  {
    unit: "mm",
    graduation: "0.5 mm",
    print: {
      width: "300",
      height: "400",
      image: { left: 30, top: 40, width: 240, height: 300 },
      angle: 0.7,
      sure: "0.5 mm",
    },
    window: { show: "margins", top: "6", side: "6", foot: "12 mm" },
    outer: { borders: { head: 60, side: 60, foot: 75 }, standard: "metric" },
    mats: [
      { thickness: "1.4 mm", bevel: 45 },
      { thickness: "1.4 mm", bevel: 60, reveal: "5 mm", board: "2-ply buff" },
    ],
  },
  {
    unit: "in",
    print: {
      width: "8",
      height: "10",
      outline: [
        ["1", "1"],
        ["7", "1 1/16"],
        ["6 15/16", "9"],
        ["1 1/16", "8 15/16"],
      ],
      sheetOutline: [
        ["0", "0"],
        ["8", "1/16"],
        ["7 15/16", "10"],
        ["0", "9 7/8"],
      ],
    },
    outer: { smallest: "iso", border: "1 1/2" },
    lift: { rule: "ratio", foot: 1.25 },
    mats: [{}, { reveal: "1/4" }, { reveal: "3/16" }],
  },
  {
    unit: "in",
    window: { show: "typed", width: "7", height: "10" },
    outer: { width: 11, height: 14 },
    lift: { rule: "optical" },
  },
];

const designOf = (document: ComposeDocument) => {
  const read = readDesign(document);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return meaning(read.value);
};

/** A design without what means nothing: no mat lies below the lowest, so its strip is never seen. */
const meaning = (design: Design): Design => ({
  ...design,
  mats: design.mats.map((mat, index) => (index === 0 ? { ...mat, reveal: 0 as Length } : mat)),
});

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

const named = (sentence: string): BlankName[] =>
  tokensOf(sentence).flatMap((token) =>
    token.flatMap((piece) => (piece.kind === "blank" ? [piece.blank] : [])),
  );

describe("a change", () => {
  const changes: readonly Change[] = SHOW.works.flatMap((work, at): Change[] => [
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

  test.each(changes.map((change) => [change.kind, change] as const))(
    "[PG36] %s: made and taken back gives the very same show",
    (_, change) => {
      const made = apply(SHOW, change);
      if (!made.ok) throw new Error("the change was not made");
      expect(made.show).not.toEqual(SHOW);
      const back = apply(made.show, inverse(change));
      if (!back.ok) throw new Error("the change was not taken back");
      expect(JSON.parse(JSON.stringify(back.show))).toEqual(JSON.parse(JSON.stringify(SHOW)));
    },
  );

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
    const anyway = apply(taken.show, mine, true);
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
  const first: Held = { id: "a", stamp: "1", line: [], at: "2026-11-25T09:00:00Z", show: SHOW };

  test("[PG17] a write from a state that has been overtaken is refused with the newer one, and written over only when asked", () => {
    const browser = store();
    expect(writeNew(browser, first).kind).toBe("written");
    const second = writeHeld(browser, first, { ...SHOW, name: "theirs" }, "2", first.at);
    if (second.kind !== "written") throw new Error("not written");
    const late = writeHeld(browser, first, { ...SHOW, name: "mine" }, "3", first.at);
    expect(late).toMatchObject({ kind: "newer", theirs: { stamp: "2" } });
    expect(relation(first, second.held)).toBe("later");
    expect(relation(second.held, first)).toBe("earlier");
    const over = writeOver(browser, first, second.held, { ...SHOW, name: "mine" }, "4", first.at);
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

describe("a blank", () => {
  const ruler: Ruler = { unit: "in", graduation: inch(1, 16) };

  test("[PG3] a step goes to the next mark and back again, and never below nought", () => {
    expect(stepped(inch(1, 4), 1, "mark", ruler)).toBe(inch(5, 16));
    expect(stepped(inch(9, 32), 1, "mark", ruler)).toBe(inch(5, 16));
    expect(stepped(inch(9, 32), -1, "mark", ruler)).toBe(inch(1, 4));
    expect(stepped(inch(1, 32), -1, "whole", ruler)).toBe(0);
    expect(stepped(mm(3), 1, "finest", { unit: "mm", graduation: mm(1) })).toBe(mm(3.1));
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 3_000 }),
        fc.constantFrom("mark", "whole", "finest" as const),
        (marks, stride) => {
          const length = (marks * strideLength(stride, ruler)) as Length;
          expect(stepped(stepped(length, 1, stride, ruler), -1, stride, ruler)).toBe(length);
        },
      ),
    );
  });

  test("[PG4] five rungs, a mark apart, the length among them where it lies on the ruler", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000_000 }), (ticks) => {
        const rungs = rungsOf(ticks as Length, ruler);
        expect(rungs).toHaveLength(5);
        expect(
          rungs.every((rung, index) => rung >= 0 && rung === (rungs[0] ?? 0) + index * ruler.graduation),
        ).toBe(true);
        if (ticks % ruler.graduation === 0) expect(rungs).toContain(ticks);
      }),
    );
  });

  test("[PG8] a dragged place falls on a mark, or on the finest step", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e9, noNaN: true }), fc.boolean(), (place, free) => {
        const step = strideLength(free ? "finest" : "mark", ruler);
        expect(snapped(place, ruler, free) % step).toBe(0);
        expect(Math.abs(snapped(place, ruler, free) - place)).toBeLessThanOrEqual(step / 2 + 1);
      }),
    );
  });

  test("[PG37] a design written out reads back as the same design, in its own unit and in the other", () => {
    for (const document of DOCUMENTS) {
      const design = designOf(document);
      expect(designOf(documentOf(design, design.ruler.unit))).toEqual(design);
      // In the other unit the practice's own figures are that unit's; all that the work says stays.
      const other = designOf(documentOf(design, design.ruler.unit === "in" ? "mm" : "in"));
      const { leastBorder, leastPocket, editionSpread, scaleOffset } = other;
      const habits = { ruler: other.ruler, leastBorder, leastPocket, editionSpread, scaleOffset };
      expect(other).toEqual({ ...design, ...habits });
    }
  });

  test("[PG38] every blank of every sentence has a label, and a field that writes what it reads", () => {
    expect(named(FIRST_SENTENCE).map((blank) => blankWords(blank, 1, "en-US").label)).not.toContain("");
    for (const document of DOCUMENTS) {
      const design = designOf(document);
      const sentences = [
        factsSentence(design),
        briefSentence(compose(design), "en-US"),
        keepingSentence(design, "en-GB") ?? "",
        ...design.mats.map((_, mat) => boardDialog(mat).sentence),
        ...(design.outer.kind === "size" ? [OUTER_DIALOG.size] : []),
      ];
      const blanks = sentences.flatMap(named);
      expect(new Set(blanks).size).toBe(blanks.length);
      for (const blank of blanks) {
        expect(blankWords(blank, design.mats.length, "en-US").label, blank).toMatch(/^[A-Z]/);
        const field = fieldOf(blank);
        if (field.kind === "length") {
          // Written back as it is, nothing about the design changes.
          expect(designOf(field.write(document, design, field.read(design))), blank).toEqual(design);
        } else if (field.kind === "choice") {
          const keys = field.options(design, "en-US").map(({ key }) => key);
          expect(keys, blank).toContain(field.read(design));
          for (const key of keys)
            expect(readDesign(field.write(document, design, key)).ok, `${blank} ${key}`).toBe(true);
        } else if (field.kind === "text") {
          expect(designOf(field.write(document, field.read(design))), blank).toEqual(design);
        } else if (field.kind === "number") {
          expect(designOf(field.write(document, design, field.read(design))), blank).toEqual(design);
        }
      }
    }
  });

  test("[PG7] a way out takes its check away and brings none of its weight", () => {
    const wanting: readonly ComposeDocument[] = [
      { unit: "in", print: { width: 8, height: 10 }, window: { show: "overlap", overlap: "1/16" } },
      {
        unit: "in",
        print: { width: 8, height: 10, image: { left: 1, top: 1, width: 6, height: 8 } },
        window: { show: "margins", top: 1, side: 1, foot: "15/16" },
      },
      {
        unit: "in",
        print: { width: 10, height: 13, image: { left: 1, top: 1, width: 8, height: 11 } },
        outer: { width: 11, height: 14 },
        lift: { rule: "fixed", by: "1 1/4" },
      },
      {
        unit: "mm",
        print: { width: 200, height: 260 },
        window: { show: "typed", width: 199, height: 258 },
        outer: { width: 300, height: 400 },
      },
      {
        unit: "in",
        print: { width: 8, height: 10, image: { left: 1, top: 1, width: 6, height: 8 }, angle: 2 },
      },
      { unit: "in", print: { width: 8, height: 10 }, window: { show: "sheet" }, holding: "pockets" },
    ];
    let offered = 0;
    for (const document of wanting) {
      const composition = compose(designOf(document));
      for (const check of composition.checks) {
        for (const way of waysOf(check, document, composition, {})) {
          offered++;
          const after = compose(designOf(way.document));
          expect(
            after.checks.some(
              (left) => left.code === check.code && JSON.stringify(left) === JSON.stringify(check),
            ),
          ).toBe(false);
          const stops = (all: typeof composition): number =>
            all.checks.filter(({ level }) => level === "stop").length;
          expect(stops(after)).toBeLessThanOrEqual(stops(composition));
        }
      }
    }
    expect(offered).toBeGreaterThan(6);
  });
});

describe("a drawing", () => {
  const textOf = (path: string): string =>
    readFileSync(new URL(`../../src/${path}`, import.meta.url), "utf8");
  /** The members of a union of names, as the drawings declare them. */
  const union = (name: string): string[] => {
    const plain = textOf("drawings/marks.ts").replace(/\/\*[\s\S]*?\*\//g, "");
    const declared = new RegExp(`export type ${name} =([^;]*);`).exec(plain)?.[1] ?? "";
    return [...declared.matchAll(/"([a-z-]+)"/g)].map(([, member = ""]) => member);
  };

  test("[PG39] every fill has its look, and every line that is not thin and whole", () => {
    const [style, marks] = [textOf("web/style/drawing.css"), textOf("web/drawing/marks.tsx")];
    const fills = union("Fill");
    expect(fills.length).toBeGreaterThan(15);
    for (const fill of fills) {
      const drawn = fill.startsWith("hatch-")
        ? marks.includes(`"${fill}": {`)
        : style.includes(`.fill-${fill} {`);
      expect(drawn, fill).toBe(true);
    }
    const lines = union("LineKind").filter((line) => !["thin", "hatch", "rule-thin"].includes(line));
    expect(lines.length).toBeGreaterThan(5);
    for (const line of lines) expect(style, line).toMatch(new RegExp(`\\.line-${line}[,\\s]`));
  });
});
