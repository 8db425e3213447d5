import type { RealPoint } from "../types.ts";

/**
 * An outline cut into bands by the heights of its points. A band is halved only when the search asks
 * for it, and knows then which edges pass through it and where it is free of them from top to bottom.
 */

/** An edge that is not level, from its upper end to its lower one: the same for either way round. */
export interface Slope {
  readonly topX: number;
  readonly topY: number;
  readonly bottomX: number;
  readonly bottomY: number;
  /** How far x moves for each tick down. */
  readonly lean: number;
}

/** A stretch from left to right. */
export interface Span {
  readonly left: number;
  readonly right: number;
}

/** What lies between two neighbouring edges in a band that no point divides. */
export interface Lane {
  readonly left: Slope;
  readonly right: Slope;
}

/** Counts what has been done, so that a search can end in time. */
export interface Effort {
  spent: number;
}

export const xAt = (edge: Slope, y: number): number =>
  y === edge.bottomY ? edge.bottomX : edge.topX + (y - edge.topY) * edge.lean;

export class Band implements Span {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
  readonly #slopes: readonly Slope[];
  readonly #heights: readonly number[];
  readonly #effort: Effort;
  #halves: readonly [Band, Band] | null = null;
  #free: readonly Span[] | null = null;
  #lanes: readonly Lane[] | null = null;

  /** `heights` are those of the band's points, from its top to its bottom, each once. */
  constructor(slopes: readonly Slope[], heights: readonly number[], effort: Effort) {
    this.top = heights[0] ?? 0;
    this.bottom = heights.at(-1) ?? 0;
    this.#heights = heights;
    this.#effort = effort;
    const passing: Slope[] = [];
    let [left, right] = [Infinity, -Infinity];
    for (const slope of slopes) {
      if (slope.bottomY <= this.top || slope.topY >= this.bottom) continue;
      passing.push(slope);
      const upper = xAt(slope, Math.max(slope.topY, this.top));
      const lower = xAt(slope, Math.min(slope.bottomY, this.bottom));
      left = Math.min(left, upper, lower);
      right = Math.max(right, upper, lower);
    }
    effort.spent += slopes.length;
    this.left = left;
    this.right = right;
    this.#slopes = passing;
  }

  /** Whether no point lies between its top and its bottom, so that its edges all run through. */
  get undivided(): boolean {
    return this.#heights.length <= 2;
  }

  /** The upper and the lower half, by the number of heights. Only for a divided band. */
  get halves(): readonly [Band, Band] {
    if (this.#halves === null) {
      const middle = this.#heights.length >> 1;
      this.#halves = [
        new Band(this.#slopes, this.#heights.slice(0, middle + 1), this.#effort),
        new Band(this.#slopes, this.#heights.slice(middle), this.#effort),
      ];
    }
    return this.#halves;
  }

  /** Where the band is inside and free of edges over its whole height, from left to right; only spans wider than `least`. */
  free(least: number): readonly Span[] {
    this.#free ??= this.#findFree(least);
    return this.#free;
  }

  /**
   * Edges block the stretch that they pass over. Between two blocked stretches as many begin as have
   * ended, so beginnings and endings can be sorted apart; a free stretch is inside when an odd
   * number of the edges on its left reach the band's top.
   */
  #findFree(least: number): readonly Span[] {
    const begins = new Float64Array(this.#slopes.length);
    const ends = new Float64Array(this.#slopes.length);
    const endsFromTop: number[] = [];
    for (const [index, slope] of this.#slopes.entries()) {
      const upper = xAt(slope, Math.max(slope.topY, this.top));
      const lower = xAt(slope, Math.min(slope.bottomY, this.bottom));
      begins[index] = Math.min(upper, lower);
      ends[index] = Math.max(upper, lower);
      if (slope.topY <= this.top) endsFromTop.push(Math.max(upper, lower));
    }
    begins.sort();
    ends.sort();
    const endsOfParting = new Float64Array(endsFromTop).toSorted();
    this.#effort.spent += 4 * this.#slopes.length;
    let before = 0;
    const found: Span[] = [];
    for (let index = 1; index < begins.length; index++) {
      const left = ends[index - 1] ?? 0;
      const right = begins[index] ?? 0;
      if (right - left <= least) continue;
      while ((endsOfParting[before] ?? Infinity) <= left) before++;
      if (before % 2 === 1) found.push({ left, right });
    }
    return found;
  }

  /** What is inside, lane by lane from left to right. Only for an undivided band. */
  get lanes(): readonly Lane[] {
    if (this.#lanes === null) {
      const middle = (this.top + this.bottom) / 2;
      const sorted = this.#slopes
        .map((slope) => ({ slope, x: xAt(slope, middle) }))
        .toSorted((a, b) => a.x - b.x);
      const lanes: Lane[] = [];
      for (let index = 1; index < sorted.length; index += 2) {
        const left = sorted[index - 1];
        const right = sorted[index];
        if (left && right) lanes.push({ left: left.slope, right: right.slope });
      }
      this.#effort.spent += 4 * sorted.length;
      this.#lanes = lanes;
    }
    return this.#lanes;
  }
}

/** The whole outline as one band; null when it has no height. Every coordinate is counted from `origin`, to keep the figures small. */
export function bandOf(points: readonly RealPoint[], origin: RealPoint, effort: Effort): Band | null {
  const slopes: Slope[] = [];
  let from = points.at(-1);
  for (const to of points) {
    if (from !== undefined && from.y !== to.y) {
      const [upper, lower] = from.y < to.y ? [from, to] : [to, from];
      slopes.push({
        topX: upper.x - origin.x,
        topY: upper.y - origin.y,
        bottomX: lower.x - origin.x,
        bottomY: lower.y - origin.y,
        lean: (lower.x - upper.x) / (lower.y - upper.y),
      });
    }
    from = to;
  }
  const heights = [...new Float64Array(points.map(({ y }) => y - origin.y)).toSorted()];
  const distinct = heights.filter((height, index) => height !== heights[index - 1]);
  return distinct.length < 2 ? null : new Band(slopes, distinct, effort);
}
