import { type Length, ticks, ZERO } from "../lengths/index.ts";
import { LONGEST_SIDE } from "../plans/index.ts";
import type { CUT_UNITS } from "./cut-schema.ts";
import { foundText, type Wanted } from "./problem.ts";
import { Reader } from "./reader.ts";
import type { Read } from "./validate.ts";

export type CutUnit = (typeof CUT_UNITS)[number];

/** What is wanted in a field of a cutting or chopping job, beyond what every document knows. */
export type CutWanted =
  | Wanted
  | { readonly kind: "whole"; readonly most: number | null }
  | { readonly kind: "side" }
  | { readonly kind: "price" }
  | { readonly kind: "seconds" }
  | { readonly kind: "smaller-window" }
  | { readonly kind: "fewer-pieces"; readonly most: number }
  | { readonly kind: "fewer-rails"; readonly most: number }
  | { readonly kind: "rails-or-frames" }
  | { readonly kind: "kerf-or-saw" }
  | { readonly kind: "moulding" }
  | { readonly kind: "narrower-rabbet" }
  | { readonly kind: "seen-through" };

export interface CutProblem {
  readonly field: string;
  readonly found: string;
  readonly wanted: CutWanted;
}

/** A job with what the document says about how to plan it and how to write the plan. */
export interface JobRequest<Job> {
  readonly job: Job;
  readonly unit: CutUnit;
  readonly seconds: number;
  readonly seed: number;
}

export type JobRead<Job> =
  | { readonly ok: true; readonly value: JobRequest<Job> }
  | { readonly ok: false; readonly problems: readonly CutProblem[] };

/** What every document of a job may say. */
interface JobDocument {
  readonly unit?: CutUnit | undefined;
  readonly seconds?: number | undefined;
  readonly seed?: number | undefined;
}

/** Reads one job in any of its units; every problem is told with its field. */
export function readJob<Document extends JobDocument, Job>(
  valid: Read<Document>,
  readerIn: (unit: CutUnit) => JobReader & { job(document: Document): Job },
): JobRead<Job> {
  if (!valid.ok) return valid;
  const reader = readerIn(valid.value.unit ?? "in");
  const job = reader.job(valid.value);
  const { seconds, seed } = reader.planning(valid.value);
  const problems = reader.all();
  return problems.length > 0
    ? { ok: false, problems }
    : { ok: true, value: { job, unit: reader.unit, seconds, seed } };
}

const MOST_SECONDS = 3600;
const USUAL_SECONDS = 5;

/** Reads the lengths, counts and prices of one job in its unit and gathers every problem with its field. */
export class JobReader {
  readonly unit: CutUnit;
  private readonly lengths: Reader;
  private readonly problems: CutProblem[] = [];

  constructor(unit: CutUnit) {
    this.unit = unit;
    this.lengths = new Reader(unit === "tick" ? "mm" : unit);
  }

  all(): readonly CutProblem[] {
    return [...this.lengths.problems, ...this.problems];
  }

  refuse(field: string, found: unknown, wanted: CutWanted): void {
    this.problems.push({ field, found: foundText(found), wanted });
  }

  /** How long the planner may take, and its seed. */
  planning({ seconds = USUAL_SECONDS, seed = 1 }: JobDocument): {
    readonly seconds: number;
    readonly seed: number;
  } {
    if (!(seconds >= 0 && seconds <= MOST_SECONDS)) this.refuse("seconds", seconds, { kind: "seconds" });
    if (!Number.isSafeInteger(seed)) this.refuse("seed", seed, { kind: "whole", most: null });
    return { seconds, seed };
  }

  price(field: string, cost: number): number {
    if (!(cost >= 0 && cost <= 1e9)) this.refuse(field, cost, { kind: "price" });
    return cost;
  }

  whole(field: string, value: number): number {
    if (Number.isSafeInteger(value) && value >= 0) return value;
    this.refuse(field, value, { kind: "whole", most: null });
    return 0;
  }

  /** null: as many as wanted. */
  copies(field: string, value: number | null | undefined): number | null {
    return value === null || value === undefined ? null : this.whole(field, value);
  }

  lengthOr(field: string, value: string | number | undefined): Length {
    if (value === undefined) return ZERO;
    return this.unit === "tick" ? this.tick(field, value) : this.lengths.length(field, value);
  }

  /** A length above nought that a bench can hold. */
  side(field: string, value: string | number): Length {
    if (this.unit === "tick") {
      const before = this.problems.length;
      const length = this.tick(field, value);
      if (length === 0 && this.problems.length === before) this.refuse(field, value, { kind: "side" });
      return length;
    }
    const length = this.lengths.size(field, value);
    if (length > LONGEST_SIDE) this.refuse(field, value, { kind: "side" });
    return length;
  }

  /** A whole number of whatever the job counts in. */
  private tick(field: string, value: string | number): Length {
    const number = typeof value === "string" && /^\s*\d+\s*$/.test(value) ? Number(value) : value;
    if (typeof number === "number" && Number.isSafeInteger(number) && number >= 0 && number <= LONGEST_SIDE) {
      return ticks(number);
    }
    this.refuse(field, value, { kind: "whole", most: LONGEST_SIDE });
    return ZERO;
  }
}
