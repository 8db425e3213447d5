export { benchFaults, type BenchFault } from "./check.ts";
export { type BenchJob, type BenchMat, requireSoundBatch } from "./job.ts";
export type { BenchBound, BenchPlan, Run } from "./plan.ts";
export { planBench } from "./planner.ts";
