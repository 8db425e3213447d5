import type { Run } from "../../src/drawings/index.ts";
import { pdfTypeface } from "../../src/drawings/writers/pdf/index.ts";
import { benchSheet, type BenchSheetJob, type Page } from "../../src/papers/index.ts";
import { flatMarks, type TextMark, textsOf } from "./ink.ts";

export const typeface = pdfTypeface();
/** A job's pages. */
export const sheetOf = (job: BenchSheetJob, paper: "a4" | "letter" = "letter"): readonly Page[] =>
  benchSheet(job, paper, typeface);
/** All that pages say, a text a line. */
export const textOf = (pages: readonly Page[]): string => pages.flatMap((page) => textsOf(page)).join("\n");

export const textMarks = (page: Page): readonly TextMark[] =>
  flatMarks(page.marks).filter((mark): mark is TextMark => mark.kind === "text");
/** A figure's value in its own unit, from its parts. */
export const valueOf = (run: Extract<Run, { kind: "fraction" }>): number =>
  Number(run.whole || "0") + (run.numerator === "" ? 0 : Number(run.numerator) / Number(run.denominator));
