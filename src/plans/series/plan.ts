import type { Side, Sides, Size } from "../../geometry/index.ts";
import type { Length } from "../../lengths/index.ts";

/** For every number of sizes, the sizes that serve the series at the least cost. */
export interface SeriesPlan {
  /**
   * From the fewest sizes that serve all works to the number beyond which no further size saves
   * anything, each step one size more. Empty where no work is served.
   */
  readonly steps: readonly SeriesStep[];
  /** No fewer sizes than this serve all works that any size serves. */
  readonly fewest: number;
  /** Works that no size serves; the steps are for the others. */
  readonly unserved: readonly { readonly work: number; readonly why: Misfit | null }[];
}

/** One number of sizes. */
export interface SeriesStep {
  readonly sizes: readonly ChosenSize[];
  /** Of all works served. */
  readonly cost: number;
  /** No choice of as many sizes costs less. */
  readonly bound: number;
  /** True only when the cost reaches the bound. */
  readonly proven: boolean;
  /** What the last size saves against one size fewer; null for the first step. */
  readonly saving: number | null;
}

export interface ChosenSize {
  readonly size: number;
  readonly works: readonly { readonly work: number; readonly fit: Fit }[];
}

/** How a work lies in an outer size. */
export interface Fit {
  /** As it hangs: the size's own, or turned by a quarter. */
  readonly outer: Size;
  readonly borders: Sides;
}

/** Why a size does not serve a work: of all sizes, either way up, the one that comes nearest. */
export interface Misfit {
  readonly size: number;
  readonly outer: Size;
  /** "narrow", "wide": past the limits for borders. "paper": the paper would reach past the board. */
  readonly code: "narrow" | "wide" | "paper";
  readonly side: Side;
  readonly border: Length;
  readonly limit: Length;
}
