import type { GuidanceName, LightPlan, LitDays } from "../../assembly/index.ts";
import type { House, PlanWords } from "../job.ts";
import type { Desk } from "../paper.ts";

/** One work that hangs in the light. */
export interface LitWork {
  readonly title: string;
  /** Empty: not told. */
  readonly process: string;
  readonly mark: string;
  readonly plan: LightPlan;
}

/** What a light sheet says. */
export interface LightSheetJob {
  readonly hanging: LitDays;
  /** Microwatts a lumen; null: not measured. */
  readonly ultraviolet: number | null;
  readonly guidance: GuidanceName;
  readonly works: readonly LitWork[];
  /** A day as ISO 8601. */
  readonly isoOf: (day: number) => string;
  readonly house: House;
  readonly planWords: PlanWords;
}

export interface LightDesk extends Desk {
  /** With every text already printable. */
  readonly job: LightSheetJob;
  readonly missing: number;
}
