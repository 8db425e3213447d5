import type { RailMeasures, Size } from "../../geometry/index.ts";
import type { Length, Ruler } from "../../lengths/index.ts";
import { type ChoppingJob, type ChoppingPlan, placeInFrame, type RailSide } from "../../plans/index.ts";
import type { Language, Speech } from "../../words/index.ts";
import type { House, PlanWords } from "../job.ts";
import type { Desk } from "../paper.ts";

/** One frame that is made. */
export interface FrameMade {
  /** What its rails are marked with. */
  readonly number: number;
  readonly title: string;
  /** The package that goes into it. */
  readonly size: Size;
}

/** Everything that a chop list says: one moulding's job with its plan. */
export interface ChopListJob {
  readonly moulding: RailMeasures & {
    readonly name: string;
    /** How deep the rabbet is; null: not known. */
    readonly depth: Length | null;
  };
  readonly job: ChoppingJob;
  readonly plan: ChoppingPlan;
  /** For each kind of frame of the job, its frames in their order. */
  readonly frames: readonly (readonly FrameMade[])[];
  readonly house: House;
  readonly planWords: PlanWords;
  readonly ruler: Ruler;
  readonly language: Language;
}

/** What every part of one chop list is laid out with. */
export interface ChoppingDesk extends Desk {
  /** With every text already printable. */
  readonly job: ChopListJob;
  readonly speech: Speech;
  /** Signs of the names that the type lacks. */
  readonly missing: number;
}

/** One rail by its frame's number and its side in it; null where it belongs to none. */
export interface RailMark {
  readonly frame: number | null;
  readonly side: RailSide | null;
}

export function markOf(
  { job, frames }: Pick<ChopListJob, "job" | "frames">,
  rail: number,
  copy: number,
): RailMark {
  const wanted = job.rails[rail];
  const place = wanted === undefined ? null : placeInFrame(wanted, copy);
  if (place === null) return { frame: null, side: null };
  return { frame: frames[place.kind]?.[place.number]?.number ?? null, side: place.side };
}
