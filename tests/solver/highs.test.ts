import * as fc from "fast-check";
import { expect, test } from "vitest";
import { cuttingFaults, planCutting } from "../../src/plans/index.ts";
import { integerSolver } from "../../src/solver/index.ts";
import { smallJob } from "../plans/jobs.ts";

const never = () => false;

test("the solver gives whole amounts that serve every row at the least cost", async () => {
  const solver = await integerSolver();
  // Twice the first costs 10; every other way to 3 and 2 costs more.
  const columns = [
    { cost: 5, rows: [0, 1], amounts: [2, 1] },
    { cost: 3, rows: [0], amounts: [1] },
    { cost: 3, rows: [1], amounts: [2] },
  ];
  const found = solver({ columns, wanted: [3, 2], start: null }, never);
  expect(Array.from(found ?? [], Math.round)).toEqual([2, 0, 0]);
  const kept = solver(
    { columns: [...columns, { cost: 0, rows: [2], amounts: [-1] }], wanted: [3, 2, 0], start: null },
    never,
  );
  expect(Array.from(kept ?? [], Math.round)).toEqual([2, 0, 0, 0]);
  expect(solver({ columns: columns.slice(1, 2), wanted: [1, 1], start: null }, never)).toBeNull();
});

test("the solver is stopped by whoever asks", async () => {
  const solver = await integerSolver();
  let asked = 0;
  const columns = Array.from({ length: 60 }, (_, index) => ({
    cost: 1000 + ((index * 7919) % 101),
    rows: [index % 20, (index * 3 + 1) % 20, (index * 7 + 5) % 20].filter(
      (row, at, all) => all.indexOf(row) === at,
    ),
    amounts: [2 + (index % 3), 3, 1 + (index % 5)],
  })).map((column) => ({ ...column, amounts: column.amounts.slice(0, column.rows.length) }));
  const wanted = Array.from({ length: 20 }, (_, row) => 17 + ((row * 13) % 11));
  const stopped = solver({ columns, wanted, start: null }, () => ++asked > 3);
  expect(asked).toBeGreaterThan(0);
  for (const [row, want] of stopped === null ? [] : wanted.entries()) {
    const given = columns.reduce((sum, { rows, amounts }, index) => {
      const place = rows.indexOf(row);
      return sum + (place < 0 ? 0 : (amounts[place] ?? 0) * Math.round(stopped?.[index] ?? 0));
    }, 0);
    expect(given).toBeGreaterThanOrEqual(want);
  }
});

test("[CT1] [CT3] [CT12] plans that the solver helped with survive the checker", async () => {
  const solver = await integerSolver();
  fc.assert(
    fc.property(smallJob, (job) => {
      let asked = 0;
      const plan = planCutting(job, { seconds: 0.3, seed: 1, clock: () => asked++, solver });
      expect(cuttingFaults(job, plan)).toEqual([]);
      expect(plan.bound.cost).toBeLessThanOrEqual(plan.cost + 1e-9);
    }),
    { numRuns: 60 },
  );
});
