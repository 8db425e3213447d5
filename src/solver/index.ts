export { integerSolver } from "./highs.ts";
