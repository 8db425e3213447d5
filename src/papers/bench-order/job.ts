import type { Hand } from "../../assembly/index.ts";
import type { Side, Size } from "../../geometry/index.ts";
import type { Length, Ruler } from "../../lengths/index.ts";
import type { Language } from "../../words/index.ts";
import type { Bench, House, PlanWords } from "../job.ts";

/** Everything that a day's bench order says. */
export interface BenchOrderJob {
  /** Works that are cut. */
  readonly works: number;
  /** By size, the largest first. */
  readonly sizes: readonly SizeOfDay[];
  /** Mats that are marked alike, in the order in which they are first cut. */
  readonly marked: readonly MarkedAlike[];
  readonly runs: readonly RunOfDay[];
  /** No order sets the stop fewer times. */
  readonly bound: number;
  /** How often it is set when each work is cut by itself, one after another. */
  readonly oneByOne: number;
  readonly bench: Bench;
  readonly house: House;
  readonly plan: PlanWords;
  readonly ruler: Ruler;
  readonly language: Language;
}

/** All blanks of one size and board. */
export interface SizeOfDay {
  readonly size: Size;
  /** Of the works that it is for. */
  readonly ruler: Ruler;
  readonly board: string;
  readonly blanks: readonly number[];
  /** Of them, those that are there only when a window has fallen, with the blank that it falls out of. */
  readonly later: readonly { readonly blank: number; readonly host: number }[];
}

/** Mats with one size and the same borders: what is marked on one is marked on all. */
export interface MarkedAlike {
  readonly size: Size;
  readonly ruler: Ruler;
  readonly blanks: readonly number[];
  readonly titles: readonly string[];
}

/** What is cut while the stop stays. */
export interface RunOfDay {
  /** Of the works that are cut in it: what the figure is marked and set on. */
  readonly ruler: Ruler;
  readonly set: Length;
  readonly scale: Length;
  readonly cuts: readonly CutOfDay[];
}

/** One mat at one setting; its copies together. */
export interface CutOfDay {
  readonly title: string;
  /** From the lowest up, and how many the work has. */
  readonly mat: number;
  readonly mats: number;
  readonly blanks: readonly number[];
  readonly sides: readonly Side[];
  /** Beside the sides, where each lies on the back. */
  readonly hands: readonly Hand[];
  /** Whether it is whole now, so that its window falls out. */
  readonly falls: boolean;
  /** Blanks that come out of what has fallen, with their host and size; only where the whole work's mats are cut. */
  readonly outs: readonly OutOfDay[];
}

/** A blank that comes out of a window. */
export interface OutOfDay {
  readonly host: number;
  readonly blank: number;
  readonly size: Size;
  readonly ruler: Ruler;
}
