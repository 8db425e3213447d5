export * from "./boxes.ts";
export { checkPacking, type PackingFault } from "./check.ts";
export * from "./job.ts";
export { type Crate, type Packed, packCrates, type PackingPlan, type Room } from "./pack.ts";
