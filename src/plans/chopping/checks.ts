import type { Length } from "../../lengths/index.ts";

/** What a chop plan has to say about its job, as records; `words` makes the sentences. */
export type ChoppingCheck =
  /** No length is long enough. `longest` is what the longest holds between its ends; null: there is no length at all. */
  | {
      readonly level: "stop";
      readonly code: "rail-too-long";
      readonly rail: number;
      readonly longest: Length | null;
    }
  /** The lengths run out: `missing` of `wanted` are not in the plan. */
  | {
      readonly level: "stop";
      readonly code: "lengths-short";
      readonly rail: number;
      readonly missing: number;
      readonly wanted: number;
    };
