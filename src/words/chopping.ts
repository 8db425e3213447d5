import type { ChoppingArgument, ChoppingCheck, ChoppingJob } from "../plans/index.ts";
import type { CutUnit } from "../show/job-reader.ts";
import { exactly, type Setting } from "./cutting.ts";
import { flat, type Phrase, plainText } from "./runs.ts";

/** What a chop plan is spoken about with: its job, for the names, and the unit of its figures. */
export interface ChoppingSpeech {
  readonly job: ChoppingJob;
  readonly unit: CutUnit;
}

/** What cannot be made, and a way out. `longest` sets what the longest length holds. */
export function choppingCheckPhrase(check: ChoppingCheck, name: Phrase, longest: Setting): Phrase {
  switch (check.code) {
    case "rail-too-long":
      return check.longest === null
        ? [name, ": there is no length to chop it from. Add one to the stock."]
        : [
            name,
            ": no length is long enough; the longest holds ",
            longest(check.longest),
            ". Add a longer one.",
          ];
    case "lengths-short": {
      const made = check.wanted - check.missing;
      const said = made === 0 ? "none" : String(made);
      return [
        name,
        `: the lengths run out; ${said} of ${check.wanted} ${made === 1 ? "is" : "are"} in the plan. Add lengths to the stock.`,
      ];
    }
  }
}

/** A check of a chop plan in plain text: which rail, the figure, and a way out. */
export function sayChoppingCheck(check: ChoppingCheck, { job, unit }: ChoppingSpeech): string {
  const set = exactly(unit);
  const rail = job.rails[check.rail];
  const name: Phrase =
    rail === undefined ? `Rail ${check.rail + 1}` : [railName(job, check.rail), " (", set(rail.length), ")"];
  return plainText(flat(choppingCheckPhrase(check, name, set)));
}

/** "Ferry slip, head and foot", or the rail's number where it has no name. */
function railName(job: ChoppingJob, index: number): string {
  const rail = job.rails[index];
  const name = rail === undefined || rail.name === "" ? `Rail ${index + 1}` : rail.name;
  const sides = rail?.frame?.sides ?? [];
  return sides.length === 0 ? name : `${name}, ${sides.join(" and ")}`;
}

/** What a check is about: the entry of the job that mends it; `made` when its rails were reckoned from frames, two to a frame. */
export const aboutChopping = ({ rail }: ChoppingCheck, made: boolean): string =>
  made ? `frames.${Math.floor(rail / 2)}` : `rails.${rail}`;

/** Why no plan can cost less than the bound. */
export function sayChoppingBound(how: ChoppingArgument): string {
  switch (how) {
    case "none":
      return "nothing better than 0 is known";
    case "length":
      return "the length of the rails against the most that each length can hold of them";
    case "patterns":
      return "the best mix of all ways to chop a length, lengths taken in parts (a linear programme)";
    case "every":
      return "every way to chop so few rails";
  }
}
