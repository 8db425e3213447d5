import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compose, type Design } from "../../src/assembly/index.ts";
import { inch, type Length, mm, type Ruler } from "../../src/lengths/index.ts";
import { type ComposeDocument, readDesign } from "../../src/show/index.ts";
import { rungsOf, snapped, stepped, strideLength } from "../../src/web/blanks/step.ts";
import { documentOf } from "../../src/web/work/document-of.ts";
import { fieldOf } from "../../src/web/work/fields.ts";
import { gripEdits } from "../../src/web/work/grip-edits.ts";
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
import { DOCUMENTS } from "./documents.ts";

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

const named = (sentence: string): BlankName[] =>
  tokensOf(sentence).flatMap((token) =>
    token.flatMap((piece) => (piece.kind === "blank" ? [piece.blank] : [])),
  );

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

describe("an edge that can be dragged", () => {
  test("[PG8] where borders are named, either side of the window writes the one figure of both", () => {
    const document: ComposeDocument = {
      unit: "in",
      print: { width: "11", height: "14" },
      outer: { borders: { head: "2", side: "2", foot: "3" } },
    };
    const read = readDesign(document);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const before = compose(read.value);
    const edits = gripEdits(before);
    expect(edits.map(({ key }) => key)).toEqual(["head", "foot", "right", "left"]);
    for (const edit of edits.filter(({ slides }) => slides === "x")) {
      const written = readDesign(edit.write(document, inch(5, 2), false));
      if (!written.ok) throw new Error(JSON.stringify(written.problems));
      const after = compose(written.value);
      expect(after.mats[0]?.borders).toMatchObject({ left: inch(5, 2), right: inch(5, 2), head: inch(2) });
      expect(after.mats[0]?.back).toEqual(before.mats[0]?.back);
    }
  });
});
