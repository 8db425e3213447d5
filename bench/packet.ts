/**
 * The main job: a list of 1,000 works to a whole packet, as `margent packet` does it, in a process of its
 * own. Wanted: 60 seconds, 500 MB.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Papa from "papaparse";
import { chanceFrom } from "../examples/draw/chance.ts";
import { median, spread } from "./shared/timing.ts";

const WORKS = 1000;
const RUNS = 3;

type Sheet = readonly [width: number, height: number];

/** A list as a print room would keep it: sheets of common papers, images that leave a margin, a few floats, both units. */
function list(): string {
  const chance = chanceFrom("a thousand prints");
  const pick = <T>(from: readonly T[], otherwise: T): T =>
    from[Math.floor(chance() * from.length)] ?? otherwise;
  const rows = Array.from({ length: WORKS }, (_, i) => {
    const metric = chance() < 0.4;
    const [width, height] = pick(metric ? METRIC : INCH, [9, 12]);
    const margin = (metric ? 20 : 0.75) + chance() * (metric ? 15 : 0.75);
    const written = metric
      ? (value: number) => `${Math.round(value)} mm`
      : (value: number) => `${sixteenths(value)} in`;
    return {
      title: `Print ${i + 1}`,
      maker: pick(["A. Lindqvist-Roe", "B. Castellane", "C. Okafor-Whitby", "D. Maunsell"], ""),
      process: pick(["linocut", "etching", "cyanotype", "gelatin silver print"], ""),
      "sheet width": written(width),
      "sheet height": written(height),
      "image width": written(width - 2 * margin),
      "image height": written(height - 2 * margin),
      show: pick(["overlap", "overlap", "overlap", "margins", "sheet"], "overlap"),
    };
  });
  return Papa.unparse(rows);
}

/** Inches as they are written by hand, to the nearest sixteenth. */
function sixteenths(value: number): string {
  const marks = Math.round(value * 16);
  return marks % 16 === 0 ? String(marks / 16) : `${Math.floor(marks / 16)} ${marks % 16}/16`;
}

const INCH: readonly Sheet[] = [
  [8, 10],
  [9, 12],
  [11, 14],
  [14, 11],
  [12, 16],
  [15, 20],
];
const METRIC: readonly Sheet[] = [
  [180, 240],
  [240, 300],
  [300, 400],
  [400, 300],
  [210, 297],
];

/** Runs inside the measured process: its largest resident size, in kilobytes, as the system counts it. */
const TELL_SIZE = `data:text/javascript,process.on("exit",()=>process.stderr.write("\\nresident "+process.resourceUsage().maxRSS+"\\n"))`;

const folder = mkdtempSync(join(tmpdir(), "margent-bench-"));
writeFileSync(join(folder, "list.csv"), list());
const seconds: number[] = [];
const megabytes: number[] = [];
let written = "";
for (let turn = 0; turn < RUNS; turn++) {
  const out = join(folder, `packet-${turn}`);
  const start = performance.now();
  const { status, stderr } = spawnSync(
    process.execPath,
    [
      "--import",
      TELL_SIZE,
      "scripts/margent.mjs",
      "packet",
      join(folder, "list.csv"),
      "--out",
      out,
      "--date",
      "2026-12-14",
    ],
    { encoding: "utf8", maxBuffer: 1 << 26 },
  );
  seconds.push((performance.now() - start) / 1000);
  const resident = /\nresident (\d+)/.exec(stderr)?.[1];
  // 1: some row or work needs mending, the rest is there.
  if ((status !== 0 && status !== 1) || resident === undefined)
    throw new Error(`packet ended with ${status}: ${stderr.slice(-2000)}`);
  megabytes.push(Number(resident) / 1024);
  written = readdirSync(out)
    .map((name) => `${name} ${Math.round(statSync(join(out, name)).size / 1000)} kB`)
    .join(", ");
}
rmSync(folder, { recursive: true });

console.log(`  ${WORKS} works  ${median(seconds).toFixed(1)} s (${spread(seconds)}); wanted 60 s`);
console.log(`  resident     ${Math.round(median(megabytes))} MB (${spread(megabytes)}); wanted 500 MB`);
console.log(`  written      ${written}`);
