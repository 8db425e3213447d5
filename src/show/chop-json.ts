import {
  type ChoppingJob,
  type ChoppingPlan,
  placeInFrame,
  type PlacedRail,
  planChopping,
  type RailSide,
  sawStops,
} from "../plans/index.ts";
import { aboutChopping, type ChoppingSpeech, sayChoppingBound, sayChoppingCheck } from "../words/chopping.ts";
import { sayChoppingPlan } from "../words/chop-text.ts";
import { type Clock, cutProblemJson, numberIn } from "./cut-json.ts";
import type { CutProblem, CutUnit } from "./job-reader.ts";
import { unreadJson, checkJson } from "./json.ts";
import { readChop } from "./read-chop.ts";

/** A job as it was read, its plan, and whether some rail of it cannot be made. */
export interface PlannedChop {
  readonly job: ChoppingJob;
  readonly unit: CutUnit;
  readonly plan: ChoppingPlan;
  readonly stopped: boolean;
  /** The plan in the open format. */
  readonly json: () => object;
  /** The plan as lines of text. */
  readonly text: () => string[];
}

/** Reads and plans one moulding's job. */
export function chopFor(
  document: unknown,
  clock: Clock,
):
  | { readonly ok: true; readonly value: PlannedChop }
  | { readonly ok: false; readonly problems: readonly CutProblem[] } {
  const start = clock();
  const read = readChop(document);
  if (!read.ok) return read;
  const { job, unit, seconds, seed } = read.value;
  const plan = planChopping(job, { seconds, seed, clock });
  const took = (clock() - start) / 1000;
  return {
    ok: true,
    value: {
      job,
      unit,
      plan,
      stopped: plan.checks.length > 0,
      json: () => choppingPlanJson(job, plan, unit, took),
      text: () =>
        sayChoppingPlan(plan, { job, unit, stops: sawStops(job), sideOf: (placed) => sideOf(job, placed) }),
    },
  };
}

/** One moulding's job in, its chop plan or its problem out, as plain JSON, with whether some rail cannot be made or the job could not be read. */
export function chopResult(
  document: unknown,
  clock: Clock,
): { readonly json: object; readonly stopped: boolean } {
  const planned = chopFor(document, clock);
  if (planned.ok) return { json: planned.value.json(), stopped: planned.value.stopped };
  return { json: unreadJson(planned.problems.map(cutProblemJson)), stopped: true };
}

function sideOf(job: ChoppingJob, { rail, copy }: PlacedRail): RailSide | null {
  const wanted = job.rails[rail];
  return wanted === undefined ? null : (placeInFrame(wanted, copy)?.side ?? null);
}

/** A chop plan in the open format: lengths in the job's unit, exact; places from each length's own end. */
export function choppingPlanJson(
  job: ChoppingJob,
  plan: ChoppingPlan,
  unit: CutUnit,
  seconds: number,
): object {
  const number = numberIn(unit);
  const speech: ChoppingSpeech = { job, unit };
  // Rails that were reckoned from frames know their short points.
  const made = job.rails.some(({ shortPoint }) => shortPoint !== null);
  return {
    unit,
    lengths: plan.sticks.map((stick) => ({
      length: stick.length,
      name: job.lengths[stick.length]?.name ?? "",
      rails: stick.rails.map((placed) => {
        const side = sideOf(job, placed);
        return {
          rail: placed.rail,
          copy: placed.copy,
          at: number(placed.at),
          ...(side === null ? {} : { side }),
        };
      }),
      used: number(stick.used),
      left: number(stick.left),
    })),
    cost: plan.cost,
    lengthsUsed: plan.sticks.length,
    bound: { cost: plan.bound.cost, how: sayChoppingBound(plan.bound.how) },
    proven: plan.proven,
    frames: plan.frames,
    rails: job.rails.map(({ name, length, shortPoint, count, frame }) => ({
      name,
      length: number(length),
      ...(shortPoint === null ? {} : { shortPoint: number(shortPoint) }),
      n: count,
      ...(frame === null ? {} : { frame: job.frames[frame.kind] ?? "" }),
    })),
    stops: sawStops(job).map(({ longPoint, shortPoint, count }) => ({
      longPoint: number(longPoint),
      ...(shortPoint === null ? {} : { shortPoint: number(shortPoint) }),
      n: count,
    })),
    seconds: Math.round(seconds * 1000) / 1000,
    checks: plan.checks.map((check) =>
      checkJson(check, sayChoppingCheck(check, speech), aboutChopping(check, made)),
    ),
  };
}
