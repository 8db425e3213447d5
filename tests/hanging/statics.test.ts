import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  angleOf,
  sharedLoads,
  tensionAt,
  triangleOfLength,
  triangleOfRise,
  wireLoads,
  wireOf,
} from "../../src/assembly/index.ts";
import { leastWithin } from "./optimiser.ts";
import { pull, restingDepth } from "./string.ts";

/** How many strings are searched; `MARGENT_STRINGS=5000` for more. */
const STRINGS = Number(process.env["MARGENT_STRINGS"] ?? 120);

const GENERAL = 3000;

/** Rings and hooks on a wire with some room to hang: from nearly flat to steep. */
const strings = fc
  .record({
    apart: fc.double({ min: 50, max: 900, noNaN: true }),
    slack: fc.double({ min: 1.02, max: 2.5, noNaN: true }),
    hooks: fc.double({ min: 0.05, max: 0.8, noNaN: true }),
    two: fc.boolean(),
  })
  .map(({ apart, slack, hooks, two }) => {
    const hooksApart = two ? apart * hooks : 0;
    return {
      apart,
      hooksApart,
      wire: hooksApart + (apart - hooksApart) * slack,
      hooks: two ? 2 : 1,
    } as const;
  });

const close = (is: number, wanted: number, within: number): void => {
  expect(Math.abs(is - wanted) / wanted, `${is} against ${wanted}`).toBeLessThan(within);
};

describe("a wire against the least energy of a string", () => {
  it("[HG1] the frame hangs as low as a search finds that it can", () => {
    fc.assert(
      fc.property(strings, ({ wire, apart, hooksApart }) => {
        const triangle = triangleOfLength(wire, apart, hooksApart);
        close(triangle?.rise ?? Number.NaN, restingDepth({ wire, apart, hooksApart }), 1e-7);
      }),
      { numRuns: STRINGS },
    );
  });

  it("[HG4] tension, pull on the rails and pull on the hooks are what the energy changes by when wire, rings or hooks give way", () => {
    fc.assert(
      fc.property(
        strings,
        fc.double({ min: 1, max: 600, noNaN: true }),
        ({ wire, apart, hooksApart, hooks }, weight) => {
          const triangle = triangleOfLength(wire, apart, hooksApart);
          if (triangle === null) throw new Error("the string is long enough");
          const loads = wireLoads(weight, triangle, hooks);
          const string = { wire, apart, hooksApart };
          close(loads.wire ?? Number.NaN, weight * pull(string, "wire"), 1e-3);
          close(loads.ring, loads.wire ?? Number.NaN, 1e-12);
          close(loads.inward, weight * pull(string, "apart"), 1e-3);
          if (hooks === 2) close(loads.sideways, weight * pull(string, "hooksApart"), 1e-3);
          else expect(loads.sideways).toBe(0);
          expect(loads.hook).toBe(weight / hooks);
        },
      ),
      { numRuns: STRINGS / 6 },
    );
  });

  it("[HG1] [HG4] thousands of strings over one peg and over two: place and tension of the least energy, by a general optimiser", () => {
    let seen = 0;
    fc.assert(
      fc.property(strings, ({ wire, apart, hooksApart, hooks }) => {
        seen += 1;
        const triangle = triangleOfLength(wire, apart, hooksApart);
        if (triangle === null) throw new Error("the string is long enough");
        // In parts of the string, so that one step suits all; begun off the middle, the string slack.
        const [b, c] = [apart / wire, hooksApart / wire];
        const leg = (x: number, y: number, side: 1 | -1): number => Math.hypot(x + (side * (b - c)) / 2, y);
        const { at, worth } = leastWithin(
          ([, y = 0]) => -y,
          ([x = 0, y = 0]) => leg(x, y, -1) + c + leg(x, y, 1) - 1,
          [0.03, 0.05],
          1e-6,
        );
        const [x = 0, y = 0] = at;
        expect(Math.abs(x)).toBeLessThan(1e-3);
        close(triangle.rise, y * wire, 1e-4);
        close(wireLoads(1, triangle, hooks).ring, worth, 1e-3);
      }),
      { numRuns: GENERAL },
    );
    expect(seen).toBeGreaterThanOrEqual(GENERAL);
  });

  it("[HG1] the rise gives the length back, and the length the rise", () => {
    fc.assert(
      fc.property(strings, ({ wire, apart, hooksApart }) => {
        const triangle = triangleOfLength(wire, apart, hooksApart);
        if (triangle === null) throw new Error("the string is long enough");
        close(wireOf(triangleOfRise(triangle.rise, apart, hooksApart), hooksApart), wire, 1e-12);
      }),
    );
  });

  it("[HG6] a wire no longer than the way between its rings has no triangle", () => {
    expect(triangleOfLength(300, 300, 0)).toBeNull();
    expect(triangleOfLength(299, 300, 100)).toBeNull();
    expect(triangleOfLength(Number.NaN, 300, 0)).toBeNull();
  });

  it("[HG5] straight fixings share the weight and pull nothing inwards", () => {
    expect(sharedLoads(30, 3)).toEqual({ hook: 10, ring: 10, wire: null, inward: 0, sideways: 0 });
  });

  it("[HG4] the tension of a level wire has no limit", () => {
    expect(tensionAt(10, 1e-6)).toBeGreaterThan(1e8);
    expect(angleOf(triangleOfRise(1, 2, 0))).toBeCloseTo(45, 10);
  });
});
