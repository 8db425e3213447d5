import type { LightCheck, LightGuidance } from "../assembly/index.ts";
import { dateWords } from "./dates.ts";

/** A number of lux or lux hours in groups of three: what is had rounds up, what is allowed down. */
const THOUSANDS = /\B(?=(\d{3})+$)/g;
export const whole = (value: number): string => String(Math.ceil(value - 1e-6)).replace(THOUSANDS, ",");
export const most = (value: number): string => String(Math.floor(value + 1e-6)).replace(THOUSANDS, ",");

/** Whose figure it is, and that it is only recalled where that is so. */
export const sourceOf = ({ source, known }: LightGuidance): string =>
  known === "read" ? source : `${source}, from memory`;

/** What the light does to a work: the figure, whose it is, and a way out. `dayOf` writes a day as ISO 8601. */
export function sayLightCheck(check: LightCheck, isoOf: (day: number) => string): string {
  switch (check.code) {
    case "light-class":
      return "How much light it stands is not known, so no days are given. Enter its class: high, medium, low or none.";
    case "light-bright":
      return `${whole(check.lux)} lx is brighter than ${most(check.brightest)} lx (${sourceOf(check.by)}). Dim the lamps, or hang it elsewhere.`;
    case "light-dose": {
      const way =
        check.fits > 0
          ? `It may hang to the end at ${most(check.fits)} lx.`
          : "It has had its year's light: let it rest.";
      const until =
        check.until < check.first
          ? "Do not hang it now."
          : `Take it down after ${dateWords(isoOf(check.until))}.`;
      return `${whole(check.dose)} lx·h in a year; ${most(check.budget)} is the most (${sourceOf(check.by)}). ${until} ${way}`;
    }
    case "light-disagree":
      return `Others are stricter: ${most(check.budget)} lx·h a year (${sourceOf(check.by)}) would not allow it. Choose which to keep.`;
    case "light-ultraviolet":
      return `Ultraviolet is ${whole(check.ultraviolet)} µW/lm, above ${check.most} (CCI Notes 11/3): filter it. A filter alone does not stop fading.`;
  }
}
