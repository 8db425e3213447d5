import { expect, test } from "vitest";
import { numberBlanks } from "../../src/packet/blanks.ts";
import { planBoards } from "../../src/packet/boards.ts";
import { planFrames } from "../../src/packet/frames.ts";
import { filesByName, makePacket, type PacketOrder, prepare } from "../../src/packet/index.ts";
import { quotePacket } from "../../src/packet/money.ts";
import { isPriced, moneyJson } from "../../src/packet/quote.ts";
import { type PracticeDocument, showReadOf, type StockDocument } from "../../src/show/index.ts";
import { packetOrder } from "../packet-order.ts";

interface Money {
  readonly currency: string | null;
  readonly dates: { readonly stock: string | null; readonly practice: string | null };
  readonly show: Readonly<Record<string, string | null>>;
  readonly works: readonly Readonly<Record<string, string | number>>[];
  readonly goods: readonly Readonly<Record<string, string | number | null>>[];
  readonly missing: readonly { readonly code: string }[];
}

const STOCK: StockDocument = {
  unit: "in",
  currency: "DKK",
  date: "2026-11-20",
  sheets: [
    {
      name: "32 x 40",
      board: "4-ply white rag",
      width: 32,
      height: 40,
      cost: 91.35,
      pack: { of: 3, cost: 250.1 },
    },
    { name: "end of a sheet", board: "4-ply white rag", width: 16, height: 20, copies: 1 },
    { name: "glass", board: "glass, 2 mm", width: 24, height: 36, cost: 120.05 },
  ],
  lengths: [
    { name: "ash", length: 84, cost: 210 },
    { name: "ash, end", length: 80, copies: 1 },
  ],
};

const PRACTICE: PracticeDocument = {
  unit: "in",
  glazing: { board: "glass, 2 mm", kind: "glass" },
  moulding: { name: "ash", overall: "3/4", rabbet: "1/4" },
  money: {
    hour: "310",
    minutes: { blank: 3, window: 8 },
    fittings: [{ name: "rings", cost: 3.5, each: 2 }],
    having: [{ what: "frame", cost: 900, per: "frame" }],
  },
};

const orderOf = (practice: PracticeDocument, stock: StockDocument): PacketOrder =>
  packetOrder(
    showReadOf({
      format: "margent-show",
      version: 1,
      name: "Slack Water",
      works: [
        ["Zażółć gęślą jaźń", 2],
        ["Rødgrød", 1],
      ].map(([title, quantity]) => ({
        title: String(title),
        quantity: Number(quantity),
        design: { unit: "in", print: { width: 8, height: 10 }, outer: { width: 16, height: 20 } },
      })),
    }),
    { practice, stock, seconds: 0.05, clock: () => performance.now() },
  );

/** What a packet costs, without its papers; or the fields that could not be taken. */
function moneyOf(practice: PracticeDocument, stock: StockDocument): Money | readonly string[] | null {
  const order = orderOf(practice, stock);
  const read = prepare(order);
  if (!read.ok) return read.problems.map(({ field, found }) => `${field}: ${found}`);
  if (!isPriced(read.value)) return null;
  const options = { seconds: order.seconds, seed: 1, clock: order.clock, solver: null };
  const { works, practice: habits, stock: rack } = read.value;
  const boards = planBoards(works, habits, rack, options, () => undefined);
  const quoted = quotePacket(
    read.value,
    boards,
    numberBlanks(works, boards, 1),
    planFrames(read.value, options, () => undefined),
    options,
  );
  return quoted === null ? null : (moneyJson(quoted, read.value) as Money);
}

const rowsOf = (bytes: Uint8Array | undefined): readonly (readonly string[])[] =>
  new TextDecoder()
    .decode(bytes)
    .trim()
    .split("\r\n")
    .map((line) => line.split(","));

test("[MN2] [MN3] [MN4] [MN7] [MN8] a packet's quote: bought with packs, by measure, without the rack, beside what having it done costs", async () => {
  const made = await makePacket(orderOf(PRACTICE, STOCK));
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  const files = await filesByName(made.value.files);
  const { money } = JSON.parse(new TextDecoder().decode(files.get("packet.json"))) as { money?: Money };
  expect(files.get("quote.pdf")?.length).toBeGreaterThan(5000);
  expect(money).toMatchObject({ currency: "DKK", dates: { stock: "2026-11-20", practice: null } });
  // Three mats and three mounts 16 × 20: one out of the rack, four a sheet: five of them take two sheets.
  const [board, glass, ash] = money?.goods ?? [];
  expect(board).toMatchObject({ name: "4-ply white rag", bought: 2, cost: "182.70", without: "182.70" });
  // Six times a quarter of a sheet at 91.35.
  expect(board?.["byMeasure"]).toBe("137.03");
  // Three panes, two a sheet.
  expect(glass).toMatchObject({ group: "glazing", bought: 2, cost: "240.10", byMeasure: "133.39" });
  expect(ash).toMatchObject({ group: "moulding", bought: 2, cost: "420.00", without: "630.00" });
  const table = rowsOf(files.get("quote.csv"));
  const sums = table.slice(1, -1).map((row) => row.slice(3).map(Number));
  const show = table.at(-1)?.slice(3).map(Number) ?? [];
  for (const [at, total] of show.entries())
    expect(Math.round(sums.reduce((sum, row) => sum + (row[at] ?? 0), 0) * 100)).toBe(
      Math.round(total * 100),
    );
  expect(money?.show).toMatchObject({ parts: "21.00", having: "2700.00" });
  // The shopping list comes to the same.
  const reckoned = rowsOf(files.get("shopping-list.csv"))
    .slice(1)
    .map((row) => Number(row.at(-1) ?? 0));
  const goods = ["board", "glazing", "moulding"].map((group) => Number(money?.show[group]));
  expect(reckoned.reduce((sum, one) => sum + one, 0)).toBeCloseTo(
    goods.reduce((sum, one) => sum + one, 0),
    6,
  );
});

test("[MN6] without any price there is no quote; a price that is not known is named", () => {
  expect(
    moneyOf({ unit: "in" }, { unit: "in", sheets: [{ name: "32 x 40", width: 32, height: 40 }] }),
  ).toBeNull();
  const money = moneyOf(PRACTICE, {
    ...STOCK,
    sheets: STOCK.sheets.map(({ cost, ...sheet }) => (sheet.name === "glass" ? sheet : { ...sheet, cost })),
  });
  if (money === null || !("goods" in money)) throw new Error("it has a price");
  expect(money.goods[1]).toMatchObject({ cost: null, byMeasure: null });
  expect(money.show).toMatchObject({ glazing: "0.00" });
  expect(money.show["without"]).toBeNull();
  expect(money.missing.map(({ code }) => code)).toEqual(["price", "minutes"]);
});

test("[MN1] [MN7] a price, a day and a currency that cannot be taken are refused by their field", () => {
  const fields = (
    money: NonNullable<PracticeDocument["money"]>,
    stock: Partial<StockDocument> = {},
  ): unknown => moneyOf({ ...PRACTICE, money }, { ...STOCK, ...stock });
  expect(fields({ hour: "1,500" })).toEqual(["practice.money.hour: 1,500"]);
  expect(fields({ having: [{ what: "frame", cost: "-3" }] })).toEqual(["practice.money.having.0.cost: -3"]);
  expect(fields({ fittings: [{ name: "rings", cost: 1, pack: 0 }] })).toEqual([
    "practice.money.fittings.0.pack: 0",
  ]);
  expect(fields({ minutes: { hold: -1 } })).toEqual(["practice.money.minutes.hold: -1"]);
  expect(fields({ date: "2026-02-30" })).toEqual(["practice.money.date: 2026-02-30"]);
  expect(fields({ currency: "EUR" })).toEqual(["practice.money.currency: EUR"]);
  expect(fields({}, { date: "soon" })).toEqual(["stock.date: soon"]);
});
