import { type LightPlan, planLight } from "../assembly/index.ts";
import { isoOf, type PracticeDocument, readWorkLight, type ShowLight } from "../show/index.ts";
import { sayLightCheck } from "../words/light.ts";
import type { ComposedWork, RowProblem } from "./works.ts";

/** What the show's light does to each work, in their order; null where the show has none, or what is known of the work's cannot be read. */
export function planLights(
  works: readonly ComposedWork[],
  show: ShowLight | null,
  practice: PracticeDocument,
): { readonly plans: readonly (LightPlan | null)[]; readonly problems: readonly RowProblem[] } {
  const problems: RowProblem[] = [];
  const plans = works.map(({ row, work }) => {
    if (show === null) return null;
    const job = readWorkLight(work, show, practice);
    if (job.ok) return planLight(job.value);
    problems.push(...job.problems.map((problem) => ({ row, problem })));
    return null;
  });
  return { plans, problems };
}

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
  checks: plan.checks.map((check) => ({
    code: check.code,
    level: check.level,
    text: sayLightCheck(check, isoOf),
    about: "light",
  })),
});
