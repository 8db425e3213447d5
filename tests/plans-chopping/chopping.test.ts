import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inch, mm, toMillimetres } from "../../src/lengths/index.ts";
import {
  type ChoppingJob,
  choppingFaults,
  type ChoppingPlan,
  mitreKerf,
  planChopping,
  railsOfFrames,
  sawStops,
} from "../../src/plans/index.ts";
import { chopResult } from "../../src/show/index.ts";
import { jobs, steps } from "./jobs.ts";
import { leastCost } from "./least-cost.ts";

const planOf = (job: ChoppingJob, seconds = 0.5): ChoppingPlan =>
  planChopping(job, { seconds, seed: 1, clock: steps() });

const isWhole = ({ missing }: ChoppingPlan): boolean => missing.every((count) => count === 0);

describe("a chop plan", () => {
  it("[CH1] [CH2] [CH3] holds before a checker that shares nothing with the planner, and its bound is not above its cost", () => {
    fc.assert(
      fc.property(jobs(12, 6), (job) => {
        const plan = planOf(job);
        expect(choppingFaults(job, plan)).toEqual([]);
        expect(plan.bound.cost).toBeLessThanOrEqual(plan.cost + 1e-9);
      }),
      { numRuns: 150 },
    );
  });

  it("[CH3] [CH4] costs the least that any plan does, tried in every way, and no bound is above that", () => {
    fc.assert(
      fc.property(jobs(7, 1), (job) => {
        const least = leastCost(job);
        const plan = planOf(job);
        expect(isWhole(plan)).toBe(least !== null);
        if (least === null) return;
        expect(plan.cost).toBeCloseTo(least, 9);
        expect(plan.bound.cost).toBeLessThanOrEqual(least + 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  it("[CH5] never costs more for an offcut or a length more", () => {
    fc.assert(
      fc.property(jobs(6, 1), fc.integer({ min: 10, max: 100 }), (job, long) => {
        const more = {
          ...job,
          lengths: [...job.lengths, { name: "offcut", length: inch(long), cost: 0, copies: 1 }],
        };
        const [before, after] = [planOf(job), planOf(more)];
        if (isWhole(before)) expect(after.cost).toBeLessThanOrEqual(before.cost + 1e-9);
      }),
      { numRuns: 150 },
    );
  });

  it("[CH1] [CH5] a kerf stands between two rails alone, and the waste at both ends", () => {
    const job = (kerf: number, length: number): ChoppingJob => ({
      lengths: [{ name: "oak", length: inch(length, 8), cost: 1, copies: null }],
      rails: [{ name: "rail", length: inch(10), shortPoint: null, count: 3, frame: null }],
      frames: [],
      kerf: inch(kerf, 8),
      waste: inch(1, 2),
    });
    expect(planOf(job(0, 31 * 8)).sticks).toHaveLength(1);
    expect(planOf(job(1, 31 * 8)).sticks).toHaveLength(2);
    const [stick] = planOf(job(1, 31 * 8 + 2)).sticks;
    expect([stick?.used, stick?.left]).toEqual([inch(31 * 8 + 2, 8), 0]);
    expect(planOf(job(1, 31 * 8 + 1)).sticks).toHaveLength(2);
  });

  it("[CH2] names the rail that no length is long enough for, and plans the rest", () => {
    const plan = planOf({
      lengths: [{ name: "oak", length: inch(40), cost: 1, copies: null }],
      rails: [41, 20].map((long) => ({
        name: `${long}`,
        length: inch(long),
        shortPoint: null,
        count: 1,
        frame: null,
      })),
      frames: [],
      kerf: inch(0),
      waste: inch(0),
    });
    expect(plan.missing).toEqual([1, 0]);
    expect(plan.checks).toMatchObject([{ level: "stop", rail: 0 }]);
    expect(plan.sticks).toHaveLength(1);
  });

  it("[CH9] is the same for the same job and seed", () => {
    fc.assert(
      fc.property(jobs(8, 3), (job) => {
        expect(planOf(job)).toEqual(planOf(job));
      }),
      { numRuns: 40 },
    );
  });
});

describe("rails of frames", () => {
  const moulding = { overall: inch(2), rabbet: inch(1, 4), allowance: inch(1, 8) };
  const made = railsOfFrames([{ name: "Ebb", width: inch(11), height: inch(14), count: 2 }], moulding);

  it("[CH6] long and short points, opposite rails equal, the stop from the longest down", () => {
    expect(made.rails.map(({ length, shortPoint, count }) => [length, shortPoint, count])).toEqual([
      [inch(11 * 8 + 1 + 28, 8), inch(11 * 8 + 1 + 28 - 32, 8), 4],
      [inch(14 * 8 + 1 + 28, 8), inch(14 * 8 + 1 + 28 - 32, 8), 4],
    ]);
    expect(sawStops(made).map(({ longPoint }) => longPoint)).toEqual([
      inch(14 * 8 + 29, 8),
      inch(11 * 8 + 29, 8),
    ]);
  });

  it("[CH7] a saw of 3 mm takes 4.2426 mm along the length, never less than it does", () => {
    const kerf = toMillimetres(mitreKerf(mm(3)));
    expect(kerf).toBeCloseTo(3 * Math.SQRT2, 4);
    expect(kerf).toBeGreaterThanOrEqual(3 * Math.SQRT2);
  });

  it("[CH8] the rails of one frame stay on one stick where that costs no more", () => {
    const plan = planOf({
      lengths: [{ name: "oak", length: inch(66), cost: 10, copies: null }],
      ...made,
      kerf: inch(0),
      waste: inch(0),
    });
    expect(plan.cost).toBe(20);
    expect(plan.frames).toEqual({ onOneStick: 2, of: 2 });
  });
});

describe("a chop job as JSON", () => {
  const clock = () => 0;

  it("[CH1] [CH6] [CH10] frames in, lengths with their rails out, in the job's unit", () => {
    const { json, stopped } = chopResult(
      {
        unit: "in",
        lengths: [{ name: "oak", length: 120, cost: 22 }],
        frames: [{ name: "Ebb", width: 11, height: 14, n: 1 }],
        moulding: { overall: "2", rabbet: "1/4", allowance: "1/8" },
        kerf: "1/8",
        waste: "1/2",
      },
      clock,
    );
    expect(stopped).toBe(false);
    expect(json).toMatchObject({
      cost: 22,
      bound: { cost: expect.closeTo(22, 6) as number },
      proven: true,
      lengths: [{ length: 0, used: 2 * 14.625 + 2 * 17.625 + 3 * 0.125 + 1 }],
      checks: [],
    });
  });

  it("[CH10] what cannot be read is told with its field", () => {
    const bad = chopResult(
      {
        unit: "mm",
        lengths: [
          { length: -1, cost: -1 },
          { length: 100, copies: 0.5 },
        ],
        rails: [{ length: "x", n: -1 }],
        seconds: -1,
      },
      clock,
    );
    const { error, more } = bad.json as { error: { field: string }; more: { field: string }[] };
    expect([error, ...more].map(({ field }) => field).toSorted()).toEqual(
      [
        "lengths.0.cost",
        "lengths.0.length",
        "lengths.1.copies",
        "rails.0.length",
        "rails.0.n",
        "seconds",
      ].toSorted(),
    );
  });

  it("[CH10] anything at all gives a plan or a problem, never an exception", () => {
    const odd = fc.oneof(fc.jsonValue(), fc.constantFrom("1e9", -3, 1e308, 0, "½", null));
    fc.assert(
      fc.property(odd, odd, odd, odd, (a, b, c, d) => {
        const { json } = chopResult(
          { lengths: [{ length: a, cost: b }], rails: [{ length: c, n: d }], kerf: a, seconds: 0 },
          clock,
        );
        expect(Object.keys(json).length).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });
});
