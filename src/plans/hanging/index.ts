export { type WallFault, wallFaults } from "./check.ts";
export type { FrameWanted, Obstacle, WallBox, WallCheck, WallJob, WallPlan, WallRule } from "./job.ts";
export { planWall } from "./plan-wall.ts";
