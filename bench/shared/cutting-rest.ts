import { type ChoppingJob, planChopping } from "../../src/plans/index.ts";
import { evenRails, firstFit, tripletRails } from "./chopping-jobs.ts";
import { instancesIn } from "./instances.ts";
import { cpuClock, type Goal, ratio, timedPlan, total } from "./measure.ts";

/** Rails out of lengths of one kind. */
export function oneDimension(quick: boolean): Goal[] {
  const jobs = (quick ? [100] : [50, 100, 200, 500]).flatMap((count) => [
    ...[100, 120, 150].flatMap((length) =>
      [1, 20, 30].map((least) => evenRails(length, least, 100, count, count + length + least)),
    ),
    tripletRails(3 * Math.round(count / 3), count),
  ]);
  const runs = jobs.map((job: ChoppingJob) => {
    const plan = planChopping(job, { seconds: 1, seed: 1, clock: cpuClock });
    return { plan, beside: firstFit(job) };
  });
  const lengths = total(runs.map(({ plan }) => plan.cost));
  // One kind of length that costs 1: the bound is taken up to the next whole number.
  const bound = total(runs.map(({ plan }) => Math.ceil(plan.bound.cost - 1e-6)));
  const proven = runs.filter(({ plan }) => plan.proven).length;
  console.log(`\n  one dimension: ${jobs.length} jobs, ${lengths} lengths, bound ${bound}, ${proven} proven`);
  return [
    {
      what: "one dimension at 1 s, lengths over the bound",
      goal: "1.0005, 95 % optimal",
      ours: `${ratio(lengths, bound)}, ${((100 * proven) / jobs.length).toFixed(1)} % proven`,
      beside: `first-fit decreasing ${ratio(total(runs.map(({ beside }) => beside)), bound)}`,
    },
  ];
}

/** The instance files of a folder, family by family. */
export function instanceFiles(folder: string, budgets: readonly number[], quick: boolean): Goal[] {
  const all = instancesIn(folder).filter((_, index) => !quick || index % 10 === 0);
  const families = [...new Set(all.map(({ family }) => family))];
  return budgets.flatMap((seconds) => {
    console.log(`\n  instance files at ${seconds} s: cost, best known, bound, how many proven`);
    return families.flatMap((family) => {
      const runs = all
        .filter((one) => one.family === family)
        .map((one) => ({ ...one, plan: timedPlan(one.job, seconds).plan }));
      const known = runs.filter(({ bestKnown }) => bestKnown !== null);
      const cost = total(known.map(({ plan }) => plan.cost));
      const best = total(known.map(({ bestKnown }) => bestKnown ?? 0));
      const ratios = runs.map(({ plan }) => (plan.bound.cost > 0 ? plan.cost / plan.bound.cost : 1));
      const proven = runs.filter(({ plan }) => plan.proven).length;
      console.log(`  ${family}: ${cost} of ${best} in ${known.length}; ${proven} of ${runs.length} proven`);
      for (const { name, plan, bestKnown } of known)
        if (bestKnown !== null && plan.cost > bestKnown + 1e-9)
          console.log(
            `    ${name}: ${plan.cost}, best known ${bestKnown}, bound ${plan.bound.cost.toFixed(3)}`,
          );
      return [
        {
          what: `${family} at ${seconds} s, cost over best known`,
          goal: "",
          ours: best > 0 ? ratio(cost, best) : "none known",
          beside: `over the bound mean ${(total(ratios) / ratios.length).toFixed(4)}; ${proven} of ${runs.length} proven`,
        },
      ];
    });
  });
}
