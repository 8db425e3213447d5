import { holdingOfWay, type HoldPlan } from "../assembly/index.ts";
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

/** A work whose papers all say what does hold it, where that is not what was asked. */
export function asHeld(work: ComposedWork, plan: HoldPlan | null): ComposedWork {
  if (plan === null || plan.way === null) return work;
  const { composition } = work;
  const holding = holdingOfWay(plan.way);
  return holding === composition.design.holding
    ? work
    : { ...work, composition: { ...composition, design: { ...composition.design, holding } } };
}
