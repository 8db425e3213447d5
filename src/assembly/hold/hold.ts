import type { Size } from "../../geometry/index.ts";
import { fromReal, type Length, larger, smaller, ZERO } from "../../lengths/index.ts";
import type { Composition, PlacedPrint } from "../composition.ts";
import type { Design } from "../design.ts";
import { bedOf, boardHingeOf } from "./beds.ts";
import { type HoldFacts, type HoldHabits } from "./facts.ts";
import { type HingeKind, gramsOf, hingesOf, roomAboveHinge, tooHeavyForV } from "./hinges.ts";
import { holdPlanChecks } from "./checks.ts";
import type { HoldCheck, HoldPlan, Refused, Way, Why } from "./hold-plan.ts";
import { bufferAdvice, processKindOf, rulesFor } from "./materials.ts";
import { edgesMoveBy, movementOf } from "./movement.ts";
import { forbiddenBy, HINGE_KINDS, holdingOfWay, isHinge, ORDER } from "./ways.ts";
import { type HeldPockets, type HeldStrips, leastStrip, pocketsOf, stripsOf } from "./pockets.ts";

/**
 * How a composed work is held: the first way, from the asked one on, that nothing forbids and that fits;
 * where none does a check of level "stop" says what stands in the way of each. Null for a mat without a
 * print. Never throws.
 */
export function planHold(composition: Composition, facts: HoldFacts, habits: HoldHabits): HoldPlan | null {
  const { design, print } = composition;
  if (print === null || design.print === null) return null;
  const sheet = largestSheet(design.print);
  const movement = movementOf(sheet, facts);
  const float = design.window.show === "sheet";
  const pockets = float ? null : pocketsOf(design, print, movement);
  const strips = float
    ? null
    : stripsOf(design, print, smallestSheet(design.print), edgesMoveBy(movement, "strips"));
  const raisedBy = float ? habits.riserInset : ZERO;
  const hinged = (kind: HingeKind) =>
    hingesOf(kind, design.print?.sheet.width ?? ZERO, facts.grammage, raisedBy, habits, design.ruler);
  const t = hinged("T");
  const trial: Trial = {
    design,
    facts,
    sheet,
    float,
    pockets,
    strips,
    room: headEdge(print),
    needs: roomAboveHinge(t),
    behind: habits.pasted + hinged("pass-through").slit.down,
  };
  const { way, refused } = chosen(ORDER[design.holding], trial);
  const kind = isHinge(way) ? way : hingeKind(trial);
  const moves = edgesMoveBy(movement, way === null ? design.holding : holdingOfWay(way));
  const process = processKindOf(facts.process);
  const plan = {
    asked: design.holding,
    way,
    refused,
    never: facts.never,
    pockets,
    strips,
    hinges: hinged(kind),
    bed: bedOf(composition, print, facts, habits, moves),
    boards: boardHingeOf(composition, facts.use),
    movement,
    grams: facts.grammage === null ? null : gramsOf(design.print.sheet, facts.grammage),
    process,
    buffer: bufferAdvice(process),
    materials: rulesFor(process),
  };
  return { ...plan, checks: holdPlanChecks(plan, composition, print, facts, moves) };
}

/** What makes a work one that may not be held as it is asked: checks of level "stop". */
export const holdStops = (plan: HoldPlan | null): readonly HoldCheck[] =>
  (plan?.checks ?? []).filter(({ level }) => level === "stop");

interface Trial {
  readonly design: Design;
  readonly facts: HoldFacts;
  readonly sheet: Size;
  readonly float: boolean;
  readonly pockets: HeldPockets | null;
  readonly strips: HeldStrips | null;
  /** From the mount's head down to the sheet, and what a T-hinge needs there. */
  readonly room: Length;
  readonly needs: Length;
  /** Ticks below the sheet's head that a hinge behind it takes. */
  readonly behind: number;
}

function chosen(
  order: readonly Way[],
  trial: Trial,
): { readonly way: Way | null; readonly refused: readonly Refused[] } {
  const refused: Refused[] = [];
  for (const way of order) {
    const why = whyNot(way, trial);
    if (why === null) return { way, refused };
    refused.push({ way, why });
  }
  return { way: null, refused };
}

const hingeKind = (trial: Trial): HingeKind => HINGE_KINDS.find((kind) => fits(kind, trial) === null) ?? "T";

function whyNot(way: Way, trial: Trial): Why | null {
  const never = forbiddenBy(way, trial.facts.never);
  return never === null ? fits(way, trial) : { kind: "never", never };
}

/** Null where it fits. */
function fits(way: Way, trial: Trial): Why | null {
  const { design, facts, sheet, pockets, strips, float } = trial;
  switch (way) {
    case "pockets": {
      if (pockets === null) return { kind: "shows" };
      const { corner, hidden } = pockets.least;
      return hidden < design.leastPocket
        ? { kind: "pocket", corner, hidden, least: design.leastPocket }
        : null;
    }
    case "strips": {
      if (strips === null) return { kind: "shows" };
      const least = leastStrip(design);
      return strips.least.hold < least ? { kind: "strip", ...strips.least, least } : null;
    }
    case "T":
      // It needs an edge that the mat lies over: Library of Congress Research Guide, Paper Hinges.
      if (float) return { kind: "shows" };
      return trial.room < trial.needs ? { kind: "no-room", room: trial.room, needs: trial.needs } : null;
    case "V":
      if (sheet.height <= trial.behind) return { kind: "too-small" };
      return tooHeavyForV(sheet, facts.grammage, design.ruler) ? { kind: "too-heavy" } : null;
    case "pass-through":
      return sheet.height <= trial.behind ? { kind: "too-small" } : null;
  }
}

/** From the mount's head down to the highest corner of any sheet. */
function headEdge({ sheetCorners, sheetOutline, edition }: PlacedPrint): Length {
  const points = [
    ...sheetCorners,
    ...(sheetOutline ?? []),
    ...edition.flatMap((sheet) => sheet.sheetCorners),
  ];
  return fromReal(Math.min(...points.map(({ y }) => y)), "down");
}

const sheetsOf = ({ sheet, edition }: NonNullable<Design["print"]>): readonly Size[] => [
  sheet,
  ...edition.map((one) => one.sheet),
];

/** Of an edition what moves most. */
const largestSheet = (print: NonNullable<Design["print"]>): Size =>
  sheetsOf(print).reduce((a, b) => ({
    width: larger(a.width, b.width),
    height: larger(a.height, b.height),
  }));

const smallestSheet = (print: NonNullable<Design["print"]>): Size =>
  sheetsOf(print).reduce((a, b) => ({
    width: smaller(a.width, b.width),
    height: smaller(a.height, b.height),
  }));
