import * as fc from "fast-check";
import { inch, type Length, ticks } from "../../src/lengths/index.ts";
import type { BenchJob, BenchMat } from "../../src/plans/bench/index.ts";

export const mat = (
  settings: readonly number[],
  after: readonly number[] = [],
  more: Partial<BenchMat> = {},
): BenchMat => ({ settings: settings.map((eighths) => inch(eighths, 8)), after, dries: false, ...more });

/** Mats with a few figures out of `figures`, each waiting for some of those before it. */
export const batch = (most: number, figures: number, dries = false): fc.Arbitrary<BenchJob> =>
  fc
    .array(
      fc.record({
        settings: fc.uniqueArray(fc.integer({ min: 1, max: figures }), { minLength: 1, maxLength: 3 }),
        after: fc.array(fc.nat(), { maxLength: 2 }),
        dries: dries ? fc.boolean() : fc.constant(false),
      }),
      { maxLength: most },
    )
    .map((drawn) => ({
      mats: drawn.map((one, place) => ({
        settings: one.settings.map((figure): Length => ticks(figure)),
        after: place === 0 ? [] : [...new Set(one.after.map((other) => other % place))],
        dries: one.dries,
      })),
    }));
