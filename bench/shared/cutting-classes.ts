import { CLASS_PIECES, classJob } from "./classes.ts";
import { cpuClock, type Goal, ratio, timedPlan, total } from "./measure.ts";
import { packerCost } from "./packer.ts";

const GOALS = new Map([
  [0.1, "1.010"],
  [1, "1.003"],
  [10, "1.000"],
]);

/**
 * One fresh job of each class and size. What is best known of them is the best of all runs here, and
 * the least is known where the bound meets it.
 */
export function classes(quick: boolean): Goal[] {
  const budgets = quick ? [0.1, 1] : [0.1, 1, 10];
  const sizes = quick ? [40, 100] : CLASS_PIECES;
  console.log(
    `\n  ten classes, ${10 * sizes.length} jobs: sheets at ${budgets.join(", ")} s (packer), bound`,
  );
  const ours = budgets.map(() => 0);
  const packer = budgets.map(() => 0);
  let best = 0;
  let bound = 0;
  let proven = 0;
  for (let number = 1; number <= 10; number++) {
    const runs = sizes.map((pieces) => {
      const job = classJob(number, pieces, 1);
      const plans = budgets.map((seconds) => timedPlan(job, seconds).plan);
      const costs = plans.map(({ cost }) => cost);
      return {
        costs,
        beside: budgets.map((seconds) => packerCost(job, seconds, cpuClock)),
        best: Math.min(...costs),
        bound: Math.max(
          ...plans.map((plan) => (plan.proven ? plan.cost : Math.ceil(plan.bound.cost - 1e-6))),
        ),
      };
    });
    const sums = (of: "costs" | "beside") =>
      budgets.map((_, index) => total(runs.map((run) => run[of][index] ?? 0)));
    const [here, there] = [sums("costs"), sums("beside")];
    here.forEach((sum, index) => (ours[index] = (ours[index] ?? 0) + sum));
    there.forEach((sum, index) => (packer[index] = (packer[index] ?? 0) + sum));
    best += total(runs.map((run) => run.best));
    bound += total(runs.map((run) => run.bound));
    proven += runs.filter((run) => run.best === run.bound).length;
    const cells = here.map((sum, index) => `${sum} (${there[index]})`).join(", ");
    console.log(
      `  class ${String(number).padStart(2)}: ${cells}; bound ${total(runs.map((run) => run.bound))}`,
    );
  }
  console.log(
    `  all: best found ${best}, bound ${bound}, ${proven} of ${10 * sizes.length} surely the least`,
  );
  return budgets.map((seconds, index) => ({
    what: `ten classes at ${seconds} s, sheets over the best found`,
    goal: GOALS.get(seconds) ?? "",
    ours: ratio(ours[index] ?? 0, best),
    beside: `over the bound ${ratio(ours[index] ?? 0, bound)}; packer ${ratio(packer[index] ?? 0, best)}`,
  }));
}
