import type { Composition, HoldPlan } from "../../assembly/index.ts";
import type { Size } from "../../geometry/index.ts";
import type { Language, Speech } from "../../words/index.ts";
import type { House, PlanWords, WorkWords } from "../job.ts";

/** A work and what its two labels say. */
export interface LabelledWork {
  readonly work: WorkWords;
  readonly composition: Composition;
  /** Null: a mat without a print. */
  readonly held: HoldPlan | null;
  /** What stands before it, as it is called in the rack; null: nothing, or not known. */
  readonly glazing: { readonly board: string; readonly kind: "glass" | "acrylic" } | null;
  /** Kilograms of the whole as it hangs; null: not known. */
  readonly weight: number | null;
  /** What a visitor reads below title and maker; empty where nothing is written. */
  readonly text: string;
  /** The work's own mark in the show: `SW 3`. Empty where it has none. */
  readonly mark: string;
}

/** One blank of the cut plan. */
export interface LabelledBlank {
  readonly number: number;
  readonly title: string;
  /** Which of the work's mats it becomes, from the lowest up; or another layer of its package. */
  readonly becomes: number | "mount" | "backing" | "glazing";
  readonly mats: number;
  readonly size: Size;
  readonly board: string;
}

export interface LabelsJob {
  readonly works: readonly LabelledWork[];
  readonly blanks: readonly LabelledBlank[];
  readonly house: House;
  readonly plan: PlanWords;
  readonly language: Language;
  /** The ruler that blanks are measured on; a work's own labels follow its own. */
  readonly ruler: Speech["ruler"];
}
