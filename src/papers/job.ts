import type { Composition, FrameCheck, HoldPlan } from "../assembly/index.ts";
import type { Length } from "../lengths/index.ts";
import type { Language } from "../words/vocabulary.ts";

/** What a work is called, as it will stand on its papers and labels. Empty where nothing is known. */
export interface WorkWords {
  readonly title: string;
  readonly maker: string;
  readonly year: string;
  readonly process: string;
  /** As it is written on the sheet: `4 / 12`. */
  readonly edition: string;
  /** How many of it are made alike. */
  readonly quantity: number;
}

/** Whose papers these are. */
export interface House {
  readonly studio: string;
  readonly show: string;
}

/** Which plan a paper belongs to, and the one that it makes void. Dates are ISO 8601. */
export interface PlanWords {
  readonly number: number;
  readonly date: string;
  readonly makesVoid: { readonly number: number; readonly date: string } | null;
}

/** One bench's habits, as far as its papers speak of them. */
export interface Bench {
  readonly hand: "left" | "right";
  /** The day of the scale's last test cuts, ISO 8601; null when it was never tested. */
  readonly scaleTested: string | null;
  /** How far a cut runs past its line at both ends. */
  readonly overrun: Length;
  /** What comes off each side of a drop-out to make it a square-edged board. */
  readonly squaringTrim: Length;
}

/** The numbers that a cut plan has given to this work's boards. */
export interface BlanksOfWork {
  readonly cutPlan: number;
  /** For each mat from the lowest up, the blanks of its copies. */
  readonly mats: readonly (readonly number[])[];
  /** The blanks that its copies are mounted on. */
  readonly mounts: readonly number[];
  /** For each mat from the lowest up, the blank that its drop-out becomes; null where it goes to the rack. */
  readonly fromOut: readonly (number | null)[];
}

/** Everything that one work's bench sheet says. */
export interface BenchSheetJob {
  readonly composition: Composition;
  /** How it is held; absent: reckoned from its measures alone. */
  readonly held?: HoldPlan;
  /** What in its frame makes its mats useless; absent: nothing, or it is not framed. */
  readonly frameStops?: readonly FrameCheck[];
  readonly work: WorkWords;
  readonly house: House;
  readonly plan: PlanWords;
  readonly bench: Bench;
  readonly blanks: BlanksOfWork | null;
  /** The name of the work's picture, for the writer to resolve; null where there is none. */
  readonly picture: string | null;
  readonly language: Language;
}
