import type { Typeface } from "../drawings/index.ts";
import { frameSheet, type Page, type PaperSize } from "../papers/index.ts";
import { type Packeted, workWords } from "./bench-sheets.ts";
import type { Prepared } from "./order.ts";

/** The frame sheet of every framed work, one after the other; also of those that cannot be framed so, which say why. */
export function* frameSheetPages(
  { works, holds, framed }: Prepared,
  { practice, house, plan: planWords }: Packeted,
  size: PaperSize,
  typeface: Typeface,
): Generator<Page> {
  for (const [index, one] of works.entries()) {
    const plan = framed[index] ?? null;
    // What cannot be cut has no package to frame, unless it is the frame that stops it.
    if (plan === null || (one.stopped && one.frameStops.length === 0)) continue;
    yield* frameSheet(
      {
        work: workWords(one),
        composition: one.composition,
        plan,
        held: holds[index] ?? null,
        house,
        planWords,
        language: practice.language,
      },
      size,
      typeface,
    );
  }
}
