import type { ComposedMat, Composition } from "../assembly/index.ts";
import type { Side, Sides, Size } from "../geometry/index.ts";
import { type Length, printLength, type Rounding } from "../lengths/index.ts";
import { sayCheck, type Speech } from "./checks.ts";
import { sayStepName, saySum } from "./reckoning.ts";
import { VOCABULARY } from "./vocabulary.ts";

const SIDES: readonly Side[] = ["head", "left", "right", "foot"];
const LEVELS = { stop: "STOP", warn: "warn", note: "note" } as const;

/** A composed work as lines for a terminal: the figures, the stops in the order to cut, the checks, the sums. */
export function sayComposition(composition: Composition, speech: Speech): string[] {
  const { mat } = VOCABULARY[speech.language];
  const say = (length: Length, rounding: Rounding = "nearest"): string =>
    printLength(length, speech.ruler, rounding);
  const size = ({ width, height }: Size): string => `${say(width)} × ${say(height)}`;
  const sides = (of: Sides, rounding: Rounding): string =>
    SIDES.map((side) => `${side} ${say(of[side], rounding)}`).join(", ");
  const { mats, print } = composition;

  const lines = [`package      ${size(composition.outer)}, both diagonals ${say(composition.diagonal)}`];
  const called = (index: number): string =>
    mats.length === 1
      ? mat
      : index === 0
        ? `lowest ${mat}`
        : index === mats.length - 1
          ? `top ${mat}`
          : `${mat} ${index + 1}`;
  for (const [index, one] of mats.entries()) {
    lines.push(
      `${called(index).padEnd(12)} borders ${sides(one.borders, "nearest")}`,
      ...openings(one, size, say),
    );
  }
  if (print !== null) {
    const turn = print.angle === 0 ? "" : `, turned ${Number(print.angle.toFixed(2))}° clockwise`;
    lines.push(
      `print        ${say(print.left)} from the left, ${say(print.top)} from the head${turn}`,
      `paper under  ${sides(print.cover, "down")}`,
      `pockets to   top left ${say(print.pockets.topLeft, "down")}, top right ${say(print.pockets.topRight, "down")}, ` +
        `bottom left ${say(print.pockets.bottomLeft, "down")}, bottom right ${say(print.pockets.bottomRight, "down")}`,
    );
  }
  for (const [index, stop] of composition.stops.entries()) {
    const where = stop.edges.map((edge, at) => edgeAtHand(edge, stop.hand[at] ?? "")).join(" and ");
    const reads = stop.scale === stop.set ? "" : `, scale reads ${say(stop.scale)}`;
    lines.push(
      `stop ${String(index + 1).padEnd(7)} ${say(stop.set)}${reads}: ${where}${mats.length === 1 ? "" : `, ${called(stop.mat)}`}`,
    );
  }
  lines.push("");
  for (const check of composition.checks) lines.push(`${LEVELS[check.level]}  ${sayCheck(check, speech)}`);
  if (composition.checks.length > 0) lines.push("");
  for (const step of composition.reckoning) {
    lines.push(`${sayStepName(step.name, mats.length, speech.language)}: ${saySum(step, speech.ruler.unit)}`);
  }
  return lines;
}

function openings(mat: ComposedMat, size: (of: Size) => string, say: (length: Length) => string): string[] {
  const strip = mat.revealAsCut === null ? "" : `, strip below ${say(mat.revealAsCut)}`;
  return [`             opening ${size(mat.back)} at the back, ${size(mat.face)} at the face${strip}`];
}

/** "front's left at your RIGHT hand": the side is the front's, the hand works on the back. */
function edgeAtHand(edge: Side, hand: string): string {
  switch (hand) {
    case "away":
      return "head, away from you";
    case "near":
      return "foot, next to you";
    default:
      return `front's ${edge} at your ${hand.toUpperCase()} hand`;
  }
}
