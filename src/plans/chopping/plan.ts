import type { Length } from "../../lengths/index.ts";
import type { ChoppingCheck } from "./checks.ts";

/** A whole chop plan: which lengths are used, and which rails come out of each. */
export interface ChoppingPlan {
  /** Those alike together, the fullest first. */
  readonly sticks: readonly Stick[];
  /** Of all lengths used. */
  readonly cost: number;
  readonly bound: ChoppingBound;
  /** True only when no plan of any kind can cost less. */
  readonly proven: boolean;
  /** Of the frames whose rails are all in the plan, how many have them on one stick. */
  readonly frames: { readonly onOneStick: number; readonly of: number };
  /** For each rail of the job, how many could not be made. */
  readonly missing: readonly number[];
  readonly checks: readonly ChoppingCheck[];
}

/** One length of moulding as it is chopped. */
export interface Stick {
  /** Its place in the job's `lengths`. */
  readonly length: number;
  /** From one end to the other; those of one frame follow one another: head, right, foot, left. */
  readonly rails: readonly PlacedRail[];
  /** The rails, a kerf between each two, and the waste at both ends. */
  readonly used: Length;
  /** What the length has beyond what is used. */
  readonly left: Length;
}

export interface PlacedRail {
  readonly rail: number;
  /** From 0, below the rail's count. */
  readonly copy: number;
  /** How far its first long point lies from the stick's end. */
  readonly at: Length;
}

/** No plan costs less than `cost`; `how` names the argument. */
export interface ChoppingBound {
  readonly cost: number;
  readonly how: ChoppingArgument;
}

/** "none": nothing better than nought is known. "every": so few rails that every way was reckoned. */
export type ChoppingArgument = "none" | "length" | "patterns" | "every";
