import { mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import { Worker } from "node:worker_threads";
import { build } from "esbuild";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type CuttingPlan, planCutting } from "../../src/plans/index.ts";
import { integerSolver, type PlanningOrder, type PlanningWord } from "../../src/solver/index.ts";
import { root } from "../house/sources.ts";
import { jobOf, piece, sheet, size } from "../plans/jobs.ts";

// Beside the packages, so that the worker finds them.
const folder = mkdtempSync(join(root, "node_modules", ".worker-"));
const file = join(folder, "worker.mjs");
afterAll(() => rmSync(folder, { recursive: true }));
beforeAll(() =>
  build({
    entryPoints: [join(root, "src/solver/node-worker.ts")],
    outfile: file,
    bundle: true,
    platform: "node",
    format: "esm",
    packages: "external",
  }),
);

const job = jobOf(
  [sheet(40, 60, { cost: 26.5 }), sheet(32, 40, { cost: 11.5 }), sheet(13, 33, { cost: 0, copies: 1 })],
  [
    piece(16, 20, { count: 9, window: size(11, 14) }),
    piece(11, 14, { count: 8, window: size(6, 9) }),
    piece(18, 24, { count: 5 }),
    piece(8, 10, { count: 7 }),
  ],
  { dropOuts: true },
);

function answered(order: PlanningOrder): Promise<{ words: PlanningWord[]; plan: CuttingPlan }> {
  const worker = new Worker(file);
  const words: PlanningWord[] = [];
  return new Promise<{ words: PlanningWord[]; plan: CuttingPlan }>((done, failed) => {
    worker.on("error", failed);
    worker.on("message", (word: PlanningWord) => {
      words.push(word);
      if (word.says === "plan") done({ words, plan: word.plan });
    });
    worker.postMessage(order, []);
  }).finally(() => worker.terminate());
}

test("[CT20] a job planned in a worker of Node comes to the same plan, and tells how far it is", async () => {
  const { words, plan } = await answered({ job, seconds: 30, seed: 1, stop: null });
  const solver = await integerSolver();
  expect(plan).toEqual(planCutting(job, { seconds: 30, seed: 1, clock: () => performance.now(), solver }));
  const [first] = words;
  if (first?.says !== "progress") throw new Error("no word of progress");
  expect(first.progress.complete).toBe(true);
  expect(first.progress.cost).toBeGreaterThanOrEqual(plan.cost);
  expect(first.progress.bound).toBeLessThanOrEqual(plan.cost);
});

test("[CT20] a worker that is stopped hands out the plan it has", async () => {
  const stop = new Int32Array(new SharedArrayBuffer(4));
  Atomics.store(stop, 0, 1);
  const { plan } = await answered({ job, seconds: 1e6, seed: 1, stop });
  expect(plan.missing).toEqual([0, 0, 0, 0]);
});

test("[CT20] a job that is not sound ends the worker with its reason", async () => {
  const unsound = { ...job, pieces: [piece(0, 3)] };
  await expect(answered({ job: unsound, seconds: 1, seed: 1, stop: null })).rejects.toThrow("size");
});

test("[CT20] the page's worker takes nothing of Node", async () => {
  const { metafile } = await build({
    entryPoints: [join(root, "src/web/planning-worker.ts")],
    bundle: true,
    write: false,
    metafile: true,
    platform: "browser",
    format: "esm",
    external: ["highs"],
    outdir: "nowhere",
  });
  const imports = Object.values(metafile.outputs).flatMap((output) => output.imports);
  expect(imports).toEqual([{ path: "highs", kind: "dynamic-import", external: true }]);
  expect(Object.keys(metafile.inputs)).toContain("src/plans/cutting/planner.ts");
});
