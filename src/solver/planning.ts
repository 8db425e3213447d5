import {
  type CuttingJob,
  type CuttingPlan,
  type CuttingProgress,
  type IntegerSolver,
  planCutting,
} from "../plans/index.ts";

/** What a worker is asked: to plan one material. */
export interface PlanningOrder {
  readonly job: CuttingJob;
  readonly seconds: number;
  readonly seed: number;
  /** Shared with whoever asks, who stops the work by setting its first number; null: it cannot be stopped. */
  readonly stop: Int32Array<SharedArrayBuffer> | null;
}

/** What a worker says: how far it has come, at most some ten times a second, and at last the plan. */
export type PlanningWord =
  | { readonly says: "progress"; readonly progress: CuttingProgress }
  | { readonly says: "plan"; readonly plan: CuttingPlan };

/** Plans what was ordered; the same in a worker of Node and of a page. Throws as `planCutting` does. */
export function planOrdered(
  { job, seconds, seed, stop }: PlanningOrder,
  solver: IntegerSolver,
  clock: () => number,
  say: (word: PlanningWord) => void,
): void {
  const plan = planCutting(job, {
    seconds,
    seed,
    clock,
    solver,
    stop: () => stop !== null && Atomics.load(stop, 0) !== 0,
    progress: (progress) => say({ says: "progress", progress }),
  });
  say({ says: "plan", plan });
}
