import { larger, smaller, subtract, times } from "../../lengths/index.ts";
import { BENCH_SHEET, matName } from "../../words/bench-sheet.ts";
import {
  blankStep,
  cutsStep,
  layLowerBlank,
  markStep,
  onTheBench,
  outIsBlank,
  outSquares,
  outsToRack,
  outTooSmall,
  proofSum,
} from "../../words/bench-steps.ts";
import { type Act, act, title, warned, warning } from "./act.ts";
import type { Phrase } from "../../words/index.ts";
import { type BenchDesk, numberedStops, onTheMarks, roundLength } from "./desk.ts";
import { holdingOn, printActs } from "./print-acts.ts";

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

/** What must lie at hand before the first mark. */
export function benchWords(desk: BenchDesk): Phrase {
  const { composition, blanks, work } = desk.job;
  const float = composition.design.window.show === "sheet";
  return onTheBench(
    {
      mats: composition.mats.length * work.quantity,
      copies: work.quantity,
      size: composition.outer,
      numbers: blanks === null ? [] : blanks.mats.toReversed().flat(),
      mount: composition.print === null ? null : composition.design.mount,
      mountNumbers: blanks?.mounts ?? [],
    },
    composition.print === null ? null : float ? "float" : holdingOn(desk),
    desk.speech,
  );
}

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
      ? act(
          blankStep(
            mats.length * desk.job.work.quantity,
            outer,
            diagonal,
            roundLength(desk, 1, 1),
            desk.speech,
          ),
        )
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
