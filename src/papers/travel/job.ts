import type { Composition } from "../../assembly/index.ts";
import type { Size } from "../../geometry/index.ts";
import type { Ruler } from "../../lengths/index.ts";
import type { BoxHabits, Boxed, Money, PackingJob, PackingPlan } from "../../plans/index.ts";
import type { Language } from "../../words/index.ts";
import type { House, PlanWords, WorkWords } from "../job.ts";

interface Shared {
  readonly house: House;
  readonly planWords: PlanWords;
  readonly ruler: Ruler;
  readonly language: Language;
}

/** What a packing list says. */
export interface PackingListJob extends Shared {
  readonly job: PackingJob;
  readonly plan: PackingPlan;
  /** Beside the job's works: the work's mark, and whether it is behind glass. */
  readonly works: readonly { readonly mark: string; readonly glass: boolean }[];
  readonly boxed: readonly Boxed[];
  readonly box: BoxHabits;
}

/** One work that is lent: so many alike. */
export interface LentWork {
  readonly work: WorkWords;
  readonly mark: string;
  /** As it travels, on its own ruler. */
  readonly size: Size;
  readonly ruler: Ruler;
  /** Empty: the room's own. */
  readonly lender: string;
  /** Of all copies; null: not told. */
  readonly value: Money | null;
}

export interface LoanListJob extends Shared {
  readonly works: readonly LentWork[];
  readonly currency: string | null;
  /** Decimals of the currency. */
  readonly digits: number;
}

/** One work whose condition is looked at. */
export interface NotedWork {
  readonly work: WorkWords;
  readonly mark: string;
  readonly composition: Composition;
  /** What is known already; empty: nothing. */
  readonly condition: string;
}

export interface ConditionNotesJob extends Shared {
  readonly works: readonly NotedWork[];
}
