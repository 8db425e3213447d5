import * as fc from "fast-check";
import { expect, test } from "vitest";
import { cutJson, cutResult } from "../../src/show/cut-json.ts";
import { readCut } from "../../src/show/read-cut.ts";

const clock = () => 0;
const cut = (document: unknown): unknown => cutJson(document, clock);

const ferry = {
  unit: "in",
  sheets: [
    { name: "32 x 40", w: 32, h: 40, cost: 11.5, copies: null },
    { name: "offcut 14", w: "13 1/2", h: 20, cost: 0, copies: 1, trim: 0 },
  ],
  pieces: [{ name: "Ferry slip", w: 16, h: 20, n: 3, window: ["10 1/2", "13 1/2"], rotate: true }],
  rotate: true,
  dropouts: true,
  kerf: 0,
  trim: 0,
  least: [5, 7],
  seconds: 5,
  seed: 1,
};

test("[CT17] a plan as JSON: pieces, cuts in order, what is left, bound and checks", () => {
  // Only one layout is possible: two blanks as wide as the sheet, and 8 in left below them.
  const job = { ...ferry, rotate: false, pieces: [{ name: "Ferry slip", w: 32, h: "16", n: 2 }] };
  const needs =
    "Measure before you cut; where a sheet is short or an edge is damaged, ask for a new plan with a trim.";
  expect(cut(job)).toEqual({
    unit: "in",
    sheets: [
      {
        sheet: 0,
        name: "32 x 40",
        w: 32,
        h: 40,
        pieces: [
          { piece: 0, copy: 0, x: 0, y: 0, w: 32, h: 16 },
          { piece: 0, copy: 1, x: 0, y: 16, w: 32, h: 16 },
        ],
        cuts: [
          { from: [0, 16], to: [32, 16], n: 1, fence: 16, against: "before" },
          { from: [0, 32], to: [32, 32], n: 2, fence: 16, against: "before" },
        ],
        left: [{ x: 0, y: 32, w: 32, h: 8, keep: true }],
        needs: { w: 32, h: 32 },
      },
    ],
    cost: 11.5,
    sheetsUsed: 1,
    bound: { cost: expect.any(Number), how: expect.any(String) },
    proven: true,
    settings: 1,
    seconds: 0,
    checks: [
      {
        code: "just-fits",
        level: "warn",
        text: `32 x 40: one sheet needs 32 in of the width and has nothing to spare. ${needs}`,
        about: "sheets.0",
      },
    ],
  });
});

test("[CT17] millimetres, ticks and texts come back in their own unit, exact", () => {
  const metric = {
    unit: "mm",
    rotate: false,
    sheets: [{ w: "81.5 cm", h: 1120.4 }],
    pieces: [{ w: 300.1, h: "15 3/4 in" }],
  };
  expect(cut(metric)).toMatchObject({ sheets: [{ w: 815, h: 1120.4, pieces: [{ w: 300.1, h: 400.05 }] }] });
  const ticks = {
    unit: "tick",
    rotate: false,
    sheets: [{ w: 512, h: "640" }],
    pieces: [{ w: 300, h: 200, n: 2 }],
  };
  expect(cut(ticks)).toMatchObject({ sheets: [{ w: 512, h: 640, pieces: [{ w: 300 }, { w: 300 }] }] });
});

test("[CT6] [CT17] a layout in a window says which placement it is cut from", () => {
  const job = {
    unit: "in",
    sheets: [{ w: 16, h: 20, cost: 5 }],
    pieces: [
      { name: "Ebb", w: 16, h: 20, window: [11, 14] },
      { name: "Groyne", w: 8, h: 10 },
    ],
    dropouts: true,
  };
  expect(cut(job)).toMatchObject({
    sheets: [
      { sheet: 0 },
      { sheet: { from: [0, 0] }, name: "window of Ebb", w: 11, h: 14, pieces: [{ piece: 1 }] },
    ],
    sheetsUsed: 1,
    cost: 5,
  });
});

test("[CT19] a length that no inch states exactly is said in millimetres, never as so many inches", () => {
  const made = JSON.stringify(cut({ unit: "in", sheets: [], pieces: [{ name: "Ebb", w: "500 mm", h: 20 }] }));
  expect(made).toContain("Ebb (500 mm × 20 in)");
});

test("[CT19] what cannot be made is named, with a way out", () => {
  const result = cutResult({ sheets: [{ w: 10, h: 10 }], pieces: [{ name: "Ebb", w: 11, h: 2 }] }, clock);
  expect(result.stopped).toBe(true);
  expect(result.json).toMatchObject({
    checks: [
      {
        code: "piece-too-large",
        level: "stop",
        about: "pieces.0",
        text: "Ebb (11 in × 2 in): no sheet is large enough; the largest gives 10 in × 10 in. Add a larger sheet, or make it smaller.",
      },
    ],
  });
});

const refused: readonly (readonly [what: string, document: unknown, field: string, wanted: string])[] = [
  ["no document", null, "", "an object"],
  ["no pieces", { sheets: [] }, "pieces", "a list"],
  ["a side of nought", { sheets: [{ w: 0, h: 1 }], pieces: [] }, "sheets.0.w", "a length above 0"],
  ["a negative side", { sheets: [{ w: -3, h: 1 }], pieces: [] }, "sheets.0.w", "a length of 0 or more"],
  [
    "not a number",
    { sheets: [{ w: Number.NaN, h: 1 }], pieces: [] },
    "sheets.0.w",
    "a length, such as 7 1/4 in or 184 mm",
  ],
  [
    "an endless price",
    { sheets: [{ w: 1, h: 1, cost: Number.POSITIVE_INFINITY }], pieces: [] },
    "sheets.0.cost",
    "a number",
  ],
  [
    "a price below nought",
    { sheets: [{ w: 1, h: 1, cost: -1 }], pieces: [] },
    "sheets.0.cost",
    "a price of 0 or more",
  ],
  [
    "half a copy",
    { sheets: [{ w: 1, h: 1, copies: 0.5 }], pieces: [] },
    "sheets.0.copies",
    "a whole number of 0 or more",
  ],
  [
    "a million pieces",
    { sheets: [], pieces: [{ w: 1, h: 1, n: 1e6 }] },
    "pieces",
    "at most 20000 pieces in one job",
  ],
  [
    "a window as large as its piece",
    { sheets: [], pieces: [{ w: 5, h: 5, window: [5, 4] }] },
    "pieces.0.window",
    "a window smaller than its piece, both ways",
  ],
  [
    "a fraction of a tick",
    { unit: "tick", sheets: [], pieces: [{ w: 1.5, h: 1 }] },
    "pieces.0.w",
    "a whole number from 0 to 1600000000",
  ],
  [
    "a piece of a mile",
    { unit: "mm", sheets: [], pieces: [{ w: 50_000, h: 1 }] },
    "pieces.0.w",
    "a length above 0, at most 20 m",
  ],
  [
    "an improper fraction",
    { sheets: [], pieces: [{ w: "71/4", h: 1 }] },
    "pieces.0.w",
    "a fraction less than 1: 7 1/4 or 17 3/4?",
  ],
  ["a week of seconds", { sheets: [], pieces: [], seconds: 604_800 }, "seconds", "seconds from 0 to 3600"],
  ["another unit", { unit: "ft", sheets: [], pieces: [] }, "unit", "in, mm or tick"],
];

test.each(refused)("[CT18] %s is refused with its field and what is wanted", (_, document, field, wanted) => {
  expect(cut(document)).toMatchObject({ error: { field, wanted } });
});

test("[CT18] a million copies of a sheet are as good as any number", () => {
  expect(cut({ sheets: [{ w: 10, h: 10, copies: 1e6 }], pieces: [{ w: 5, h: 5, n: 5 }] })).toMatchObject({
    sheetsUsed: 2,
  });
});

test("[CT18] any document gives a plan or a sentence", () => {
  const odd = fc.oneof(
    fc.double(),
    fc.string(),
    fc.constantFrom(null, true, "1/0", "1e9", -1, 1e308, [], {}),
  );
  const entry = fc.record(
    { w: odd, h: odd, n: odd, cost: odd, copies: odd, window: odd, rotate: odd, trim: odd },
    { requiredKeys: [] },
  );
  const document = fc.record(
    {
      unit: odd,
      sheets: fc.oneof(odd, fc.array(entry)),
      pieces: fc.oneof(odd, fc.array(entry)),
      kerf: odd,
      seed: odd,
    },
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(fc.oneof(fc.anything(), document), (any) => {
      const json = cut(any);
      expect("error" in Object(json) || "sheets" in Object(json)).toBe(true);
    }),
    { numRuns: 2000 },
  );
});

test("[CT18] mutated jobs give a plan or a sentence", () => {
  const places = ["unit", "rotate", "dropouts", "kerf", "trim", "least", "seconds", "seed", "longestCut"];
  const value = fc.oneof(
    fc.constantFrom(0, -1, 1, 1e-9, 1e12, "", "7 1/", "3 1/2", null, [], ["1", "2"]),
    fc.double(),
  );
  fc.assert(
    fc.property(fc.constantFrom(...places), value, (key, mutated) => {
      const json = cut({ ...ferry, [key]: mutated });
      expect("error" in Object(json) || "sheets" in Object(json)).toBe(true);
    }),
    { numRuns: 500 },
  );
});

test("[CT17] the unit of a bare number is the job's, inches where none is named", () => {
  const read = readCut({ sheets: [{ w: 1, h: "25.4 mm" }], pieces: [] });
  expect(read).toMatchObject({
    ok: true,
    value: { job: { sheets: [{ width: 2_032_000, height: 2_032_000 }] } },
  });
});
