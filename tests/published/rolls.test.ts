import { describe, expect, test } from "vitest";
import { ticks } from "../../src/lengths/index.ts";
import { choppingFaults, type ChoppingJob, planChopping } from "../../src/plans/index.ts";
import { fewestRolls, type Wanted } from "../reference/rolls.ts";

interface Example {
  readonly name: string;
  readonly roll: number;
  /** Whole parts of the example's unit, so that all widths are whole. */
  readonly parts: number;
  readonly wanted: readonly (readonly [width: number, count: number])[];
  readonly fewest: number;
  /** As far as it is published or was computed: ways to cut one roll, and the least in parts of rolls. */
  readonly patterns?: number;
  readonly inParts?: readonly [value: number, digits: number];
}

const EXAMPLES: readonly Example[] = [
  {
    name: "paper machine, 5600 mm (encyclopaedia article on the cutting stock problem)",
    roll: 5600,
    parts: 1,
    wanted: [
      [1380, 22],
      [1520, 25],
      [1560, 12],
      [1710, 14],
      [1820, 18],
      [1880, 18],
      [1930, 20],
      [2000, 10],
      [2050, 12],
      [2100, 14],
      [2140, 16],
      [2150, 18],
      [2200, 20],
    ],
    fewest: 73,
    patterns: 308,
    inParts: [72.917, 3],
  },
  {
    name: "100 in (V. Chvatal, Linear Programming, 1983, after the NEOS Guide)",
    roll: 100,
    parts: 1,
    wanted: [
      [14, 211],
      [31, 395],
      [36, 610],
      [45, 97],
    ],
    fewest: 453,
    patterns: 37,
    inParts: [452.25, 2],
  },
  {
    name: "94 (example of an optimiser's handbook; the roll's width from memory)",
    roll: 94,
    parts: 2,
    wanted: [
      [17, 150],
      [21, 96],
      [22.5, 48],
      [24, 108],
      [29.5, 227],
    ],
    fewest: 161,
    inParts: [160.95, 2],
  },
  {
    name: "logs of 2000 (a question of 2013 with its data; the least computed)",
    roll: 2000,
    parts: 1,
    wanted: [
      [255, 10],
      [750, 7],
      [550, 13],
    ],
    fewest: 9,
    inParts: [8.14, 2],
  },
  {
    name: "91 (V. Chvatal, p. 198; the roll's width from memory, the least computed)",
    roll: 91,
    parts: 2,
    wanted: [
      [25.5, 78],
      [22.5, 40],
      [20, 30],
      [15, 30],
    ],
    fewest: 44,
  },
];

const jobOf = ({ roll, parts, wanted }: Example): ChoppingJob => ({
  lengths: [{ name: "roll", length: ticks(roll * parts), cost: 1, copies: null }],
  rails: wanted.map(([width, count]) => ({
    name: String(width),
    length: ticks(width * parts),
    shortPoint: null,
    count,
    frame: null,
  })),
  frames: [],
  kerf: ticks(0),
  waste: ticks(0),
});

/** The time stands still: all the planner's work is done. */
const plan = (job: ChoppingJob) => planChopping(job, { seconds: 1, seed: 1, clock: () => 0 });

describe.each(EXAMPLES)("$name", (example) => {
  const { fewest } = example;

  test(`is planned with ${fewest} rolls, and that fewer will not do is proven`, () => {
    const job = jobOf(example);
    const made = plan(job);
    expect(choppingFaults(job, made)).toEqual([]);
    expect(made.missing.every((count) => count === 0)).toBe(true);
    expect(made.cost).toBe(fewest);
    expect(made.sticks).toHaveLength(fewest);
    expect(made.proven).toBe(true);
  });
});

describe.each(EXAMPLES)("$name", (example) => {
  const { roll, fewest, patterns, inParts } = example;
  const wanted = example.wanted.map(([width, count]): Wanted => ({ width, count }));

  test("takes as many by all ways to cut a roll, mixed by another solver, and the bound is no more than that", async () => {
    const least = await fewestRolls(roll, wanted);
    expect(least.whole).toBeCloseTo(fewest, 6);
    if (patterns !== undefined) expect(least.patterns).toBe(patterns);
    if (inParts !== undefined) expect(least.inParts).toBeCloseTo(...inParts);
    const { bound } = plan(jobOf(example));
    expect(bound.cost).toBeLessThanOrEqual(least.whole + 1e-6);
    // The example must be cut into whole rolls: a bound that is any good needs no more than the mixture.
    expect(Math.ceil(bound.cost - 1e-6)).toBeGreaterThanOrEqual(Math.ceil(least.inParts - 1e-6));
  });
});
