import type { Length } from "../../lengths/index.ts";

/** One mat of the batch, as the straight bench sees it. */
export interface BenchMat {
  /** What the cutter's scale must read for its cuts, each figure once; they may be cut in any order. */
  readonly settings: readonly Length[];
  /**
   * Places of the mats that must be cut whole before any cut of this one: those above it in its work,
   * and those out of whose windows its blank comes.
   */
  readonly after: readonly number[];
  /** Its board is pasted up on the day and must dry: it comes after every mat that need not wait for it. */
  readonly dries: boolean;
}

/** The mats of a day. */
export interface BenchJob {
  readonly mats: readonly BenchMat[];
}

/** The most figures that one mat may need, many windows included. */
const MOST_FIGURES = 16;
/** The most mats in one batch: past it neither the order nor its paper is of use to a hand. */
const MOST_MATS = 100_000;

/**
 * Refuses a batch that no order can exist for: mats that wait for one another in a ring, a place that
 * is no mat, a mat without a cut, with one figure twice or more figures than any mat has, too many mats. Throws RangeError.
 */
export function requireSoundBatch({ mats }: BenchJob): void {
  if (mats.length > MOST_MATS) throw new RangeError(`${mats.length} mats in one batch`);
  mats.forEach(({ settings, after }, index) => {
    if (settings.length === 0) throw new RangeError(`mat ${index}: no cut`);
    if (settings.length > MOST_FIGURES) throw new RangeError(`mat ${index}: ${settings.length} figures`);
    if (new Set(settings).size < settings.length) throw new RangeError(`mat ${index}: one figure twice`);
    if (after.some((other) => mats[other] === undefined))
      throw new RangeError(`mat ${index}: waits for no mat`);
  });
}

/**
 * What each mat waits for, drying included: one that dries, and whatever waits for it, comes after all
 * the rest.
 */
export function waitsOf({ mats }: BenchJob): readonly (readonly number[])[] {
  const order = inTurn(mats.map(({ after }) => after));
  const late = mats.map(({ dries }) => dries);
  for (const mat of order) {
    if (mats[mat]?.after.some((other) => late[other] === true) === true) late[mat] = true;
  }
  const early = mats.flatMap((_, index) => (late[index] === true ? [] : [index]));
  return mats.map(({ after, dries }) => (dries ? [...new Set([...after, ...early])] : after));
}

/** All places so that each comes after those it waits for. Throws RangeError where some wait in a ring. */
export function inTurn(after: readonly (readonly number[])[]): readonly number[] {
  const waits = after.map((others) => new Set(others).size);
  const next = after.map((): number[] => []);
  after.forEach((others, index) => {
    for (const other of new Set(others)) next[other]?.push(index);
  });
  const order = waits.flatMap((count, index) => (count === 0 ? [index] : []));
  for (let place = 0; place < order.length; place++) {
    for (const follower of next[order[place] ?? -1] ?? []) {
      const left = (waits[follower] ?? 0) - 1;
      waits[follower] = left;
      if (left === 0) order.push(follower);
    }
  }
  if (order.length < after.length) throw new RangeError("mats that wait for one another");
  return order;
}
