export { choppingFaults } from "./check.ts";
export type { ChoppingCheck } from "./checks.ts";
export type { ChoppingFault } from "./faults.ts";
export {
  type FrameToMake,
  mitreKerf,
  type PlaceInFrame,
  placeInFrame,
  railsOfFrames,
  type SawStop,
  sawStops,
} from "./frames.ts";
export type { ChoppingJob, FrameOfRail, RailSide, RailWanted, StockLength } from "./job.ts";
export type { ChoppingArgument, ChoppingBound, ChoppingPlan, PlacedRail, Stick } from "./plan.ts";
export { planChopping } from "./planner.ts";
