import type { Composition, HoldFacts, HoldPlan } from "../../assembly/index.ts";
import type { Length } from "../../lengths/index.ts";
import type { Language } from "../../words/vocabulary.ts";
import type { Speech } from "../../words/index.ts";
import type { House, PlanWords, WorkWords } from "../job.ts";
import type { Desk } from "../paper.ts";

/** The whole package's thickness, and the depth of the rabbet that takes it. */
export interface ClosingStack {
  readonly stack: Length;
  readonly rabbet: Length;
}

/** Everything that one work's mounting and closing sheet says. */
export interface MountingSheetJob {
  readonly work: WorkWords;
  readonly composition: Composition;
  readonly plan: HoldPlan;
  /** What it is glazed with; null: nothing, or not known. */
  readonly glazing: HoldFacts["glazing"];
  /** Null: not reckoned, to be measured at the bench. */
  readonly stack: ClosingStack | null;
  readonly house: House;
  readonly planWords: PlanWords;
  readonly language: Language;
}

export interface MountingDesk extends Desk {
  /** With every text already printable. */
  readonly job: MountingSheetJob;
  readonly speech: Speech;
  readonly missing: number;
}
