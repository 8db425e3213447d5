import { type Length, larger, mm, subtract, add, ZERO } from "../../lengths/index.ts";
import { BENCH_SHEET, cutOrder, matName, outBecomes } from "../../words/bench-sheet.ts";
import { type Block, block, gap, placed, stack } from "../block.ts";
import { points } from "../paper.ts";
import { ruledHead } from "../tags.ts";
import { paragraph } from "../text.ts";
import { TYPE } from "../type.ts";
import { benchWords } from "./acts.ts";
import { backView, LEAST_VIEW } from "./back-view.ts";
import { type BenchDesk, type NumberedStop } from "./desk.ts";
import { leastStopsHeight, STOPS_WIDTH, stopsColumn } from "./stops.ts";

const GUTTER = mm(4);

const stopsOf = (mat: number, stops: readonly NumberedStop[]): readonly NumberedStop[] =>
  stops.filter(({ stop }) => stop.mat === mat);

/** The least height at which one mat's drawing and stops can be read. */
export const leastBand = (desk: BenchDesk, mat: number, stops: readonly NumberedStop[]): Length =>
  larger(leastStopsHeight(desk, stopsOf(mat, stops)), LEAST_VIEW);

/** One mat's back view beside its stops. */
export function matBand(
  desk: BenchDesk,
  index: number,
  stops: readonly NumberedStop[],
  width: Length,
  height: Length,
): Block {
  const { mats } = desk.job.composition;
  const mat = mats[index];
  if (mat === undefined) return block(width, height);
  const own = stopsOf(index, stops);
  const view = backView(
    desk,
    {
      mat,
      stops: own,
      among:
        mats.length === 1
          ? null
          : { name: matName(index, mats.length, desk.speech), order: cutOrder(mats.length - 1 - index) },
      fate: outBecomes(desk.job.blanks?.fromOut[index] ?? null, index > 0),
    },
    subtract(width, add(STOPS_WIDTH, GUTTER)),
    height,
  );
  return block(width, height, [
    ...view.marks,
    ...placed(stopsColumn(desk, own, height), subtract(width, STOPS_WIDTH), ZERO),
  ]);
}

/** What must lie at hand: read before the first mark and then no more. */
export const benchPanel = (desk: BenchDesk, width: Length): Block =>
  stack([
    ruledHead(desk, BENCH_SHEET.onTheBench, width),
    gap(mm(1)),
    paragraph(desk, benchWords(desk), BENCH_STYLE, width),
  ]);

const BENCH_STYLE = { ...TYPE.line, figures: { whole: points(14), stacked: points(15) } };
