/**
 * Composing, as `margent compose --lines` does it: JSON in, JSON out, on one thread. Wanted: 10,000
 * designs a second. Beside it the independent reference of the tests, in exact fractions, on the same
 * designs in the same run.
 */
import { composeResult } from "../src/show/index.ts";
import { composeReference } from "../tests/reference/compose.ts";
import { randomDesign } from "../tests/reference/random-designs.ts";
import { median, spread } from "./shared/timing.ts";

const DESIGNS = 10_000;
const RUNS = 7;
const lines = Array.from({ length: DESIGNS }, (_, seed) => JSON.stringify(randomDesign(seed + 1)));

function run(work: (line: string) => number): number[] {
  const seconds: number[] = [];
  for (let turn = 0; turn <= RUNS; turn++) {
    const start = process.cpuUsage();
    let written = 0;
    for (const line of lines) written += work(line);
    const { user, system } = process.cpuUsage(start);
    if (written === 0) throw new Error("nothing was composed");
    // The first turn warms up.
    if (turn > 0) seconds.push((user + system) / 1e6);
  }
  return seconds;
}

const own = run((line) => composeResult(JSON.parse(line)).text.length);
const reference = run((line) => composeReference(JSON.parse(line), 25).mats.length + 1);
const rate = (seconds: number[]): string =>
  `${Math.round(DESIGNS / median(seconds)).toLocaleString("en")} designs a second`;
console.log(
  `  composed     ${rate(own)} (CPU seconds for ${DESIGNS}: ${spread(own)}); wanted 10,000 a second`,
);
console.log(`  reference    ${rate(reference)} (CPU seconds: ${spread(reference)})`);
