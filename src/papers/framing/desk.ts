import type { Composition, FramePlan, HoldPlan } from "../../assembly/index.ts";
import type { Language } from "../../words/vocabulary.ts";
import type { Speech } from "../../words/index.ts";
import type { House, PlanWords, WorkWords } from "../job.ts";
import type { Desk } from "../paper.ts";

/** Everything that one work's frame sheet says. */
export interface FrameSheetJob {
  readonly work: WorkWords;
  readonly composition: Composition;
  readonly plan: FramePlan;
  /** How it is held; null: a mat without a print, or not known. */
  readonly held: HoldPlan | null;
  readonly house: House;
  readonly planWords: PlanWords;
  readonly language: Language;
}

export interface FrameDesk extends Desk {
  /** With every text already printable. */
  readonly job: FrameSheetJob;
  readonly speech: Speech;
  readonly missing: number;
}
