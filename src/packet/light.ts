import { type LightPlan, planLight } from "../assembly/index.ts";
import type { Typeface } from "../drawings/index.ts";
import { lightSheet, type LitWork, type Page, type PaperSize } from "../papers/index.ts";
import {
  checkJson,
  isoOf,
  type PracticeDocument,
  processOf,
  readWorkLight,
  type ShowLight,
} from "../show/index.ts";
import { sayLightCheck } from "../words/light.ts";
import { inventoryMark, type Packeted } from "./bench-sheets.ts";
import type { Prepared } from "./order.ts";
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

/** How long each work may hang, on one sheet for the show; nothing where the show says no light. */
export function lightPages(
  { works, lights }: Pick<Prepared, "works" | "lights">,
  { house, plan: planWords }: Packeted,
  size: PaperSize,
  typeface: Typeface,
): readonly Page[] {
  const lit = works.flatMap((one, index): readonly LitWork[] => {
    const plan = lights[index] ?? null;
    if (plan === null) return [];
    return [{ title: one.work.title, process: processOf(one.work), mark: inventoryMark(one), plan }];
  });
  const [first] = lit;
  if (first === undefined) return [];
  const { hanging, ultraviolet, guidance } = first.plan.job;
  return lightSheet({ hanging, ultraviolet, guidance, works: lit, isoOf, house, planWords }, size, typeface);
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
  sensitivity: plan.job.sensitivity,
  guidance: plan.guidance,
  dose: plan.dose,
  budget: plan.budget,
  fullestYear: plan.fullestYear,
  until: day(plan.until),
  rested: day(plan.rested),
  checks: plan.checks.map((check) => checkJson(check, sayLightCheck(check, isoOf), "light")),
});
