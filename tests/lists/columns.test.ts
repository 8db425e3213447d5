import * as fc from "fast-check";
import { expect, test } from "vitest";
import { COLUMNS } from "../../src/show/lists/index.ts";
import { readHeaderCell } from "../../src/show/lists/header.ts";
import { sayListProblem } from "../../src/words/lists.ts";
import { problemsOf, rowOf, worksOf } from "./helpers.ts";

const columnOf = (text: string): string | null => {
  const cell = readHeaderCell(text);
  return cell.kind === "column" ? `${cell.column}${cell.unit === null ? "" : ` in ${cell.unit}`}` : null;
};

test.each([
  ["Sheet Width", "sheet width"],
  ["SHEET_WIDTH", "sheet width"],
  ["sheet-width", "sheet width"],
  ["  sheet   width ", "sheet width"],
  ["sheetwidth", "sheet width"],
  ["sheet\nwidth", "sheet width"],
  ["\u200fsheet width\u200e", "sheet width"],
  ["sheet width (cm)", "sheet width in cm"],
  ["Sheet Width [MM]", "sheet width in mm"],
  ["sheet_width_cm", "sheet width in cm"],
  ["sheet width, in.", "sheet width in in."],
  ["sheet width (inches)", "sheet width in inches"],
  ["sheet width (in cm)", "sheet width in cm"],
  ['sheet width (")', 'sheet width in "'],
  ["angle (°)", "angle"],
  ["Dimensions (H x W, mm)", "dimensions in mm"],
])("[LI10] %j is the column %s", (text, column) => {
  expect(columnOf(text)).toBe(column);
});

test.each(["sheet width 2", "title (English)", "sheet", "width", "sheet width cm tall", "", "x".repeat(300)])(
  "[LI11] %j is none",
  (text) => {
    expect(columnOf(text)).toBeNull();
  },
);

test("[LI10] every column is known in any dress", () => {
  const dress = fc.record({
    column: fc.constantFrom(...COLUMNS),
    gap: fc.constantFrom(" ", "_", "-", "  ", "", " - "),
    upper: fc.boolean(),
    around: fc.constantFrom("", " ", "\u00a0", "\t"),
  });
  fc.assert(
    fc.property(dress, ({ column, gap, upper, around }) => {
      const spaced = column.replaceAll(" ", gap);
      expect(columnOf(`${around}${upper ? spaced.toUpperCase() : spaced}${around}`)).toBe(column);
    }),
  );
});

test("[LI11] other columns are kept and listed, with the one that was perhaps meant", async () => {
  const read = await worksOf(
    "title,sheet width,sheet height,image widht,Inventory no.,Inventory no.,,notes\nEbb,8,10,6,TW-1,b,loose,x\n",
  );
  expect(read.unknownColumns).toEqual([
    { name: "image widht", like: "image width" },
    { name: "Inventory no.", like: null },
    { name: "Inventory no.", like: null },
    { name: "column G", like: null },
  ]);
  expect(read.works[0]?.work.more).toEqual({
    "image widht": "6",
    "Inventory no.": "TW-1",
    "Inventory no. (2)": "b",
    "column G": "loose",
  });
});

test("[LI11] a column that is called like a part of every object is a column like any other", async () => {
  const read = await worksOf("title,sheet width,sheet height,__proto__,constructor\nEbb,8,10,x,y\n");
  expect(Object.entries(read.works[0]?.work.more ?? {})).toEqual([
    ["__proto__", "x"],
    ["constructor", "y"],
  ]);
});

const widthOf = async (header: string, cell: string, unit: "in" | "mm" = "in"): Promise<string> => {
  const read = await rowOf({ title: "Ebb", [header]: cell, "sheet height": "300 mm" }, { unit });
  const print = read.works[0]?.work.design.print;
  return print === undefined ? read.problems.map(sayListProblem).join("; ") : String(print.width);
};

test.each([
  ["sheet width (cm)", "24,5", "24,5 cm"],
  ["sheet width (cm)", "24.5", "24.5 cm"],
  ["sheet width (cm)", "9 1/2 in", "9 1/2 in"],
  ["sheet width (cm)", '9 1/2"', '9 1/2"'],
  ["sheet width (mm)", "245", "245 mm"],
  ["sheet width (mm)", "24,5cm", "24,5cm"],
  ["sheet width", "9 1/2", "9 1/2 in"],
  ["sheet width", "9½", "9½ in"],
  ["sheet width", "9,5", "9,5 in"],
  ["sheet width", " \u200e24.5\u00a0cm\u200f ", "24.5 cm"],
  ["sheet width", "1' 2 1/2", "1' 2 1/2"],
  // Under a header with its unit a comma can only be decimal.
  ["sheet width (m)", "1,500", "1,500 m"],
])("[LI12] under %j the cell %j is %s", async (header, cell, written) => {
  expect(await widthOf(header, cell)).toBe(written);
});

test("[LI12] the list's own unit is the last resort", async () => {
  expect(await widthOf("sheet width", "245", "mm")).toBe("245 mm");
});

test.each([
  [
    "sheet width",
    "1,500",
    "row 2, sheet width: found 1,500; wanted: a length with its unit, or without the comma: 1.500 or 1500?",
  ],
  ["sheet width", "71/4", "row 2, sheet width: found 71/4; wanted: a fraction less than 1: 7 1/4 or 17 3/4?"],
  ["sheet width", "7 1/", "row 2, sheet width: found 7 1/; wanted: a length, such as 7 1/4 in or 184 mm"],
  ["sheet width", "-8", "row 2, sheet width: found -8; wanted: a length of 0 or more"],
  ["sheet width", "8 px", "row 2, sheet width: found 8 px; wanted: in, ft, mm, cm or m as the unit, not px"],
  ["sheet width", "#REF!", "row 2, sheet width: found #REF!; wanted: a length, such as 7 1/4 in or 184 mm"],
])("[LI12] %j: %j is refused with what is wanted", async (header, cell, sentence) => {
  expect(await widthOf(header, cell)).toBe(sentence);
});

test("[LI12] a bracket that is no unit refuses the figures that have none", async () => {
  const read = await worksOf("title,sheet width (px),sheet height\nEbb,800,10\nNeap,8 in,10\n");
  expect(problemsOf(read)).toEqual(["1 sheet width known-unit", "2 sheet width known-unit"]);
  expect(read.works.map(({ row }) => row)).toEqual([3]);
});

test("[LI13] a column twice is a problem of row 1; its cells must not differ", async () => {
  const read = await worksOf(
    "title,sheet width (cm),sheet width (in),sheet height,notes,Notes\nEbb,20.3,8,10,a,b\nNeap,,8,10,,\nSlack,30,8,10,,\n",
  );
  expect(problemsOf(read)).toEqual([
    "1 sheet width one-column",
    "1 notes one-column",
    "4 sheet width same-twice",
  ]);
  expect(read.works.map(({ work }) => work.design.print?.width)).toEqual(["20.3 cm", "8 in"]);
  expect(read.works[0]?.work).toMatchObject({ notes: "a", more: { "notes (2)": "b" } });
});

test.each(["-", "–", "—", "--", " "])("[LI14] %j is a blank cell", async (cell) => {
  const read = await rowOf({
    title: "Ebb",
    "sheet width": "8",
    "sheet height": "10",
    "image width": cell,
    "image height": cell,
  });
  expect(read.problems).toEqual([]);
  expect(read.works[0]?.work.design.print).toEqual({ width: "8 in", height: "10 in" });
});
