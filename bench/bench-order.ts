/**
 * How often the stop is set in a day: works one by one, mats in rounds from the top down each from narrow
 * to wide, and as planned, beside the number that no order can go below. Shows are seeded; times are
 * seconds of processor time. Wanted: the bound itself for 40 works, within 1.05 of it for 200 works with one
 * mat or two, within 1.25 where every fifth blank also comes out of another's window.
 *
 *   npm run bench -- bench-order
 */
import { chanceFrom } from "../examples/draw/chance.ts";
import { inch, type Length } from "../src/lengths/index.ts";
import { type BenchJob, type BenchMat, planBench } from "../src/plans/index.ts";
import { median } from "./shared/timing.ts";

interface Show {
  readonly name: string;
  readonly works: number;
  /** Share of works with two mats, and of blanks that come out of a larger work's window. */
  readonly two: number;
  readonly outs: number;
}

const SHOWS: readonly Show[] = [10, 40, 200, 1000].flatMap((works) => [
  { name: `${works} works, one mat`, works, two: 0, outs: 0 },
  { name: `${works} works, half with two`, works, two: 0.5, outs: 0 },
  { name: `${works} works, half with two, windows used`, works, two: 0.5, outs: 0.2 },
]);
const SEEDS = 5;

/** Works in three outer sizes, the largest first; sides of 1 1/2 to 4 in by sixteenths, a lift of 1/4 in. */
function day({ works, two, outs }: Show, seed: number): BenchJob {
  const chance = chanceFrom(`bench order ${works} ${two} ${outs} ${seed}`);
  const mats: BenchMat[] = [];
  const lowest: number[][] = [[], [], []];
  for (let work = 0; work < works; work++) {
    const size = Math.floor((3 * work) / works);
    const side = 24 + Math.floor(chance() * 40);
    const centre = side + Math.floor(chance() * 8);
    const borders = [...new Set([side, centre - 4, centre + 4])];
    const hosts = lowest.slice(0, size).flat();
    const host = hosts[Math.floor(chance() * hosts.length)];
    const after = host !== undefined && chance() < outs ? [host] : [];
    const settings = (less: number): Length[] => borders.map((border) => inch(border - less, 16));
    if (chance() < two) {
      mats.push({ settings: settings(5), after, dries: false });
      mats.push({ settings: settings(0), after: [mats.length - 1], dries: false });
    } else mats.push({ settings: settings(0), after, dries: false });
    lowest[size]?.push(mats.length - 1);
  }
  return { mats };
}

/** The stop's moves over a list of settings, one mat after another. */
const moves = (settings: readonly Length[]): number =>
  settings.filter((setting, place) => setting !== settings[place - 1]).length;

/** Every mat that waits for nothing from narrow to wide, then those that waited for them, and so on. */
function inRounds({ mats }: BenchJob): number {
  const round: number[] = [];
  for (const { after } of mats) round.push(Math.max(-1, ...after.map((other) => round[other] ?? 0)) + 1);
  const rounds = [...new Set(round)].toSorted((a, b) => a - b);
  return moves(
    rounds.flatMap((own) =>
      mats
        .filter((_, mat) => round[mat] === own)
        .flatMap(({ settings }) => settings)
        .toSorted((a, b) => a - b),
    ),
  );
}

console.log("settings of the stop, medians of seeded days");
console.log(
  "day                                          one by one  in rounds  planned  bound  worst ratio  proven  CPU s",
);
for (const show of SHOWS) {
  const runs = Array.from({ length: SEEDS }, (_, seed) => {
    const job = day(show, seed);
    const start = process.cpuUsage();
    const plan = planBench(job);
    const { user, system } = process.cpuUsage(start);
    return {
      single: moves(job.mats.flatMap(({ settings }) => settings.toSorted((a, b) => a - b))),
      rounds: inRounds(job),
      planned: plan.runs.length,
      bound: plan.bound.runs,
      ratio: plan.runs.length / plan.bound.runs,
      proven: plan.proven,
      seconds: (user + system) / 1e6,
    };
  });
  const of = (pick: (run: (typeof runs)[number]) => number): number => median(runs.map(pick));
  console.log(
    [
      show.name.padEnd(44),
      String(of((run) => run.single)).padStart(10),
      String(of((run) => run.rounds)).padStart(11),
      String(of((run) => run.planned)).padStart(9),
      String(of((run) => run.bound)).padStart(7),
      Math.max(...runs.map(({ ratio }) => ratio))
        .toFixed(3)
        .padStart(13),
      `${runs.filter(({ proven }) => proven).length}/${SEEDS}`.padStart(8),
      of((run) => run.seconds)
        .toFixed(2)
        .padStart(7),
    ].join(""),
  );
}
