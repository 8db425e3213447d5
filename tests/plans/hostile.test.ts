import { describe, expect, test } from "vitest";
import { cutResult } from "../../src/show/cut-json.ts";

// Jobs that nobody in good faith would give: each gets a sentence, a check of level "stop", or a plan.

/** A clock that moves only when it is asked: what takes no time on it looks at no clock. */
function steppingClock(): () => number {
  let asked = 0;
  return () => asked++;
}

const sheet = (more: object = {}) => ({ name: "32 x 40", w: 32, h: 40, cost: 11.5, ...more });
const piece = (more: object = {}) => ({ name: "Ebb", w: 5, h: 7, ...more });
const job = (sheets: object, pieces: object, more: object = {}) => ({
  sheets: [sheet(sheets)],
  pieces: [piece(pieces)],
  seconds: 0.2,
  ...more,
});
const result = (document: unknown) => cutResult(document, steppingClock());
const list = <T>(length: number, make: (index: number) => T): T[] =>
  Array.from({ length }, (_, index) => make(index));

const refused: readonly (readonly [what: string, document: unknown, field: string])[] = [
  ["a million of a piece", job({}, { n: 1e6 }), "pieces"],
  ["a piece too many", job({}, { n: 20_001 }), "pieces"],
  ["more pieces than can be counted", job({}, { n: 1e300 }), "pieces.0.n"],
  ["half a piece", job({}, { n: 2.5 }), "pieces.0.n"],
  ["fewer than no pieces", job({}, { n: -3 }), "pieces.0.n"],
  ["a piece without width", job({}, { w: 0 }), "pieces.0.w"],
  ["a sheet without height", job({ h: 0 }, {}), "sheets.0.h"],
  ["a sheet of less than nothing", job({ w: -32 }, {}), "sheets.0.w"],
  ["an endless price", job({ cost: Number.POSITIVE_INFINITY }, {}), "sheets.0.cost"],
  ["a price that is no number", job({ cost: Number.NaN }, {}), "sheets.0.cost"],
  ["a price in words", job({ cost: "Infinity" }, {}), "sheets.0.cost"],
  ["a price below nothing", job({ cost: -1 }, {}), "sheets.0.cost"],
  ["a price past a thousand million", job({ cost: 1e10 }, {}), "sheets.0.cost"],
  ["endless copies", job({ copies: Number.POSITIVE_INFINITY }, {}), "sheets.0.copies"],
  ["a sheet of 25,000 km", job({ w: 1e9 }, {}), "sheets.0.w"],
  ["a piece of 25,000 km", job({}, { h: 1e9 }), "pieces.0.h"],
  ["a side past all counting", job({}, { h: 1e308 }), "pieces.0.h"],
  ["an endless side", job({}, { h: Number.POSITIVE_INFINITY }), "pieces.0.h"],
  ["a kerf of less than nothing", job({}, {}, { kerf: -1 }), "kerf"],
  ["a least that no bench holds", job({}, {}, { least: [1e9, 1] }), "least.0"],
  ["200,000 different pieces", { sheets: [sheet()], pieces: list(200_000, () => piece()) }, "pieces"],
  ["200,000 different sheets", { sheets: list(200_000, () => sheet()), pieces: [piece()] }, "sheets"],
];

describe("a sentence that names the field", () => {
  test.each(refused)("[CT18] %s", (_, document, field) => {
    const { json, stopped } = result(document);
    expect(stopped).toBe(true);
    expect(json).toMatchObject({
      error: { field, found: expect.any(String), wanted: expect.stringMatching(/\w/) },
    });
  });
});

const stopped: readonly (readonly [what: string, document: unknown, code: string])[] = [
  ["a piece larger than every sheet", job({}, { w: 99, h: 99 }), "piece-too-large"],
  ["a trim that leaves nothing of the sheet", job({ trim: 20 }, {}), "piece-too-large"],
  ["a trim larger than any bench", job({ trim: "19 m" }, {}), "piece-too-large"],
  ["no copies of the only sheet", job({ copies: 0 }, {}), "piece-too-large"],
  ["no sheet at all", { sheets: [], pieces: [piece()] }, "piece-too-large"],
  ["a bench that cuts an inch", job({}, { n: 10 }, { longestCut: 1 }), "cut-too-long"],
  ["ten sheets for ten thousand pieces", job({ copies: 10 }, { w: 30, n: 10_000 }), "stock-short"],
];

describe("a check of level stop that names the piece", () => {
  test.each(stopped)("[CT19] %s", (_, document, code) => {
    const { json, stopped: stop } = result(document);
    expect(stop).toBe(true);
    expect(json).toMatchObject({
      checks: [{ level: "stop", code, about: "pieces.0", text: expect.stringMatching(/\w/) }],
    });
  });
});

const planned: readonly (readonly [what: string, document: unknown, plan: object])[] = [
  ["a kerf larger than the sheet: one piece a sheet", job({}, { n: 3 }, { kerf: 100 }), { sheetsUsed: 3 }],
  ["a thousand million million copies", job({ copies: 1e15 }, { n: 5 }), { sheetsUsed: 1, cost: 11.5 }],
  ["sheets that cost nothing", job({ cost: 0 }, { n: 40 }), { cost: 0, proven: true }],
  ["the largest price there may be", job({ cost: 1e9 }, { n: 2 }), { cost: 1e9, proven: true }],
  ["no pieces", job({}, { n: 0 }), { sheets: [], cost: 0, proven: true }],
  [
    "sides of a thousand million units",
    job({ w: 1e9, h: 1e9 }, { w: 1e9, h: 3, n: 2 }, { unit: "tick" }),
    { sheetsUsed: 1, checks: [{ code: "just-fits" }] },
  ],
  [
    "sides that share no unit",
    {
      unit: "tick",
      sheets: [sheet({ w: 1_599_999_989, h: 1_599_999_971 })],
      pieces: list(40, (index) =>
        piece({ w: 154_858_63 + index * 102_947, h: 32_452_843 + index * 104_729 }),
      ),
      seconds: 0.2,
    },
    { sheetsUsed: 1, cost: 11.5 },
  ],
  [
    "five hundred kinds of sheet, one of each",
    {
      sheets: list(500, (index) =>
        sheet({ w: 20 + index / 100, h: 30 + index / 50, copies: 1, cost: index % 7 }),
      ),
      pieces: list(30, (index) => piece({ w: 5 + index / 8, h: 6 + index / 8, n: 2 })),
      seconds: 0.2,
    },
    { cost: 0, proven: true },
  ],
];

describe("a plan", () => {
  test.each(planned)("[CT18] %s", (_, document, plan) => {
    const { json, stopped: stop } = result(document);
    expect(stop).toBe(false);
    expect(json).toMatchObject(plan);
  });
});

test("[CT7] [CT18] a price that no coin is a part of is reckoned as it stands", () => {
  const sheets = [{ w: 32, h: 40, cost: 5.333333333 }];
  const { json } = cutResult({ sheets, pieces: [{ w: 20, h: 30, n: 2 }], seconds: 0 }, () => 0);
  expect(json).toMatchObject({ cost: 5.333333333, sheetsUsed: 1 });
});
