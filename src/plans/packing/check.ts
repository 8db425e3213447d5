import type { PackingJob } from "./job.ts";
import type { PackingPlan } from "./pack.ts";

/** What is wrong with a packing, found without the code that made it. */
export type PackingFault =
  | { readonly code: "not-once"; readonly work: number; readonly copy: number; readonly times: number }
  | { readonly code: "too-deep" | "too-heavy" | "too-small"; readonly crate: number };

/** Every copy in one crate; no crate of several works deeper or heavier than it may be; every work with its foam inside. */
export function checkPacking(
  { works, habits }: PackingJob,
  { crates }: PackingPlan,
): readonly PackingFault[] {
  const faults: PackingFault[] = [];
  for (const [work, { count }] of works.entries())
    for (let copy = 0; copy < count; copy++) {
      const times = crates.reduce(
        (sum, crate) => sum + crate.works.filter((one) => one.work === work && one.copy === copy).length,
        0,
      );
      if (times !== 1) faults.push({ code: "not-once", work, copy, times });
    }
  for (const [crate, { works: packed, inner, outer, mass }] of crates.entries()) {
    let deep = -habits.between;
    let load = 0;
    let small = false;
    for (const { work } of packed) {
      const one = works[work];
      if (one === undefined) continue;
      deep += one.depth + habits.between;
      load += one.mass;
      small ||= one.width + 2 * habits.foam > inner.width || one.height + 2 * habits.foam > inner.height;
    }
    if (
      small ||
      deep + 2 * habits.foam > inner.depth ||
      inner.depth + 2 * habits.wall > outer.depth ||
      load > mass
    )
      faults.push({ code: "too-small", crate });
    if (packed.length < 2) continue;
    if (deep > habits.mostDepth) faults.push({ code: "too-deep", crate });
    if (mass > habits.mostMass) faults.push({ code: "too-heavy", crate });
  }
  return faults;
}
