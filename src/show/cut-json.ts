import type { Box, Point } from "../geometry/index.ts";
import { type Length, toInches, toMillimetres } from "../lengths/index.ts";
import {
  type Cut,
  type CuttingJob,
  type CuttingPlan,
  type PlannedSheet,
  planCutting,
  type PlanOptions,
  type Source,
} from "../plans/index.ts";
import {
  aboutCutting,
  type CuttingSpeech,
  sayBound,
  sayCuttingCheck,
  sayCutWanted,
  sayDropOutOf,
} from "../words/cutting.ts";
import { type ProblemJson, unreadJson, checkJson } from "./json.ts";
import type { CutProblem, CutUnit } from "./job-reader.ts";
import { readCut } from "./read-cut.ts";

/** Milliseconds from any start. */
export type Clock = () => number;

/** A job as it was read, its plan, and whether some piece of it cannot be made. */
export interface PlannedCut {
  readonly job: CuttingJob;
  readonly unit: CutUnit;
  readonly plan: CuttingPlan;
  readonly stopped: boolean;
  /** The plan in the open format. */
  readonly json: () => object;
}

/** What helps a plan along besides its time. */
export type PlanAids = Pick<PlanOptions, "solver" | "stop" | "progress">;

/** Reads and plans one material's job. */
export function planFor(
  document: unknown,
  clock: Clock,
  aids: PlanAids = {},
):
  | { readonly ok: true; readonly value: PlannedCut }
  | { readonly ok: false; readonly problems: readonly CutProblem[] } {
  const start = clock();
  const read = readCut(document);
  if (!read.ok) return read;
  const { job, unit, seconds, seed } = read.value;
  const plan = planCutting(job, { seconds, seed, clock, ...aids });
  const took = (clock() - start) / 1000;
  const stopped = plan.checks.some((check) => check.level === "stop");
  return {
    ok: true,
    value: { job, unit, plan, stopped, json: () => cuttingPlanJson(job, plan, unit, took) },
  };
}

/** One material's job in, its cutting plan or its problem out, as plain JSON. */
export const cutJson = (document: unknown, clock: Clock): object => cutResult(document, clock).json;

/** As `cutJson`, with whether some piece cannot be made (a check of level "stop") or the job could not be read. */
export function cutResult(
  document: unknown,
  clock: Clock,
  aids: PlanAids = {},
): { readonly json: object; readonly stopped: boolean } {
  const planned = planFor(document, clock, aids);
  if (planned.ok) return { json: planned.value.json(), stopped: planned.value.stopped };
  return { json: unreadJson(planned.problems.map(cutProblemJson)), stopped: true };
}

export const cutProblemJson = ({ field, found, wanted }: CutProblem): ProblemJson => ({
  field,
  found,
  wanted: sayCutWanted(wanted),
});

/** A plan in the open format: coordinates from each sheet's own corner, in the job's unit, exact. */
export function cuttingPlanJson(job: CuttingJob, plan: CuttingPlan, unit: CutUnit, seconds: number): object {
  const number = numberIn(unit);
  const speech: CuttingSpeech = { job, unit };
  return {
    unit,
    sheets: plan.sheets.map((sheet) => sheetJson(job, plan, sheet, number)),
    cost: plan.cost,
    sheetsUsed: plan.sheetsUsed,
    bound: { cost: plan.bound.cost, how: sayBound(plan.bound.how) },
    proven: plan.proven,
    settings: plan.settings,
    seconds: Math.round(seconds * 1000) / 1000,
    checks: plan.checks.map((check) => checkJson(check, sayCuttingCheck(check, speech), aboutCutting(check))),
  };
}

/** A length as a bare number in the job's unit. */
export const numberIn = (unit: CutUnit): ((length: Length) => number) => {
  switch (unit) {
    case "in":
      return toInches;
    case "mm":
      return toMillimetres;
    case "tick":
      return (length) => length;
  }
};

function sheetJson(
  job: CuttingJob,
  plan: CuttingPlan,
  sheet: PlannedSheet,
  number: (length: Length) => number,
): object {
  const box = ({ left, top, width, height }: Box) => ({
    x: number(left),
    y: number(top),
    w: number(width),
    h: number(height),
  });
  const point = ({ x, y }: Point) => [number(x), number(y)];
  return {
    sheet:
      sheet.from.kind === "stock" ? sheet.from.sheet : { from: [sheet.from.sheet, sheet.from.placement] },
    name: nameOf(job, plan, sheet.from),
    w: number(sheet.size.width),
    h: number(sheet.size.height),
    pieces: sheet.placements.map((lies) => ({ piece: lies.piece, copy: lies.copy, ...box(lies) })),
    cuts: sheet.cuts.map((cut: Cut, index) => ({
      from: point(cut.from),
      to: point(cut.to),
      n: index + 1,
      fence: number(cut.setting),
      against: cut.against,
      ...(cut.takes > 0 ? { takes: number(cut.takes) } : {}),
    })),
    left: sheet.left.map((one) => ({ ...box(one), keep: one.keep })),
    needs: { w: number(sheet.needs.width), h: number(sheet.needs.height) },
  };
}

function nameOf(job: CuttingJob, plan: CuttingPlan, from: Source): string {
  if (from.kind === "stock") return job.sheets[from.sheet]?.name ?? "";
  const host = plan.sheets[from.sheet]?.placements[from.placement];
  return sayDropOutOf(job.pieces[host?.piece ?? -1]?.name ?? "");
}
