import type { SeriesJob } from "./job.ts";
import type { SeriesPlan } from "./plan.ts";

/** What is wrong with a series. */
export type SeriesFault =
  | {
      readonly code: "not-served" | "served-twice" | "named-and-served";
      readonly step: number;
      readonly work: number;
    }
  | {
      readonly code: "not-the-size" | "does-not-add-up" | "past-limits";
      readonly step: number;
      readonly work: number;
    }
  | {
      readonly code: "wrong-cost" | "bound-above" | "proof" | "saves-nothing" | "wrong-saving";
      readonly step: number;
    };

/** Checks a series against its job: it reckons borders, limits and sums again and shares nothing with the planner but the shapes. */
export function seriesFaults(job: SeriesJob, plan: SeriesPlan): SeriesFault[] {
  const faults: SeriesFault[] = [];
  const named = new Set(plan.unserved.map(({ work }) => work));
  const { border, lift, graduation, turns } = job.limits;
  plan.steps.forEach(({ sizes, cost, bound, proven, saving }, step) => {
    const seen = new Set<number>();
    let sum = 0;
    for (const { size, works } of sizes) {
      const own = job.sizes[size];
      for (const { work, fit } of works) {
        const wanted = job.works[work];
        if (seen.has(work)) faults.push({ code: "served-twice", step, work });
        if (named.has(work)) faults.push({ code: "named-and-served", step, work });
        seen.add(work);
        if (own === undefined || wanted === undefined) {
          faults.push({ code: "not-the-size", step, work });
          continue;
        }
        sum += Math.round(own.cost * 1e4) * wanted.count;
        const { outer, borders } = fit;
        const asListed = outer.width === own.width && outer.height === own.height;
        const turned = outer.width === own.height && outer.height === own.width;
        if (!asListed && !(turned && turns)) faults.push({ code: "not-the-size", step, work });
        const across = borders.left + wanted.window.width + borders.right;
        const down = borders.head + wanted.window.height + borders.foot;
        if (across !== outer.width || down !== outer.height)
          faults.push({ code: "does-not-add-up", step, work });
        const inLimits = (["head", "left", "right", "foot"] as const).every(
          (side) =>
            borders[side] >= Math.max(border.least, wanted.reach[side]) &&
            (border.most === null || borders[side] <= border.most),
        );
        const raised = (borders.foot - borders.head) / 2;
        const onMarks = borders.left % graduation === 0 && borders.head % graduation === 0;
        const lifted = raised >= lift.least && raised < lift.most + graduation;
        const level = borders.right - borders.left < 2 * graduation && borders.right >= borders.left;
        if (!inLimits || !onMarks || !lifted || !level) faults.push({ code: "past-limits", step, work });
      }
    }
    for (const work of job.works.keys())
      if (!seen.has(work) && !named.has(work)) faults.push({ code: "not-served", step, work });
    if (Math.abs(cost * 1e4 - sum) > 0.5) faults.push({ code: "wrong-cost", step });
    if (bound > cost) faults.push({ code: "bound-above", step });
    if (proven !== (bound === cost)) faults.push({ code: "proof", step });
    const before = plan.steps[step - 1]?.cost;
    if (before !== undefined && before < cost) faults.push({ code: "saves-nothing", step });
    const saves = before === undefined ? null : Math.round((before - cost) * 1e4);
    if (saves !== (saving === null ? null : Math.round(saving * 1e4)))
      faults.push({ code: "wrong-saving", step });
  });
  return faults;
}
