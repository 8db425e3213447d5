/**
 * Composing, as `margent compose --lines` does it: JSON in, JSON out, on one thread. Wanted: 10,000
 * designs a second. First the work itself: the first 1,000 designs and then warm, beside JSON.parse and
 * JSON.stringify of the same lines and results, and beside the independent reference of the tests, in
 * exact fractions. Then the command as it is called, from the start of its process to its last line. The
 * least of some runs, since whatever else runs on the machine only adds: by the clock, and in CPU seconds
 * with those of the threads that compile and collect. Each design is drawn by itself, from 1 up; the
 * 100,000 lines of the last figure are 100,000 designs, none of them repeated.
 */
import { spawnSync } from "node:child_process";
import { Pen } from "../src/lengths/index.ts";
import { Composer } from "../src/show/index.ts";
import { composeReference } from "../tests/reference/compose.ts";
import { randomDesign } from "../tests/reference/random-designs.ts";

const DESIGNS = 10_000;
const MOST = 100_000;
const RUNS = 7;
const all = Array.from({ length: MOST }, (_, seed) => JSON.stringify(randomDesign(seed + 1)));
const lines = all.slice(0, DESIGNS);

interface Took {
  readonly clock: number;
  readonly cpu: number;
}

function timed(work: () => void): Took {
  const start = process.cpuUsage();
  const from = performance.now();
  work();
  const clock = (performance.now() - from) / 1000;
  const { user, system } = process.cpuUsage(start);
  return { clock, cpu: (user + system) / 1e6 };
}

/** The least of some turns over all lines; the first warms up. */
function warm(work: (line: string, index: number) => void): Took {
  const turns = Array.from({ length: RUNS + 1 }, () => timed(() => lines.forEach(work)));
  return least(turns.slice(1));
}

const least = (turns: readonly Took[]): Took => ({
  clock: Math.min(...turns.map(({ clock }) => clock)),
  cpu: Math.min(...turns.map(({ cpu }) => cpu)),
});

const WANTED = "; wanted 10,000";
function print(name: string, { clock, cpu }: Took, designs: number, wanted = ""): void {
  const rate = (seconds: number): string => Math.round(designs / seconds).toLocaleString("en");
  console.log(
    `  ${name.padEnd(34)} ${rate(clock)} a second (${clock.toFixed(3)} s); ${rate(cpu)} a CPU second (${cpu.toFixed(3)} s)${wanted}`,
  );
}

const pen = new Pen();
const composer = new Composer(pen, {});
function compose(line: string): void {
  pen.clear();
  composer.write(JSON.parse(line));
}
print(
  "the first 1,000, from cold",
  timed(() => lines.slice(0, 1000).forEach(compose)),
  1000,
);
print("warm", warm(compose), DESIGNS, WANTED);
const decoder = new TextDecoder();
const results = lines.map((line) => {
  compose(line);
  return JSON.parse(decoder.decode(pen.written())) as unknown;
});
let written = 0;
print(
  "JSON.parse and JSON.stringify alone",
  warm((line, index) => {
    JSON.parse(line);
    written += JSON.stringify(results[index]).length;
  }),
  DESIGNS,
);
if (written === 0) throw new Error("nothing was written");
print(
  "reference, in exact fractions",
  warm((line) => void composeReference(JSON.parse(line), 25)),
  DESIGNS,
);

/** Has a process tell the CPU time that it took, from its start, as its last act. */
const TELL =
  'data:text/javascript,process.on("exit",()=>process.stderr.write(JSON.stringify(process.cpuUsage())))';

function command(given: readonly string[], runs: number): Took {
  const input = `${given.join("\n")}\n`;
  const call = ["--import", TELL, "scripts/margent.mjs", "compose", "--lines"];
  return least(
    Array.from({ length: runs }, () => {
      const from = performance.now();
      const { status, stderr } = spawnSync(process.execPath, call, {
        input,
        stdio: ["pipe", "ignore", "pipe"],
        encoding: "utf8",
      });
      const clock = (performance.now() - from) / 1000;
      // Some designs cannot be made as asked: 1.
      if (status !== 1) throw new Error(`the command ended with ${status}: ${stderr}`);
      const { user, system } = JSON.parse(stderr) as NodeJS.CpuUsage;
      return { clock, cpu: (user + system) / 1e6 };
    }),
  );
}

// The command is bundled by its first call.
command(lines, 1);
print("command, 10,000 lines", command(lines, 5), DESIGNS, WANTED);
print("command, 100,000 lines", command(all, 2), MOST, WANTED);
