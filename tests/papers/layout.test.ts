import fc from "fast-check";
import { expect, test } from "vitest";
import { isStopped } from "../../src/assembly/index.ts";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { benchSheet } from "../../src/papers/index.ts";
import { anyCase } from "./family.ts";
import { textsOf } from "./ink.ts";
import { expectClean } from "./clean.ts";

const typeface = pdfTypeface();
const RUNS = { numRuns: 80 };

test("[PP1] [PP3] no word's ink meets another's, no line strikes a word, nothing leaves the content box", () => {
  fc.assert(
    fc.property(anyCase, ({ job, paper }) => {
      for (const page of benchSheet(job, paper, typeface)) {
        expectClean(page, paper, typeface);
      }
    }),
    RUNS,
  );
});

test("[PP19] a work that cannot be made shows DO NOT CUT and nothing to set, read or tick; any other shows no such panel", () => {
  fc.assert(
    fc.property(anyCase, ({ job, paper }) => {
      const pages = benchSheet(job, paper, typeface);
      const texts = pages.flatMap((page) => textsOf(page));
      const stopped = isStopped(job.composition);
      expect(texts.includes("DO NOT CUT")).toBe(stopped);
      expect(texts.some((text) => /\d(st|nd|rd|th) stop|scale reads/.test(text))).toBe(!stopped);
    }),
    RUNS,
  );
});
