import type { Size } from "../../geometry/index.ts";
import type { Ruler } from "../../lengths/index.ts";
import type { Quote, QuoteJob } from "../../plans/index.ts";
import type { Language } from "../../words/index.ts";
import type { House, PlanWords } from "../job.ts";
import type { Desk } from "../paper.ts";

/** Everything that a quote says. */
export interface QuoteSheetJob {
  readonly job: QuoteJob;
  readonly quote: Quote;
  /** Beside the job's works: the package's size, on its own ruler. */
  readonly sizes: readonly { readonly size: Size; readonly ruler: Ruler }[];
  readonly currency: string | null;
  /** The days on which the prices held, ISO 8601; null: not told. */
  readonly stockDate: string | null;
  readonly practiceDate: string | null;
  readonly house: House;
  readonly planWords: PlanWords;
  readonly language: Language;
}

export interface QuoteDesk extends Desk {
  /** With every text already printable. */
  readonly job: QuoteSheetJob;
  readonly missing: number;
}
