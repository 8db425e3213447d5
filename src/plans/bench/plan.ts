import type { Length } from "../../lengths/index.ts";

/** The order in which a batch is cut. */
export interface BenchPlan {
  readonly runs: readonly Run[];
  readonly bound: BenchBound;
  /** True only when no order can set the stop fewer times. */
  readonly proven: boolean;
}

/** What is cut while the stop stays where it is. */
export interface Run {
  /** What the scale reads. */
  readonly setting: Length;
  /** Places of the mats, in the order in which they are taken up. */
  readonly mats: readonly number[];
}

/** No order sets the stop fewer than `runs` times, the first setting counted; `how` names the argument. */
export interface BenchBound {
  readonly runs: number;
  /**
   * "figures": every figure must be set once. "turns": some must be set again, since each has to come
   * both before and after another. "pairs": figures that alternate, taken apart into pairs, need so many.
   * "orders": every order that could be shorter was tried.
   */
  readonly how: "figures" | "turns" | "pairs" | "orders";
}
