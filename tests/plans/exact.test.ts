import * as fc from "fast-check";
import { expect, test } from "vitest";
import { ticks } from "../../src/lengths/index.ts";
import { Chance } from "../../src/plans/chance.ts";
import { cheapBound } from "../../src/plans/cutting/bound.ts";
import { pricingFor } from "../../src/plans/cutting/coarse.ts";
import { greedyPlan, WAYS } from "../../src/plans/cutting/first.ts";
import { judged } from "../../src/plans/cutting/rough.ts";
import { searched } from "../../src/plans/cutting/search.ts";
import { wholeJob } from "../../src/plans/cutting/whole.ts";
import type { CuttingJob } from "../../src/plans/index.ts";
import { leastCost } from "../reference/exact-cutting.ts";
import { leastSheets } from "./exhaustive.ts";
import { jobOf, piece, planned, sheet } from "./jobs.ts";

const whole = (min: number, max: number) => fc.integer({ min, max });
const price = fc.oneof(whole(1, 40), fc.constantFrom(11.5, 26.5, 8.25, 0.1));

/** Up to eight pieces out of up to three kinds of sheet, one of which takes every piece and never runs out, and up to two offcuts. */
const exactJob: fc.Arbitrary<CuttingJob> = fc
  .record({
    pieces: fc.array(
      fc.record({
        w: whole(3, 26),
        h: whole(3, 26),
        count: whole(1, 3),
        turns: fc.boolean(),
        inner: whole(40, 85),
      }),
      { minLength: 1, maxLength: 8 },
    ),
    base: fc.record({ w: whole(0, 24), h: whole(0, 24), cost: price, trim: whole(0, 2) }),
    more: fc.array(
      fc.record({
        w: whole(12, 60),
        h: whole(12, 60),
        cost: price,
        trim: whole(0, 2),
        copies: fc.constantFrom(null, null, 1, 2),
      }),
      { maxLength: 2 },
    ),
    offcuts: fc.array(fc.record({ w: whole(6, 34), h: whole(6, 34) }), { maxLength: 2 }),
    kerf: fc.constantFrom(0, 0, 1, 2),
    grain: fc.boolean(),
    dropOuts: fc.boolean(),
  })
  .map(({ pieces, base, more, offcuts, kerf, grain, dropOuts }) => {
    const wanted = upTo(8, pieces).map(({ w, h, count, turns, inner }) =>
      piece(w, h, {
        count,
        // The reference takes windows only where nothing has a grain.
        turns: dropOuts || !grain || turns,
        window: { width: part(w, inner), height: part(h, inner) },
      }),
    );
    const longest = Math.max(...wanted.flatMap(({ width, height }) => [width, height]));
    const trimOf = (trim: number) => ({ trim: ticks(trim) });
    return jobOf(
      [
        sheet(longest + base.w + 2 * base.trim, longest + base.h + 2 * base.trim, {
          cost: base.cost,
          ...trimOf(base.trim),
        }),
        ...more.map((one) =>
          sheet(one.w, one.h, { cost: one.cost, copies: one.copies, ...trimOf(one.trim) }),
        ),
        ...offcuts.map(({ w, h }) => sheet(w, h, { cost: 0, copies: 1 })),
      ],
      wanted,
      { kerf: ticks(kerf), dropOuts },
    );
  });

const part = (side: number, percent: number) => ticks(Math.max(1, Math.floor((side * percent) / 100)));

/** The first of the pieces, `most` copies in all. */
function upTo<T extends { readonly count: number }>(most: number, pieces: readonly T[]): T[] {
  let room = most;
  return pieces.flatMap((one) => {
    const count = Math.min(one.count, room);
    room -= count;
    return count > 0 ? [{ ...one, count }] : [];
  });
}

const RUNS = Number(process.env["MARGENT_EXACT_JOBS"] ?? 200);
/** A long run is given the time it takes. */
const LIMIT = Math.max(60_000, RUNS * 200);

test(`[CT10] [CT11] [CT21] the plan costs the least there is and is proven, on ${RUNS} jobs that were tried in every way`, {
  timeout: LIMIT,
}, () => {
  fc.assert(
    fc.property(exactJob, (job) => {
      const least = leastCost(job);
      if (least === null) throw new Error("every piece fits the first sheet");
      const plan = planned(job);
      expect(plan.missing.every((count) => count === 0)).toBe(true);
      expect(plan.cost).toBeCloseTo(least, 6);
      expect(plan.bound.cost).toBeCloseTo(least, 6);
      expect(plan.proven).toBe(true);
    }),
    { numRuns: RUNS },
  );
});

test("[CT10] the bounds of the long search are below the least there is, on jobs that it is not asked for", () => {
  let raised = 0;
  fc.assert(
    fc.property(exactJob, (job) => {
      const least = leastCost(job);
      if (least === null) throw new Error("every piece fits the first sheet");
      const known = wholeJob(job);
      const pricing = pricingFor(known);
      const cheap = cheapBound(known, pricing);
      const [way] = WAYS;
      if (way === undefined) throw new Error("no way");
      const means = {
        least: null,
        solver: null,
        chance: new Chance(1),
        clock: () => 0,
        timeLeft: () => 1000,
        told: () => {},
        layouts: [],
      };
      const { bound, best } = searched(
        known,
        pricing,
        judged(known, null, greedyPlan(known, way, false)),
        cheap,
        means,
      );
      raised += Number(bound.how === "counts");
      expect(bound.cost * known.money).toBeLessThanOrEqual(least + 1e-9);
      expect(best.cost * known.money).toBeGreaterThanOrEqual(least - 1e-9);
    }),
    { numRuns: 100 },
  );
  // Otherwise nothing has been held against anything.
  expect(raised).toBeGreaterThan(0);
});

test("two ways to try everything, by boxes of sets and by cuts at every place, find the same", () => {
  const side = whole(1, 6);
  fc.assert(
    fc.property(
      fc.tuple(whole(6, 10), whole(6, 10)),
      fc.array(fc.tuple(side, side), { minLength: 1, maxLength: 6 }),
      ([width, height], sizes) => {
        const job = jobOf(
          [sheet(width, height)],
          sizes.map(([w, h]) => piece(w, h)),
        );
        expect(leastCost(job)).toBe(leastSheets(width, height, sizes));
      },
    ),
    { numRuns: 200 },
  );
});
