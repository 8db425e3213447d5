import type { FramePlan } from "../assembly/index.ts";
import type { Typeface } from "../drawings/index.ts";
import { type ClosingStack, mountingSheet, type Page, type PaperSize } from "../papers/index.ts";
import { type Packeted, workWords } from "./bench-sheets.ts";
import type { Prepared } from "./order.ts";

/** The mounting and closing sheet of every work that is cut and has a print, one after the other. */
export function* mountingPages(
  { works, holds, framed }: Prepared,
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
        glazing: one.glazing?.kind ?? null,
        stack: closingStack(framed[index]),
        house,
        planWords,
        language: practice.language,
      },
      size,
      typeface,
    );
  }
}

/** Null where the rabbet's depth is not known: both are then measured at the bench. */
function closingStack(plan: FramePlan | null | undefined): ClosingStack | null {
  const rabbet = plan?.frame.profile.depth ?? null;
  return plan === null || plan === undefined || rabbet === null ? null : { stack: plan.stack.depth, rabbet };
}
