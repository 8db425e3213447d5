export { cannotHang } from "./cannot-hang.ts";
export { wallFaults } from "./check.ts";
export type { WallFault } from "./fault.ts";
export {
  type Balance,
  type FrameWanted,
  LARGEST_AT,
  type LargestAt,
  type Obstacle,
  type WallBox,
  type WallCheck,
  type WallJob,
  type WallPlan,
  type WallRule,
} from "./job.ts";
export { planWall } from "./plan-wall.ts";
