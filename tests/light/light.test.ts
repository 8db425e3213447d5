import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  GUIDANCE_NAMES,
  LIGHT_GUIDANCE,
  type LightJob,
  type LitDays,
  planLight,
  sensitivityOf,
  YEAR,
} from "../../src/assembly/index.ts";

const lit = fc
  .record({
    first: fc.integer({ min: 0, max: 800 }),
    days: fc.integer({ min: 1, max: 500 }),
    lux: fc.integer({ min: 1, max: 400 }),
    hoursPerDay: fc.integer({ min: 1, max: 16 }),
    daysPerWeek: fc.integer({ min: 1, max: 7 }),
  })
  .map(({ days, ...one }): LitDays => ({ ...one, last: one.first + days - 1 }));

const jobs = fc.record({
  sensitivity: fc.constantFrom("high", "medium", "low", "none", null),
  guidance: fc.constantFrom(...GUIDANCE_NAMES),
  hanging: lit,
  before: fc.array(lit, { maxLength: 3 }),
  ultraviolet: fc.option(fc.integer({ min: 0, max: 200 })),
});

/** The doses day by day, and the fullest run of 365 days ending on each: written plainly, as a check on the plan. */
function fullest({ hanging, before }: LightJob, from: number, to: number): number[] {
  const doses = new Map<number, number>();
  for (const one of [...before, hanging])
    for (let day = one.first; day <= one.last; day += 1)
      doses.set(day, (doses.get(day) ?? 0) + (one.lux * one.hoursPerDay * one.daysPerWeek) / 7);
  const years: number[] = [];
  for (let day = from; day <= to; day += 1) {
    let sum = 0;
    for (let back = 0; back < YEAR; back += 1) sum += doses.get(day - back) ?? 0;
    years.push(sum);
  }
  return years;
}

const budgetOf = ({ guidance, sensitivity }: LightJob): number | null =>
  sensitivity === null ? null : LIGHT_GUIDANCE[guidance].budgets[sensitivity].year;

describe("light", () => {
  it("[LT1] the dose is lux times hours, of what is open in the week", () => {
    const hanging = { first: 0, last: 83, lux: 300, hoursPerDay: 8, daysPerWeek: 6 };
    const plan = planLight({
      sensitivity: "medium",
      guidance: "cie-157",
      hanging,
      before: [],
      ultraviolet: null,
    });
    expect(plan.dose).toBeCloseTo(300 * 8 * 6 * 12, 6);
  });

  it("[LT2] no 365 days on end have more than a year's budget up to the day that the plan names, and the next day would", () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const plan = planLight(job);
        const budget = budgetOf(job);
        expect(plan.budget).toBe(budget);
        const { first, last } = job.hanging;
        const years = fullest(job, first, last);
        expect(plan.fullestYear).toBeCloseTo(Math.max(...years), 4);
        if (budget === null) {
          expect(plan.until).toBeNull();
          return;
        }
        const over = years.findIndex((dose) => dose > budget + 1e-6);
        expect(plan.until).toBe(over < 0 ? null : first + over - 1);
      }),
      { numRuns: 60 },
    );
  });

  it("[LT3] a rested work can hang as long again within its budget, and not a day sooner", () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const { rested } = planLight(job);
        const budget = budgetOf(job);
        if (budget === null || rested === null) return;
        const { hanging } = job;
        const days = hanging.last - hanging.first;
        const over = (first: number): boolean => {
          const again = { ...hanging, first, last: first + days };
          const years = fullest(
            { ...job, before: [...job.before, hanging], hanging: again },
            first,
            first + days,
          );
          return Math.max(...years) > budget + 1e-6;
        };
        expect(over(rested)).toBe(false);
        if (rested > hanging.last + 1) expect(over(rested - 1)).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it("[LT4] what is too much says until when, and at how many lux it would fit; one lux more would not", () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const found = planLight(job).checks.find(({ code }) => code === "light-dose");
        const budget = budgetOf(job);
        if (found?.code !== "light-dose" || budget === null) return;
        const at = (lux: number): number => {
          const hanging = { ...job.hanging, lux };
          return Math.max(...fullest({ ...job, hanging }, hanging.first, hanging.last));
        };
        if (found.fits > 0) expect(at(found.fits)).toBeLessThanOrEqual(budget + 1e-6);
        expect(found.fits).toBeLessThan(job.hanging.lux);
        if (found.fits + 1 < job.hanging.lux) expect(at(found.fits + 1)).toBeGreaterThan(budget);
      }),
      { numRuns: 40 },
    );
  });

  it("[LT5] where one published guidance allows what another does not, both are told", () => {
    const hanging = { first: 0, last: 29, lux: 45, hoursPerDay: 10, daysPerWeek: 7 };
    const job = { sensitivity: "high", hanging, before: [], ultraviolet: null } as const;
    expect(planLight({ ...job, guidance: "cie-157" }).checks).toEqual([
      { code: "light-disagree", level: "note", by: LIGHT_GUIDANCE["science-museum"], budget: 12_000 },
    ]);
    expect(planLight({ ...job, guidance: "science-museum" }).checks.map(({ code }) => code)).toEqual([
      "light-dose",
    ]);
  });

  it("[LT4] five foot-candles keep a limit of 50 lx, six do not", () => {
    const bright = (candles: number): boolean => {
      const hanging = { first: 0, last: 9, lux: candles / 0.3048 ** 2, hoursPerDay: 1, daysPerWeek: 7 };
      const job = { sensitivity: "high", hanging, before: [], ultraviolet: null } as const;
      return planLight({ ...job, guidance: "cie-157" }).checks.some(({ code }) => code === "light-bright");
    };
    expect([bright(5), bright(6)]).toEqual([false, true]);
  });

  it("[LT6] an unknown class gets a note and no budget; a process gives its class only where a source names it", () => {
    const hanging = { first: 0, last: 9, lux: 5000, hoursPerDay: 10, daysPerWeek: 7 };
    const plan = planLight({
      sensitivity: null,
      guidance: "cie-157",
      hanging,
      before: [],
      ultraviolet: null,
    });
    expect(plan.budget).toBeNull();
    expect(plan.checks.map(({ code }) => code)).toEqual(["light-class"]);
    expect(sensitivityOf("Gelatin silver print")).toBe("medium");
    expect(sensitivityOf("chromogenic print")).toBe("high");
    expect(sensitivityOf("cyanotype")).toBeNull();
  });
});
