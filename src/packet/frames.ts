import type { Typeface } from "../drawings/index.ts";
import { printExact } from "../lengths/index.ts";
import { chopList, type FrameMade, markOf, type Page, type PaperSize } from "../papers/index.ts";
import {
  type ChoppingJob,
  type ChoppingPlan,
  planChopping,
  type PlanOptions,
  railsOfFrames,
} from "../plans/index.ts";
import type { Moulding, Practice, Stock, StockMoulding } from "../show/index.ts";
import { CHOP_TABLE } from "../words/packet.ts";
import type { Packeted } from "./bench-sheets.ts";
import type { TableOut } from "./file.ts";
import type { ComposedWork } from "./works.ts";

/** The frames of a packet: the moulding's job with its plan, and what each frame is called. */
export interface PlannedFrames {
  readonly moulding: Moulding;
  readonly job: ChoppingJob;
  /** The stock's own entries, beside the job's lengths. */
  readonly stock: readonly StockMoulding[];
  readonly plan: ChoppingPlan;
  /** For each kind of frame of the job, the work that it is made for. */
  readonly works: readonly ComposedWork[];
  /** For each kind of frame of the job, its frames; numbered from 1 on. */
  readonly frames: readonly (readonly FrameMade[])[];
}

/** All rails of the works that are cut, out of the lengths of the practice's moulding; null where it has none, or no work is cut. */
export function planFrames(
  works: readonly ComposedWork[],
  practice: Practice,
  stock: Stock,
  options: PlanOptions,
): PlannedFrames | null {
  const { moulding } = practice;
  const cut = works.filter(({ stopped }) => !stopped);
  if (moulding === null || cut.length === 0) return null;
  const kinds = cut.map(({ work, composition, quantity }) => ({
    name: work.title,
    ...composition.outer,
    count: quantity,
  }));
  const own = stock.lengths.filter((one) => one.moulding === null || one.moulding === moulding.name);
  const job: ChoppingJob = {
    lengths: own,
    ...railsOfFrames(kinds, moulding),
    kerf: moulding.kerf,
    waste: moulding.waste,
  };
  let next = 1;
  const frames = kinds.map(({ name: title, width, height, count }) =>
    Array.from({ length: count }, () => ({ number: next++, title, size: { width, height } })),
  );
  return { moulding, job, stock: own, plan: planChopping(job, options), works: cut, frames };
}

/** The pages of the chop list. */
export const chopListPages = (
  { moulding, job, plan, frames }: PlannedFrames,
  { house, plan: planWords, practice }: Packeted,
  size: PaperSize,
  typeface: Typeface,
): readonly Page[] =>
  chopList(
    { moulding, job, plan, frames, house, planWords, ruler: practice.ruler, language: practice.language },
    size,
    typeface,
  );

/** Every rail as a row, in the order of the sticks: what it is measured by, which frame and side, and where it lies. */
export function chopTable({ job, plan, frames }: PlannedFrames, { practice }: Packeted): TableOut {
  const { unit } = practice.ruler;
  return {
    header: CHOP_TABLE.header,
    rows: plan.sticks.flatMap((stick, index) =>
      stick.rails.map(({ rail, copy, at }) => {
        const wanted = job.rails[rail];
        const { frame, side } = markOf({ job, frames }, rail, copy);
        return [
          String(index + 1),
          job.lengths[stick.length]?.name ?? "",
          frame === null ? "" : String(frame),
          wanted?.name ?? "",
          side ?? "",
          wanted === undefined ? "" : printExact(wanted.length, unit),
          wanted === undefined || wanted.shortPoint === null ? "" : printExact(wanted.shortPoint, unit),
          printExact(at, unit),
        ];
      }),
    ),
  };
}
