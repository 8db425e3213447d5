import { expect, test } from "vitest";
import { prepare, reuseOfOne, reuseOfOneJson } from "../../src/packet/index.ts";
import { planFrames } from "../../src/packet/frames.ts";
import { type PracticeDocument, readStock, type StockDocument, showReadOf } from "../../src/show/index.ts";
import { packetOrder } from "../packet-order.ts";
import { LETTER } from "./frames.ts";

const oak = (overall: string) => ({
  name: "oak",
  overall,
  rabbet: "1/4",
  depth: "3/4",
  allowance: "1/8",
  waste: 0,
});

const PRACTICE: PracticeDocument = {
  unit: "in",
  moulding: oak("3/4"),
  frames: [
    { name: "too small", opening: { width: 6, height: 8 }, copies: 2 },
    { name: "made", moulding: oak("1") },
    { name: "old ash", opening: { width: "16 1/8", height: "12 1/8" }, copies: 1 },
    { name: "ready mat", mat: { width: 11, height: 14, window: { width: "6 3/4", height: "9 1/4" } } },
  ],
};

const STOCK: StockDocument = {
  unit: "in",
  sheets: [
    { name: "32 x 40", width: 32, height: 40, cost: 11 },
    { name: "offcut, as large as it", width: 14, height: 11, copies: 1, board: "4-ply white rag" },
    {
      name: "the same to be trimmed",
      width: 14,
      height: 11,
      copies: 1,
      trim: "1/8",
      board: "4-ply white rag",
    },
    { name: "of another board", width: 20, height: 20, copies: 1, board: "black core" },
    { name: "a hair too small", width: "10 127/128", height: 14, copies: 1, board: "4-ply white rag" },
  ],
};

test("[FR21] what exists stands the best one first, turned where that is better; offcuts serve by board, size and trim", () => {
  const stock = readStock(STOCK);
  if (!stock.ok) throw new Error(JSON.stringify(stock.problems));
  const { outer: _, ...free } = LETTER;
  const read = reuseOfOne(free, PRACTICE, stock.value);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { reuse } = reuseOfOneJson(read.value, "en-US") as {
    reuse: {
      frames: { kind: string; turned: boolean; stops: number; copies: number | null }[];
      offcuts: { name: string; serves: { part: string; board: string }[] }[];
    };
  };
  // What is made is no thing that exists; what stops comes last.
  expect(reuse.frames.map(({ kind }) => kind).toSorted()).toEqual(["old ash", "ready mat", "too small"]);
  expect(reuse.frames.at(-1)).toMatchObject({ kind: "too small", copies: 2 });
  expect(reuse.frames.at(-1)?.stops).toBeGreaterThan(0);
  expect(reuse.frames.find(({ kind }) => kind === "old ash")).toMatchObject({ turned: true, stops: 0 });
  expect(reuse.offcuts).toEqual([
    {
      name: "offcut, as large as it",
      copies: 1,
      serves: [
        { part: "mat", board: "4-ply white rag" },
        { part: "mount board", board: "4-ply white rag" },
      ],
    },
  ]);
});

test("[FR20] of two mouldings of one name that measure differently no offcut is counted twice", () => {
  const order = packetOrder(
    showReadOf({
      format: "margent-show",
      version: 1,
      name: "Slack Water",
      practice: PRACTICE,
      stock: {
        ...STOCK,
        lengths: [
          { name: "offcut", length: 70, copies: 1 },
          { name: "10 ft", length: 120, cost: 20 },
        ],
      },
      works: [
        { title: "Ebb", design: LETTER },
        { title: "Flow", frame: "made", design: LETTER },
      ],
    }),
  );
  const read = prepare(order);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const options = { seconds: 0.1, seed: 1, clock: () => performance.now(), solver: null };
  const planned = planFrames(read.value, options, () => undefined);
  expect(planned.map(({ moulding }) => moulding.overall)).toHaveLength(2);
  const offcuts = planned.flatMap(({ job, plan }) =>
    plan.sticks.filter(({ length }) => job.lengths[length]?.name === "offcut"),
  );
  expect(offcuts).toHaveLength(1);
  expect(planned.flatMap(({ plan }) => plan.missing.filter((count) => count > 0))).toEqual([]);
});
