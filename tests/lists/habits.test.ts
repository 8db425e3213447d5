import { describe, expect, test } from "vitest";
import {
  type PracticeDocument,
  practiceDocument,
  problemJson,
  readPractice,
  readStock,
  type StockDocument,
  stockDocument,
  validate,
} from "../../src/show/index.ts";

/** What is told of a document, each problem as "field: found; wanted"; nothing where it can be read. */
const told = <Document>(
  schema: Parameters<typeof validate>[0],
  read: (document: Document) => { ok: boolean; problems?: readonly unknown[] },
  document: unknown,
): string[] => {
  const valid = validate(schema, document);
  const problems = valid.ok ? (read(valid.value as Document).problems ?? []) : valid.problems;
  return (problems as Parameters<typeof problemJson>[0][])
    .map(problemJson)
    .map(({ field, found, wanted }) => `${field}: ${found}; ${wanted}`);
};

const ofPractice = (document: unknown): string[] =>
  told<PracticeDocument>(practiceDocument, readPractice, document);
const ofStock = (document: unknown): string[] => told<StockDocument>(stockDocument, readStock, document);

const moulding = { name: "oak", overall: "3/4 in", rabbet: "1/4 in" };
const sheet = { name: "32 x 40", width: "32", height: "40" };

describe("what a studio tells of its frames and its rack", () => {
  test("[U11] backing, glazing and moulding are read, or told with field, found and wanted", () => {
    expect(
      ofPractice({
        backing: { board: "fluted", less: "1/16" },
        glazing: { board: "acrylic", kind: "acrylic", kerf: "1/8" },
        moulding: { ...moulding, depth: "3/4", saw: "1/8", waste: "1/2" },
      }),
    ).toEqual([]);
    expect(
      ofPractice({
        backing: { board: "fluted", less: "-1/16" },
        glazing: { board: "acrylic", kind: "acrylic", kerf: "71/4", less: "1 furlong" },
        moulding: { ...moulding, rabbet: "3/4 in", allowance: "" },
      }),
    ).toEqual([
      "backing.less: -1/16; a length of 0 or more",
      "glazing.less: 1 furlong; in, ft, mm, cm or m as the unit, not furlong",
      "glazing.kerf: 71/4; a fraction less than 1: 7 1/4 or 17 3/4?",
      "moulding.rabbet: 3/4 in; a rabbet narrower than the moulding",
      "moulding.allowance: ; a length, such as 7 1/4 in; nothing is written here",
    ]);
    expect(ofPractice({ glazing: { board: "acrylic", kind: "perspective" } })).toEqual([
      "glazing.kind: perspective; glass or acrylic",
    ]);
    expect(ofPractice({ moulding: { ...moulding, overall: true } })).toEqual([
      "moulding.overall: true; a length, such as 7 1/4 in or 184 mm",
    ]);
    expect(ofPractice({ moulding: { ...moulding, depth: 0 } })).toEqual([
      "moulding.depth: 0; a length above 0",
    ]);
  });

  test("[U11] sheets, packs and lengths are read, or told with field, found and wanted", () => {
    const pack = { of: 25, cost: 240 };
    expect(ofStock({ sheets: [{ ...sheet, pack }], lengths: [{ name: "8 ft", length: "96" }] })).toEqual([]);
    const count = "a number above 0, at most 1000000";
    const cost = "at least 0";
    expect(
      ofStock({
        sheets: [
          { ...sheet, pack: { of: 2.5, cost: -1 } },
          { ...sheet, cost: -2, copies: 1.5, trim: "-1" },
          { ...sheet, width: "0" },
        ],
        lengths: [{ name: "8 ft", length: "0 in", cost: -1, copies: -3 }],
        least: ["5", "nothing"],
        longestCut: "0",
      }),
    ).toEqual([
      "sheets.1.trim: -1; a length of 0 or more",
      "sheets.2.width: 0; a length above 0",
      `sheets.0.pack.of: 2.5; ${count}`,
      `sheets.0.pack.cost: -1; ${cost}`,
      `sheets.1.cost: -2; ${cost}`,
      `sheets.1.copies: 1.5; ${count}`,
      `lengths.0.cost: -1; ${cost}`,
      `lengths.0.copies: -3; ${count}`,
      "lengths.0.length: 0 in; a length above 0",
      "least.1: nothing; a length, such as 7 1/4 in or 184 mm",
      "longestCut: 0; a length above 0",
    ]);
    expect(ofStock({ sheets: [{ ...sheet, cost: "free" }] })).toEqual(["sheets.0.cost: free; a number"]);
    expect(ofStock({ sheets: [{ ...sheet, cost: Number.POSITIVE_INFINITY }] })).toHaveLength(1);
  });
});
