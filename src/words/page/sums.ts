import type { Sum } from "../../assembly/index.ts";
import {
  type Length,
  type Rounding,
  TICKS_PER_INCH,
  TICKS_PER_MILLIMETRE,
  type Unit,
} from "../../lengths/index.ts";

/** One sum in its parts, in the order in which it is pencilled: signs and plain numbers as text, lengths as lengths, so that each can be set with a true fraction. */
export type SumPart = string | { readonly length: Length };

const BINDS = { "+": 1, "-": 1, "×": 2, "/": 2 } as const;
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
      const side = (part: Sum, right: boolean): readonly SumPart[] => {
        const parts = sumParts(part);
        if (part.kind !== "op") return parts;
        const looser = BINDS[part.op] < BINDS[sum.op];
        const regroups = right && BINDS[part.op] === BINDS[sum.op] && (sum.op === "-" || sum.op === "/");
        return looser || regroups ? ["(", ...parts, ")"] : parts;
      };
      return [...side(sum.left, false), ` ${SIGNS[sum.op]} `, ...side(sum.right, true)];
    }
  }
}

/** What a sum makes where that falls between two ticks: inches to a ten-thousandth, millimetres to a thousandth. */
export const madeSays = (makes: number, unit: Unit): string =>
  unit === "in"
    ? `≈\u00a0${Number((makes / TICKS_PER_INCH).toFixed(4))}`
    : `≈\u00a0${Number((makes / TICKS_PER_MILLIMETRE).toFixed(3))}`;

const ROUNDED: Readonly<Record<Rounding, string>> = {
  down: "taken down",
  up: "taken up",
  nearest: "to the nearest",
};
export const roundedSays = (rounding: Rounding): string => ROUNDED[rounding];
