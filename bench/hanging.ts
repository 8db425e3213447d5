/**
 * A wall of sixty works as a solved group, beside a door and a switch: how long it takes, whether a checker
 * that is not the planner's finds a fault, and its balance beside that of a plain row. Wanted: 2 seconds.
 */
import { chanceFrom } from "../examples/draw/chance.ts";
import { mm, ZERO } from "../src/lengths/index.ts";
import { planWall, wallFaults, type WallJob } from "../src/plans/index.ts";
import { spread } from "./shared/timing.ts";

const WORKS = 60;
const RUNS = 5;

function wall(seed: number): WallJob {
  const chance = chanceFrom(`a full wall, ${seed}`);
  const size = () => mm(Math.round(220 + 380 * chance()));
  return {
    wall: { width: mm(14_000), height: mm(3_400) },
    floor: ZERO,
    avoid: [
      { name: "door", x: mm(12_000), y: ZERO, width: mm(950), height: mm(2_100) },
      { name: "switch", x: mm(3_000), y: mm(1_100), width: mm(90), height: mm(90) },
    ],
    eyeLine: mm(1_600),
    rule: { kind: "cluster", gap: mm(50), centre: null, largest: "middle" },
    frames: Array.from({ length: WORKS }, (_, index) => ({
      title: `Print ${index + 1}`,
      width: size(),
      height: size(),
      weight: 1 + 5 * chance(),
      set: index % 10 < 2 ? Math.floor(index / 10) : null,
    })),
  };
}

const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;
const seconds: number[] = [];
for (let seed = 1; seed <= RUNS; seed++) {
  const job = wall(seed);
  const start = process.cpuUsage();
  const plan = planWall(job, seed);
  const { user, system } = process.cpuUsage(start);
  seconds.push((user + system) / 1e6);
  const faults = wallFaults(job, plan);
  const stops = plan.checks.filter(({ level }) => level === "stop").length;
  console.log(
    `wall ${seed}: ${faults.length} faults, ${stops} stops; weight's centre off by ${percent(plan.balance.share)}, in one row by ${percent(plan.rowBalance?.share ?? 0)}`,
  );
}
console.log(`${WORKS} works, seconds of processor time: ${spread(seconds, 2)} (wanted: 2)`);
