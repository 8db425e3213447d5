import * as fc from "fast-check";
import { expect, test } from "vitest";
import type { WorkDocument } from "../../src/show/index.ts";
import { type TableOut, worksToTable, writeCsv, writeXlsx } from "../../src/show/lists/index.ts";
import { oddLists, wholeLists } from "./generators.ts";
import { tableOf, worksOf } from "./helpers.ts";

test.each([
  ["=1+1", "'=1+1"],
  ["+1", "'+1"],
  ["@x", "'@x"],
  ["-x", "'-x"],
  ["- 3", "'- 3"],
  ["\tx", '"\'\tx"'],
  ["\rx", '"\'\rx"'],
  ["'=x", "''=x"],
  ["-3.5", "-3.5"],
  ["-12,75", '"-12,75"'],
  ["'s Gravenhage", "'s Gravenhage"],
  ["7 1/2 in", "7 1/2 in"],
  ['7 1/2"', '"7 1/2"""'],
  ["two\nlines", '"two\nlines"'],
  [" x ", '" x "'],
])("[LI28] the cell %j is written %s", (cell, written) => {
  expect(writeCsv(["title", "n"], [[cell, "1"]])).toBe(`title,n\r\n${written},1\r\n`);
});

test("[LI28] what is written reads back, marks and all", () =>
  fc.assert(
    fc.asyncProperty(
      fc.array(
        fc.string({
          unit: fc.constantFrom("'", "=", "-", "+", "@", "1", ",", "\t", "\n", '"', "a"),
          maxLength: 6,
        }),
        {
          minLength: 1,
          maxLength: 4,
        },
      ),
      fc.constantFrom(",", ";", "\t" as const),
      async (cells, separator) => {
        const header = ["title", ...cells.map((_, index) => `c${index}`)];
        const text = writeCsv(header, [["x", ...cells]], { separator, bom: true });
        expect(text.charCodeAt(0)).toBe(0xfeff);
        expect((await tableOf(text)).rows).toEqual([{ row: 2, cells: ["x", ...cells] }]);
      },
    ),
    { numRuns: 300 },
  ));

test("[LI29] works to a table, in the order of the columns, with what it cannot say", () => {
  const works: WorkDocument[] = [
    {
      id: "w1",
      title: "Ebb",
      maker: "T. Marrable",
      quantity: 3,
      more: { "Inventory no.": "TW-1" },
      design: {
        unit: "mm",
        print: { width: 203, height: "254 mm", angle: -0.5, sure: "1 mm" },
        window: { show: "margins", top: "6 mm" },
        outer: { width: "400", height: "500" },
      },
    },
    {
      title: "Neap",
      design: {
        print: { width: "8 1/2", height: "11", image: { left: 0.75, top: "3/4", width: "7", height: '9"' } },
        window: { show: "typed", width: "6", height: "8" },
        outer: { borders: { head: "2", side: "2", foot: "2 1/2" } },
        lift: { rule: "none" },
      },
    },
  ];
  const { header, rows, lost } = worksToTable(works, "in");
  const named = rows.map((row) => Object.fromEntries(header.map((column, index) => [column, row[index]])));
  expect(header).toEqual([
    ..."title,maker,sheet width,sheet height,image left,image top,image width,image height,show".split(","),
    ..."window width,window height,outer width,outer height,angle,quantity,Inventory no.".split(","),
  ]);
  expect(named).toMatchObject([
    {
      title: "Ebb",
      "sheet width": "203 mm",
      show: "margins",
      "outer width": "400 mm",
      angle: "-0.5",
      quantity: "3",
    },
    {
      "sheet width": "8 1/2 in",
      "image left": "0.75 in",
      "image height": '9"',
      "window width": "6 in",
      show: "",
    },
  ]);
  expect(lost).toEqual([
    { row: 2, fields: ["id", "design.print.sure", "design.window.top"] },
    { row: 3, fields: ["design.lift", "design.outer.borders"] },
  ]);
});

/** A table through a file of each kind and back to works. */
async function throughFiles({ header, rows }: TableOut): Promise<WorkDocument[][]> {
  const files = [
    writeCsv(header, rows),
    writeCsv(header, rows, { separator: ";", bom: true }),
    await writeXlsx([{ name: "Works", header, rows }]),
  ];
  const read = await Promise.all(files.map((file) => worksOf(file, { unit: "in", graduation: "1/16 in" })));
  for (const { problems } of read) expect(problems).toEqual([]);
  return read.map(({ works }) => works.map(({ work }) => work));
}

test("[LI29] list to works to list to works gives the same works, through every kind of file", () =>
  fc.assert(
    fc.asyncProperty(wholeLists, async ({ header, rows }) => {
      const read = await worksOf(writeCsv(header, rows), { unit: "in", graduation: "1/16 in" });
      expect(read.problems).toEqual([]);
      expect(read.works).toHaveLength(rows.length);
      const works = read.works.map(({ work }) => work);
      const out = worksToTable(works, "in");
      expect(out.lost).toEqual([]);
      for (const again of await throughFiles(out)) expect(again).toEqual(works);
    }),
    { numRuns: 150 },
  ));

test("[LI29] so do the rows that go in of a list most of whose rows do not", () =>
  fc.assert(
    fc.asyncProperty(oddLists, async ({ header, rows }) => {
      const read = await worksOf(writeCsv(header, rows), { unit: "in", graduation: "1/16 in" });
      const works = read.works.map(({ work }) => work);
      for (const again of await throughFiles(worksToTable(works, "in"))) expect(again).toEqual(works);
    }),
    { numRuns: 100 },
  ));

test("[LI31] a frame is its kind's name, in and out; none is a work without one, and what the name does not say is lost", async () => {
  const read = await worksOf(
    "title,sheet width,sheet height,Frame\nEbb,8,10,oak\nFlow,8,10,NONE\nNeap,8,10,\n",
  );
  const works = read.works.map(({ work }) => work);
  expect(works.map(({ frame }) => frame)).toEqual(["oak", null, undefined]);
  const [ebb] = works;
  if (ebb === undefined) throw new Error("there is a work");
  const { header, rows, lost } = worksToTable(
    [
      ...works,
      { ...ebb, frame: { kind: "ash", seat: "shimmed" }, wall: "North wall" },
      { ...ebb, frame: { kind: "None" } },
    ],
    "in",
  );
  const column = header.indexOf("frame");
  expect(rows.map((row) => row[column])).toEqual(["oak", "none", "", "ash", ""]);
  expect(lost).toEqual([
    { row: 5, fields: ["wall", "frame.seat"] },
    { row: 6, fields: ["frame"] },
  ]);
});
