import { describe, expect, test } from "vitest";
import {
  compose,
  type Design,
  type HoldFacts,
  NOTHING_KNOWN,
  planHold,
  USUAL_HOLD,
} from "../../src/assembly/index.ts";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { inch } from "../../src/lengths/index.ts";
import {
  backLabels,
  block,
  boardLabels,
  flow,
  type Flowing,
  type LabelledWork,
  type LabelsJob,
  points,
  wallLabels,
} from "../../src/papers/index.ts";
import { labelJson } from "../../src/packet/labels.ts";
import { CHECK_LIST_HEAD, checkListRows } from "../../src/words/index.ts";
import { mm, ZERO } from "../../src/lengths/index.ts";
import { INCH_DESIGN, jobOf, METRIC_DESIGN } from "./fixtures.ts";
import { flatMarks, textsOf } from "./ink.ts";
import { expectClean, textOf } from "./clean.ts";

const typeface = pdfTypeface();
const { work, house, plan } = jobOf(INCH_DESIGN);
const LONG =
  "The Long Afternoon of the Harbour Master’s Third Daughter, Seen from the Breakwater at Low Tide, with Gulls and a Very Distant Steamer, Second State";

const labelled = (
  design: Design,
  more: Partial<LabelledWork> & { readonly facts?: Partial<HoldFacts> } = {},
): LabelledWork => {
  const composition = compose(design);
  const facts = { ...NOTHING_KNOWN, ...more.facts };
  return {
    work,
    composition,
    held: planHold(composition, facts, USUAL_HOLD[design.ruler.unit]),
    glazing: { board: "acrylic, UV filter, 1/8 in", kind: "acrylic" },
    weight: null,
    text: "",
    mark: "SW 3",
    ...more,
  };
};

const TEXT =
  "The harbour at the turn of the tide, from the slip where the ferry no longer calls. She printed it on paper that she had kept since the winter of the long frost.";

const JOB: LabelsJob = {
  works: [
    labelled(INCH_DESIGN, { weight: 1.62, text: TEXT }),
    labelled(
      { ...METRIC_DESIGN, holding: "hinges" },
      {
        work: { ...work, title: LONG, maker: "Zażółć Ærø", edition: "4 / 12", quantity: 2 },
        mark: "",
        facts: { never: ["pockets", "press"], grammage: 300 },
      },
    ),
    labelled(
      { ...INCH_DESIGN, holding: "strips", window: { show: "sheet", gap: inch(1, 4) } },
      { work: { ...work, title: "Ebb" }, mark: "SW 9", glazing: null },
    ),
    labelled({ ...INCH_DESIGN, print: null, window: { show: "typed", width: inch(5), height: inch(7) } }),
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

describe("labels", () => {
  test.each(["a4", "letter"] as const)("[PP1] [PP3] nothing meets or leaves the page on %s", (paper) => {
    for (const page of [backLabels, wallLabels, boardLabels].flatMap((make) => make(JOB, paper, typeface))) {
      expectClean(page, paper, typeface);
    }
  });

  test("[PP30] [RE1] a back label has the whole title, what touches the print, how it is held and released", () => {
    const pages = backLabels(JOB, "letter", typeface);
    const text = textOf(pages);
    // One for every copy.
    expect(text).toContain("Five back labels");
    expect(pages.flatMap((page) => textsOf(page)).filter((each) => each === "HEAD")).toHaveLength(5);
    expect(text).toContain(LONG);
    expect(text).toContain("mat and mount of 4-ply white rag; corner pockets of neutral paper.");
    expect(text).toMatch(/four corner pockets, leg 1 1\/2 in\. Nothing is stuck to the print\./);
    expect(text).toContain("Bend a pocket back, slide that corner out, then the next. Do not pull.");
    expect(text).toContain("two T-hinges at the head, to the mount. Sides and foot are free.");
    expect(text).toContain("Slit the hinges between print and mount; leave the rest to a conservator.");
    expect(text).toContain("NEVER pockets. NEVER press or weigh it down.");
    expect(text).toContain("the riser; Japanese tissue, starch paste.");
    expect(text).toContain("V-hinges at the head, to the riser. Sides and foot are free.");
    expect(text).toContain("acrylic, UV filter, 1/8 in. Rubbed dry it draws dust.");
    expect(text).toContain("1.7 kg (4 lb), all of it, as it hangs.");
    expect(text).toContain("closed 25 Nov 2026, plan 3");
    expect(text).toContain("never on the print or its mount");
  });

  test("[PP30] [RE2] a wall label is set in 16 points and more, in lines of at most 45 characters", () => {
    const narrow = {
      ...JOB,
      works: [labelled(INCH_DESIGN, { text: "Ill lit, till tilt it still ill. ".repeat(9) })],
    };
    const wall = [JOB, narrow].flatMap((job) =>
      wallLabels(job, "a4", typeface).flatMap((page) =>
        flatMarks(page.marks)
          .filter(({ kind }) => kind === "text")
          .slice(6)
          .flatMap((mark) => (mark.kind === "text" && mark.size > points(11) ? [mark] : [])),
      ),
    );
    expect(wall.length).toBeGreaterThan(20);
    for (const mark of wall) {
      expect(mark.size).toBeGreaterThanOrEqual((inch(1) * 16) / 72 - 1);
      const line = mark.runs.map((run) => (run.kind === "text" ? run.text : "")).join("");
      expect([...line].length, line).toBeLessThanOrEqual(45);
    }
  });

  test("[RE2] a text that breaks the published limits is told with its figure, on the page and in the packet, and printed all the same", () => {
    const text = `${"word ".repeat(100)}end.`;
    const page = textOf(wallLabels({ ...JOB, works: [labelled(INCH_DESIGN, { text })] }, "letter", typeface));
    expect(page).toContain("Low Water, Pewter Light: 101 words. At most 100, better 75.");
    expect(page).toContain("Low Water, Pewter Light: a sentence of 101 words. At most 25, better 15.");
    expect(page).toContain("end.");
    expect(labelJson({ title: "Ebb", record: { label: text }, design: {} })).toMatchObject({
      label: {
        checks: [
          { code: "label-long", level: "warn" },
          { code: "sentence-long", level: "warn" },
        ],
      },
    });
    expect(labelJson({ title: "Ebb", record: { label: "Short." }, design: {} })).toEqual({});
  });

  test("[PP31] [PP13] a board label: its number in a white ring on a bar, what it becomes, of which work, its size", () => {
    const pages = boardLabels({ ...JOB, works: [] }, "letter", typeface);
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
    for (const make of [backLabels, wallLabels, boardLabels])
      expect(make({ ...JOB, works: [], blanks: [] }, "a4", typeface)).toEqual([]);
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
