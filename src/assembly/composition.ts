import type { Corners, FourCorners, RealPoint, Side, Sides, Size } from "../geometry/index.ts";
import type { Length } from "../lengths/index.ts";
import type { Check } from "./check.ts";
import type { Design } from "./design.ts";
import type { MadeStep } from "./reckoning.ts";

/** One work composed: every figure that can be computed, also when a check says stop. */
export interface Composition {
  readonly design: Design;
  readonly outer: Size;
  /** As in the design: from the lowest up. */
  readonly mats: readonly ComposedMat[];
  readonly print: PlacedPrint | null;
  readonly stops: readonly Stop[];
  /** Of the outer size; to the nearest tick. */
  readonly diagonal: Length;
  readonly checks: readonly Check[];
  readonly reckoning: readonly MadeStep[];
}

export interface ComposedMat {
  /** Of the opening at the back: what is marked and cut. */
  readonly borders: Sides;
  readonly back: Size;
  /** The opening at the face: what is seen. */
  readonly face: Size;
  readonly thickness: Length;
  readonly bevel: {
    readonly degrees: number /** Width seen square-on. */;
    readonly plan: Length /** Along the cut. */;
    readonly slope: Length;
  };
  /** The flat strip of the mat below as it will be after rounding; null for the lowest mat. */
  readonly revealAsCut: Length | null;
}

export interface PlacedPrint {
  /** Where the corner that is the sheet's top-left before turning lies after turning, in the package frame. */
  readonly left: Length;
  readonly top: Length;
  /** Degrees clockwise that the sheet is turned: minus the image's angle, or 0. */
  readonly angle: number;
  /** The sheet's four corners (top-left, top-right, bottom-right, bottom-left before turning) in the package frame. */
  readonly sheetCorners: FourCorners;
  /** The torn edge, when there is one, in the package frame. */
  readonly sheetOutline: readonly RealPoint[] | null;
  /** The image's edge in the package frame: its rectangle's corners, or its outline. */
  readonly imageOutline: readonly RealPoint[];
  /** How far the paper reaches under the lowest mat; below nought it ends before the window. Rounded down. */
  readonly cover: Sides;
  /** The largest pocket leg that stays hidden, of an edition on its every sheet; rounded down, never below nought. */
  readonly pockets: Corners;
  /** Sheets of the edition with their own cover; empty for a single print. */
  readonly edition: readonly {
    readonly name: string;
    readonly left: Length;
    readonly top: Length;
    readonly cover: Sides;
    readonly sheetCorners: FourCorners;
  }[];
}

export type Hand = "left" | "right" | "away" | "near";

/** One setting of the cutter's stop. */
export interface Stop {
  readonly mat: number;
  readonly set: Length;
  readonly scale: Length;
  readonly edges: readonly Side[];
  /** Beside each edge, where it lies on the back: the hand, away from you, or near you. */
  readonly hand: readonly Hand[];
}
