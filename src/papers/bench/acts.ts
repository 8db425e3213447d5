import type { Check, Holding } from "../../assembly/index.ts";
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
import type { Corners } from "../../geometry/index.ts";
import {
  BENCH_SHEET,
  blankStep,
  cutsStep,
  floatCaution,
  floatStep,
  hingesStep,
  layLowerBlank,
  layStep,
  layTurnedStep,
  markStep,
  matName,
  onTheBench,
  outIsBlank,
  outSquares,
  outsToRack,
  outTooSmall,
  pocketsStep,
  pocketsTooSmall,
  proofSum,
  riserStep,
  stripsStep,
  tapeBoards,
} from "../../words/bench-sheet.ts";
import { cautionWords } from "../../words/cautions.ts";
import type { Phrase } from "../../words/index.ts";
import { type BenchDesk, nearestTick, numberedStops, onTheMarks, roundLength } from "./desk.ts";

/** One line of the steps: a thing to do and tick, a caution where the hand is about to do it, a title. */
export type Act =
  | { readonly kind: "do"; readonly words: Phrase }
  | { readonly kind: "caution"; readonly words: Phrase }
  | { readonly kind: "title"; readonly words: string };

const act = (words: Phrase): Act => ({ kind: "do", words });
const warning = (words: Phrase): Act => ({ kind: "caution", words });

/** Everything the hand does, in its order, once all lies on the bench. With several mats each has its own title. */
export function actsOf(desk: BenchDesk): readonly Act[] {
  const { mats } = desk.job.composition;
  const several = mats.length > 1;
  return [
    ...mats
      .map((_, index) => mats.length - 1 - index)
      .flatMap((mat) => [
        ...(several ? [title(matName(mat, mats.length, desk.speech))] : []),
        ...matActs(desk, mat),
      ]),
    ...printActs(desk, several),
  ];
}

const title = (words: string): Act => ({
  kind: "title",
  words: words.charAt(0).toUpperCase() + words.slice(1),
});

/** What must lie at hand before the first mark. */
export function benchWords(desk: BenchDesk): Phrase {
  const { composition, blanks } = desk.job;
  return onTheBench(
    {
      mats: composition.mats.length,
      size: composition.outer,
      numbers: blanks === null ? [] : blanks.mats.toReversed().flat(),
      mount: composition.print === null ? null : composition.design.mount,
    },
    composition.print === null ? null : composition.design.holding,
    desk.speech,
  );
}

/** Cautions that a check of level "warn" puts at a step. */
const warned = (desk: BenchDesk, about: (check: Check) => boolean): readonly Act[] =>
  desk.job.composition.checks
    .filter((check) => check.level === "warn" && about(check))
    .map((check) => warning(cautionWords(check, desk.speech)));

function matActs(desk: BenchDesk, mat: number): readonly Act[] {
  const { composition } = desk.job;
  const { mats, outer, diagonal } = composition;
  const fromTop = mats.length - 1 - mat;
  const several = mats.length > 1;
  const one = mats[mat];
  if (one === undefined) return [];
  const { borders, back } = one;
  const wider =
    borders.left === borders.right
      ? null
      : {
          border: larger(borders.left, borders.right),
          hand: borders.right > borders.left ? ("left" as const) : ("right" as const),
        };
  const across = [borders.right, back.width, borders.left];
  const down = [borders.head, back.height, borders.foot];
  const { ruler } = desk.speech;
  const sums: Phrase | null = onTheMarks(desk, ...across, ...down)
    ? [proofSum(across, outer.width, ruler), ", ", proofSum(down, outer.height, ruler)]
    : null;
  const cuts = numberedStops(composition.stops)
    .filter(({ stop }) => stop.mat === mat)
    .flatMap((stop) => stop.cuts.map(({ number }) => number));
  const [first = 0, last = 0] = [cuts[0], cuts.at(-1)];
  const isLowest = mat === 0;
  return [
    fromTop === 0
      ? act(blankStep(mats.length, outer, diagonal, roundLength(desk, 1, 1), desk.speech))
      : act(layLowerBlank(fromTop, desk.speech)),
    act(markStep(wider, sums, fromTop > 0, desk.speech)),
    ...warned(
      desk,
      (check) =>
        (check.code === "border-small" && check.mat === mat) ||
        (check.code === "reveal-off" && check.mat === mat),
    ),
    warning(BENCH_SHEET.freeHand),
    act(several ? [cutsStep(first, last), " ", BENCH_SHEET.setCut] : BENCH_SHEET.setCut),
    ...(isLowest ? [act(BENCH_SHEET.cornerHolds)] : [act(BENCH_SHEET.tapeOutBack)]),
    ...(isLowest ? outActs(desk) : []),
  ];
}

/** What becomes of the drop-outs: the upper ones too come free only when the lowest window is cut. */
function outActs(desk: BenchDesk): readonly Act[] {
  const { composition, blanks, bench } = desk.job;
  const { mats } = composition;
  const outs = mats
    .map(({ back }, mat) => ({
      of: mats.length === 1 ? null : matName(mat, mats.length, desk.speech),
      blank: blanks?.fromOut[mat] ?? null,
      squared: {
        width: subtract(back.width, times(bench.squaringTrim, 2)),
        height: subtract(back.height, times(bench.squaringTrim, 2)),
      },
    }))
    .toReversed();
  // Under 3 in or 75 mm nothing is cut from it any more (common practice, no source).
  const useful = ({ squared }: (typeof outs)[number]): boolean =>
    smaller(squared.width, squared.height) >= roundLength(desk, 48, 75);
  const kept = outs.filter(({ blank }) => blank !== null);
  const racked = outs.filter((out) => out.blank === null && useful(out));
  return [
    ...kept.flatMap(({ of, blank, squared }) => [
      warning(outIsBlank(of, blank ?? 0)),
      act(outSquares(of, squared, desk.speech)),
    ]),
    ...(racked.length > 0
      ? [
          act(
            outsToRack(
              racked.map(({ squared }) => squared),
              racked.length === mats.length,
              desk.speech,
            ),
          ),
        ]
      : []),
    ...(kept.length + racked.length === 0 ? [act(outTooSmall)] : []),
  ];
}

function printActs(desk: BenchDesk, several: boolean): readonly Act[] {
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
      return [act(stripsStep(leastCover(desk), desk.speech))];
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
export function pocketLeg(desk: BenchDesk, hidden: Length): Length {
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
