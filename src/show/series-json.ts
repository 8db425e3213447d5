import { planSeries, type SeriesPlan, type SeriesWork } from "../plans/index.ts";
import { sayMisfit } from "../words/series.ts";
import { problemJson, unreadJson, sizeJson, sidesJson, lengthsJson } from "./json.ts";
import type { Problem } from "./problem.ts";
import { readSeries, type SeriesRequest } from "./read-series.ts";

/** A series as it was read, its plan, and whether some work is served by no size. */
export interface PlannedSeries {
  readonly request: SeriesRequest;
  readonly plan: SeriesPlan;
  readonly stopped: boolean;
}

/** Reads one series and chooses its sizes; `works` stands in for the document's own where it comes from a list. */
export function seriesFor(
  document: unknown,
  works: readonly SeriesWork[] | null = null,
):
  | { readonly ok: true; readonly value: PlannedSeries }
  | { readonly ok: false; readonly problems: readonly Problem[] } {
  const read = readSeries(document, works);
  if (!read.ok) return read;
  const plan = planSeries(read.value.job);
  return { ok: true, value: { request: read.value, plan, stopped: plan.unserved.length > 0 } };
}

/** One series in, its sizes or its problem out, as plain JSON, with whether some work is served by no size. */
export function seriesResult(document: unknown): { readonly json: object; readonly stopped: boolean } {
  const planned = seriesFor(document);
  if (planned.ok) return { json: seriesPlanJson(planned.value), stopped: planned.value.stopped };
  return { json: unreadJson(planned.problems.map(problemJson)), stopped: true };
}

/** The sizes for every number of them, in the open format. */
export function seriesPlanJson({ request: { job, ruler }, plan }: PlannedSeries): object {
  const { at } = lengthsJson(ruler);
  return {
    fewest: plan.fewest,
    steps: plan.steps.map(({ sizes, cost, bound, proven, saving }) => ({
      k: sizes.length,
      cost,
      saving,
      bound,
      proven,
      sizes: sizes.map(({ size, works }) => ({
        size,
        name: job.sizes[size]?.name ?? "",
        works: works.map(({ work, fit }) => ({
          work,
          title: job.works[work]?.name ?? "",
          outer: sizeJson(fit.outer, at),
          borders: sidesJson(fit.borders, at),
        })),
      })),
    })),
    checks: plan.unserved.map(({ work, why }) => ({
      code: why === null ? "no-size" : why.code,
      level: "stop",
      text: sayMisfit(work, why, { job, ruler }),
      about: `works.${work}`,
    })),
  };
}
