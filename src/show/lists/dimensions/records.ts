import type { LengthFault, Length } from "../../../lengths/index.ts";

/** What a museum's record may give the size of. "whole" is the work, it is not said which part of it. */
export const PARTS = ["image", "plate", "sheet", "mount", "frame", "object", "whole"] as const;
export type Part = (typeof PARTS)[number];

/** A size as it was written, each text with its unit, and as lengths. */
export interface Size {
  readonly width: WrittenLength;
  readonly height: WrittenLength;
}

export interface WrittenLength {
  readonly text: string;
  readonly length: Length;
}

/** Why a text of dimensions is not understood; a record, `words` says it. */
export type DimensionsFault =
  | { readonly code: "not-understood"; readonly fragment: string }
  | { readonly code: "length"; readonly fragment: string; readonly fault: LengthFault }
  /** One figure, where a height and a width are wanted. */
  | { readonly code: "one-figure"; readonly part: Part }
  | { readonly code: "many-figures"; readonly part: Part }
  /** Thicker than any paper. */
  | { readonly code: "not-flat"; readonly depth: string }
  /** Two sizes for one part. */
  | { readonly code: "two-sizes"; readonly part: Part; readonly first: Size; readonly second: Size }
  /** A size that names no part stands beside the sheet's. */
  | { readonly code: "unnamed-beside-sheet" }
  /** Only the frame's or the mount's size is there. */
  | { readonly code: "no-sheet-or-image" };
