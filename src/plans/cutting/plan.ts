import type { Box, Point, Size } from "../../geometry/index.ts";
import type { Length } from "../../lengths/index.ts";
import type { CuttingCheck } from "./checks.ts";

/** A whole cutting plan: which sheets are used, what lies on each, and in which order to cut it. */
export interface CuttingPlan {
  /** Bought sheets and offcuts first, alike ones together; layouts in drop-outs after the sheet of their host. */
  readonly sheets: readonly PlannedSheet[];
  /** Of all sheets used. */
  readonly cost: number;
  /** Sheets of the stock used, offcuts included, drop-outs not. */
  readonly sheetsUsed: number;
  readonly bound: CostBound;
  /** True only when no plan of any kind by guillotine cuts can cost less. */
  readonly proven: boolean;
  /** How often the fence is set, over all sheets, each sheet cut by itself. */
  readonly settings: number;
  /** For each piece of the job, how many could not be made. */
  readonly missing: readonly number[];
  readonly checks: readonly CuttingCheck[];
}

/** Where a layout is cut from: a sheet of the stock, or the window that fell out of a placement of another sheet. */
export type Source =
  | { readonly kind: "stock"; readonly sheet: number }
  | { readonly kind: "drop-out"; readonly sheet: number; readonly placement: number };

export interface PlannedSheet {
  readonly from: Source;
  /** The sheet's own size, trim included; of a drop-out, the window as it lies. */
  readonly size: Size;
  readonly placements: readonly Placement[];
  /** In the order in which to make them. */
  readonly cuts: readonly Cut[];
  /** Every part that comes off and is no piece: to keep, or waste. */
  readonly left: readonly Leftover[];
  /** The least size of sheet that serves this layout, trim included. */
  readonly needs: Size;
  /** How often the fence is set for this sheet. */
  readonly settings: number;
}

/** One piece as it lies, measured from its sheet's own corner. */
export interface Placement extends Box {
  readonly piece: number;
  /** From 0, below the piece's count. */
  readonly copy: number;
}

/** A part that comes off and is no piece. `keep`: at least the job's `least`, either way up. */
export interface Leftover extends Box {
  readonly keep: boolean;
}

/**
 * One straight cut from edge to edge of one part. The line stands at the near edge of what the blade
 * takes; the blade takes `kerf` to the right of it or below it, less only where the part ends sooner.
 */
export interface Cut {
  readonly from: Point;
  readonly to: Point;
  /** "x": the line stands upright at one x; "y": it lies level at one y. */
  readonly across: "x" | "y";
  /** How much the blade takes. */
  readonly takes: Length;
  /** The part that goes in. */
  readonly part: Box;
  /** What the fence is set to: the width of the part between fence and blade. */
  readonly setting: Length;
  /** Which part lies against the fence: the one before the line (left of it, or above), or after it. */
  readonly against: "before" | "after";
}

/** No plan by guillotine cuts costs less than `cost`; `how` names the argument. */
export interface CostBound {
  readonly cost: number;
  readonly how: BoundArgument;
}

/** "none": nothing better than nought is known. */
export type BoundArgument = "none" | "piece" | "area" | "values" | "columns" | "counts" | "every-way";
