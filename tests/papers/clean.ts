import { expect } from "vitest";
import type { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import type { Page, PaperSize } from "../../src/papers/index.ts";
import { flatMarks, outside, struckThrough, textsOf, touching, wordInks } from "./ink.ts";

/** No word's ink meets another's, no line strikes a word, nothing leaves the page. */
export function expectClean(page: Page, paper: PaperSize, typeface: ReturnType<typeof pdfTypeface>): void {
  const marks = flatMarks(page.marks);
  const inks = wordInks(marks, typeface);
  expect(touching(inks)).toEqual([]);
  expect(struckThrough(marks, inks)).toEqual([]);
  expect(outside(page, paper, typeface)).toEqual([]);
}

/** All that some pages say, in one line. */
export const textOf = (pages: readonly Page[]): string => pages.flatMap((page) => textsOf(page)).join(" ");
