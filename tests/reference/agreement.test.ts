import { beforeAll, describe, expect, it } from "vitest";
import { composeJson } from "../../src/show/index.ts";
import { Chance } from "./chance.ts";
import { composeReference } from "./compose.ts";
import type { Composed } from "./composed.ts";
import { differences } from "./differences.ts";
import { onEdge } from "./edge-designs.ts";
import { looseSums, wrongTexts } from "./leaving.ts";
import { randomDesign } from "./random-designs.ts";

// More for a long run: MARGENT_DESIGNS=200000 MARGENT_SEED=7 npx vitest run tests/reference
const COUNT = Number(process.env["MARGENT_DESIGNS"] ?? 3000);
const FIRST = Number(process.env["MARGENT_SEED"] ?? 1);
const LEAST_BORDER = 25;
const PRACTICE = { unit: "mm", leastBorder: String(LEAST_BORDER) } as const;

interface Finding {
  readonly seed: number;
  readonly text: string;
  readonly figures: readonly string[];
  readonly sums: readonly string[];
  readonly texts: readonly string[];
  readonly open: boolean;
}

const findings: Finding[] = [];

// Each design is composed once, by both, and looked at from every side.
beforeAll(() => {
  for (let seed = FIRST; seed < FIRST + COUNT; seed++) {
    const design = randomDesign(seed);
    const made = composeJson(design, PRACTICE);
    const refusal = errorOf(made);
    if (refusal !== null) throw new Error(`seed ${seed} is refused: ${JSON.stringify(refusal)}`);
    const composed = made as Composed;
    findings.push({
      seed,
      text: JSON.stringify(design),
      figures: differences(design, composed, LEAST_BORDER),
      sums: looseSums(composed),
      texts: wrongTexts(design, composed),
      open: composeReference(design, LEAST_BORDER).open,
    });
  }
}, 120_000);

/** What is wrong, with the shortest document that shows it first; empty when nothing is. */
function shortestFirst(kind: "figures" | "sums" | "texts"): string[] {
  const failing = findings
    .filter((finding) => finding[kind].length > 0)
    .toSorted((a, b) => a.text.length - b.text.length)
    .map((finding) => `seed ${finding.seed}: ${finding[kind].join("; ")}\n${finding.text}`);
  return failing.length === 0 ? [] : [`${failing.length} of ${COUNT}`, ...failing.slice(0, 3)];
}

describe("the engine and an independent reference in exact fractions", () => {
  it(`[W1-W4][W6][B1-B9][M1-M3][U1-U4][S1-S3][R3] agree on every figure, check and sum of ${COUNT} random designs`, () => {
    expect(shortestFirst("figures")).toEqual([]);
  });

  it.each([0, 0.1, -0.1])("[B5][B6][U3] agree on designs that stand %d mm off the edge of a rule", (by) => {
    const faults: string[] = [];
    let stood = 0;
    for (let seed = FIRST; seed < FIRST + 300; seed++) {
      const design = onEdge(randomDesign(seed), by);
      if (design === null) continue;
      stood += 1;
      const found = differences(design, composeJson(design, PRACTICE) as Composed, LEAST_BORDER);
      if (found.length > 0) faults.push(`${found.join("; ")}\n${JSON.stringify(design)}`);
    }
    expect(faults.slice(0, 3)).toEqual([]);
    expect(stood).toBeGreaterThan(100);
  });

  it("[W2] are nearly never given a turned sheet on which it matters which way the window is rounded first", () => {
    expect(findings.filter(({ open }) => open).length / COUNT).toBeLessThan(0.01);
  });
});

describe("what leaves as JSON", () => {
  it("[B1] has borders and openings that make up the outer size to the last digit, mat by mat", () => {
    expect(shortestFirst("sums")).toEqual([]);
  });

  it("[L9] prints every length on the document's ruler: maxima down, places to the nearest, ≈ where not exact", () => {
    expect(shortestFirst("texts")).toEqual([]);
  });

  it("[L5-L7] names the field, what was found and what is wanted when one length is spoiled", () => {
    const spoiled = ["71/4", "-3", "1,500", "seven", "", "3 furlongs", "1/0", "7 1/", "1 2 3"] as const;
    const faults: string[] = [];
    for (let seed = FIRST; seed < FIRST + 300; seed++) {
      const design = randomDesign(seed);
      const bad = new Chance(seed).pick(spoiled);
      for (const field of ["hold", "play", "graduation"] as const) {
        const result: unknown = composeJson({ ...design, [field]: bad });
        const error = errorOf(result);
        if (error?.field !== field || error.found !== bad || error.wanted.length < 5) {
          faults.push(`${field} ${JSON.stringify(bad)}: ${JSON.stringify(result)}`);
        }
      }
    }
    expect(faults.slice(0, 3)).toEqual([]);
  });
});

interface Refusal {
  readonly field: string;
  readonly found: string;
  readonly wanted: string;
}

function errorOf(result: unknown): Refusal | null {
  return typeof result === "object" && result !== null && "error" in result
    ? (result.error as Refusal)
    : null;
}
