import { type CuttingJob, type CuttingPlan, planCutting, type PlanOptions } from "../plans/cutting/index.ts";

/** What a plan saved by what was there already, against the same job without it. */
export type Saved =
  /** Without it the sheets that can be bought would not do. */
  | { readonly kind: "needed" }
  | {
      readonly kind: "money";
      /** No plan without it costs less than this above the plan's own cost; nought where that is not known. */
      readonly atLeast: number;
      /** The best plan without it that the time gave, less the plan's own cost. */
      readonly atMost: number;
      /** Bought sheets fewer than in that plan. */
      readonly sheets: number;
    };

const cents = (amount: number): number => Math.round(amount * 100) / 100;

/** A job's plan, and what it saved against the same job from bought sheets alone; null where it has no offcut and no window to use. */
export interface PlanWithSaved {
  readonly plan: CuttingPlan;
  readonly saved: Saved | null;
  /** How many of each of the job's sheets a plan from bought ones alone takes; null: there is nothing to save by. */
  readonly plain: Plain | null;
}

/** A plan without what was there already. */
export interface Plain {
  /** Beside the job's sheets. */
  readonly used: readonly number[];
  /** Whether it gives every piece that the plan itself gives. */
  readonly serves: boolean;
}

/** Of the time, what the plan may take where another is held against it; that one has the rest, all that the plan left over among it. */
const OWN_SHARE = 0.75;

/** Plans a job, and once more from bought sheets alone where there is something to save by: both within `options.seconds`. */
export function planWithSaved(job: CuttingJob, options: PlanOptions): PlanWithSaved {
  const bought = job.sheets.filter(({ copies, cost }) => copies === null || cost > 0);
  const windows = job.dropOuts && job.pieces.some(({ window }) => window !== null);
  if (bought.length === job.sheets.length && !windows)
    return { plan: planCutting(job, options), saved: null, plain: null };
  const { seconds, clock } = options;
  const began = clock();
  const plan = planCutting(job, { ...options, seconds: OWN_SHARE * seconds });
  const left = Math.max(0, seconds - (clock() - began) / 1000);
  const plain = planCutting({ ...job, sheets: bought, dropOuts: false }, { ...options, seconds: left });
  const saved = savedBy(job, plan, plain);
  const alone = usedSheets(plain, bought.length);
  const used = job.sheets.map((sheet) => alone[bought.indexOf(sheet)] ?? 0);
  return { plan, saved, plain: { used, serves: saved.kind === "money" } };
}

function savedBy(job: CuttingJob, plan: CuttingPlan, plain: CuttingPlan): Saved {
  if (total(plain.missing) > total(plan.missing)) return { kind: "needed" };
  const atMost = Math.max(0, cents(plain.cost - plan.cost));
  const least = plain.proven ? plain.cost : plain.bound.cost;
  return {
    kind: "money",
    atLeast: Math.min(atMost, Math.max(0, cents(least - plan.cost))),
    atMost,
    sheets: Math.max(0, plain.sheetsUsed - boughtOf(job, plan)),
  };
}

const boughtOf = ({ sheets }: CuttingJob, plan: CuttingPlan): number =>
  plan.sheets.filter(({ from }) => {
    const sheet = from.kind === "stock" ? sheets[from.sheet] : undefined;
    return sheet !== undefined && (sheet.copies === null || sheet.cost > 0);
  }).length;

/** How many of each of a job's sheets a plan takes. */
export const usedSheets = ({ sheets }: CuttingPlan, kinds: number): readonly number[] =>
  Array.from(
    { length: kinds },
    (_, kind) => sheets.filter(({ from }) => from.kind === "stock" && from.sheet === kind).length,
  );

export const total = (counts: readonly number[]): number => counts.reduce((sum, count) => sum + count, 0);
