/** What can be wrong with a plan. Indices are those of the plan's sheets, of their placements and cuts, and of the job's pieces and sheets. */
export type CuttingFault =
  | { readonly code: "no-such-sheet"; readonly sheet: number }
  | { readonly code: "wrong-sheet-size"; readonly sheet: number }
  | { readonly code: "no-such-piece"; readonly sheet: number; readonly placement: number }
  /** Not the piece's size, or turned where it must not be. */
  | { readonly code: "wrong-piece-size"; readonly sheet: number; readonly placement: number }
  | { readonly code: "outside"; readonly sheet: number; readonly placement: number }
  /** Two pieces overlap, or lie closer than the kerf. */
  | { readonly code: "too-close"; readonly sheet: number; readonly placements: readonly [number, number] }
  | { readonly code: "not-guillotine"; readonly sheet: number }
  /** The cut does not run from edge to edge of a board that is there by then. */
  | { readonly code: "cut-in-the-air"; readonly sheet: number; readonly cut: number }
  | { readonly code: "cut-too-long"; readonly sheet: number; readonly cut: number }
  /** The blade takes more or less than its kerf. */
  | { readonly code: "cut-takes"; readonly sheet: number; readonly cut: number }
  /** The fence is not where the cut is. */
  | { readonly code: "cut-setting"; readonly sheet: number; readonly cut: number }
  | { readonly code: "settings"; readonly sheet: number; readonly said: number; readonly counted: number }
  /** After the last cut the piece is not lying there by itself. */
  | { readonly code: "not-cut-free"; readonly sheet: number; readonly placement: number }
  /** A part that comes off is neither piece nor named as left, or the other way round. */
  | { readonly code: "left-over"; readonly sheet: number }
  | { readonly code: "keep"; readonly sheet: number; readonly left: number }
  | { readonly code: "needs"; readonly sheet: number }
  | { readonly code: "copy"; readonly piece: number; readonly copy: number }
  | { readonly code: "demand"; readonly piece: number; readonly made: number }
  /** A piece is missing and no check of level "stop" names it, or one does without reason. */
  | { readonly code: "silence"; readonly piece: number }
  | { readonly code: "copies"; readonly stock: number; readonly used: number }
  | { readonly code: "no-such-drop-out"; readonly sheet: number }
  | { readonly code: "drop-out-twice"; readonly sheet: number }
  | { readonly code: "drop-out-circle"; readonly sheet: number }
  | { readonly code: "cost"; readonly said: number; readonly counted: number }
  | { readonly code: "sheets-used"; readonly said: number; readonly counted: number }
  | { readonly code: "bound-above-cost" }
  | { readonly code: "not-proven" };

export type Report = (fault: CuttingFault) => void;

/** A sheet as the job has it, not as the plan says: its size, and the margin that nothing may lie in. */
export interface Ground {
  readonly width: number;
  readonly height: number;
  readonly trim: number;
}
