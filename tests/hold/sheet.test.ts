import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { HoldFacts } from "../../src/assembly/index.ts";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { inch, mm } from "../../src/lengths/index.ts";
import { mountingSheet, type MountingSheetJob, type Page, type PaperSize } from "../../src/papers/index.ts";
import type { ComposeDocument } from "../../src/show/index.ts";
import { bare, flat, plainText } from "../../src/words/index.ts";
import { holdCaution, MOUNTING_SHEET } from "../../src/words/mounting-sheet.ts";
import { textsOf } from "../papers/ink.ts";
import { jobOf, LONG_TITLE } from "./jobs.ts";
import { printed } from "./works.ts";
import { expectClean, textOf } from "../papers/clean.ts";

const typeface = pdfTypeface();

const float = (width: number, height: number): ComposeDocument => ({
  unit: "in",
  print: { width, height },
  window: { show: "sheet", gap: "1/4" },
  outer: { borders: { head: 3, side: 3, foot: 3 } },
});
const metric = (more: ComposeDocument = {}, thickness = 0.3): ComposeDocument => ({
  unit: "mm",
  print: { width: 330, height: 430, image: { left: 20, top: 26, width: 287, height: 371 }, thickness },
  outer: { width: 400, height: 500 },
  ...more,
});

const jobs: readonly (readonly [string, MountingSheetJob])[] = [
  ["pockets", jobOf(printed(9, 12))],
  [
    "pockets of a turned sheet",
    jobOf(
      metric({
        print: { width: 330, height: 430, image: { left: 30, top: 36, width: 267, height: 351 }, angle: 1.3 },
      }),
    ),
  ],
  [
    "pockets on every sheet of an edition",
    jobOf(
      metric({
        print: {
          width: 330,
          height: 430,
          image: { left: 20, top: 26, width: 287, height: 371 },
          edition: [
            { name: "2 / 9", width: 332, height: 430, image: { left: 20, top: 26, width: 287, height: 371 } },
          ],
        },
      }),
    ),
  ],
  ["strips, for storage", jobOf(metric({ holding: "strips" }), { use: "storage" })],
  [
    "T-hinges, in a rabbet that is too shallow",
    jobOf(
      printed(22, 30, 1, { holding: "hinges" }),
      { grammage: 298, glazing: "glass", never: ["press", "cut"] },
      { stack: { stack: inch(7, 16), rabbet: inch(3, 8) } },
    ),
  ],
  ["many T-hinges on a wide sheet", jobOf(printed(90, 30, 2, { holding: "hinges" }), { grammage: 640 })],
  ["V-hinges on a riser", jobOf(float(9, 12), { grammage: 200, process: "Cyanotype" })],
  ["slits in a riser", jobOf(float(22, 30), { grammage: 640, process: "Monotype" })],
  [
    "a sink",
    jobOf(
      metric({}, 6),
      { process: "Platinum print", glazing: "acrylic" },
      { stack: { stack: mm(12), rabbet: mm(15) } },
    ),
  ],
  [
    "a deep sink in fractions",
    jobOf(
      printed(15.0625, 20.1875, 1, { print: { width: "15 1/16", height: "20 3/16", thickness: "1 7/8" } }),
    ),
  ],
  [
    "everything never but pockets",
    jobOf(
      printed(9, 12),
      {
        never: ["paste", "hinges", "strips", "press", "cut", "buffered", "glass", "acrylic"],
        process: "Salted paper print",
      },
      {
        work: {
          title: LONG_TITLE,
          maker: "Ines Okonedo-Vale",
          year: "2026",
          process: "Salted paper print from a waxed paper negative",
          edition: "",
          quantity: 3,
        },
      },
    ),
  ],
  ["nothing that holds", jobOf(printed(9, 12), { never: ["paste", "pockets", "strips"] })],
  ["British words", jobOf(metric(), {}, { language: "en-GB" })],
];

const pagesOf = (name: string, size: PaperSize = "a4"): readonly Page[] => {
  const job = jobs.find(([one]) => one === name)?.[1];
  if (job === undefined) throw new Error(name);
  return mountingSheet(job, size, typeface);
};

function expectAllClean(pages: readonly Page[], size: PaperSize): void {
  expect(pages.length).toBeGreaterThan(0);
  for (const page of pages) expectClean(page, size, typeface);
}

describe("the mounting and closing sheet", () => {
  for (const size of ["a4", "letter"] as const)
    test.each(jobs)(
      `[HO16] %s on ${size}: no words meet, nothing strikes a word or leaves the page`,
      (_, job) => {
        expectAllClean(mountingSheet(job, size, typeface), size);
      },
    );

  test("[HO16] nor on that of any work", () => {
    const facts: fc.Arbitrary<Partial<HoldFacts>> = fc.record({
      never: fc.subarray(["paste", "pockets", "strips", "press", "cut"] as const),
      process: fc.constantFrom("", "Cyanotype", "Linocut", "Inkjet print", "Tintype"),
      grammage: fc.constantFrom(null, 90, 640),
      humidity: fc.constantFrom(null, { from: 20, to: 70 }),
      bed: fc.constantFrom(null, "sink" as const),
      glazing: fc.constantFrom(null, "glass" as const),
    });
    const work = fc.record({
      width: fc.integer({ min: 60, max: 900 }),
      height: fc.integer({ min: 60, max: 900 }),
      margin: fc.integer({ min: 4, max: 40 }),
      thickness: fc.constantFrom(0.3, 0.3, 9),
      holding: fc.constantFrom("pockets" as const, "hinges" as const, "strips" as const),
      floats: fc.boolean(),
      unit: fc.constantFrom("mm" as const, "in" as const),
      size: fc.constantFrom("a4" as const, "letter" as const),
    });
    fc.assert(
      fc.property(work, facts, ({ width, height, margin, thickness, holding, floats, unit, size }, known) => {
        const of = (millimetres: number): string =>
          unit === "mm" ? `${millimetres} mm` : `${Math.round(millimetres / 1.5875)}/16 in`;
        const say = (millimetres: number): string | number =>
          unit === "mm" ? of(millimetres) : Math.round(millimetres / 1.5875) / 16;
        const document: ComposeDocument = {
          unit,
          print: {
            width: say(width + 2 * margin),
            height: say(height + 2 * margin),
            image: { left: say(margin), top: say(margin), width: say(width), height: say(height) },
            thickness: `${thickness} mm`,
          },
          holding,
          ...(floats ? { window: { show: "sheet" as const } } : {}),
          outer: { borders: { head: say(margin + 50), side: say(margin + 40), foot: say(margin + 60) } },
        };
        expectAllClean(mountingSheet(jobOf(document, known), size, typeface), size);
      }),
      { numRuns: 60 },
    );
  });

  test("[HO17] what holds it, where, and what each part is called stand with their figures", () => {
    const hinged = textOf(pagesOf("T-hinges, in a rabbet that is too shallow"));
    for (const words of [
      "three T-hinges at the head",
      "BACK OF THE SHEET",
      "20 in",
      "2 in",
      "7/8 in",
      "1/8 in without paste: this tears first",
    ])
      expect(hinged).toContain(words);
    const pockets = textOf(pagesOf("pockets"));
    for (const words of [
      "four corner pockets",
      "Pocket, leg: two",
      "hidden up to 2 3/16 in",
      "1/16 in of play left across each corner",
    ])
      expect(pockets).toContain(words);
    const sink = textOf(pagesOf("a sink"));
    for (const words of ["7.5 mm", "5 × 1.5 mm of 4-ply white rag", "3 mm of room round the sheet", "ruler"])
      expect(sink).toContain(words);
    // What is only recalled says so where it is read.
    expect(textOf(pagesOf("a deep sink in fractions"))).toContain(
      "or 16 of B-flute board (about 3 mm, from memory)",
    );
    expect(textOf(pagesOf("V-hinges on a riser"))).toContain("Spacers all round, 5/16 in high at least");
  });

  test("[HO17] every hinge's place is printed, over it or in a list, however many there are", () => {
    for (const wide of [7, 15, 22, 30, 41, 60, 90])
      for (const size of ["a4", "letter"] as const) {
        const job = jobOf(printed(wide, 22, 2, { holding: "hinges" }), { grammage: 298 });
        const pages = mountingSheet(job, size, typeface);
        expectAllClean(pages, size);
        const texts = pages.flatMap((page) => textsOf(page));
        const drawing = texts.slice(texts.indexOf("HEAD"), texts.indexOf("T-hinges")).join(", ");
        const { ruler } = job.composition.design;
        for (const place of job.plan.hinges.at)
          expect(` ${drawing}`, `${wide} in on ${size}`).toMatch(
            new RegExp(`[ ,]${plainText(bare(place, ruler))}(,| in)`),
          );
      }
  });

  test("[HO18] cautions stand where the hand needs them, before the act", () => {
    const texts = textsOf(
      pagesOf("T-hinges, in a rabbet that is too shallow").at(-1) ?? {
        width: mm(1),
        height: mm(1),
        marks: [],
        bookmark: "",
      },
    );
    const at = (words: string): number => texts.findIndex((text) => text.includes(words));
    expect(at("Paste the tab, never the sheet")).toBeGreaterThan(at("Tear three tabs"));
    expect(at("Paste the tab, never the sheet")).toBeLessThan(at("Starch paste on"));
    expect(at("Gloves, eyes: glass.")).toBeLessThan(at("Look for dust"));
    expect(at("Do not press; offset fittings")).toBeGreaterThan(at("Stack 7/16 in"));
    // Nothing may press it, so no step asks for a weight.
    expect(texts.join(" ")).not.toContain("weight; let");
    expect(textOf(pagesOf("everything never but pockets"))).toContain(
      "NEVER paste. NEVER hinges. NEVER edge strips.",
    );
  });

  test("[HO18] a caution has at most twelve words a sentence and no please", () => {
    const cautions = jobs.flatMap(([, job]) => {
      const speech = { ruler: job.composition.design.ruler, language: job.language };
      return job.plan.checks
        .filter(({ level }) => level === "warn")
        .map((check) => plainText(flat(holdCaution(check, speech))));
    });
    const { pasteTabOnly, stickToMount, free, freePaste, gloves, acrylic, noContact, doNotPress } =
      MOUNTING_SHEET;
    expect(cautions.length).toBeGreaterThan(2);
    for (const words of [
      ...cautions,
      pasteTabOnly,
      stickToMount,
      free,
      freePaste,
      gloves,
      acrylic,
      noContact,
      doNotPress,
    ]) {
      expect(words).not.toMatch(/please/i);
      for (const sentence of words.split(/[.:;] /))
        expect(sentence.split(" ").length, sentence).toBeLessThanOrEqual(12);
    }
  });

  test("[HO18] the stack stands against the rabbet, over or under by how much, or room to write both", () => {
    expect(textOf(pagesOf("T-hinges, in a rabbet that is too shallow"))).toContain(
      "Stack 7/16 in, rabbet 3/8 in: over by 1/16 in.",
    );
    expect(textOf(pagesOf("a sink"))).toContain("Stack 12 mm, rabbet 15 mm: under by 3 mm.");
    expect(textOf(pagesOf("a sink"))).not.toContain("write them here");
    expect(textOf(pagesOf("British words"))).toContain("Measure stack and rebate; write them here.");
  });

  test("[HO19] where nothing may hold it there is no step, no tick and no setting, only why and the way out", () => {
    const pages = pagesOf("nothing that holds");
    const texts = textOf(pages);
    expect(pages).toHaveLength(1);
    for (const words of [
      "DO NOT MOUNT",
      "Corner pockets: never pockets.",
      "T-hinges: never paste.",
      "Show less of the sheet",
    ])
      expect(texts).toContain(words);
    for (const words of ["Tape", "Lay the sheet", "Look at each corner", "leg"])
      expect(texts).not.toContain(words);
  });

  test("[HO20] what may touch it stands with its source and how sure it is; four corners are there to tick", () => {
    const texts = textOf(pagesOf("V-hinges on a riser"));
    for (const words of [
      "What may touch it",
      "In the one experiment neutral board faded it too",
      "CCAHA, ISO Standards for Housing Photographs",
      "read in a copy",
    ])
      expect(texts).toContain(words);
    for (const corner of ["top left", "top right", "bottom left", "bottom right"])
      expect(textOf(pagesOf("pockets"))).toContain(corner);
  });
});
