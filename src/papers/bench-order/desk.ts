import type { Speech } from "../../words/index.ts";
import type { Desk } from "../paper.ts";
import type { BenchOrderJob } from "./job.ts";

/** What every part of one bench order is laid out with. */
export interface OrderDesk extends Desk {
  /** With every text already printable. */
  readonly job: BenchOrderJob;
  readonly speech: Speech;
  /** Signs of the names that the type lacks. */
  readonly missing: number;
}
