import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compose } from "../../src/assembly/index.ts";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { inch, type Length, mm, toMillimetres } from "../../src/lengths/index.ts";
import { conditionNotes, loanList, packingList, type Page, type PaperSize } from "../../src/papers/index.ts";
import {
  boxMats,
  checkPacking,
  fitIn,
  minorUnits,
  packCrates,
  type PackingJob,
  USUAL_BOX,
  USUAL_PACKING,
} from "../../src/plans/index.ts";
import { INCH_DESIGN, jobOf, METRIC_DESIGN } from "../papers/fixtures.ts";
import { expectClean, textOf } from "../papers/clean.ts";

const typeface = pdfTypeface();
const LONG =
  "The Long Afternoon of the Harbour Master’s Third Daughter, Seen from the Breakwater at Low Tide, with Gulls and a Very Distant Steamer, Second State";

const anyJob: fc.Arbitrary<PackingJob> = fc.record({
  works: fc.array(
    fc.record({
      title: fc.constant("Ebb"),
      width: fc.integer({ min: 100, max: 1200 }).map((value) => mm(value)),
      height: fc.integer({ min: 100, max: 1200 }).map((value) => mm(value)),
      depth: fc.integer({ min: 5, max: 500 }).map((value) => mm(value)),
      mass: fc.double({ min: 0.1, max: 60, noNaN: true }),
      count: fc.integer({ min: 1, max: 4 }),
    }),
    { maxLength: 15 },
  ),
  habits: fc.constantFrom(USUAL_PACKING.in, USUAL_PACKING.mm),
});

describe("crates", () => {
  test("[RE6] every copy is in one crate, with its foam, and no crate of several is deeper or heavier than it may be", () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        const plan = packCrates(job);
        expect(checkPacking(job, plan)).toEqual([]);
        expect(plan.crates.length).toBeGreaterThanOrEqual(plan.bound);
        // Each that is told to be beyond a crate's limits stands alone.
        for (const { works } of plan.crates)
          if (works.some(({ work }) => plan.beyond.includes(work))) expect(works).toHaveLength(1);
      }),
      { numRuns: 100 },
    );
  });

  test("[RE6] the checker that did not make a packing finds what is wrong with it", () => {
    const work = { title: "Ebb", width: mm(400), height: mm(500), depth: mm(150), mass: 20, count: 2 };
    const job: PackingJob = { works: [work], habits: USUAL_PACKING.mm };
    const plan = packCrates(job);
    const [first] = plan.crates;
    if (first === undefined) throw new Error("two works need a crate");
    const all = [
      { work: 0, copy: 0 },
      { work: 0, copy: 0 },
      { work: 0, copy: 0 },
    ];
    const codes = checkPacking(job, { ...plan, crates: [{ ...first, works: all }] }).map(({ code }) => code);
    expect(codes).toEqual(["not-once", "not-once", "too-small", "too-deep"]);
  });

  test("[RE6] a crate is as large as its largest work each way, foam and walls about it, and weighs more than they do", () => {
    const works = [
      { title: "Ebb", width: mm(300), height: mm(500), depth: mm(30), mass: 2, count: 1 },
      { title: "Neap", width: mm(400), height: mm(350), depth: mm(20), mass: 1.5, count: 1 },
    ];
    const [crate, ...more] = packCrates({ works, habits: USUAL_PACKING.mm }).crates;
    expect(more).toEqual([]);
    // 400 + 2 × 50, 500 + 2 × 50, 30 + 6 + 20 + 2 × 50; walls of 12.
    expect(crate?.inner).toEqual({ width: mm(500), height: mm(600), depth: mm(156) });
    expect(crate?.outer).toEqual({ width: mm(524), height: mm(624), depth: mm(180) });
    expect(crate?.load).toBe(3.5);
    const [box, hollow] = [0.524 * 0.624 * 0.18, 0.5 * 0.6 * 0.156];
    expect(crate?.mass).toBeCloseTo(3.5 + (box - hollow) * 700 + (hollow - 0.4 * 0.5 * 0.056) * 35, 6);
  });
});

describe("boxes", () => {
  const lengths = fc.integer({ min: 1, max: 400 }).map((tenths) => mm(tenths / 10));
  test("[RE7] as many as the depth takes, and one more does not fit", () => {
    fc.assert(
      fc.property(lengths, fc.integer({ min: 400, max: 1500 }), lengths, (each, depth, room) => {
        const habits = { ...USUAL_BOX.mm, depth: mm(depth / 10), room };
        const fit = fitIn(each, habits);
        const free = habits.depth - room;
        if (fit > 0) expect(fit * each).toBeLessThanOrEqual(free);
        expect((fit + 1) * each).toBeGreaterThan(free);
      }),
    );
  });

  test("[RE7] a box is reckoned by its thickest mat and its interleaf; a mat thicker than the box is told", () => {
    const sixteenth = inch(1, 16);
    const thin = (sixteenth * 2) as Length;
    const [boxed, thick] = boxMats(
      [
        { width: inch(16), height: inch(20), titles: [], thicknesses: [thin, inch(1, 4), thin] },
        { width: inch(11), height: inch(14), titles: [], thicknesses: [inch(4)] },
      ],
      USUAL_BOX.in,
    );
    // 2 3/4 in over 1/4 in and 0.1 mm.
    expect(boxed).toMatchObject({ count: 3, fit: 10, boxes: 1 });
    expect(toMillimetres(boxed?.each ?? mm(0))).toBeCloseTo(6.45, 6);
    expect(thick).toMatchObject({ fit: 0, boxes: 0 });
  });
});

const { work, house, plan: planWords } = jobOf(INCH_DESIGN);
const RULER = INCH_DESIGN.ruler;
const shared = { house, planWords, ruler: RULER, language: "en-US" as const };

function packing(works: number, paper: PaperSize): readonly Page[] {
  const job: PackingJob = {
    works: Array.from({ length: works }, (_, index) => ({
      title: index % 2 === 0 ? LONG : "Zażółć gęślą jaźń, Ærø",
      width: inch(100 + index, 16),
      height: inch(1777, 64),
      depth: inch(index === 3 ? 20 : 1),
      mass: 2.4,
      count: 1,
    })),
    habits: USUAL_PACKING.in,
  };
  return packingList(
    {
      ...shared,
      job,
      plan: packCrates(job),
      works: job.works.map((_, index) => ({ mark: `SW ${index}`, glass: true })),
      boxed: boxMats(
        [{ width: inch(16), height: inch(20), titles: [], thicknesses: [inch(1, 8), inch(4)] }],
        USUAL_BOX.in,
      ),
      box: USUAL_BOX.in,
    },
    paper,
    typeface,
  );
}

const loan = (works: number, paper: PaperSize): readonly Page[] =>
  loanList(
    {
      ...shared,
      currency: "DKK",
      digits: 2,
      works: Array.from({ length: works }, (_, index) => ({
        work: {
          ...work,
          title: index % 3 === 0 ? LONG : "Ebb",
          maker: index % 3 === 0 ? LONG : "Zażółć",
          quantity: 1,
        },
        mark: `SW ${index}`,
        size: { width: inch(1777, 64), height: inch(14) },
        ruler: RULER,
        lender: index % 5 === 0 ? LONG : "",
        value: index % 2 === 0 ? minorUnits(125_050) : null,
      })),
    },
    paper,
    typeface,
  );

const condition = (paper: PaperSize): readonly Page[] =>
  conditionNotes(
    {
      ...shared,
      works: [
        {
          work: { ...work, title: LONG, maker: LONG },
          mark: "SW 1",
          composition: compose(INCH_DESIGN),
          condition: LONG.repeat(3),
        },
        {
          work: { ...work, title: "Zażółć gęślą jaźń" },
          mark: "",
          composition: compose(METRIC_DESIGN),
          condition: "",
        },
        {
          work: { ...work, title: "Ebb" },
          mark: "SW 3",
          composition: compose({
            ...INCH_DESIGN,
            outer: { kind: "size", width: inch(40), height: inch(11) },
            window: { show: "typed", width: inch(36), height: inch(7) },
            print: null,
          }),
          condition: "",
        },
      ],
    },
    paper,
    typeface,
  );

describe("papers of the road", () => {
  test.each(["a4", "letter"] as const)(
    "[PP1] [PP3] [PP6] nothing meets or leaves the page on %s",
    (paper) => {
      for (const page of [
        ...packing(30, paper),
        ...packing(1, paper),
        ...loan(40, paper),
        ...condition(paper),
      ]) {
        expectClean(page, paper, typeface);
      }
    },
  );

  test("[RE6] [RE7] a packing list says what to build, what it weighs, in which order, and what to tape", () => {
    const text = textOf(packing(30, "letter"));
    expect(text).toContain("Crate A");
    expect(text).toContain("inside");
    expect(text).toContain("Heavy: two people lift it.");
    expect(text).toContain("it travels alone.");
    expect(text).toContain("Glass: tape it corner to corner before it travels.");
    expect(text).toContain("thicker than the box");
  });

  test("[RE8] a loan list stands by lender, adds up what is told, and leaves a line where it is not", () => {
    const text = textOf(loan(4, "a4"));
    expect(text).toContain("Lent by The Long");
    expect(text).toContain("The room’s own");
    expect(text).toContain("In all, as far as told");
    expect(text).toContain("2501.00");
  });

  test("[RE9] a condition note has the sheet under a grid, what is known, what to look for, and room to write", () => {
    const text = textOf(condition("a4"));
    expect(text).toContain("Known: nothing is written down");
    for (const word of ["A", "B", "C", "D", "from the FRONT", "Notes", "by", "day"])
      expect(text).toContain(word);
    expect(text).toContain("foxing, spots");
  });
});
