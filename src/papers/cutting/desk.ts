import type { CuttingJob, CuttingPlan, PlannedSheet } from "../../plans/cutting/index.ts";
import type { Ruler } from "../../lengths/index.ts";
import type { Language, Speech } from "../../words/index.ts";
import type { House, PlanWords } from "../job.ts";
import type { Desk } from "../paper.ts";

/** Everything that a cut plan says: one material's job with its plan. */
export interface CutPlanJob {
  /** The board as it is called in the rack: "4-ply white rag". */
  readonly board: string;
  /** What must be handled in its own way. */
  readonly material: "board" | "glass" | "acrylic";
  readonly job: CuttingJob;
  readonly plan: CuttingPlan;
  /** For each sheet of the plan, the number of the blank at each placement. */
  readonly numbers: readonly (readonly number[])[];
  readonly house: House;
  /** The plan's own number and date. */
  readonly planWords: PlanWords;
  readonly ruler: Ruler;
  readonly language: Language;
}

/** What every part of one cut plan is laid out with. */
export interface CuttingDesk extends Desk {
  /** With every text already printable. */
  readonly job: CutPlanJob;
  readonly speech: Speech;
  /** Signs of the names that the type lacks. */
  readonly missing: number;
}

/** One sheet of the plan as it is drawn: mirrored about its diagonal where it would stand upright. */
export interface DrawnSheet {
  /** Place in the plan. */
  readonly index: number;
  readonly sheet: PlannedSheet;
  /** Whether `sheet` is the plan's own mirrored. */
  readonly turned: boolean;
  readonly numbers: readonly number[];
}

/** The layouts that are cut from windows of a sheet's own pieces, by placement, turned as the sheet is. */
export type OutsOf = (placement: number) => DrawnSheet | null;
