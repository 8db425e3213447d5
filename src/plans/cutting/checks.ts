import type { Size } from "../../geometry/index.ts";
import type { Length } from "../../lengths/index.ts";

/** What a plan has to say about its job, as records; `words` makes the sentences. */
export type CuttingCheck = { readonly level: "stop" | "warn" | "note" } & CuttingCheckBody;

type CuttingCheckBody =
  /** No sheet of the stock is large enough, turned or not. `largest` is the usable part of the largest sheet; null: there is no sheet at all. */
  | { readonly code: "piece-too-large"; readonly piece: number; readonly largest: Size | null }
  /** It fits a sheet, but no cut that this bench can make frees it. */
  | { readonly code: "cut-too-long"; readonly piece: number; readonly longest: Length }
  /** The sheets run out: `missing` of `wanted` are not in the plan. */
  | {
      readonly code: "stock-short";
      readonly piece: number;
      readonly missing: number;
      readonly wanted: number;
    }
  /** The layouts of a kind of sheet leave no more than `spare` in that direction: a short or damaged sheet wrecks the plan. */
  | {
      readonly code: "just-fits";
      readonly sheet: number;
      readonly direction: "width" | "height";
      readonly needs: Length;
      readonly spare: Length;
      /** How many sheets of the plan are so tight. */
      readonly sheets: number;
    }
  /** Pieces come out of windows that fall out: those must not be thrown away. */
  | { readonly code: "drop-outs-used"; readonly count: number };
