import { type Holding, holdingOfWay, type HoldPlan } from "../../assembly/index.ts";
import { smaller } from "../../lengths/index.ts";
import { BENCH_SHEET } from "../../words/bench-sheet.ts";
import {
  floatCaution,
  floatStep,
  hingesStep,
  insteadOf,
  layStep,
  layTurnedStep,
  pocketsStep,
  riserStep,
  stripsStep,
  tapeBoards,
} from "../../words/bench-steps.ts";
import { type Act, act, title, warned, warning } from "./act.ts";
import { type BenchDesk, nearestTick } from "./desk.ts";

/** Holding, laying and closing: what the hand does once the windows are cut. */
export function printActs(desk: BenchDesk, several: boolean): readonly Act[] {
  const { composition } = desk.job;
  const { held } = desk;
  if (composition.print === null || held === null) {
    return [warning(BENCH_SHEET.noPrint)];
  }
  const opened = several ? [title(BENCH_SHEET.printTitle)] : [];
  const outliers = warned(desk, (check) => check.code === "edition-outlier");
  const boards = act(tapeBoards(held.boards.side, held.boards.between, desk.speech));
  if (composition.design.window.show === "sheet")
    return [...opened, ...floatActs(desk, held), boards, ...outliers];
  return [...opened, ...holdActs(desk, held), ...layActs(desk), ...outliers, boards];
}

/** What holds it as the bench calls it: what was asked, where nothing serves. */
export function holdingOn({ held, job }: BenchDesk): Holding {
  const way = held?.way ?? null;
  return way === null ? job.composition.design.holding : holdingOfWay(way);
}

/** What the asked way lacks, where it does not serve, and the way that was taken instead. */
function holdActs(desk: BenchDesk, held: HoldPlan): readonly Act[] {
  const { speech } = desk;
  const { way, refused, pockets, strips, hinges } = held;
  if (way === null) return [warning(BENCH_SHEET.notHeld)];
  const why = refused.find((one) => holdingOfWay(one.way) === held.asked)?.why;
  const told = why === undefined ? [] : [warning(insteadOf(held.asked, why, way, speech))];
  if (way === "pockets" && pockets !== null)
    return [...told, act(pocketsStep(pockets.leg, pockets.least.hidden, speech))];
  if (way === "strips" && strips !== null) {
    const reach = strips.each.map((strip) => strip.reach).reduce(smaller);
    return [...told, act(stripsStep(reach, speech))];
  }
  return [...told, act(hingesStep(hinges.at.length, hinges.inset, speech))];
}

function layActs(desk: BenchDesk): readonly Act[] {
  const { print } = desk.job.composition;
  if (print === null || print.edition.length > 0) return [];
  if (print.angle === 0) return [act(layStep(print.left, print.top, desk.speech))];
  const [first, second] = print.sheetCorners;
  return [
    act(
      layTurnedStep(
        print.angle,
        { left: nearestTick(first.x), head: nearestTick(first.y) },
        { left: nearestTick(second.x), head: nearestTick(second.y) },
        desk.speech,
      ),
    ),
  ];
}

/** A float: riser, sheet on it, and what keeps the mat off the paper. */
function floatActs(desk: BenchDesk, { bed, hinges }: HoldPlan): readonly Act[] {
  const { print } = desk.job.composition;
  if (print === null || bed.kind !== "raised") return [];
  const risen = smaller(bed.riser.width, bed.riser.height) > 0;
  return [
    ...(risen ? [act(riserStep(bed.riser, bed.left, bed.top, desk.speech))] : []),
    ...warned(desk, (check) => check.code === "holding-shows"),
    act(floatStep(hinges.at.length, print.left, print.top, desk.speech)),
    warning(floatCaution),
  ];
}
