import type { MadeStep, StepName, Sum } from "../assembly/index.ts";
import type { Corner } from "../geometry/index.ts";
import {
  type Length,
  printExact,
  TICKS_PER_INCH,
  TICKS_PER_MILLIMETRE,
  type Unit,
} from "../lengths/index.ts";
import { VOCABULARY } from "./vocabulary.ts";
import type { Speech } from "./checks.ts";

const CORNERS: Readonly<Record<Corner, string>> = {
  topLeft: "top left",
  topRight: "top right",
  bottomLeft: "bottom left",
  bottomRight: "bottom right",
};

/** What a step finds, in a few words. `mats` is how many there are: a single mat needs no number. */
export function sayStepName(name: StepName, mats: number, language: Speech["language"]): string {
  const { mat } = VOCABULARY[language];
  const which = (index: number): string => (mats === 1 ? "" : ` of ${mat} ${index + 1}`);
  switch (name.of) {
    case "window":
      return `window ${name.direction}`;
    case "outer":
      return `outer ${name.direction}`;
    case "rest":
      return `left over in ${name.direction}`;
    case "border":
      return `${name.side} border${which(name.mat)}`;
    case "bevel":
      return `bevel${which(name.mat)}, seen square-on`;
    case "step":
      return `step up to ${mat} ${name.mat + 1}`;
    case "reveal":
      return `strip of ${mat} ${name.mat} as cut`;
    case "back":
      return `opening ${name.direction}${which(name.mat)}, back`;
    case "face":
      return `opening ${name.direction}${which(name.mat)}, face`;
    case "cover":
      return `paper under the ${name.side}`;
    case "pocket":
      return `largest pocket ${CORNERS[name.corner]}`;
    case "diagonal":
      return "diagonal of the blank";
  }
}

/**
 * One step as one would pencil it: `14 in - 10 in = 4 in`; what is rounded shows both,
 * `4 1/8 in / 2 = 2 1/16 in, down to 2 in`. Operands are printed exactly, so that the sum is true of
 * the figures on the paper; a result that no figure states exactly is marked `≈`.
 */
export function saySum(
  step: MadeStep,
  unit: Unit,
  exact: Exact = (length) => printExact(length, unit),
): string {
  const left = sumText(step.sum, exact);
  const kept = exact(step.is);
  if (step.makes === step.is) return left === kept ? kept : `${left} = ${kept}`;
  const whole = Number.isSafeInteger(step.makes);
  const made = whole ? `= ${exact(step.makes as Length)}` : `≈ ${realNumber(step.makes, unit)} ${unit}`;
  return step.rounded === null ? `${left} ${made}` : `${left} ${made}, ${WAYS[step.rounded]} ${kept}`;
}

/** Prints a length exactly; given by whoever prints the same ones often. */
type Exact = (length: Length) => string;

const WAYS = { down: "down to", up: "up to", nearest: "to the nearest" } as const;

/** A length between two ticks as a bare number: inches to a ten-thousandth, millimetres to a thousandth. */
export const realNumber = (makes: number, unit: Unit): number =>
  unit === "in"
    ? Number((makes / TICKS_PER_INCH).toFixed(4))
    : Number((makes / TICKS_PER_MILLIMETRE).toFixed(3));

const BINDS = { "+": 1, "-": 1, "×": 2, "/": 2 } as const;

/** Whether a part of a sum must stand in brackets, since it would otherwise be read in another order. */
export function needsBrackets(part: Sum, within: keyof typeof BINDS, right: boolean): boolean {
  if (part.kind !== "op") return false;
  const looser = BINDS[part.op] < BINDS[within];
  return looser || (right && BINDS[part.op] === BINDS[within] && (within === "-" || within === "/"));
}

function sumText(sum: Sum, exact: Exact): string {
  switch (sum.kind) {
    case "length":
      return exact(sum.length);
    case "number":
      return sum.text;
    case "tangent":
      return `tan ${sum.degrees}°`;
    case "square":
      return `(${exact(sum.length)})²`;
    case "root":
      return `√(${sumText(sum.of, exact)})`;
    case "op":
      return `${operandText(sum.left, sum.op, false, exact)} ${sum.op} ${operandText(sum.right, sum.op, true, exact)}`;
  }
}

function operandText(part: Sum, within: keyof typeof BINDS, right: boolean, exact: Exact): string {
  const text = sumText(part, exact);
  return needsBrackets(part, within, right) ? `(${text})` : text;
}
