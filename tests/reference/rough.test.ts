import { expect, test } from "vitest";
import { composeJson } from "../../src/show/index.ts";
import type { Composed } from "./composed.ts";
import { differences } from "./differences.ts";
import { roughDesign } from "./rough-designs.ts";

const COUNT = Number(process.env["MARGENT_DESIGNS"] ?? 3000) / 5;
const FIRST = Number(process.env["MARGENT_SEED"] ?? 1);
const LEAST_BORDER = 25;

test(`[W5][W6][W7][U2][U4] rough images, skew or level, on whole and torn sheets agree with an exact reference that tries every rectangle, on ${COUNT} designs`, () => {
  const faults: string[] = [];
  const seen = { skew: 0, torn: 0, level: 0 };
  for (let seed = FIRST; seed < FIRST + COUNT; seed++) {
    const rough = roughDesign(seed);
    if (rough === null) continue;
    const { told, plain } = rough;
    const composed = composeJson(told, { unit: "mm", leastBorder: String(LEAST_BORDER) }) as Composed;
    const found = differences(plain, composed, LEAST_BORDER);
    if (found.length > 0) faults.push(`seed ${seed}: ${found.join("; ")}\n${JSON.stringify(told)}`);
    seen[plain.print?.angle ? "skew" : "level"] += 1;
    if (told.print.sheetOutline !== undefined) seen.torn += 1;
  }
  expect(faults.slice(0, 3)).toEqual([]);
  expect(Math.min(seen.skew, seen.torn, seen.level)).toBeGreaterThan(COUNT / 8);
});
