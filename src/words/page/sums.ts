import type { Sum } from "../../assembly/index.ts";
import type { Length, Rounding, Unit } from "../../lengths/index.ts";
import { needsBrackets, realNumber } from "../reckoning.ts";

/** One sum in its parts, in the order in which it is pencilled: signs and plain numbers as text, lengths as lengths, so that each can be set with a true fraction. */
export type SumPart = string | { readonly length: Length };

const SIGNS = { "+": "+", "-": "−", "×": "×", "/": "÷" } as const;

export function sumParts(sum: Sum): readonly SumPart[] {
  switch (sum.kind) {
    case "length":
      return [{ length: sum.length }];
    case "number":
      return [sum.text];
    case "tangent":
      return [`tan ${sum.degrees}°`];
    case "square":
      return [{ length: sum.length }, "²"];
    case "root":
      return ["√(", ...sumParts(sum.of), ")"];
    case "op": {
      const { op } = sum;
      const side = (part: Sum, right: boolean): readonly SumPart[] =>
        needsBrackets(part, op, right) ? ["(", ...sumParts(part), ")"] : sumParts(part);
      return [...side(sum.left, false), ` ${SIGNS[op]} `, ...side(sum.right, true)];
    }
  }
}

/** What a sum makes where that falls between two ticks: inches to a ten-thousandth, millimetres to a thousandth. */
export const madeSays = (makes: number, unit: Unit): string => `≈\u00a0${realNumber(makes, unit)}`;

const ROUNDED: Readonly<Record<Rounding, string>> = {
  down: "taken down",
  up: "taken up",
  nearest: "to the nearest",
};
export const roundedSays = (rounding: Rounding): string => ROUNDED[rounding];
