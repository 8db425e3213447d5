import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type FrameFacts,
  type HoldFacts,
  NOTHING_KNOWN,
  plainFrame,
  planFrame,
  planHold,
  type Profile,
  USUAL_HOLD,
} from "../../src/assembly/index.ts";
import type { Mark } from "../../src/drawings/index.ts";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { inch, mm, ZERO } from "../../src/lengths/index.ts";
import {
  benchSheet,
  type BenchSheetJob,
  frameSheet,
  type FrameSheetJob,
  type Page,
  type PaperSize,
} from "../../src/papers/index.ts";
import type { ComposeDocument } from "../../src/show/index.ts";
import { plainText, flat } from "../../src/words/index.ts";
import { FRAME_SHEET, frameCaution } from "../../src/words/frame-sheet.ts";
import { LONG_TITLE } from "../hold/jobs.ts";
import { flatMarks, textsOf, type WordInk, wordInks } from "../papers/ink.ts";
import { composedOf, frameOf, LETTER, OAK, RANDOM } from "./frames.ts";
import { expectClean, textOf } from "../papers/clean.ts";

const typeface = pdfTypeface();

function jobOf(
  document: ComposeDocument,
  frame: FrameFacts = frameOf(),
  more: Partial<FrameSheetJob> = {},
  facts: Partial<HoldFacts> = {},
): FrameSheetJob {
  const composition = composedOf(document);
  const held = planHold(
    composition,
    { ...NOTHING_KNOWN, ...facts },
    USUAL_HOLD[composition.design.ruler.unit],
  );
  return {
    work: {
      title: "Low Water, Pewter Light",
      maker: "Ines Okonedo-Vale",
      year: "2026",
      process: "Drypoint",
      edition: "",
      quantity: 1,
    },
    composition,
    plan: planFrame(composition, frame, held, "Drypoint"),
    held,
    house: { studio: "Tidewater Print Room", show: "Slack Water" },
    planWords: { number: 3, date: "2026-11-25", makesVoid: { number: 2, date: "2026-11-19" } },
    language: "en-US",
    ...more,
  };
}

const GLASS = {
  kind: "glass" as const,
  board: "glass, 2 mm",
  less: ZERO,
  thickness: mm(2),
  massPerArea: null,
};
const METRIC: Profile = {
  ...OAK,
  name: "Esche, flach",
  overall: mm(30),
  rabbet: mm(6),
  allowance: mm(3),
  depth: mm(16),
  lip: mm(6),
};
const metric = (more: Partial<FrameFacts> = {}): FrameFacts => ({
  ...plainFrame(METRIC, "mm"),
  glazing: GLASS,
  backing: { board: "Wellplatte", less: mm(1), thickness: mm(4), massPerArea: 0.7 },
  ...more,
});
const mats = Array.from({ length: 3 }, () => ({ thickness: "1/16", reveal: "1/4" }));
const thick = {
  ...LETTER,
  outer: { width: 16, height: 20 },
  print: { width: 9, height: 11, thickness: "1/4" },
};
const float: ComposeDocument = {
  unit: "mm",
  print: { width: 330, height: 430 },
  window: { show: "sheet", gap: 10 },
  outer: { width: 500, height: 600 },
};

const jobs: readonly (readonly [string, FrameSheetJob])[] = [
  ["made to its package", jobOf(LETTER)],
  [
    "glass over its rabbet, three mats, shimmed",
    jobOf({ ...LETTER, mats }, frameOf({ glazing: GLASS, seat: "shimmed" }, { depth: inch(3, 8) })),
  ],
  [
    "a float over a shallow rabbet",
    jobOf(float, frameOf({}, { overall: inch(1), rabbet: inch(5, 16), depth: inch(3, 8) })),
  ],
  ["a float with spacers", jobOf(float, metric({ spacer: mm(6) }))],
  [
    "a sink in a wide moulding of no known depth",
    jobOf(thick, frameOf({}, { overall: inch(3), depth: null })),
  ],
  [
    "a package that does not go in",
    jobOf(thick, frameOf({ opening: { width: inch(11), height: inch(14) } })),
  ],
  [
    "very wide, with the longest title and British words",
    jobOf(
      { unit: "in", print: { width: 60, height: 20 }, outer: { width: 70, height: 30 }, mats: mats.slice(1) },
      frameOf({}, { overall: inch(5, 2), depth: inch(9, 8) }),
      {
        language: "en-GB",
        work: {
          title: LONG_TITLE,
          maker: "T. Marrable",
          year: "",
          process: "",
          edition: "",
          quantity: 2,
        },
      },
    ),
  ],
  [
    "tall and narrow, without glazing",
    jobOf(
      { unit: "mm", print: { width: 100, height: 700 }, outer: { width: 140, height: 760 } },
      metric({ glazing: null, backing: null }),
    ),
  ],
  [
    "a mat without a print",
    jobOf({ unit: "in", window: { show: "typed", width: 5, height: 7 }, outer: { width: 8, height: 10 } }),
  ],
];

const pagesOf = (name: string): readonly Page[] => {
  const job = jobs.find(([one]) => one === name)?.[1];
  if (job === undefined) throw new Error(name);
  return frameSheet(job, "a4", typeface);
};

/** Whether a clear field is laid over a word after it was set. */
const isCovered = (marks: readonly Mark[], ink: WordInk): boolean =>
  marks.slice(ink.mark + 1).some((mark) => {
    if (mark.kind !== "area" || mark.fill !== "paper") return false;
    const [xs, ys] = [mark.points.map(({ x }) => x), mark.points.map(({ y }) => y)];
    return (
      Math.min(...xs) < ink.right &&
      Math.max(...xs) > ink.left &&
      Math.min(...ys) < ink.foot &&
      Math.max(...ys) > ink.top
    );
  });

function expectAllClean(pages: readonly Page[], size: PaperSize): void {
  for (const page of pages) {
    expectClean(page, size, typeface);
    const marks = flatMarks(page.marks);
    const covered = wordInks(marks, typeface).filter((ink) => isCovered(marks, ink));
    expect(covered.map(({ word }) => word)).toEqual([]);
  }
}

describe("the frame sheet", () => {
  test.each(
    jobs.flatMap(([name, job]) => (["a4", "letter"] as const).map((size) => [name, size, job] as const)),
  )("[FR15] of %s on %s: no words meet, nothing strikes a word or leaves the page", (_, size, job) => {
    expectAllClean(frameSheet(job, size, typeface), size);
  });

  test("[FR15] nor on that of any work in any frame", () => {
    fc.assert(
      fc.property(RANDOM, fc.constantFrom("a4" as const, "letter" as const), ({ document, frame }, size) => {
        expectAllClean(frameSheet(jobOf(document, frame), size, typeface), size);
      }),
      { numRuns: 40 },
    );
  });

  test("[FR16] every layer has its number, size and weight, and what is seen its side", () => {
    const text = textOf(pagesOf("made to its package"));
    for (const words of [
      "12 1/8 × 15 1/8 in",
      "10 5/8 × 13 5/8 in",
      "THROUGH THE FOOT",
      "10 15/16 × 13 15/16",
      "head 2",
      "foot 2 3/8",
      "seen 2 3/8 in",
      "under the lip 1/4 in",
      "372 g",
      "≤ 71 g",
    ])
      expect(text).toContain(words);
    expect(text).toMatch(/1\.2 kg \(3 lb\)/);
  });

  test("[FR17] cautions stand before the act that they are about", () => {
    const texts = textsOf(pagesOf("glass over its rabbet, three mats, shimmed")[0] ?? emptyPage);
    const at = (words: string): number => texts.findIndex((text) => text.includes(words));
    expect(at("Gloves, eyes: glass.")).toBeGreaterThan(-1);
    expect(at("Gloves, eyes: glass.")).toBeLessThan(at("Glazing:"));
    expect(at("Do not press")).toBeLessThan(at("offset fittings, one a hand"));
    expect(at("Shim the foot")).toBeLessThan(at("Lay in glazing"));
    expect(textOf(pagesOf("tall and narrow, without glazing"))).not.toMatch(/glass|acrylic/i);
    expect(textOf(pagesOf("a float with spacers"))).toMatch(/Spacers 6 mm high, 3 mm wide/);
    expect(textOf(pagesOf("a sink in a wide moulding of no known depth"))).toContain(
      "Measure the rabbet’s depth",
    );
  });

  test("[FR17] a caution has at most twelve words a sentence and no please", () => {
    const cautions = jobs.flatMap(([, { plan, composition, language }]) =>
      plan.checks
        .filter(({ level }) => level === "warn")
        .map((check) => plainText(flat(frameCaution(check, { ruler: composition.design.ruler, language })))),
    );
    const { gloves, acrylic, doNotPress } = FRAME_SHEET;
    expect(cautions.length).toBeGreaterThan(2);
    for (const words of [...cautions, gloves, acrylic, doNotPress]) {
      expect(words).not.toMatch(/please/i);
      for (const sentence of words.split(/[.:;] /))
        expect(sentence.split(" ").length, sentence).toBeLessThanOrEqual(12);
    }
  });

  test("[FR18] what does not go in gets DO NOT FRAME and why, and no step or size to cut", () => {
    const pages = pagesOf("a package that does not go in");
    const text = textOf(pages);
    expect(pages).toHaveLength(1);
    expect(text).toContain("DO NOT FRAME");
    expect(text).toContain("The package is 16 in wide and the rabbet takes 11 in.");
    for (const words of ["Glazing:", "Measure the rabbet", "Dust cover", "cut to"])
      expect(text).not.toContain(words);
  });
});

test("[FR18] where its frame does not take it the bench sheet says DO NOT CUT and sets no stop", () => {
  const { composition, plan, held, house, planWords, work, language } = jobOf(
    thick,
    frameOf({ opening: { width: inch(11), height: inch(14) } }),
  );
  const job: BenchSheetJob = {
    composition,
    ...(held === null ? {} : { held }),
    frameStops: plan.checks.filter(({ level }) => level === "stop"),
    work,
    house,
    plan: planWords,
    bench: { hand: "right", scaleTested: null, overrun: inch(3, 16), squaringTrim: inch(1, 8) },
    blanks: null,
    picture: null,
    language,
  };
  for (const size of ["a4", "letter"] as const) {
    const pages = benchSheet(job, size, typeface);
    expectAllClean(pages, size);
    expect(textOf(pages)).toContain("DO NOT CUT");
    expect(textOf(pages)).toContain("The package is 16 in wide and the rabbet takes 11 in.");
    for (const words of ["scale reads", "1st", "Set the stop"]) expect(textOf(pages)).not.toContain(words);
  }
});

const emptyPage: Page = { width: mm(1), height: mm(1), marks: [], bookmark: "" };
