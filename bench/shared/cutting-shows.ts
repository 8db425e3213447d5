import { manySizes, severalSizes, showJob } from "./cutting-jobs.ts";
import { cpuClock, type Goal, ratio, timedPlan, total } from "./measure.ts";
import { packerCost } from "./packer.ts";

const mean = (values: readonly number[]): number => total(values) / values.length;
/** Nothing costs nothing: such a job is as cheap as can be. */
const over = (cost: number, bound: number): number => (bound > 0 ? cost / bound : cost > 0 ? Infinity : 1);
const places = (value: number): string => value.toFixed(4);

/** Jobs of repeated sizes out of three sheets. */
export function severalSheets(quick: boolean): Goal[] {
  console.log("\n  several sheet sizes, 5 s: cost over the bound (packer)");
  const ratios = (quick ? [20] : [10, 20, 30, 50]).flatMap((sizes) =>
    (quick ? [1] : [1, 2]).map((seed) => {
      const job = severalSizes(sizes, seed);
      const { plan, took } = timedPlan(job, 5);
      const beside = over(packerCost(job, 5, cpuClock), plan.bound.cost);
      const own = over(plan.cost, plan.bound.cost);
      console.log(
        `  ${sizes} sizes, seed ${seed}: ${places(own)} in ${took.toFixed(1)} s (${places(beside)})`,
      );
      return { own, beside };
    }),
  );
  return [
    {
      what: "several sheet sizes at 5 s, cost over the bound",
      goal: "1.002",
      ours: `mean ${places(mean(ratios.map(({ own }) => own)))}, worst ${places(Math.max(...ratios.map(({ own }) => own)))}`,
      beside: `packer mean ${places(mean(ratios.map(({ beside }) => beside)))}`,
    },
  ];
}

interface Budget {
  readonly works: number;
  readonly seconds: number;
  readonly goal: string;
}

const BUDGETS: readonly Budget[] = [
  { works: 10, seconds: 1, goal: "proven, or no dearer than in 10 s" },
  { works: 40, seconds: 1, goal: "proven, or no dearer than in 10 s" },
  { works: 200, seconds: 2, goal: "1.005" },
  { works: 1000, seconds: 3, goal: "1.002" },
];

/** Shows with their windows as waste and as stock. */
export function shows(quick: boolean): Goal[] {
  console.log("\n  shows: first plan within 0.1 s, plan, packer, each over the plan's bound");
  const seeds = quick ? [1] : [1, 2, 3, 4];
  return BUDGETS.flatMap((budget) => showsOf(budget, seeds));
}

function showsOf({ works, seconds, goal }: Budget, seeds: readonly number[]): Goal[] {
  const goals: Goal[] = [];
  const boards = { without: 0, using: 0 };
  for (const dropOuts of [false, true]) {
    const runs = seeds.map((seed) => {
      const job = showJob(works, seed, dropOuts);
      const first = timedPlan(job, 0.1);
      const { plan, took } = timedPlan(job, seconds);
      const longer = works <= 40 ? timedPlan(job, 10).plan : plan;
      boards[dropOuts ? "using" : "without"] += plan.cost;
      const bound = Math.max(plan.bound.cost, longer.bound.cost);
      const packer = over(packerCost(job, seconds, cpuClock), bound);
      const run = {
        own: over(plan.cost, bound),
        first: over(first.plan.cost, bound),
        firstTook: first.took,
        asLonger: plan.cost <= longer.cost + 1e-9,
        proven: plan.proven,
        packer,
      };
      console.log(
        `  ${works} works${dropOuts ? ", windows used" : ""}, seed ${seed}: first ${places(run.first)} in ${first.took.toFixed(2)} s,` +
          ` plan ${places(run.own)} in ${took.toFixed(2)} s${plan.proven ? " (proven)" : ""}, packer ${places(packer)}`,
      );
      return run;
    });
    const least = runs.filter(({ proven, asLonger }) => proven || asLonger).length;
    const name = `show of ${works}${dropOuts ? ", windows used" : ""} at ${seconds} s`;
    const cost = `mean ${places(mean(runs.map(({ own }) => own)))}, worst ${places(Math.max(...runs.map(({ own }) => own)))}`;
    goals.push({
      what: `${name}, cost over the bound`,
      goal,
      ours: works <= 40 ? `${least} of ${runs.length}; ${cost}` : cost,
      beside: `${runs.filter(({ proven }) => proven).length} of ${runs.length} proven; packer mean ${places(mean(runs.map(({ packer }) => packer)))}`,
    });
    if (works === 1000) {
      goals.push({
        what: `${name}, first valid plan`,
        goal: "0.1 s, 1.05",
        ours: `${Math.max(...runs.map(({ firstTook }) => firstTook)).toFixed(2)} s, ${places(Math.max(...runs.map(({ first }) => first)))}`,
        beside: "the slowest and the dearest of the jobs",
      });
    }
  }
  goals.push({
    what: `show of ${works}, what windows save`,
    goal: works >= 200 ? "15 %" : "",
    ours: boards.without > 0 ? `${(100 * (1 - boards.using / boards.without)).toFixed(1)} %` : "-",
    beside: `of the board that is bought, ${boards.without / 100} without`,
  });
  return goals;
}

/** A job as large as any. To be run first: what the process ever held is what this one held. */
export function largest(): Goal[] {
  const job = manySizes(5000, 400, 1);
  const { plan, took } = timedPlan(job, 8);
  const held = process.resourceUsage().maxRSS / 1024;
  return [
    {
      what: "5,000 pieces in 400 sizes, 8 s asked",
      goal: "10 s, 1,024 MB",
      ours: `${took.toFixed(1)} s, ${held.toFixed(0)} MB`,
      beside: `cost over the bound ${ratio(plan.cost, plan.bound.cost)}`,
    },
  ];
}
