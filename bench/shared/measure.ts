import { type CuttingJob, type CuttingPlan, planCutting } from "../../src/plans/index.ts";

/** Milliseconds of processor time of this process, its compiler and memory keeper included: other work on the machine does not count. */
export const cpuClock = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

export interface Timed {
  readonly plan: CuttingPlan;
  /** Processor seconds. */
  readonly took: number;
}

export function timedPlan(job: CuttingJob, seconds: number): Timed {
  const start = cpuClock();
  const plan = planCutting(job, { seconds, seed: 1, clock: cpuClock });
  return { plan, took: (cpuClock() - start) / 1000 };
}

export const total = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0);

/** A ratio to four places; "-" where there is nothing to hold against. */
export const ratio = (of: number, to: number): string =>
  to > 0 ? (of / to).toFixed(4) : of > 0 ? "-" : "1.0000";

/** One line of what is to be reached. */
export interface Goal {
  readonly what: string;
  readonly goal: string;
  readonly ours: string;
  /** What is known to be the least, or what else was run on the same jobs. */
  readonly beside: string;
}

export function printGoals(goals: readonly Goal[]): void {
  console.log("\n  what to reach");
  const widths = (["what", "goal", "ours"] as const).map((key) =>
    Math.max(key.length, ...goals.map((one) => one[key].length)),
  );
  for (const one of [{ what: "", goal: "goal", ours: "ours", beside: "beside it" }, ...goals]) {
    const cells = [one.what, one.goal, one.ours].map((cell, index) => cell.padEnd(widths[index] ?? 0));
    console.log(`  ${cells.join("   ")}   ${one.beside}`);
  }
}
