import * as fc from "fast-check";
import Papa from "papaparse";
import { expect, test } from "vitest";
import { BOUNDS, readTable, writeCsv } from "../../src/show/lists/index.ts";
import { sayListNote, sayListProblem } from "../../src/words/lists.ts";
import { bytesOf, tableOf } from "./helpers.ts";

test.each([
  [",", 'title,sheet width\n"Slack, Water",7.5\n'],
  [";", 'title;sheet width\n"Slack, Water";7.5\n'],
  ["\t", 'title\tsheet width\n"Slack, Water"\t7.5\n'],
])("[LI1] a list parted by %j is taken apart", async (_, text) => {
  const { header, rows } = await tableOf(text);
  expect(header).toEqual(["title", "sheet width"]);
  expect(rows).toEqual([{ row: 2, cells: ["Slack, Water", "7.5"] }]);
});

test("[LI1] the header decides, not the more frequent sign", async () => {
  const text =
    "title;sheet width (cm);sheet height (cm);notes\nEbb;24,5;30,0;a, b, c, d\nNeap;1,0;2,0;,,,,,\n";
  expect((await tableOf(text)).header).toEqual(["title", "sheet width (cm)", "sheet height (cm)", "notes"]);
});

test("[LI1] separators inside quoted cells do not count", async () => {
  const text = '"title";"notes"\n"Ebb";"1,2,3"\n"Neap";"4,5,6"\n';
  expect((await tableOf(text)).rows[1]?.cells).toEqual(["Neap", "4,5,6"]);
});

test("[LI1] with no known column the rows that are even decide; one column alone is a list too", async () => {
  expect((await tableOf("a;b,c;d\n1;2,5;3\n4;5;6\n")).header).toEqual(["a", "b,c", "d"]);
  expect((await tableOf("title\nEbb\nNeap\n")).rows.map(({ cells }) => cells)).toEqual([["Ebb"], ["Neap"]]);
});

test("[LI1] a first line that names the separator is obeyed and is no row", async () => {
  const { header, rows, notes } = await tableOf("sep=;\ntitle;notes\nEbb;x\n");
  expect(header).toEqual(["title", "notes"]);
  expect(rows).toEqual([{ row: 2, cells: ["Ebb", "x"] }]);
  expect(notes).toEqual([]);
});

test("[LI2] a byte-order mark is no part of the first column", async () => {
  expect((await tableOf("\ufefftitle,notes\nEbb,x\n")).header[0]).toBe("title");
  expect((await tableOf('\ufeff"title","notes"\nEbb,x\n')).header[0]).toBe("title");
});

test.each(["le", "be"])("[LI2] UTF-16 %s is read, with its mark and without", async (order) => {
  const text = "\ufefftitle;notes\nZażółć gęślą;Ærø\n";
  const bytes = new Uint8Array(text.length * 2);
  const view = new DataView(bytes.buffer);
  [...text].forEach((_, index) => view.setUint16(index * 2, text.charCodeAt(index), order === "le"));
  for (const list of [bytes, bytes.subarray(2)]) {
    const table = await tableOf(list);
    expect(table.rows[0]?.cells).toEqual(["Zażółć gęślą", "Ærø"]);
    expect(table.notes).toMatchObject([{ code: "encoding", encoding: "utf-16" }]);
  }
});

test("[LI2] what is no UTF-8 is read as Windows-1252 and said", async () => {
  const bytes = Uint8Array.from([
    ...bytesOf("title;notes\n"),
    0xc6,
    0x72,
    0xf8,
    0x3b,
    0x93,
    0x39,
    0x94,
    0x0a,
  ]);
  const table = await tableOf(bytes);
  expect(table.rows[0]?.cells).toEqual(["Ærø", "“9”"]);
  expect(table.notes).toMatchObject([{ level: "warn", code: "encoding", encoding: "windows-1252" }]);
  expect(table.notes.map(sayListNote)).toEqual([expect.stringContaining("Windows-1252")]);
});

test("[LI3] a blank line counts, a line break in a cell does not", async () => {
  const text = 'title,notes\nEbb,"first\nsecond\n\nfourth"\n\nNeap,x\n,\nSlack,y\n';
  const { rows } = await tableOf(text);
  expect(rows.map(({ row, cells }) => [row, cells[0]])).toEqual([
    [2, "Ebb"],
    [4, "Neap"],
    [6, "Slack"],
  ]);
  expect(rows[0]?.cells[1]).toBe("first\nsecond\n\nfourth");
});

test.each(["\n", "\r\n", "\r"])("[LI3] lines may end with %j, mixed with others", async (end) => {
  const { rows } = await tableOf(`title,notes${end}Ebb,"a${end}b"\n${end}Neap,x${end}`);
  expect(rows.map(({ row }) => row)).toEqual([2, 4]);
  expect(rows[0]?.cells).toEqual(["Ebb", "a\nb"]);
});

test("[LI3] lines above the header are not counted, and a note says where it was found", async () => {
  const blank = await tableOf("\n\ntitle,notes\nEbb,x\n");
  expect(blank.rows).toEqual([{ row: 2, cells: ["Ebb", "x"] }]);
  expect(blank.notes).toMatchObject([{ code: "header-line", line: 3 }]);
  const titled = await tableOf("Slack Water, works;;\n14.03.2026;;\n\ntitle;sheet width;notes\nEbb;7;x\n");
  expect(titled.rows).toEqual([{ row: 2, cells: ["Ebb", "7", "x"] }]);
  expect(titled.notes.map(sayListNote)).toEqual([
    "The header is line 4 of the list. It is counted as row 1.",
  ]);
});

test("[LI4] an inch mark in a bare cell is an inch mark; a doubled one in a quoted cell is one", async () => {
  const { rows } = await tableOf('title,sheet width,sheet height\nEbb,7 1/2",9"\nNeap,"7 1/2""", "9"""\n');
  expect(rows.map(({ cells }) => cells)).toEqual([
    ["Ebb", '7 1/2"', '9"'],
    ["Neap", '7 1/2"', '9"'],
  ]);
});

test("[LI4] a mark that never closes costs its own line and no other", async () => {
  const { rows, problems } = await tableOf(
    'title,notes\nEbb,"never closed\nNeap,x\n"Untitled" (blue),y\nSlack,z\n',
  );
  expect(rows.map(({ row, cells }) => [row, cells[0]])).toEqual([
    [3, "Neap"],
    [5, "Slack"],
  ]);
  expect(problems.map(({ row, wanted }) => [row, wanted.kind])).toEqual([
    [2, "closed-quote"],
    [4, "closed-quote"],
  ]);
  expect(problems.map(sayListProblem)[0]).toMatch(
    /^row 2: found Ebb \| "never closed; wanted: a row whose quotation/,
  );
});

test("[LI5] more cells than the header is a problem, blank ones at the end are none", async () => {
  const { rows, problems } = await tableOf("title,sheet width\nEbb,24,5\nNeap,24.5,,\nSlack\n");
  expect(problems).toMatchObject([{ row: 2, wanted: { kind: "cells", cells: 3, columns: 2 } }]);
  expect(rows).toEqual([
    { row: 3, cells: ["Neap", "24.5"] },
    { row: 4, cells: ["Slack", ""] },
  ]);
});

const refusedWith = async (list: Uint8Array): Promise<string> => {
  const result = await readTable(list, "list.csv");
  return result.ok ? "read" : sayListProblem(result.problem);
};

test("[LI8] bounds are said, not run into", async () => {
  const long = await tableOf(`title,notes\nEbb,${"x".repeat(BOUNDS.cell + 1)}\nNeap,x\n`);
  expect(long.problems).toMatchObject([{ row: 2, column: "notes", wanted: { kind: "bound", what: "cell" } }]);
  expect(long.rows).toHaveLength(1);
  expect(await refusedWith(bytesOf(`title${",a".repeat(BOUNDS.columns)}\nEbb\n`))).toBe(
    "found list.csv; wanted: at most 256 columns",
  );
  expect(await refusedWith(bytesOf(`title\n${"Ebb\n".repeat(BOUNDS.rows + 1)}`))).toBe(
    "found list.csv; wanted: at most 100000 rows",
  );
  expect(await refusedWith(new Uint8Array(BOUNDS.bytes + 1))).toBe(
    "found list.csv; wanted: a file of at most 32 MB",
  );
});

test.each([
  ["nothing", [], "the file is empty"],
  ["white space", [...bytesOf(" \n\n,,\n")], "nothing is written in this one"],
  ["an old workbook", [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1], "save it as XLSX or CSV"],
  ["a PDF", [...bytesOf("%PDF-1.7\n")], "this is a PDF"],
  ["a web page", [...bytesOf("<html><table><tr><td>title</td></tr></table>")], "this is a web page"],
  ["a picture", [0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13, 1, 2, 3, 4], "this is neither"],
  ["half a workbook", [0x50, 0x4b, 3, 4, 20, 0, 0, 0, 8, 0], "this one is damaged"],
])("[LI9] %s is refused with a sentence", async (_, bytes, sentence) => {
  const result = await readTable(Uint8Array.from(bytes), "prints.csv");
  expect(result.ok ? "read" : sayListProblem(result.problem)).toContain(sentence);
});

test("[LI9] noughts and other control characters are dropped and counted", async () => {
  const table = await tableOf(`title,notes\nEb\u0000b,x\u0007\n${"Neap,quite ordinary\n".repeat(20)}`);
  expect(table.rows[0]?.cells).toEqual(["Ebb", "x"]);
  expect(table.notes.map(sayListNote)).toEqual(["2 control characters were dropped from the list."]);
});

// Cells that a spreadsheet would carry out are marked on the way out; [LI28] is about those.
const cell = fc
  .string({ unit: fc.constantFrom("a", "7", " ", '"', ",", ";", "\t", "\n", "'", "Ż", "½"), maxLength: 8 })
  .filter((text) => !/^'*[=+\-@\t\r\n]/.test(text));
const grid = fc
  .integer({ min: 2, max: 5 })
  .chain((width) =>
    fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }),
  );

test("[LI4] what an independent writer writes is read the same, and the other way round", () =>
  fc.assert(
    fc.asyncProperty(grid, fc.constantFrom(",", ";", "\t" as const), async (cells, separator) => {
      const header = [
        "title",
        ...Array.from({ length: (cells[0]?.length ?? 1) - 1 }, (_, index) => `c${index}`),
      ];
      const filled = cells.map((row) => ["x", ...row.slice(1)]);
      const theirs = Papa.unparse({ fields: header, data: filled }, { delimiter: separator, newline: "\n" });
      expect((await tableOf(theirs)).rows.map((row) => row.cells)).toEqual(filled);
      const ours = writeCsv(header, filled, { separator });
      const parsed = Papa.parse<string[]>(ours, { delimiter: separator, skipEmptyLines: true });
      expect(parsed.data).toEqual([header, ...filled]);
    }),
    { numRuns: 300 },
  ));
