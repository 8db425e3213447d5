import type { Length } from "../../lengths/index.ts";
import { LONGEST_SIDE, MOST_ENTRIES, MOST_PIECES } from "../cutting/index.ts";

/** A kind of moulding length that can be chopped: bought, or an offcut of the rack (one copy, cost nought). */
export interface StockLength {
  readonly name: string;
  readonly length: Length;
  /** What one costs, in the money of the practice; nought or more. */
  readonly cost: number;
  /** How many there are; null: as many as wanted. */
  readonly copies: number | null;
}

export type RailSide = "head" | "right" | "foot" | "left";

/** A rail that is wanted, `count` times. */
export interface RailWanted {
  readonly name: string;
  /** From long point to long point. */
  readonly length: Length;
  /** Along the lip, from short point to short point; null: not known. */
  readonly shortPoint: Length | null;
  readonly count: number;
  /** The frames that its copies belong to; null: to none. */
  readonly frame: FrameOfRail | null;
}

/** Copy c of the rail belongs to frame number `floor(c / each)` of `kind`, and lies along `sides[c % each]` where that is known. */
export interface FrameOfRail {
  /** Its place in the job's `frames`. */
  readonly kind: number;
  /** How many of the rail one frame has. */
  readonly each: number;
  /** As many as `each`, or none. */
  readonly sides: readonly RailSide[];
}

/** One moulding's job: what is wanted and what it can be chopped from. */
export interface ChoppingJob {
  readonly lengths: readonly StockLength[];
  readonly rails: readonly RailWanted[];
  /** The names of the kinds of frame that rails belong to. */
  readonly frames: readonly string[];
  /** What is lost between two neighbours, along the length. */
  readonly kerf: Length;
  /** Lost at each of the two ends of a length. */
  readonly waste: Length;
}

const long = (length: number): boolean =>
  Number.isSafeInteger(length) && length > 0 && length <= LONGEST_SIDE;
const whole = (count: number): boolean => Number.isSafeInteger(count) && count >= 0;

/**
 * Refuses a job that no planner can read: a length that is not above nought or past 20 m, a count or
 * a price that is not a number of its kind, too many rails, a rail of a frame that is not there.
 * Throws RangeError with the entry's name. Demand that cannot be met is no such fault: it is planned
 * as far as it goes, and a check names the rail.
 */
export function requireSoundChoppingJob(job: ChoppingJob): void {
  for (const { name, length, cost, copies } of job.lengths) {
    if (!long(length)) throw new RangeError(`length ${name}: length`);
    if (!Number.isFinite(cost) || cost < 0) throw new RangeError(`length ${name}: cost`);
    if (copies !== null && !whole(copies)) throw new RangeError(`length ${name}: copies`);
  }
  let rails = 0;
  for (const { name, length, count, frame } of job.rails) {
    if (!long(length)) throw new RangeError(`rail ${name}: length`);
    if (!whole(count)) throw new RangeError(`rail ${name}: count`);
    if (frame !== null && !soundFrame(job, frame)) throw new RangeError(`rail ${name}: frame`);
    rails += count;
  }
  if (rails > MOST_PIECES) throw new RangeError(`${rails} rails in one job`);
  if (job.lengths.length > MOST_ENTRIES || job.rails.length > MOST_ENTRIES)
    throw new RangeError("too many entries in one job");
  if (!whole(job.kerf)) throw new RangeError("kerf");
  if (!whole(job.waste)) throw new RangeError("waste");
}

const soundFrame = (job: ChoppingJob, { kind, each, sides }: FrameOfRail): boolean =>
  whole(kind) &&
  kind < job.frames.length &&
  whole(each) &&
  each > 0 &&
  (sides.length === 0 || sides.length === each);
