import type { Holding } from "../../assembly/index.ts";
import type { Corners } from "../../geometry/index.ts";
import {
  add,
  type Length,
  larger,
  smaller,
  subtract,
  times,
  toGraduation,
  ZERO,
} from "../../lengths/index.ts";
import { BENCH_SHEET } from "../../words/bench-sheet.ts";
import {
  floatCaution,
  floatStep,
  hingesStep,
  layStep,
  layTurnedStep,
  pocketsStep,
  pocketsTooSmall,
  riserStep,
  stripsStep,
  stripsTooNarrow,
  tapeBoards,
} from "../../words/bench-steps.ts";
import { type Act, act, title, warned, warning } from "./act.ts";
import { type BenchDesk, nearestTick, roundLength } from "./desk.ts";

/** Holding, laying and closing: what the hand does once the windows are cut. */
export function printActs(desk: BenchDesk, several: boolean): readonly Act[] {
  const { composition } = desk.job;
  const { print, design } = composition;
  if (print === null || design.print === null) {
    return [warning(BENCH_SHEET.noPrint)];
  }
  const opened = several ? [title(BENCH_SHEET.printTitle)] : [];
  const outliers = warned(desk, (check) => check.code === "edition-outlier");
  const boards = act(tapeBoards(roundMillimetre(desk), desk.speech));
  if (design.window.show === "sheet") return [...opened, ...floatActs(desk), ...outliers];
  return [...opened, ...holdActs(desk, design.holding, print.pockets), ...layActs(desk), ...outliers, boards];
}

/** About a millimetre between hinged boards: Library of Congress Research Guide, Basic Storage Mat. */
const roundMillimetre = (desk: BenchDesk): Length =>
  desk.speech.ruler.unit === "in" ? nearestTick(roundLength(desk, 1, 1) / 2) : roundLength(desk, 1, 1);

function holdActs(desk: BenchDesk, holding: Holding, pockets: Corners): readonly Act[] {
  const { design } = desk.job.composition;
  const hidden = hiddenPocket(desk, pockets);
  switch (holding) {
    case "pockets":
      return hidden < design.leastPocket
        ? [warning(pocketsTooSmall(hidden, design.leastPocket, desk.speech))]
        : [act(pocketsStep(pocketLeg(desk, hidden), hidden, desk.speech))];
    case "hinges":
      return [act(hingesStep(hingesFor(desk), hingeInset(desk), desk.speech))];
    case "strips":
      // A strip narrower than half a pocket's least leg holds nothing (common practice, no source).
      return leastCover(desk) * 2 < design.leastPocket
        ? [warning(stripsTooNarrow(leastCover(desk), desk.speech))]
        : [act(stripsStep(leastCover(desk), desk.speech))];
  }
}

/**
 * The largest pocket that stays hidden on every corner of every sheet: of an edition's other sheets by
 * what they reach under, which a turn could only make larger in the sheet's own axes.
 */
export function hiddenPocket(desk: BenchDesk, pockets: Corners): Length {
  const { print, design } = desk.job.composition;
  const own = [pockets.topLeft, pockets.topRight, pockets.bottomLeft, pockets.bottomRight];
  const others = (print?.edition ?? [])
    .slice(1)
    .flatMap(({ cover }) =>
      [cover.head, cover.foot].flatMap((end) =>
        [cover.left, cover.right].map((side) => subtract(add(end, side), design.play)),
      ),
    );
  return larger([...own, ...others].reduce(smaller), ZERO);
}

/**
 * The leg to fold: a quarter of an inch or 5 mm under the limit's own round step, at most 2 in or
 * 50 mm, since a longer pocket only hides more paper (common practice, no source).
 */
function pocketLeg(desk: BenchDesk, hidden: Length): Length {
  const round = toGraduation(smaller(hidden, roundLength(desk, 32, 50)), roundLength(desk, 4, 5), "down");
  const least = desk.job.composition.design.leastPocket;
  return round >= least ? round : toGraduation(hidden, desk.speech.ruler.graduation, "down");
}

/**
 * Hinges sit 1 to 2 in from the corners, at least two, on a large sheet one every 10 to 15 in
 * (exhibit-preparation handbook, "Mounting artwork or documents"); at 12 in apart this gives three for
 * a sheet 22 in wide and four for 30 in, as C. A. Paschke counts them (The Artists Magazine, 2014).
 */
function hingesFor(desk: BenchDesk): number {
  const wide = desk.job.composition.design.print?.sheet.width ?? ZERO;
  const span = subtract(wide, times(hingeInset(desk), 2));
  return Math.max(2, Math.ceil(span / roundLength(desk, 192, 300)) + 1);
}

function hingeInset(desk: BenchDesk): Length {
  const wide = desk.job.composition.design.print?.sheet.width ?? ZERO;
  const usual = roundLength(desk, 24, 40);
  return times(usual, 4) <= wide
    ? usual
    : toGraduation(nearestTick(wide / 5), desk.speech.ruler.graduation, "down");
}

function leastCover(desk: BenchDesk): Length {
  const cover = desk.job.composition.print?.cover;
  return cover === undefined
    ? ZERO
    : smaller(smaller(cover.head, cover.foot), smaller(cover.left, cover.right));
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

/** A float: riser, sheet on it, boards, and what keeps the mat off the paper. */
function floatActs(desk: BenchDesk): readonly Act[] {
  const { print, design } = desk.job.composition;
  if (print === null || design.print === null) return [];
  // The riser is drawn in all round so that it throws its shadow inside the sheet (common practice, no source).
  const inset = roundLength(desk, 8, 12);
  const { sheet } = design.print;
  const riser = {
    width: subtract(sheet.width, times(inset, 2)),
    height: subtract(sheet.height, times(inset, 2)),
  };
  const risen = smaller(riser.width, riser.height) > 0;
  return [
    ...(risen ? [act(riserStep(riser, add(print.left, inset), add(print.top, inset), desk.speech))] : []),
    ...warned(desk, (check) => check.code === "holding-shows"),
    act(floatStep(hingesFor(desk), print.left, print.top, desk.speech)),
    warning(floatCaution),
    act(tapeBoards(roundMillimetre(desk), desk.speech)),
  ];
}
