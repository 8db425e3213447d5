import { holdingOfWay, type HoldPlan } from "../assembly/index.ts";
import { holdWork, inPractice, practiceFor, type PracticeDocument, processOf } from "../show/index.ts";
import { ofEachWork, type ReadWork } from "./works.ts";

/** How each work is held, in their order; null for a mat without a print, and where what is known of it cannot be read. */
export const planHolds = (
  works: readonly ReadWork[],
  practice: PracticeDocument,
): ReturnType<typeof ofEachWork<HoldPlan>> =>
  ofEachWork(works, ({ work, composition, glazing }) => {
    const habits = practiceFor(practice, composition.design.ruler.unit);
    if (!habits.ok) return inPractice(habits.problems);
    return holdWork(composition, work.design.held ?? {}, processOf(work), {
      ...habits.value,
      glazing,
    });
  });

/** A work whose papers all say what does hold it, where that is not what was asked. */
export function asHeld(work: ReadWork, plan: HoldPlan | null): ReadWork {
  if (plan === null || plan.way === null) return work;
  const { composition } = work;
  const holding = holdingOfWay(plan.way);
  return holding === composition.design.holding
    ? work
    : { ...work, composition: { ...composition, design: { ...composition.design, holding } } };
}
