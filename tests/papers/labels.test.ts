import { describe, expect, test } from "vitest";
import { compose } from "../../src/assembly/index.ts";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { inch } from "../../src/lengths/index.ts";
import { type Flowing, flow, block, labels, type LabelsJob, type Page } from "../../src/papers/index.ts";
import { CHECK_LIST_HEAD, checkListRows } from "../../src/words/index.ts";
import { mm, ZERO } from "../../src/lengths/index.ts";
import { INCH_DESIGN, jobOf, METRIC_DESIGN } from "./fixtures.ts";
import { flatMarks, outside, struckThrough, textsOf, touching, wordInks } from "./ink.ts";

const typeface = pdfTypeface();
const { work, house, plan } = jobOf(INCH_DESIGN);
const LONG =
  "The Long Afternoon of the Harbour Master’s Third Daughter, Seen from the Breakwater at Low Tide, with Gulls and a Very Distant Steamer, Second State";

const JOB: LabelsJob = {
  works: [
    { work, composition: compose(INCH_DESIGN), mark: "SW 3" },
    {
      work: { ...work, title: LONG, maker: "Zażółć Ærø", edition: "4 / 12" },
      composition: compose({ ...METRIC_DESIGN, holding: "hinges" }),
      mark: "",
    },
    {
      work: { ...work, title: "Ebb" },
      composition: compose({ ...INCH_DESIGN, holding: "strips", window: { show: "sheet", gap: inch(1, 4) } }),
      mark: "SW 9",
    },
  ],
  blanks: Array.from({ length: 13 }, (_, index) => ({
    number: 60 + index,
    title: index === 6 ? LONG : "Ebb",
    becomes: index % 2 === 0 ? ("mount" as const) : 0,
    mats: 2,
    size: { width: inch(177, 16), height: inch(14) },
    board: "4-ply white rag",
  })),
  house,
  plan,
  language: "en-US",
  ruler: INCH_DESIGN.ruler,
};

const textOf = (pages: readonly Page[]): string => pages.flatMap((page) => textsOf(page)).join(" ");

describe("labels", () => {
  test.each(["a4", "letter"] as const)("[PP1] [PP3] nothing meets or leaves the page on %s", (paper) => {
    for (const page of labels(JOB, paper, typeface)) {
      const marks = flatMarks(page.marks);
      const inks = wordInks(marks, typeface);
      expect(touching(inks)).toEqual([]);
      expect(struckThrough(marks, inks)).toEqual([]);
      expect(outside(page, paper, typeface)).toEqual([]);
    }
  });

  test("[PP30] a back label has the whole title, what touches the print, how it is held and released", () => {
    const text = textOf(labels(JOB, "letter", typeface));
    expect(text).toContain("HEAD");
    expect(text).toContain(LONG);
    expect(text).toContain("mat and mount of 4-ply white rag; corner pockets.");
    expect(text).toContain("four corner pockets. Nothing is stuck to the print.");
    expect(text).toContain("Bend a pocket back, slide that corner out, then the next. Do not pull.");
    expect(text).toContain("Slit the hinges between print and mount; leave the rest to a conservator.");
    expect(text).toContain("the riser, paper hinges and paste.");
    expect(text).toContain("hinges behind its head, to the riser. Sides and foot are free.");
    expect(text).toContain("closed 25 Nov 2026, plan 3");
    expect(text).toContain("never on the print or its mount");
  });

  test("[PP30] a wall label is set in 16 points and more, in lines of at most 45 characters", () => {
    const wall = labels(JOB, "a4", typeface).flatMap((page) =>
      flatMarks(page.marks).flatMap((mark) =>
        mark.kind === "text" && mark.size > inch(1) / 4.6 && mark.weight === "italic" ? [mark] : [],
      ),
    );
    expect(wall.length).toBeGreaterThan(3);
    for (const mark of wall) {
      expect(mark.size).toBeGreaterThanOrEqual((inch(1) * 16) / 72 - 1);
      const line = mark.runs.map((run) => (run.kind === "text" ? run.text : "")).join("");
      expect([...line].length, line).toBeLessThanOrEqual(45);
    }
  });

  test("[PP31] [PP13] a board label: its number in a white ring on a bar, what it becomes, of which work, its size", () => {
    const pages = labels({ ...JOB, works: [] }, "letter", typeface);
    const text = textOf(pages);
    expect(text).toContain("Thirteen blanks: board labels");
    expect(text).toContain("66");
    expect(text).toContain("11 1/16 × 14 in");
    expect(text).toContain("lowest mat");
    expect(text).toContain("mount");
    const rings = pages.flatMap((page) => flatMarks(page.marks).filter((mark) => mark.kind === "circle"));
    expect(rings).toHaveLength(13);
    for (const ring of rings) expect(ring.fill).toBe("paper");
  });

  test("no page where there is neither work nor blank", () => {
    expect(labels({ ...JOB, works: [], blanks: [] }, "a4", typeface)).toEqual([]);
  });
});

const piece = (height: number, mark: string): Flowing["block"] =>
  block(mm(10), mm(height), [
    {
      kind: "text",
      at: { x: ZERO, y: ZERO },
      runs: [{ kind: "text", text: mark }],
      size: mm(3),
      weight: "regular",
      anchor: "start",
    },
  ]);
const names = (pages: readonly Flowing["block"][]): readonly string[] =>
  pages.map((page) =>
    page.marks
      .map((mark) =>
        mark.kind === "text" ? mark.runs.map((run) => (run.kind === "text" ? run.text : "")).join("") : "",
      )
      .join(" "),
  );

describe("lists", () => {
  test("[PP32] a check-list has a row a work under its head, as wide as it, ending in columns for a hand", () => {
    const stopped = compose({ ...INCH_DESIGN, outer: { kind: "size", width: inch(6), height: inch(9) } });
    const rows = checkListRows(
      [
        {
          mark: "SW 3",
          title: work.title,
          maker: work.maker,
          quantity: 2,
          composition: compose(INCH_DESIGN),
          light: "",
        },
        { mark: "", title: "Ebb", maker: "", quantity: 1, composition: stopped, light: "" },
      ],
      "en-US",
    );
    expect(rows[0]).toEqual([...CHECK_LIST_HEAD]);
    expect(rows).toHaveLength(3);
    for (const row of rows) expect(row).toHaveLength(CHECK_LIST_HEAD.length);
    expect(rows[1]?.slice(0, 9)).toEqual([
      "SW 3",
      "Low Water, Pewter Light",
      "Ines Okonedo-Vale",
      "2",
      "9 in × 11 7/8 in",
      "11 in × 14 in",
      "7 in × 10 in",
      expect.stringContaining("Show the image, covered 1/8 in all round"),
      "head, 3/4 in",
    ]);
    expect(rows[1]?.slice(10).every((cell) => cell === "")).toBe(true);
    expect(rows[2]?.[9]).toMatch(/^stop: /);
  });

  test("[PP6] what flows repeats its head, keeps a title with what follows, parts no row", () => {
    const head = piece(5, "head");
    const rows: Flowing[] = [
      { block: piece(5, "head"), withNext: true },
      { block: piece(10, "a"), again: head },
      { block: piece(10, "b"), again: head },
      { block: piece(5, "title"), withNext: true, again: head },
      { block: piece(10, "c"), again: head },
    ];
    expect(names(flow(rows, mm(31), mm(31)))).toEqual(["head a b", "head title c"]);
    expect(names(flow(rows, mm(12), mm(31)))).toEqual(["", "head a b", "head title c"]);
    expect(() => flow([{ block: piece(40, "x") }], mm(31), mm(31))).toThrow("one row is higher than a page");
  });
});
