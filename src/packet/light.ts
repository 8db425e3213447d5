import { type LightPlan, planLight } from "../assembly/index.ts";
import { checkJson, isoOf, type PracticeDocument, readWorkLight, type ShowLight } from "../show/index.ts";
import { sayLightCheck } from "../words/light.ts";
import { ofEachWork, type ReadWork } from "./works.ts";

/** What the show's light does to each work, in their order; null where the show has none, or what is known of the work's cannot be read. */
export const planLights = (
  works: readonly ReadWork[],
  show: ShowLight | null,
  practice: PracticeDocument,
): ReturnType<typeof ofEachWork<LightPlan>> =>
  ofEachWork(works, ({ work }) => {
    if (show === null) return { ok: true, value: null };
    const job = readWorkLight(work, show, practice);
    return job.ok ? { ok: true, value: planLight(job.value) } : job;
  });

const day = (at: number | null): string | null => (at === null ? null : isoOf(at));

/** What must be said of a work's light on its line of the check-list. */
export const lightWords = (plan: LightPlan | null | undefined): string =>
  (plan?.checks ?? [])
    .filter(({ level }) => level !== "note")
    .map((check) => sayLightCheck(check, isoOf))
    .join(" ");

/** A light plan in the open format, `{"light": …}`, nothing where there is none: lux hours, days as ISO 8601, the checks said. */
export const lightJson = (plan: LightPlan | null | undefined): { readonly light?: object } =>
  plan === null || plan === undefined ? {} : { light: jsonOf(plan) };

const jsonOf = (plan: LightPlan): object => ({
  guidance: plan.guidance,
  dose: plan.dose,
  budget: plan.budget,
  fullestYear: plan.fullestYear,
  until: day(plan.until),
  rested: day(plan.rested),
  checks: plan.checks.map((check) => checkJson(check, sayLightCheck(check, isoOf), "light")),
});
