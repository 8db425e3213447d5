export { integerSolver } from "./highs.ts";
export { type PlanningOrder, type PlanningWord, planOrdered } from "./planning.ts";
