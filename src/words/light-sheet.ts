import type { LightCheck, LightPlan, LitDays, Sensitivity } from "../assembly/index.ts";
import { dateWords } from "./dates.ts";
import { countedTitle } from "./figures.ts";
import { most, sourceOf, whole } from "./light.ts";
import { NBSP, type Phrase, runs, strong } from "./runs.ts";

/** Words of the light sheet. */
export const LIGHT_SHEET = {
  paper: "LIGHT",
  light: "on the works",
  open: "open",
  ultraviolet: "ultraviolet",
  kept: "limits kept",
  notMeasured: "not measured",
  work: "work",
  dose: "dose, lx·h",
  down: "TAKE DOWN after",
  rest: "as long again, not before",
  days: "days",
  measure: "Measure at the work, with the lamps as they will burn. Brighter: every date here is void.",
  filter: "Filter the ultraviolet. A filter alone does not stop fading.",
  unmeasured: "Ultraviolet is not measured: from 75 µW/lm on filter it (CCI Notes 11/3).",
  unknown: "Class not known, so no day",
  ask: "Ask who knows their inks or dyes; till then keep them short and dim.",
  noLimit: "no limit is given",
  never: "never so long",
  now: "now",
  guidances: "What a year may have",
  disagree: "The published limits disagree. These papers keep one; the hand may choose the stricter.",
  aClass: "class",
  chosen: "kept here",
  none: "no limit",
  yearIs:
    "A year is any 365 days on end, of everything that the work hung in. After the rest it may hang as long again in the same light.",
} as const;

export const lightTitle = (works: number): string => `${countedTitle(works, "work")} in the light`;

/** From when to when, and how many days that are. */
export const hangsLine = (from: string, to: string, days: number): Phrase =>
  runs`Hangs from ${strong(dateWords(from))} to ${strong(dateWords(to))}, ${strong(String(days))} days.`;

export const luxWords = (lux: number): string => `${whole(lux)}${NBSP}lx`;

export const openWords = ({ hoursPerDay, daysPerWeek }: LitDays): string =>
  `${hoursPerDay}${NBSP}h a day, ${daysPerWeek} days a week`;

export const ultravioletWords = (ultraviolet: number | null): string =>
  ultraviolet === null ? LIGHT_SHEET.notMeasured : `${whole(ultraviolet)}${NBSP}µW/lm`;

const CLASSES: Readonly<Record<Sensitivity, string>> = {
  high: "high",
  medium: "medium",
  low: "low",
  none: "none",
};

/** How much light a class stands, as the guidances call it. */
export const className = (sensitivity: Sensitivity): string => CLASSES[sensitivity];

/** What a work is and how much light it stands. */
export const standsWords = (process: string, sensitivity: Sensitivity | null): string =>
  [process, sensitivity === null ? "" : `class ${className(sensitivity)}`]
    .filter((words) => words !== "")
    .join(", ");

/** The fullest year's dose beside what a year may have. */
export const yearWords = ({ fullestYear, budget }: LightPlan): string =>
  budget === null ? LIGHT_SHEET.noLimit : `a year: ${whole(fullestYear)} of ${most(budget)}`;

export const daysWords = (hangs: number, days: number): string =>
  hangs >= days ? `all ${days} days` : `${hangs} of ${days} days`;

/** Shorter than on the check-list, since the sheet's own columns say the rest. */
export function lightRowWords(check: LightCheck): string | null {
  switch (check.code) {
    case "light-bright":
      return `${whole(check.lux)} lx is too bright: ${most(check.brightest)} lx at most. Dim it.`;
    case "light-dose":
      return check.fits > 0
        ? `To the end at ${most(check.fits)} lx.`
        : "It has had its year’s light: let it rest.";
    case "light-disagree":
      return `Not by all: ${most(check.budget)} lx·h a year (${sourceOf(check.by)}).`;
    // These stand at the head, or in the work's own line.
    case "light-ultraviolet":
    case "light-class":
      return null;
  }
}

/** One class's limits by one guidance. */
export const limitWords = (brightest: number | null, year: number | null): string =>
  year === null
    ? LIGHT_SHEET.none
    : `${brightest === null ? "" : `${most(brightest)} lx, `}${most(year)} lx·h`.replaceAll(" ", NBSP);
