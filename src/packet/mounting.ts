import type { Typeface } from "../drawings/index.ts";
import { mountingSheet, type Page, type PaperSize } from "../papers/index.ts";
import { type Packeted, workWords } from "./bench-sheets.ts";
import type { Prepared } from "./order.ts";

/** The mounting and closing sheet of every work that is cut and has a print, one after the other. */
export function* mountingPages(
  { works, holds }: Prepared,
  { practice, house, plan: planWords }: Packeted,
  size: PaperSize,
  typeface: Typeface,
): Generator<Page> {
  for (const [index, one] of works.entries()) {
    const plan = holds[index];
    if (plan === null || plan === undefined || one.stopped) continue;
    const { composition } = one;
    yield* mountingSheet(
      {
        work: workWords(one),
        composition,
        plan,
        glazing: practice.glazing?.kind ?? null,
        stack: null,
        house,
        planWords,
        language: practice.language,
      },
      size,
      typeface,
    );
  }
}
