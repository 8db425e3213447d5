export { cuttingFaults } from "./check.ts";
export type { CuttingCheck } from "./checks.ts";
export type { CuttingFault } from "./faults.ts";
export {
  type CuttingJob,
  isWorthKeeping,
  LONGEST_SIDE,
  MOST_ENTRIES,
  MOST_PIECES,
  type PieceWanted,
  type StockSheet,
  usableOf,
} from "./job.ts";
export type {
  BoundArgument,
  CostBound,
  Cut,
  CuttingPlan,
  Leftover,
  Placement,
  PlannedSheet,
  Source,
} from "./plan.ts";
export type { IntegerProgramme, IntegerSolver } from "./integer.ts";
export { type CuttingProgress, type PlanOptions, planCutting } from "./planner.ts";
