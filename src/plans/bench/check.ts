import type { Length } from "../../lengths/index.ts";
import type { BenchJob } from "./job.ts";
import type { BenchPlan } from "./plan.ts";

/** What is wrong with an order. */
export type BenchFault =
  /** A run without a cut, or one that leaves the stop where the run before had it. */
  | { readonly code: "idle-run"; readonly run: number }
  | { readonly code: "no-such-mat"; readonly run: number; readonly mat: number }
  /** The mat has no cut at this figure, or it was cut before. */
  | { readonly code: "not-its-figure"; readonly run: number; readonly mat: number }
  /** It is cut before one that it waits for is whole. */
  | { readonly code: "too-soon"; readonly run: number; readonly mat: number; readonly waitsFor: number }
  /** A mat that dries is cut before one that need not wait for any that does. */
  | { readonly code: "still-wet"; readonly run: number; readonly mat: number }
  | { readonly code: "left-uncut"; readonly mat: number; readonly setting: Length }
  | { readonly code: "bound-above"; readonly bound: number }
  | { readonly code: "bound-below-figures"; readonly bound: number }
  | { readonly code: "proof" };

/**
 * Checks an order against its batch by cutting it, mat by mat; it shares nothing with the planner but the
 * shapes of job and plan. An empty list: the order holds.
 */
export function benchFaults(job: BenchJob, plan: BenchPlan): BenchFault[] {
  const faults: BenchFault[] = [];
  const uncut = job.mats.map(({ settings }) => new Set<Length>(settings));
  const isWhole = (mat: number): boolean => uncut[mat]?.size === 0;
  /** Whether a mat dries, or waits for one that does. */
  const wet = new Map<number, boolean>();
  const isWet = (mat: number): boolean => {
    const known = wet.get(mat);
    if (known !== undefined) return known;
    const own = job.mats[mat];
    const answer = own !== undefined && (own.dries || own.after.some(isWet));
    wet.set(mat, answer);
    return answer;
  };
  plan.runs.forEach(({ setting, mats }, run) => {
    if (mats.length === 0 || plan.runs[run - 1]?.setting === setting) faults.push({ code: "idle-run", run });
    for (const mat of mats) {
      const own = job.mats[mat];
      const left = uncut[mat];
      if (own === undefined || left === undefined) {
        faults.push({ code: "no-such-mat", run, mat });
        continue;
      }
      const waitsFor = own.after.find((other) => !isWhole(other));
      if (waitsFor !== undefined) faults.push({ code: "too-soon", run, mat, waitsFor });
      if (own.dries && job.mats.some((_, other) => !isWet(other) && !isWhole(other)))
        faults.push({ code: "still-wet", run, mat });
      if (!left.delete(setting)) faults.push({ code: "not-its-figure", run, mat });
    }
  });
  uncut.forEach((left, mat) => {
    for (const setting of left) faults.push({ code: "left-uncut", mat, setting });
  });
  const { runs: bound } = plan.bound;
  const figures = new Set(job.mats.flatMap(({ settings }) => settings)).size;
  if (bound > plan.runs.length) faults.push({ code: "bound-above", bound });
  if (bound < figures) faults.push({ code: "bound-below-figures", bound });
  if (plan.proven !== (bound === plan.runs.length)) faults.push({ code: "proof" });
  return faults;
}
