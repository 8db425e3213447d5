import { type HoldCheck, isHinge } from "../../assembly/index.ts";
import type { RealPoint } from "../../geometry/index.ts";
import { fromReal, type Length } from "../../lengths/index.ts";
import { layTurnedStep } from "../../words/bench-steps.ts";
import {
  boardsStep,
  closeStep,
  crossStep,
  foldPocketsStep,
  holdCaution,
  layIt,
  lowerMatStep,
  MOUNTING_SHEET,
  pasteStep,
  pocketPlayStep,
  riserStepOf,
  sinkStep,
  slitStep,
  spacerStep,
  stackStep,
  storeStep,
  stripsFoldStep,
  stripsTapeStep,
  tabsStep,
} from "../../words/mounting-sheet.ts";
import { type Act, act, warning } from "../bench/act.ts";
import type { MountingDesk } from "./desk.ts";

/** Everything the hand does, in its order: boards, bed, what holds, laying, dust, closing. */
export function mountingActs(desk: MountingDesk): readonly Act[] {
  const { plan } = desk.job;
  const pasted = isHinge(plan.way);
  return [
    act(boardsStep(plan.boards, desk.speech)),
    ...bedActs(desk),
    warning(pasted ? MOUNTING_SHEET.free : MOUNTING_SHEET.freePaste),
    ...(pasted ? hingeActs(desk) : foldActs(desk)),
    act(layWords(desk)),
    ...(pasted ? fixActs(desk) : supportActs(desk)),
    ...warnings(desk),
    act(lowerMatStep(desk.speech)),
    ...closeActs(desk),
  ];
}

function bedActs({ job: { plan }, speech }: MountingDesk): readonly Act[] {
  const { bed, way, hinges } = plan;
  const slits =
    way === "pass-through"
      ? [act(slitStep(hinges.at.length, hinges.slit.length, hinges.slit.down, bed.kind === "raised", speech))]
      : [];
  switch (bed.kind) {
    case "flat":
      return slits;
    case "sink":
      return [act(sinkStep(bed, speech)), ...slits];
    case "raised":
      return [act(riserStepOf(bed, speech)), ...slits];
  }
}

function hingeActs({ job: { plan }, speech }: MountingDesk): readonly Act[] {
  const { hinges } = plan;
  return [
    act(tabsStep(hinges.at.length, hinges.tab, speech)),
    warning(MOUNTING_SHEET.pasteTabOnly),
    act(
      pasteStep(
        plan.way === "V" ? halfOf(hinges.tab.height) : hinges.pasted,
        !plan.never.includes("press"),
        speech,
      ),
    ),
  ];
}

const halfOf = (length: Length): Length => fromReal(length / 2, "nearest");

function fixActs({ job: { plan }, speech }: MountingDesk): readonly Act[] {
  const { hinges } = plan;
  return [act(crossStep(hinges.kind, hinges.cross, hinges.bare, !plan.never.includes("press"), speech))];
}

const foldActs = ({ job: { plan }, speech }: MountingDesk): readonly Act[] =>
  plan.way === "pockets" && plan.pockets !== null
    ? [act(foldPocketsStep(plan.pockets.leg, speech))]
    : [act(stripsFoldStep)];

function supportActs({ job: { plan }, speech }: MountingDesk): readonly Act[] {
  const { way, pockets } = plan;
  return [
    warning(MOUNTING_SHEET.stickToMount),
    act(
      way === "pockets" && pockets !== null ? pocketPlayStep(pockets.play, speech) : stripsTapeStep(speech),
    ),
  ];
}

const cornerPlace = ({ x, y }: RealPoint) => ({ left: fromReal(x, "nearest"), head: fromReal(y, "nearest") });

/** A turned sheet is laid by both its head corners. */
function layWords({ job: { composition }, speech }: MountingDesk): Act["words"] {
  const { print } = composition;
  if (print === null) return "";
  if (print.edition.length > 0) return MOUNTING_SHEET.layEdition;
  if (print.angle === 0) return layIt(print.left, print.top, speech);
  const [first, second] = print.sheetCorners;
  return layTurnedStep(print.angle, cornerPlace(first), cornerPlace(second), speech);
}

/** What must be known before anything is touched: it stands in the sheet's head. */
export const toldFirst = ({ code }: HoldCheck): boolean =>
  code === "holding-changed" || code === "board-unknown" || code === "buffer";

/** What was found to look at, where the hand is about to cover it. */
const warnings = ({ job: { plan }, speech }: MountingDesk): readonly Act[] =>
  plan.checks
    .filter((check) => check.level === "warn" && !toldFirst(check))
    .map((check) => warning(holdCaution(check, speech)));

function closeActs({ job: { plan, glazing, stack }, speech }: MountingDesk): readonly Act[] {
  const { bed } = plan;
  const over = stack !== null && stack.stack > stack.rabbet;
  return [
    ...(bed.kind === "raised" ? [act(spacerStep(bed.spacer, speech))] : []),
    warning(
      glazing === "glass"
        ? MOUNTING_SHEET.gloves
        : glazing === "acrylic"
          ? MOUNTING_SHEET.acrylic
          : MOUNTING_SHEET.noContact,
    ),
    act(MOUNTING_SHEET.lookForDust),
    ...(stack === null ? [] : [act(stackStep(stack.stack, stack.rabbet, speech))]),
    ...(over ? [warning(MOUNTING_SHEET.doNotPress)] : []),
    act(plan.boards.side === "left" ? storeStep : closeStep),
  ];
}
