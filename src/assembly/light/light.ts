import {
  type GuidanceName,
  LIGHT_GUIDANCE,
  type LightGuidance,
  LUX_PER_FOOT_CANDLE,
  MOST_ULTRAVIOLET,
  type Sensitivity,
} from "./guidance.ts";

/** A day, counted from 1 January 1970. */
export type Day = number;

/** Light that falls on a work, the same every week, from the first day to the last, both counted. */
export interface LitDays {
  readonly first: Day;
  readonly last: Day;
  /** Lux on the work. */
  readonly lux: number;
  readonly hoursPerDay: number;
  readonly daysPerWeek: number;
}

/** One work that is to hang in the light, and the light that it has had. */
export interface LightJob {
  readonly sensitivity: Sensitivity | null;
  readonly guidance: GuidanceName;
  readonly hanging: LitDays;
  /** What the work hung in before, in whatever frame. */
  readonly before: readonly LitDays[];
  /** Microwatts a lumen; null: not measured. */
  readonly ultraviolet: number | null;
}

/** What a hanging does to a work by one guidance. */
export interface LightPlan {
  /** What it was reckoned from. */
  readonly job: LightJob;
  readonly guidance: GuidanceName;
  /** Lux hours of the whole hanging. */
  readonly dose: number;
  /** Lux hours that a year may have; null: no limit is given, or the class is not known. */
  readonly budget: number | null;
  /** The most that any 365 days have which end within the hanging. */
  readonly fullestYear: number;
  /** The last day on which the year's budget still holds; null: it holds to the end. `hanging.first - 1`: on no day. */
  readonly until: Day | null;
  /** The first day after it on which the work may hang as long again in the same light; null: no year's budget bears that, or none is known. */
  readonly rested: Day | null;
  readonly checks: readonly LightCheck[];
}

export type LightCheck =
  /** The class is not known, so no budget can be given. */
  | { readonly code: "light-class"; readonly level: "note" }
  | {
      readonly code: "light-bright";
      readonly level: "warn";
      readonly lux: number;
      readonly brightest: number;
      readonly by: LightGuidance;
    }
  | {
      readonly code: "light-dose";
      readonly level: "warn";
      /** The fullest year's lux hours, and what a year may have. */
      readonly dose: number;
      readonly budget: number;
      readonly by: LightGuidance;
      /** As in the plan. */
      readonly until: Day;
      readonly first: Day;
      /** Lux at which the whole hanging would fit; nought where the year's budget is spent already. */
      readonly fits: number;
    }
  /** Another published guidance is stricter and would not allow it. */
  | {
      readonly code: "light-disagree";
      readonly level: "note";
      readonly by: LightGuidance;
      readonly budget: number;
    }
  | {
      readonly code: "light-ultraviolet";
      readonly level: "warn";
      readonly ultraviolet: number;
      readonly most: number;
    };

/** A year of the budget: any 365 days on end. */
export const YEAR = 365;

/** Lux hours of `lux` over `hours`. Dose alone counts (reciprocity): 50 lx for 10 h is 250 lx for 2 h. */
export const doseOf = (lux: number, hours: number): number => lux * hours;

/** For how many hours a dose lasts at `lux`; without end where it is dark. */
export const hoursOf = (dose: number, lux: number): number => dose / lux;

/** 50 lx and 5 foot-candles are one limit in museums' own tables (recommended light levels, Texas), though the one is 53.8 of the other. */
const SAME_LIGHT = LUX_PER_FOOT_CANDLE / 10;

const daily = ({ lux, hoursPerDay, daysPerWeek }: LitDays): number =>
  doseOf(lux, hoursPerDay * daysPerWeek) / 7;

/** How many days a hanging has, both ends counted. */
export const daysOf = ({ first, last }: LitDays): number => Math.max(0, last - first + 1);

/** Lux hours between two days, both counted, closed days spread evenly over the week. */
function doseBetween(lit: readonly LitDays[], first: Day, last: Day): number {
  return lit.reduce((sum, one) => {
    const days = Math.min(last, one.last) - Math.max(first, one.first) + 1;
    return days > 0 ? sum + days * daily(one) : sum;
  }, 0);
}

/** A dose is a sum of doubles: a budget that is met exactly is met. */
const exceeds = (dose: number, budget: number): boolean => dose > budget * (1 + 1e-12);

/**
 * How long a work may hang by one guidance. The dose counts against the *work*, whatever frame it was in: any
 * 365 days on end may have a year's budget. Nothing throws; a hanging that ends before it begins has no dose.
 */
export function planLight(job: LightJob): LightPlan {
  const { hanging, before, guidance, sensitivity, ultraviolet } = job;
  const { brightest, year: budget } = budgetOf(guidance, sensitivity);
  const by = LIGHT_GUIDANCE[guidance];
  const lit = [...before, hanging];
  const { fullestYear, until } = follow(lit, hanging, budget);
  const checks: LightCheck[] = [];
  if (sensitivity === null) checks.push({ code: "light-class", level: "note" });
  if (brightest !== null && hanging.lux > brightest * SAME_LIGHT && daysOf(hanging) > 0)
    checks.push({ code: "light-bright", level: "warn", lux: hanging.lux, brightest, by });
  if (budget !== null && until !== null) {
    const fits = luxThatFits(job, budget);
    checks.push({
      code: "light-dose",
      level: "warn",
      dose: fullestYear,
      budget,
      by,
      until,
      first: hanging.first,
      fits,
    });
  } else if (sensitivity !== null) checks.push(...stricter(job));
  if (ultraviolet !== null && ultraviolet > MOST_ULTRAVIOLET)
    checks.push({ code: "light-ultraviolet", level: "warn", ultraviolet, most: MOST_ULTRAVIOLET });
  return {
    job,
    guidance,
    dose: daysOf(hanging) * daily(hanging),
    budget,
    fullestYear,
    until,
    rested: budget === null ? null : restedOn(lit, hanging, budget),
    checks,
  };
}

const budgetOf = (guidance: GuidanceName, sensitivity: Sensitivity | null) =>
  sensitivity === null ? { brightest: null, year: null } : LIGHT_GUIDANCE[guidance].budgets[sensitivity];

/** The fullest 365 days that end within a hanging, and the last day before one is over the budget. */
function follow(
  lit: readonly LitDays[],
  hanging: LitDays,
  budget: number | null,
): { readonly fullestYear: number; readonly until: Day | null } {
  let fullestYear = 0;
  let until: Day | null = null;
  // A year after the last change of light every further year is the same as the one before it.
  const changed = Math.max(hanging.first, ...lit.filter((one) => one !== hanging).map(({ last }) => last));
  const last = Math.min(hanging.last, changed + YEAR);
  for (let day = hanging.first; day <= last; day += 1) {
    const dose = doseBetween(lit, day - YEAR + 1, day);
    fullestYear = Math.max(fullestYear, dose);
    if (until === null && budget !== null && exceeds(dose, budget)) until = day - 1;
  }
  return { fullestYear, until };
}

/** The brightest light, in whole lux, at which the hanging keeps its year's budget; nought where none does. */
function luxThatFits({ hanging, before }: LightJob, budget: number): number {
  const tooBright = (lux: number): boolean => {
    const dimmed = { ...hanging, lux };
    return exceeds(follow([...before, dimmed], dimmed, null).fullestYear, budget);
  };
  let fits = 0;
  for (let over = Math.ceil(hanging.lux); over - fits > 1; ) {
    const middle = Math.floor((fits + over) / 2);
    if (tooBright(middle)) over = middle;
    else fits = middle;
  }
  return fits;
}

/** The first day from which the hanging could be had once more; within two years or not at all. */
function restedOn(lit: readonly LitDays[], hanging: LitDays, budget: number): Day | null {
  const days = daysOf(hanging);
  if (exceeds(Math.min(days, YEAR) * daily(hanging), budget)) return null;
  for (let first = hanging.last + 1; first <= hanging.last + 1 + YEAR; first += 1) {
    const again = { ...hanging, first, last: first + days - 1 };
    if (follow([...lit, again], again, budget).until === null) return first;
  }
  return null;
}

/** Guidances by which the hanging would be too much, where the chosen one allows it. */
function stricter(job: LightJob): LightCheck[] {
  const names = Object.keys(LIGHT_GUIDANCE) as GuidanceName[];
  return names.flatMap((guidance): LightCheck[] => {
    const { year } = budgetOf(guidance, job.sensitivity);
    if (guidance === job.guidance || year === null) return [];
    const { until } = follow([...job.before, job.hanging], job.hanging, year);
    return until === null
      ? []
      : [{ code: "light-disagree", level: "note", by: LIGHT_GUIDANCE[guidance], budget: year }];
  });
}
