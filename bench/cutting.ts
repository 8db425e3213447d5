/**
 * Cutting plans, held against their own proven bound and against a shelf packer on the same job in
 * the same run. Shows of invented works with offcuts, and pieces of many sizes; all seeded. Wanted:
 * the first plan of a thousand works in 0.1 s, 5,000 pieces in 400 sizes within 10 s.
 */
import { type CuttingJob, planCutting } from "../src/plans/index.ts";
import { manySizes, showJob } from "./shared/cutting-jobs.ts";
import { shelfCost } from "./shared/shelves.ts";

const clock = (): number => performance.now();

function timed(job: CuttingJob, seconds: number) {
  const start = clock();
  const plan = planCutting(job, { seconds, seed: 1, clock });
  return { plan, took: (clock() - start) / 1000 };
}

const share = (cost: number, of: number): string => (of === 0 ? "   -  " : (cost / of).toFixed(4));

function show(name: string, job: CuttingJob, seconds: number): void {
  const first = timed(job, 0);
  const { plan, took } = timed(job, seconds);
  console.log(
    `  ${name.padEnd(28)} first ${share(first.plan.cost, plan.bound.cost)} of the bound in ${first.took.toFixed(2)} s;` +
      ` plan ${share(plan.cost, plan.bound.cost)} in ${took.toFixed(2)} s${plan.proven ? " (proven)" : ""};` +
      ` shelves ${share(shelfCost(job), plan.bound.cost)}`,
  );
}

// The first plan of a run would also pay for compiling the planner.
timed(showJob(40, 99, true), 0.5);

for (const works of [10, 40, 200, 1000]) {
  const seconds = works <= 40 ? 1 : works === 200 ? 2 : 3;
  for (const seed of [1, 2]) {
    show(`${works} works, seed ${seed}`, showJob(works, seed, false), seconds);
    show(`${works} works, windows too`, showJob(works, seed, true), seconds);
  }
}
for (const seed of [1, 2, 3]) show(`100 pieces, 100 sizes`, manySizes(100, 100, seed), 1);
show("5,000 pieces, 400 sizes", manySizes(5000, 400, 1), 10);
