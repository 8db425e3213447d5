import fc from "fast-check";
import { expect, test } from "vitest";
import type { ComposeDocument } from "../../src/show/index.ts";
import { borders, codes, composed } from "./helpers.ts";

const window: ComposeDocument["window"] = { show: "typed", width: "7", height: "10" };
const board: ComposeDocument = { unit: "in", window, outer: { width: "11", height: "14" } };

test("[B3] lift fixed: 11 x 14 in with a 7 x 10 in window, raised 1/4 in: 1 3/4, 2, 2, 2 1/4 (common practice, no source)", () => {
  expect(borders(composed({ ...board, lift: { rule: "fixed", by: "1/4" } }))).toEqual([
    "1 3/4",
    "2",
    "2",
    "2 1/4",
  ]);
});

test("[B3] lift none, ratio and optical", () => {
  expect(borders(composed({ ...board, lift: { rule: "none" } }))).toEqual(["2", "2", "2", "2"]);
  // 4 / 2.25 = 1.777 -> 1 3/4
  expect(borders(composed({ ...board, lift: { rule: "ratio", foot: 1.25 } }))).toEqual([
    "1 3/4",
    "2",
    "2",
    "2 1/4",
  ]);
  // 18 x 4 / 44 = 1.636 -> 1 5/8
  expect(borders(composed({ ...board, lift: { rule: "optical" } }))).toEqual(["1 5/8", "2", "2", "2 3/8"]);
});

test("[B2] what does not halve goes to the right and the foot, and is noted with its hand", () => {
  const uneven = composed({
    ...board,
    window: { show: "typed", width: "7 1/16", height: "10 1/16" },
    lift: { rule: "none" },
  });
  expect(borders(uneven)).toEqual(["1 15/16", "1 15/16", "2", "2"]);
  expect(uneven.checks).toMatchObject([{ code: "border-uneven", level: "note" }]);
});

test("[B4] typed borders are kept as typed", () => {
  const kept = composed({
    unit: "in",
    window,
    outer: { borders: { head: "2 1/3", side: "1.99", foot: "3 3/64" } },
  });
  const [head, left, right, foot] = borders(kept);
  expect([left, right, foot]).toEqual(["1.99", "1.99", "3 3/64"]);
  expect(head).toContain("59.26");
});

test("[B5] borders up to the next standard size share out what it adds by the same lift", () => {
  const larger = composed({
    unit: "in",
    window,
    outer: { borders: { head: "1 3/4", side: "1 3/4", foot: "2 1/4" }, standard: "inch" },
  });
  expect([larger.outer.width / 2_032_000, larger.outer.height / 2_032_000]).toEqual([11, 14]);
  expect(borders(larger)).toEqual(["1 3/4", "2", "2", "2 1/4"]);
});

test("[B6] the smallest listed size whose four borders are wide enough, either way up", () => {
  const lying = composed({
    unit: "in",
    window: { show: "typed", width: "10", height: "7" },
    outer: { smallest: "inch", border: "1 3/4" },
    lift: { rule: "fixed", by: "1/4" },
  });
  expect([lying.outer.width / 2_032_000, lying.outer.height / 2_032_000]).toEqual([14, 11]);
  const wider = composed({
    unit: "in",
    window: { show: "typed", width: "10", height: "7" },
    outer: { smallest: "inch", border: "2" },
    lift: { rule: "fixed", by: "1/4" },
  });
  expect([wider.outer.width / 2_032_000, wider.outer.height / 2_032_000]).toEqual([16, 12]);
  const own = composed({
    unit: "in",
    window,
    outer: { smallest: ["10 x 13 in", { width: "12", height: "15" }, ["11", "14"]], border: "1 3/4" },
    lift: { rule: "fixed", by: "1/4" },
  });
  expect([own.outer.width / 2_032_000, own.outer.height / 2_032_000]).toEqual([11, 14]);
});

test("[B10] a size that must hold the sheet is one that the whole sheet lies within", () => {
  // A small image off centre on a large sheet: borders of 2 in fit 11 x 14, the sheet does not.
  const wide: ComposeDocument = {
    unit: "in",
    print: { width: "12", height: "15", image: { left: "1", top: "2", width: "7", height: "9" } },
    window: { show: "overlap", overlap: "1/8" },
    lift: { rule: "fixed", by: "1/4" },
  };
  const size = (document: ComposeDocument) => {
    const { outer } = composed(document);
    return [outer.width / 2_032_000, outer.height / 2_032_000];
  };
  expect(size({ ...wide, outer: { smallest: "inch", border: "2" } })).toEqual([11, 14]);
  expect(codes(composed({ ...wide, outer: { smallest: "inch", border: "2" } }))).toContain(
    "sheet-past-board",
  );
  expect(size({ ...wide, outer: { smallest: "inch", border: "2", holdsSheet: true } })).toEqual([16, 20]);
  // It is what the practice does by itself.
  expect(size(wide)).toEqual([16, 20]);
});

test("[B7] of equal areas the larger least border, then the upright one", () => {
  const equal = composed({
    unit: "in",
    window: { show: "typed", width: "6", height: "6" },
    outer: {
      smallest: [
        ["10", "16"],
        ["16", "10"],
      ],
      border: "1",
    },
    lift: { rule: "none" },
  });
  expect([equal.outer.width / 2_032_000, equal.outer.height / 2_032_000]).toEqual([10, 16]);
  const least = composed({
    unit: "in",
    window: { show: "typed", width: "4", height: "4" },
    outer: {
      smallest: [
        ["8", "18"],
        ["9", "16"],
        ["12", "12"],
      ],
      border: "1",
    },
    lift: { rule: "none" },
  });
  expect([least.outer.width / 2_032_000, least.outer.height / 2_032_000]).toEqual([12, 12]);
});

test("[B8] nothing large enough is a stop that says what it takes, and every figure is there", () => {
  const none = composed({
    unit: "in",
    window: { show: "typed", width: "40", height: "50" },
    outer: { smallest: "inch", border: "2" },
  });
  expect(none.checks[0]).toMatchObject({ code: "no-size", level: "stop" });
  expect(borders(none)).toEqual(["2", "2", "2", "2"]);
  expect(
    codes(
      composed({
        unit: "in",
        window: { show: "typed", width: "40", height: "50" },
        outer: { borders: { head: "2", side: "2", foot: "2" }, standard: "inch" },
      }),
    ),
  ).toContain("no-size");
});

test("[B9] a border below nought is a stop, a narrow one a warning", () => {
  expect(composed({ ...board, window: { show: "typed", width: "12", height: "10" } }).checks).toMatchObject([
    { code: "border-negative", side: "left" },
    { code: "border-negative", side: "right" },
  ]);
  expect(composed({ ...board, window: { show: "typed", width: "10", height: "10" } }).checks).toMatchObject([
    { code: "border-small", level: "warn", side: "left" },
  ]);
});

test("[B1][B2] borders and opening add up exactly for every mat, left and head in whole graduations", () => {
  const sixteenths = (least: number, most: number) =>
    fc.integer({ min: least, max: most }).map((n) => `${n / 16}`);
  const lift = fc.oneof(
    fc.constant({ rule: "none" } as const),
    fc.constant({ rule: "optical" } as const),
    sixteenths(0, 20).map((by) => ({ rule: "fixed", by }) as const),
    fc.constantFrom(1, 1.1, 1.25, 1.333, 2).map((foot) => ({ rule: "ratio", foot }) as const),
  );
  const size = fc.integer({ min: 1, max: 4000 }).map((n) => `${n / 100}`);
  const mats = fc.array(
    fc.record({
      thickness: fc.constantFrom("1/16", "1/8", "1.4 mm"),
      bevel: fc.integer({ min: 20, max: 90 }),
      reveal: sixteenths(0, 12),
    }),
    { minLength: 1, maxLength: 3 },
  );
  fc.assert(
    fc.property(size, size, size, size, lift, mats, (w, h, width, height, rule, matRules) => {
      const one = composed({
        unit: "in",
        window: { show: "typed", width: w, height: h },
        outer: { width, height },
        lift: rule,
        mats: matRules,
      });
      for (const { borders: b, back } of one.mats) {
        expect(b.left + back.width + b.right).toBe(one.outer.width);
        expect(b.head + back.height + b.foot).toBe(one.outer.height);
        expect(Math.abs(b.left % 127_000)).toBe(0);
        expect(Math.abs(b.head % 127_000)).toBe(0);
      }
    }),
    { numRuns: 600 },
  );
});
