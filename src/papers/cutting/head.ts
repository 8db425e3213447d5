import { type Length, mm } from "../../lengths/index.ts";
import type { PlannedSheet } from "../../plans/cutting/index.ts";
import { CUT_PLAN, lengthFact, needsFact, sheetFact } from "../../words/cut-plan.ts";
import { unitWords } from "../../words/papers.ts";
import { type Fact } from "../tags.ts";
import type { CuttingDesk } from "./desk.ts";
import { longestCutOf } from "./fence.ts";
import { longFirst } from "./first-band.ts";
import { voidFacts } from "../head.ts";

/** Unit, sheet, what the plan needs of it, its longest cut, and what is void. */
export function sheetFacts(desk: CuttingDesk, sheet: PlannedSheet): readonly Fact[] {
  const { ruler } = desk.speech;
  const stock = sheet.from.kind === "stock" ? desk.job.job.sheets[sheet.from.sheet] : undefined;
  const size =
    sheet.size.width >= sheet.size.height
      ? { width: sheet.size.height, height: sheet.size.width }
      : sheet.size;
  const longest = longestCutOf(sheet);
  return [
    { name: CUT_PLAN.unit, value: unitWords(ruler) },
    { name: CUT_PLAN.sheet, value: sheetFact(size, stock?.copies === null, ruler) },
    { name: CUT_PLAN.needs, value: needsFact(longFirst(sheet), ruler) },
    ...(longest > 0 ? [{ name: CUT_PLAN.longest, value: lengthFact(longest, ruler) }] : []),
    ...voidFacts(desk.job.planWords),
  ];
}

/** What a page needs that stands by itself beside its sheet's layout. */
export const pageFacts = (desk: CuttingDesk, sheet: PlannedSheet): readonly Fact[] =>
  sheetFacts(desk, sheet).filter(({ name }) => name !== CUT_PLAN.needs);

/** What comes off each edge of the sheet before anything is cut; nought of a window that fell out. */
export const trimOf = (desk: CuttingDesk, { from }: PlannedSheet): Length =>
  from.kind === "stock" ? (desk.job.job.sheets[from.sheet]?.trim ?? mm(0)) : mm(0);
