import { expect, test } from "vitest";
import { inch, ZERO } from "../../src/lengths/index.ts";
import { type ShoppingJob, shoppingList, shoppingRows } from "../../src/papers/index.ts";
import { buying } from "../../src/papers/shopping/items.ts";
import type { CuttingJob } from "../../src/plans/index.ts";
import { EIGHT, INCHES, METRIC, MILLIMETRES, planOf, said, typeface } from "./papers.ts";

const offcut = { name: "offcut A", width: inch(14), height: inch(18), cost: 0, copies: 1, trim: ZERO };
const withOffcut: CuttingJob = {
  ...EIGHT,
  sheets: [...EIGHT.sheets, offcut],
  pieces: EIGHT.pieces.map((piece) => ({ ...piece, count: 3 })),
};

const shopping = (job: CuttingJob, more: Partial<ShoppingJob> = {}): ShoppingJob => ({
  boards: [
    {
      board: "4-ply white rag",
      material: "board",
      stock: [],
      saved: null,
      job,
      plan: planOf(job),
      ruler: more.ruler ?? INCHES,
    },
  ],
  mouldings: [],
  works: 8,
  tape: inch(90),
  currency: "dollars",
  priced: true,
  house: { studio: "Tidewater Print Room", show: "Slack Water" },
  planWords: { number: 3, date: "2026-11-25", makesVoid: null },
  ruler: INCHES,
  language: "en-US",
  ...more,
});

const linesOf = (job: ShoppingJob): string =>
  shoppingList(job, "letter", typeface)
    .map((page) => said(page))
    .join("\n");

test("[SL1] sheets are counted as the plan uses them and add up to its cost", () => {
  const plan = planOf(withOffcut);
  const sheets = plan.sheets.filter(({ from }) => from.kind === "stock" && from.sheet === 0);
  const text = linesOf(shopping(withOffcut));
  expect(text).toContain(`${sheets.length} × 11.50`);
  expect(text).toContain(plan.cost.toFixed(2));
  expect(text).toContain("32 × 40 in; measure it in the shop");
});

test("[SL2] what the rack gives costs nothing and stands by itself", () => {
  const plan = planOf(withOffcut);
  expect(plan.sheets.some(({ from }) => from.kind === "stock" && from.sheet === 1)).toBe(true);
  expect(linesOf(shopping(withOffcut))).toMatch(/From the rack, nothing to pay[\s\S]*offcut A: 14 × 18 in/);
  expect(linesOf(shopping(EIGHT))).not.toContain("From the rack");
});

test("[SL3] without prices no sum is printed", () => {
  const text = linesOf(shopping(EIGHT, { priced: false }));
  expect(text).not.toContain("In all");
  expect(text).not.toMatch(/\d\.\d\d/);
  expect(text).toContain("No prices are known");
});

test("[SL1] the table for the machine holds the same figures", () => {
  const job = shopping(METRIC, { ruler: MILLIMETRES });
  const rows = shoppingRows(job.boards, [], MILLIMETRES, true, null);
  const [head, ...lines] = rows;
  expect(head).toHaveLength(10);
  expect(lines.every((line) => line.length === 10)).toBe(true);
  const money = lines.map((line) => Number(line[9] === "" ? 0 : line[9])).reduce((sum, one) => sum + one, 0);
  expect(money).toBeCloseTo(planOf(METRIC).cost, 2);
  expect(lines[0]?.slice(0, 6)).toEqual([
    "Board",
    expect.any(String),
    "815 × 1120",
    "4-ply white rag",
    "815 mm",
    "1120 mm",
  ]);
});

test("[SL1] a board of another unit is asked for on its own ruler", () => {
  const [board] = shopping(METRIC, { ruler: MILLIMETRES }).boards;
  if (board === undefined) throw new Error("no board");
  const text = linesOf({ ...shopping(EIGHT), boards: [...shopping(EIGHT).boards, board] });
  expect(text).toContain("32 × 40 in");
  expect(text).toContain("815 × 1120 mm");
});

test("[SL4] where sheets are sold in packs the cheapest way to get enough is asked for", () => {
  const of10 = { of: 10, cost: 60 };
  expect(buying(3, 8.25, true, of10)).toEqual({ packs: 0, singles: 3, cost: 24.75 });
  expect(buying(9, 8.25, true, of10)).toEqual({ packs: 1, singles: 0, cost: 60 });
  expect(buying(12, 8.25, true, of10)).toEqual({ packs: 1, singles: 2, cost: 76.5 });
  expect(buying(12, 6, false, of10)).toEqual({ packs: 2, singles: 0, cost: 120 });
  const [board] = shopping(EIGHT).boards;
  if (board === undefined) throw new Error("no board");
  const text = linesOf(
    shopping(EIGHT, { boards: [{ ...board, stock: [{ pack: { of: 5, cost: 40 }, singly: false }] }] }),
  ).replaceAll("\n", " ");
  const used = board.plan.sheetsUsed;
  expect(text).toContain(`1 pack of 5, ${5 - used} over`);
  expect(text).toContain("40.00");
});

test("[SL5] what offcuts and windows saved is said as far as it is known", () => {
  const [board] = shopping(EIGHT).boards;
  if (board === undefined) throw new Error("no board");
  const savings = (atLeast: number, atMost: number): string =>
    linesOf(
      shopping(EIGHT, { boards: [{ ...board, saved: { kind: "money", atLeast, atMost, sheets: 1 } }] }),
    ).replaceAll("\n", " ");
  expect(savings(11.5, 11.5)).toContain("saved 11.50 (one sheet fewer to buy).");
  expect(savings(4, 11.5)).toContain("saved between 4.00 and 11.50");
  expect(savings(0, 11.5)).toContain("at most 11.50; how much is not known, since the time ran out");
  expect(savings(0, 0)).toContain("saved nothing");
});
