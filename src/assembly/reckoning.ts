import type { Length, Rounding } from "../lengths/index.ts";
import type { Corner, Side } from "../geometry/index.ts";

/** What a step finds. `words` names it. */
export type StepName =
  | { readonly of: "window"; readonly direction: "width" | "height" }
  | { readonly of: "outer"; readonly direction: "width" | "height" }
  | { readonly of: "rest"; readonly direction: "width" | "height" }
  | { readonly of: "border"; readonly mat: number; readonly side: Side }
  | { readonly of: "lift" }
  | { readonly of: "step"; readonly mat: number }
  | { readonly of: "reveal"; readonly mat: number }
  | { readonly of: "back"; readonly mat: number; readonly direction: "width" | "height" }
  | { readonly of: "face"; readonly mat: number; readonly direction: "width" | "height" }
  | { readonly of: "cover"; readonly side: Side }
  | { readonly of: "pocket"; readonly corner: Corner }
  | { readonly of: "diagonal" };

/** One sum as one would pencil it. Operands are the very lengths that were computed with. */
export type Sum =
  | { readonly kind: "length"; readonly length: Length }
  | { readonly kind: "number"; readonly text: string }
  | { readonly kind: "op"; readonly op: "+" | "-" | "×" | "/"; readonly left: Sum; readonly right: Sum }
  | { readonly kind: "root"; readonly of: Sum }
  /** A length squared. */
  | { readonly kind: "square"; readonly length: Length };

/** One step: its sum, what the sum makes before rounding is implied by it, and what was kept. */
export interface Step {
  readonly name: StepName;
  readonly sum: Sum;
  /** Present when `is` is the sum taken to the ruler's graduation that way. */
  readonly rounded: Rounding | null;
  readonly is: Length;
}
