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

/** A step without its name. */
type Summed = Omit<MadeStep, "name">;

/** Takes the pieces of a sum in their order. */
export interface Ink {
  readonly text: (piece: string) => void;
  /** A length, printed exactly. */
  readonly exact: (length: Length) => void;
}

/**
 * One step as one would pencil it: `14 in - 10 in = 4 in`; what is rounded shows both,
 * `4 1/8 in / 2 = 2 1/16 in, down to 2 in`. Operands are printed exactly, so that the sum is true of
 * the figures on the paper; a result that no figure states exactly is marked `≈`.
 */
export function saySum(step: Summed, unit: Unit): string {
  let said = "";
  const text = (piece: string): void => {
    said += piece;
  };
  writeStepSum({ text, exact: (length) => text(printExact(length, unit)) }, step, unit);
  return said;
}

/** The same, written. */
export function writeStepSum(ink: Ink, step: Summed, unit: Unit): void {
  const { sum, makes, is } = step;
  writeSum(ink, sum);
  // A length by itself is its own sum.
  if (sum.kind === "length" && makes === is) return;
  if (Number.isSafeInteger(makes)) {
    ink.text(" = ");
    ink.exact(makes as Length);
  } else ink.text(` ≈ ${realNumber(makes, unit)} ${unit}`);
  if (step.rounded === null || makes === is) return;
  ink.text(WAYS[step.rounded]);
  ink.exact(is);
}

const WAYS = { down: ", down to ", up: ", up to ", nearest: ", to the nearest " } as const;

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

const SIGNS = { "+": " + ", "-": " - ", "×": " × ", "/": " / " } as const;

function writeSum(ink: Ink, sum: Sum): void {
  switch (sum.kind) {
    case "length":
      return ink.exact(sum.length);
    case "number":
      return ink.text(sum.text);
    case "tangent":
      return ink.text(`tan ${sum.degrees}°`);
    case "square":
      ink.text("(");
      ink.exact(sum.length);
      return ink.text(")²");
    case "root":
      ink.text("√(");
      writeSum(ink, sum.of);
      return ink.text(")");
    case "op":
      writeOperand(ink, sum.left, sum.op, false);
      ink.text(SIGNS[sum.op]);
      return writeOperand(ink, sum.right, sum.op, true);
  }
}

function writeOperand(ink: Ink, part: Sum, within: keyof typeof BINDS, right: boolean): void {
  if (!needsBrackets(part, within, right)) return writeSum(ink, part);
  ink.text("(");
  writeSum(ink, part);
  ink.text(")");
}
