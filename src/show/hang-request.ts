import type {
  ChosenHardware,
  FramedWork,
  HangingHabits,
  Hardware,
  HungWork,
  Measuring,
} from "../assembly/index.ts";
import type { Ruler } from "../lengths/index.ts";
import type { WallJob, WallPlan } from "../plans/index.ts";
import { readMass } from "./mass.ts";
import { foundText, type Problem, type Wanted } from "./problem.ts";
import { Reader } from "./reader.ts";
import { validate } from "./validate.ts";

/** What is wanted in a field of a wall, beyond what every document knows. */
export type HangWanted =
  | Wanted
  /** A weight above nought. */
  | { readonly kind: "mass" }
  /** The wire's length, or its rise. */
  | { readonly kind: "wire" }
  | { readonly kind: "whole"; readonly least: number | null; readonly most: number | null }
  /** One of the ways to lay a wall out. */
  | { readonly kind: "rule" }
  /** Titles of works, or "rest". */
  | { readonly kind: "titles" }
  /** The title of a work that can be made and hangs on no other wall. */
  | { readonly kind: "free-title" }
  /** The name of a wall of the show. */
  | { readonly kind: "wall" }
  /** A name that no other wall has. */
  | { readonly kind: "own-name" }
  /** A frame: stated, or made from the practice's moulding. */
  | { readonly kind: "frame" };

export interface HangProblem {
  readonly field: string;
  readonly found: string;
  readonly wanted: HangWanted;
}

export type HangRead<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problems: readonly HangProblem[] };

/** A wall to lay out, the works on it, and how hooks are measured and held against their load. */
export interface HangRequest {
  readonly studio: string;
  readonly show: string;
  /** What the wall is called. */
  readonly wall: string;
  readonly ruler: Ruler;
  readonly job: WallJob;
  readonly works: readonly FramedWork[];
  readonly habits: HangingHabits;
  readonly measuring: Measuring;
  /** How many times its load a fitting must be rated for. */
  readonly safety: number;
  readonly hardware: readonly Hardware[];
  /** False where the document does not say how far a nail is above where its hook bears. */
  readonly hookKnown: boolean;
  readonly seed: number;
}

/** A wall as it was read, where its frames hang, and how each of them does. */
export interface HungWall {
  readonly request: HangRequest;
  readonly plan: WallPlan;
  readonly works: readonly HungWork[];
  /** Which of the listed fittings each work takes. */
  readonly hardware: readonly ChosenHardware[];
  /** Whether something cannot be hung as asked: a check of level "stop". */
  readonly stopped: boolean;
}

/** Lengths as every document has them, and what only a wall knows. */
export class HangReader extends Reader {
  private readonly others: HangProblem[] = [];

  /** The value, or all that could not be read. */
  done<Value>(value: Value): HangRead<Value> {
    const problems = [...this.problems, ...this.others];
    return problems.length === 0 ? { ok: true, value } : { ok: false, problems };
  }

  /** A whole number from `least` up to `most`; `least` or nought stands in where it is not. */
  whole(field: string, value: number, least: number | null, most: number | null): number {
    const within = (least === null || value >= least) && (most === null || value <= most);
    if (Number.isSafeInteger(value) && within) return value;
    this.want(field, value, { kind: "whole", least, most });
    return least ?? 0;
  }

  /** A weight in kilograms; nought stands in where it is none. */
  mass(field: string, written: string | number): number {
    const mass = readMass(written, this.unit);
    if (mass === null) this.want(field, written, { kind: "mass" });
    return mass ?? 0;
  }

  want(field: string, found: unknown, wanted: HangWanted): void {
    this.others.push({ field, found: foundText(found), wanted });
  }
}

/** Checks a wall's document against its schema, and tells what a field that may take several shapes wants. */
export function validateWall<Schema extends Parameters<typeof validate>[0]>(
  schema: Schema,
  document: unknown,
): HangRead<Extract<ReturnType<typeof validate<Schema>>, { readonly ok: true }>["value"]> {
  const read = validate(schema, document);
  return read.ok ? read : { ok: false, problems: read.problems.map(wallProblem) };
}

function wallProblem(problem: Problem): HangProblem {
  if (problem.wanted.kind !== "length") return problem;
  if (problem.field === "rule") return { ...problem, wanted: { kind: "rule" } };
  return problem.field === "works" ? { ...problem, wanted: { kind: "titles" } } : problem;
}
