/**
 * Composing, as `margent compose --lines` does it: JSON in, JSON out, on one thread. Wanted: 10,000
 * designs a second. First the work itself, warm, beside the independent reference of the tests, in exact
 * fractions, on the same designs; then the command as it is called, from the start of its process to
 * its last line. All in CPU seconds, so that what else runs on the machine counts little.
 */
import { spawnSync } from "node:child_process";
import { Pen } from "../src/lengths/index.ts";
import { Composer } from "../src/show/index.ts";
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

const pen = new Pen();
const composer = new Composer(pen, {});
const own = run((line) => {
  pen.clear();
  composer.write(JSON.parse(line));
  return pen.length;
});
const reference = run((line) => composeReference(JSON.parse(line), 25).mats.length + 1);

/** Has a process tell the CPU time that it took, from its start, as its last act. */
const TELL =
  'data:text/javascript,process.on("exit",()=>process.stderr.write(JSON.stringify(process.cpuUsage())))';

/** CPU seconds of the command over so many times the designs, its compiling and collecting threads among them. */
function command(times: number, runs: number): number[] {
  const input = `${lines.join("\n")}\n`.repeat(times);
  const call = ["--import", TELL, "scripts/margent.mjs", "compose", "--lines"];
  return Array.from({ length: runs }, () => {
    const { status, stderr } = spawnSync(process.execPath, call, {
      input,
      stdio: ["pipe", "ignore", "pipe"],
      encoding: "utf8",
    });
    // Some designs cannot be made as asked: 1.
    if (status !== 1) throw new Error(`the command ended with ${status}: ${stderr}`);
    const { user, system } = JSON.parse(stderr) as NodeJS.CpuUsage;
    return (user + system) / 1e6;
  });
}

const rate = (seconds: readonly number[], designs = DESIGNS): string =>
  `${Math.round(designs / median(seconds)).toLocaleString("en")} designs a second`;
const print = (name: string, seconds: readonly number[], designs: number, wanted = ""): void =>
  console.log(
    `  ${name.padEnd(12)} ${rate(seconds, designs)} (CPU seconds for ${designs}: ${spread(seconds)})${wanted}`,
  );
const WANTED = "; wanted 10,000 a second";
print("composed", own, DESIGNS, WANTED);
print("reference", reference, DESIGNS);
// The command is bundled by its first call.
command(1, 1);
print("command", command(1, 3), DESIGNS, WANTED);
print("command", command(10, 1), 10 * DESIGNS, WANTED);
