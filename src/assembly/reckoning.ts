import type { Length, Rounding } from "../lengths/index.ts";
import type { Corner, Side } from "../geometry/index.ts";

/** What a step finds. `words` names it. */
export type StepName =
  | { readonly of: "window"; readonly direction: "width" | "height" }
  | { readonly of: "outer"; readonly direction: "width" | "height" }
  | { readonly of: "rest"; readonly direction: "width" | "height" }
  | { readonly of: "border"; readonly mat: number; readonly side: Side }
  /** The bevel's width seen square-on. */
  | { readonly of: "bevel"; readonly mat: number }
  /** How much narrower the borders of this mat are than those of the mat below. */
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
  | { readonly kind: "tangent"; readonly degrees: number }
  /** A length squared. */
  | { readonly kind: "square"; readonly length: Length };

/** One step: its sum, what the sum makes, and what was kept of it. */
export interface Step {
  readonly name: StepName;
  readonly sum: Sum;
  /** Present when `is` is the sum taken to the ruler's graduation that way. */
  readonly rounded: Rounding | null;
  readonly is: Length;
}

/** A step with what its sum makes, real ticks, before any rounding. */
export interface MadeStep extends Step {
  readonly makes: number;
}

export const madeStep = ({ name, sum, rounded, is }: Step): MadeStep => ({
  name,
  sum,
  rounded,
  is,
  makes: valueOf(sum),
});

/** What a sum makes: ticks, ticks squared, or a plain number, as its parts have it. */
export function valueOf(sum: Sum): number {
  switch (sum.kind) {
    case "length":
      return sum.length;
    case "number":
      return Number(sum.text);
    case "square":
      return sum.length * sum.length;
    case "root":
      return Math.sqrt(valueOf(sum.of));
    case "tangent":
      // Exactly, where a double would miss by its last digit.
      return sum.degrees === 45 ? 1 : Math.tan((sum.degrees * Math.PI) / 180);
    case "op": {
      const left = valueOf(sum.left);
      const right = valueOf(sum.right);
      switch (sum.op) {
        case "+":
          return left + right;
        case "-":
          return left - right;
        case "×":
          return left * right;
        case "/":
          return left / right;
      }
    }
  }
}

export const operand = (length: Length): Sum => ({ kind: "length", length });
export const number = (text: string): Sum => ({ kind: "number", text });
export const plus = (left: Sum, right: Sum): Sum => ({ kind: "op", op: "+", left, right });
export const minus = (left: Sum, right: Sum): Sum => ({ kind: "op", op: "-", left, right });
export const product = (left: Sum, right: Sum): Sum => ({ kind: "op", op: "×", left, right });
export const quotient = (left: Sum, right: Sum): Sum => ({ kind: "op", op: "/", left, right });
export const twice = (length: Length): Sum => product(number("2"), operand(length));
