import { expect, test } from "vitest";
import { mm } from "../../src/lengths/index.ts";
import { prepare } from "../../src/packet/index.ts";
import type { WorkDocument } from "../../src/show/index.ts";
import { showReadOf, worksOfWalls } from "../../src/show/index.ts";
import { packetOrder } from "../packet-order.ts";
import { packetOf, wallsOf, type WallShow } from "./packets.ts";

const ebb: WorkDocument = {
  title: "Ebb",
  design: {
    print: { width: "9", height: "12" },
    window: { show: "overlap" },
    outer: { width: "14", height: "18" },
  },
};
const named = (title: string, more: Partial<WorkDocument> = {}): WorkDocument => ({ ...ebb, title, ...more });
const moulding = { name: "oak", overall: "3/4", rabbet: "1/4" };
const inches = (millimetres: number): number => Math.round((millimetres / 25.4) * 1e6) / 1e6;
const north = { name: "North wall", width: "144", height: "96" };
const show: WallShow = {
  practice: { unit: "in", moulding, hanging: { hookDrop: "1/2" } },
  walls: [{ ...north, works: "rest" }],
  works: [named("Ebb"), named("Flow")],
};

test("[HG29] a show with a wall has a hanging sheet, and the wall by its name among its plans", async () => {
  const { files, json, leftOut } = await packetOf(show);
  expect(files).toContain("hanging.pdf");
  expect(leftOut.filter((said) => said.includes("hanging"))).toEqual([]);
  const { works, rows } = json.hang?.["North wall"] ?? { works: [], rows: [] };
  expect(rows).toEqual([2, 3]);
  // 14 and an eighth, and twice the half inch that the moulding stands past its rabbet.
  expect(works.map(({ title, frame }) => [title, frame.width.text, frame.height.text])).toEqual([
    ["Ebb", "15 1/8 in", "19 1/8 in"],
    ["Flow", "15 1/8 in", "19 1/8 in"],
  ]);
});

test("[HG29] a show without a wall says that it has no hanging sheet", () => {
  const { hang, leftOut } = wallsOf({ ...show, walls: [] });
  expect(hang).toEqual({});
  expect(leftOut).toEqual(["hanging.pdf is left out: the show has no wall."]);
});

test("[HG30] a work hangs on the wall that lists it, on the one that it names, or with the rest", () => {
  const walls = [
    { ...north, works: ["Flow"] },
    { ...north, name: "East wall" },
    { ...north, name: "South wall", works: "rest" as const },
  ];
  const works = [named("Ebb"), named("Flow"), named("Neap", { wall: "East wall" })];
  const { hang, problems } = wallsOf({ ...show, walls, works });
  expect(problems).toEqual([]);
  expect(Object.entries(hang).map(([name, { rows }]) => [name, rows])).toEqual([
    ["North wall", [3]],
    ["East wall", [4]],
    ["South wall", [2]],
  ]);
});

test("[HG30] what no work is called, what no wall is called, and a wall's name taken twice are told; the rest goes on", () => {
  const walls = [{ ...north, works: ["Ebb", "Spring"] }, north];
  const { hang, problems, leftOut } = wallsOf({
    ...show,
    walls,
    works: [named("Ebb"), named("Flow", { wall: "West wall" }), named("Neap")],
  });
  expect(problems.map(({ row, column, found }) => [row, column, found])).toEqual([
    [1, "walls.0.works.1", "Spring"],
    [1, "walls.1.name", "North wall"],
    [3, "wall", "West wall"],
  ]);
  expect(hang["North wall"]?.rows).toEqual([2]);
  expect(leftOut).toEqual(["On no wall: Flow, Neap."]);
});

test("[HG30] a work that two walls want hangs on the first that lists it, and the second is told", () => {
  const shared = worksOfWalls(
    [
      { ...north, works: ["Ebb"] },
      { ...north, name: "East wall" },
    ],
    [{ title: "Ebb", wall: "East wall", free: true }],
  );
  expect(shared.ofWall).toEqual([[0], []]);
  expect(shared.problems).toEqual([
    { work: 0, problem: { field: "wall", found: "East wall", wanted: { kind: "wall" } } },
  ]);
});

test("[HG31] a frame that is stated counts before the one that would be made, in the work's own unit", () => {
  const framed = { width: "400", height: "500", weight: "3 kg", depth: "30" };
  const { hang } = wallsOf({
    ...show,
    works: [named("Ebb", { framed, design: { ...ebb.design, unit: "mm" } })],
  });
  const [work] = hang["North wall"]?.works ?? [];
  expect(work?.frame.width.mm).toBe(400);
  expect(work?.loads?.["hook"]?.kgf).toBe(1.5);
});

test("[HG31] a work without a frame is left off its wall and told by its row", () => {
  const { hang, problems } = wallsOf({ ...show, practice: { unit: "in" } });
  expect(problems.map(({ row, column }) => [row, column])).toEqual([
    [2, "framed"],
    [3, "framed"],
  ]);
  expect(hang["North wall"]?.works).toEqual([]);
});

test("[HG32] rings go a third of the way down and into the middle of the rails, unless studio or work says otherwise", () => {
  const hooksOf = (more: Partial<WallShow>): readonly (readonly [number, number])[] => {
    const { hang } = wallsOf({ ...show, works: [named("Ebb")], ...more });
    const [work] = hang["North wall"]?.works ?? [];
    return (work?.hooks ?? []).map(({ x, bear }) => [inches(x.mm), inches(bear.mm)]);
  };
  // 15 1/8 less twice 3/8 is 14 3/8 apart; a third of 19 1/8 is 6 3/8 below the top at 66 9/16.
  expect(hooksOf({})).toEqual([
    [64.8125, 60.1875],
    [79.1875, 60.1875],
  ]);
  const fittings = { kind: "plates" as const, down: 0.2, inset: "1" };
  const practice = { ...show.practice, hanging: { fittings } };
  expect(hooksOf({ practice })).toEqual([
    [65.4375, 62.75],
    [78.5625, 62.75],
  ]);
  const hang = { kind: "rings" as const, below: "4", apart: "10" };
  expect(hooksOf({ works: [named("Ebb", { hang })] })).toEqual([
    [67, 62.5625],
    [77, 62.5625],
  ]);
});

test("[HG29] what stops a work on its wall is told by row", () => {
  const walls = [{ ...north, width: "20" }];
  const { stops } = wallsOf({ ...show, walls });
  expect(stops).toContainEqual(
    expect.stringMatching(/^North wall: STOP\. The frames and their gaps take 32 1\/4 in/),
  );
  expect(stops).toContainEqual(expect.stringMatching(/^row 2, North wall, Ebb: STOP\. It passes the left/));
});

test("[HG32] habits of hanging without a unit are read in the show's", () => {
  const design = {
    unit: "mm",
    print: { width: 200, height: 300 },
    outer: { width: 300, height: 400 },
  } as const;
  const metric = showReadOf({
    format: "margent-show",
    version: 1,
    name: "Slack Water",
    practice: { unit: "mm" },
    walls: [{ name: "North wall", width: 4000, height: 3000, works: "rest" }],
    works: [{ title: "Ebb", design }],
  });
  const practice = {
    moulding: { name: "ash", overall: 19, rabbet: 6 },
    hanging: { hookDrop: 10, fittings: { inset: 12 } },
  };
  const read = prepare(packetOrder(metric, { practice }));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const request = read.value.walls.walls[0]?.hung.request;
  expect(request?.habits.hookDrop).toBe(mm(10));
  // 300 and 3 mm of allowance and twice 13 make a frame of 329; less 12 mm on both sides.
  expect(request?.works[0]?.hanging.apart).toBe(mm(305));
});
