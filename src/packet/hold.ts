import type { HoldPlan } from "../assembly/index.ts";
import { holdWork, practiceFor, type PracticeDocument } from "../show/index.ts";
import type { ComposedWork, RowProblem } from "./works.ts";

/** How each work is held, in their order; null for a mat without a print, and where what is known of it cannot be read. */
export function planHolds(
  works: readonly ComposedWork[],
  practice: PracticeDocument,
): { readonly plans: readonly (HoldPlan | null)[]; readonly problems: readonly RowProblem[] } {
  const problems: RowProblem[] = [];
  const plans = works.map(({ row, work, composition }) => {
    const habits = practiceFor(practice, composition.design.ruler.unit);
    if (!habits.ok) return null;
    const { held = {}, print } = work.design;
    const plan = holdWork(composition, held, work.process ?? print?.process ?? "", habits.value);
    if (plan.ok) return plan.value;
    problems.push(...plan.problems.map((problem) => ({ row, problem })));
    return null;
  });
  return { plans, problems };
}
