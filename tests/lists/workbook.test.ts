import { deflateRawSync } from "node:zlib";
import { strToU8, unzipSync, zipSync } from "fflate";
import { writeXlsx as libraryWrites } from "hucre/xlsx";
import { expect, test } from "vitest";
import { BOUNDS, readTable, writeXlsx } from "../../src/show/lists/index.ts";
import { sayListNote, sayListProblem } from "../../src/words/lists.ts";
import { problemsOf, tableOf, worksOf } from "./helpers.ts";

type LibraryCells = NonNullable<Parameters<typeof libraryWrites>[0]["sheets"][number]["cells"]>;
type Value = string | number | boolean | Date | null;

const workbook = (rows: Value[][], cells?: LibraryCells): Promise<Uint8Array> =>
  libraryWrites({ sheets: [{ name: "Works", rows, ...(cells === undefined ? {} : { cells }) }] });

const refused = async (list: Uint8Array): Promise<string> => {
  const result = await readTable(list, "prints.xlsx");
  return result.ok ? "read" : sayListProblem(result.problem);
};

test("[LI7] a workbook's cells are what a person would have typed", async () => {
  const list = await workbook([
    ["title", "a", "b", "c", "d", "e"],
    ["Ebb", 7.5, 7.499999999999999, 1 / 3, 1964, true],
    ["Neap", new Date("2026-03-14"), new Date("2026-03-14T10:30:00Z"), "7 1/2", -0.8, 1e-9],
    ["Ærø, Zażółć", 0.1 + 0.2, 12_345.678, "two\r\nlines", 0, null],
  ]);
  expect((await tableOf(list)).rows).toEqual([
    { row: 2, cells: ["Ebb", "7.5", "7.5", "0.333333333333", "1964", "TRUE"] },
    { row: 3, cells: ["Neap", "2026-03-14", "2026-03-14 10:30", "7 1/2", "-0.8", "1e-9"] },
    { row: 4, cells: ["Ærø, Zażółć", "0.3", "12345.678", "two\nlines", "0", ""] },
  ]);
});

test("[LI7] the unit that a number format shows is the cell's own", async () => {
  const formats = [
    '0.0" cm"',
    '0.0\\ "mm"',
    "# ?/?",
    "0.0\"''\"",
    '0" pcs"',
    '0.00" in";[Red]-0.00" in"',
    '0.0\\"',
  ];
  const list = await workbook(
    [["title", ...formats.map((_, index) => `c${index}`)], ["Ebb"]],
    new Map(formats.map((numFmt, index) => [`1,${index + 1}`, { value: 24.5, style: { numFmt } }])),
  );
  expect((await tableOf(list)).rows[0]?.cells).toEqual([
    "Ebb",
    "24.5 cm",
    "24.5 mm",
    "24.5",
    "24.5",
    "24.5",
    "24.5 in",
    '24.5 "',
  ]);
});

test("[LI7] a length that the spreadsheet made a date, or a formula without its result, is refused and said", async () => {
  const list = await workbook(
    [
      ["title", "sheet width", "sheet height", "edition"],
      ["Ebb", new Date("2026-01-08"), 9, null],
      ["Neap", null, 9, null],
      ["Slack", 8, 9, new Date("2026-12-04")],
    ],
    new Map([["2,1", { formula: "C2*2" }]]),
  );
  const read = await worksOf(list);
  expect(problemsOf(read)).toEqual(["2 sheet width length-not-date", "3 sheet width length"]);
  expect(read.problems.map(sayListProblem)[0]).toContain("the spreadsheet has made it a date");
  expect(read.problems[1]?.found).toBe("=C2*2");
  expect(read.works[0]?.notes.map(sayListNote)).toContain(
    "row 4, edition: 2026-12-04 looks like a date: a spreadsheet makes one of 4/12. Format the cells as text if it is none.",
  );
});

test("[LI6] the first visible sheet with titles is read, and the others are named", async () => {
  const list = await libraryWrites({
    sheets: [
      { name: "Hidden", hidden: true, rows: [["title"], ["not this"]] },
      { name: "Cover", rows: [["Slack Water"], ["spring show"]] },
      {
        name: "Works",
        rows: [
          ["Title", "Notes"],
          ["Ebb", "x"],
        ],
      },
      { name: "Empty", rows: [] },
    ],
  });
  const { rows, notes } = await tableOf(list);
  expect(rows).toEqual([{ row: 2, cells: ["Ebb", "x"] }]);
  expect(notes.map(sayListNote)).toEqual(['The sheet "Works" was read, not "Cover".']);
});

test("[LI3] rows of a workbook are counted from the header; blank ones count", async () => {
  const { rows, notes } = await tableOf(
    await workbook([["Slack Water", null], [], ["title", "notes"], ["Ebb", "x"], [], ["Neap", "y"]]),
  );
  expect(rows.map(({ row }) => row)).toEqual([2, 4]);
  expect(notes).toMatchObject([{ code: "header-line", line: 3 }]);
});

test("[LI11] cells beside the named columns of a workbook are kept under the column's letters", async () => {
  const read = await worksOf(
    await workbook([
      ["title", "sheet width", "sheet height"],
      ["Ebb", 8, 10, null, "lost?"],
    ]),
  );
  expect(read.unknownColumns.map(({ name }) => name)).toEqual(["column D", "column E"]);
  expect(read.works[0]?.work.more).toEqual({ "column E": "lost?" });
});

/** A workbook whose one worksheet is this text, stored by an archiver of its own. */
async function withSheet(sheetData: string): Promise<Uint8Array> {
  const files = unzipSync(await workbook([["title"], ["Ebb"]]));
  const name = "xl/worksheets/sheet1.xml";
  const head =
    '<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>';
  return zipSync({ ...files, [name]: strToU8(`${head}${sheetData}</sheetData></worksheet>`) });
}

const text = (reference: string, words: string): string =>
  `<c r="${reference}" t="inlineStr"><is><t>${words}</t></is></c>`;

test("[LI8] an archive that unpacks to more than the bound is refused, whatever sizes it claims", async () => {
  const head = `<worksheet><sheetData><row r="1">${text("A1", "title")}</row>`;
  const packed = deflateRawSync(Buffer.from(head + " ".repeat(BOUNDS.unpackedBytes)));
  const bomb = zipSync(
    { ...unzipSync(await workbook([["title"]])), "xl/worksheets/sheet1.xml": packed },
    { level: 0 },
  );
  expect(bomb.length).toBeLessThan(200_000);
  // The archiver believes that it stored these bytes; both of its headers now say that they are deflated, and
  // still claim that nothing more comes out than goes in.
  const view = new DataView(bomb.buffer);
  for (let at = 0; at + 30 < bomb.length; at++) {
    if (view.getUint32(at, true) === 0x04034b50 && view.getUint32(at + 18, true) === packed.length)
      view.setUint16(at + 8, 8, true);
    if (view.getUint32(at, true) === 0x02014b50 && view.getUint32(at + 20, true) === packed.length)
      view.setUint16(at + 10, 8, true);
  }
  expect(await refused(bomb)).toBe("found prints.xlsx; wanted: a workbook that unpacks to at most 64 MB");
});

test("[LI8] two cells at the far corners of a sheet do not lay out all that lies between them", async () => {
  const far = await withSheet(
    `<row r="1">${text("A1", "title")}</row><row r="100000">${text("A100000", "x")}${text("GR100000", "y")}</row>`,
  );
  expect(await refused(far)).toMatch(/wanted: at most 2000000 cells/);
  const farther = await withSheet(
    `<row r="1">${text("A1", "title")}${text("B1", "notes")}</row><row r="2">${text("A2", "Ebb")}${text("XFD2", "y")}</row>`,
  );
  expect(await refused(farther)).toMatch(/wanted: at most 256 columns/);
  const styledOnly = await withSheet(
    `<row r="1">${text("A1", "title")}<c r="XFD1" s="0"/></row><row r="2">${text("A2", "Ebb")}</row><row r="1048576"><c r="A1048576"/></row>`,
  );
  expect((await tableOf(styledOnly)).rows).toEqual([{ row: 2, cells: ["Ebb"] }]);
  const implicit = await withSheet(
    `<row><c t="str"><v>title</v></c></row>${"<row><c><v>1</v></c></row>".repeat(300_000)}`,
  );
  expect(await refused(implicit)).toMatch(/wanted: at most 100000 rows/);
});

test("[LI8] an archive of very many files is refused", async () => {
  const files = Object.fromEntries(
    Array.from({ length: BOUNDS.entries + 1 }, (_, index) => [`xl/${index}.txt`, new Uint8Array(0)]),
  );
  expect(await refused(zipSync(files, { level: 0 }))).toMatch(/wanted: a workbook of at most 5000 parts/);
});

test("[LI9] other archives are no workbooks, and are told apart", async () => {
  expect(await refused(zipSync({ "a.txt": strToU8("x") }))).toMatch(/this one is damaged/);
  const openDocument = zipSync({
    mimetype: strToU8("application/vnd.oasis.opendocument.spreadsheet"),
    "content.xml": strToU8("<x/>"),
  });
  expect(await refused(openDocument)).toMatch(/save the workbook as one of them/);
  const allHidden = await libraryWrites({
    sheets: [
      { name: "A", hidden: true, rows: [["title"]] },
      { name: "B", rows: [] },
    ],
  });
  expect(await refused(allHidden)).toMatch(/nothing is written in this one/);
});

test("[LI30] the same sheets give the same bytes, and read back as they were", async () => {
  const sheet = {
    name: "Works: all [24]",
    header: ["title", "sheet width", "notes"],
    rows: [
      ["Ærø", "7 1/2 in", "=1+1"],
      ["Zażółć", "-3", " two\nlines "],
    ],
  };
  const first = await writeXlsx([sheet]);
  expect(await writeXlsx([sheet])).toEqual(first);
  const { header, rows } = await tableOf(first);
  expect(header).toEqual(sheet.header);
  expect(rows.map(({ cells }) => cells)).toEqual(sheet.rows);
});

test("[LI28] nothing that is written into a workbook is a formula", async () => {
  const bytes = await writeXlsx([
    { name: "Works", header: ["title"], rows: [["=HYPERLINK(1)"], ["@x"], ["+1"]] },
  ]);
  const sheets = Object.entries(unzipSync(bytes)).filter(([name]) => name.startsWith("xl/worksheets/"));
  for (const [, xml] of sheets) expect(new TextDecoder().decode(xml)).not.toMatch(/<f[ >]/);
  expect((await tableOf(bytes)).rows.map(({ cells }) => cells[0])).toEqual(["=HYPERLINK(1)", "@x", "+1"]);
});
