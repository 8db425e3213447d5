/**
 * The sizes for a whole show: small series against every choice tried, and larger ones with how many of
 * their answers are proven. Seeded; times are seconds of processor time. Wanted: no small series differs,
 * every step of the larger ones is proven, 1,000 works and 60 sizes within 5 s.
 *
 *   npm run bench -- series
 */
import { chanceFrom } from "../examples/draw/chance.ts";
import { inch, ZERO } from "../src/lengths/index.ts";
import { planSeries, type SeriesJob } from "../src/plans/index.ts";
import { leastCost } from "../tests/plans-series/exhaustive.ts";
import { median } from "./shared/timing.ts";

const NO_REACH = { head: ZERO, left: ZERO, right: ZERO, foot: ZERO };

/** Windows of 4 to 20 in by eighths, sizes a little larger, priced by area with some chance. */
function series(works: number, sizes: number, seed: number): SeriesJob {
  const chance = chanceFrom(`series ${works} ${sizes} ${seed}`);
  const eighths = (from: number, to: number): number => Math.round((from + chance() * (to - from)) * 8);
  return {
    works: Array.from({ length: works }, (_, work) => ({
      name: `work ${work + 1}`,
      window: { width: inch(eighths(4, 16), 8), height: inch(eighths(4, 20), 8) },
      count: 1,
      reach: NO_REACH,
    })),
    sizes: Array.from({ length: sizes }, (_, size) => {
      const [width, height] = [eighths(7, 22), eighths(8, 28)];
      const cost = Math.round(width * height * (0.9 + 0.2 * chance())) / 400;
      return { name: `size ${size + 1}`, width: inch(width, 8), height: inch(height, 8), cost };
    }),
    limits: {
      border: { least: inch(3, 2), most: inch(5) },
      lift: { by: inch(1, 4), least: ZERO, most: inch(1) },
      graduation: inch(1, 16),
      turns: true,
    },
  };
}

let steps = 0;
let differ = 0;
for (let seed = 0; seed < 200; seed++) {
  const job = series(12, 11, seed);
  for (const { sizes, cost } of planSeries(job).steps) {
    steps += 1;
    if (Math.abs((leastCost(job, sizes.length) ?? 0) - cost) > 1e-6) differ += 1;
  }
}
console.log(`12 works, 11 sizes, 200 series: ${steps} steps against every choice tried, ${differ} differ`);

for (const [works, sizes] of [
  [40, 12],
  [200, 30],
  [1000, 60],
] as const) {
  const runs = Array.from({ length: 5 }, (_, seed) => {
    const job = series(works, sizes, seed);
    const start = process.cpuUsage();
    const plan = planSeries(job);
    const { user, system } = process.cpuUsage(start);
    const open = plan.steps.filter(({ proven }) => !proven);
    return {
      steps: plan.steps.length,
      open: open.length,
      gap: Math.max(1, ...open.map(({ cost, bound }) => cost / bound)),
      seconds: (user + system) / 1e6,
    };
  });
  const all = runs.reduce((sum, run) => sum + run.steps, 0);
  const open = runs.reduce((sum, run) => sum + run.open, 0);
  console.log(
    `${works} works, ${sizes} sizes: ${all - open} of ${all} steps proven, worst ratio to the bound ${Math.max(...runs.map(({ gap }) => gap)).toFixed(4)}, median ${median(runs.map(({ seconds }) => seconds)).toFixed(2)} CPU s a series`,
  );
}
