import type { Composition } from "../../assembly/index.ts";
import type { Size } from "../../geometry/index.ts";
import type { Language, Speech } from "../../words/index.ts";
import type { House, PlanWords, WorkWords } from "../job.ts";

/** A work and what its two labels say. */
export interface LabelledWork {
  readonly work: WorkWords;
  readonly composition: Composition;
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
