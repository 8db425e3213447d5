import { describe, expect, it } from "vitest";
import { SIZE_LISTS } from "../../src/assembly/index.ts";
import { isoTolerance } from "../../src/geometry/index.ts";
import { inch, mm, toMillimetres } from "../../src/lengths/index.ts";
import { work } from "./bench.ts";

/** A board's size, read as it is written and told in millimetres. */
const board = (width: string, height: string) =>
  work({
    unit: "mm",
    graduation: "1 mm",
    window: { show: "typed", width: "20", height: "20" },
    outer: { width, height },
  }).outer;

const inMillimetres = (list: keyof typeof SIZE_LISTS): (readonly [number, number])[] =>
  SIZE_LISTS[list].map(({ width, height }) => [toMillimetres(width), toMillimetres(height)] as const);

const hasInches = (width: number, height: number): boolean =>
  SIZE_LISTS.inch.some((size) => size.width === inch(width) && size.height === inch(height));

describe("the inch", () => {
  it("[L1] is 25.4 mm exactly (international yard and pound agreement, 1959; from memory)", () => {
    expect(board("1 in", "12 in").width.mm).toBe(25.4);
    expect(board("1 in", "1 ft").height.mm).toBe(304.8);
  });
});

describe("ISO paper (ISO 216:2007)", () => {
  const A = [
    [105, 148],
    [148, 210],
    [210, 297],
    [297, 420],
    [420, 594],
    [594, 841],
    [841, 1189],
  ];
  const B = [
    [125, 176],
    [176, 250],
    [250, 353],
    [353, 500],
    [500, 707],
    [707, 1000],
    [1000, 1414],
  ];

  it("A6 to A0 stand in the iso list", () => {
    expect(inMillimetres("iso").slice(0, 7)).toEqual(A);
  });

  it("B6 to B0 stand in the iso list, and nothing else", () => {
    expect(inMillimetres("iso").slice(7)).toEqual(B);
  });

  it("each size is the next larger one halved across, whole millimetres", () => {
    for (const series of [inMillimetres("iso").slice(0, 7), inMillimetres("iso").slice(7)]) {
      for (const [index, [width, height]] of series.entries()) {
        const larger = series[index + 1];
        if (larger === undefined) continue;
        expect([width, height]).toEqual([Math.floor(larger[1] / 2), larger[0]]);
      }
    }
  });

  it("A0 has a square metre, B0 a side of a metre", () => {
    const [a0, b0] = [inMillimetres("iso")[6], inMillimetres("iso")[13]];
    expect(Math.abs((a0?.[0] ?? 0) * (a0?.[1] ?? 0) - 1e6)).toBeLessThan(1000);
    expect(b0?.[0]).toBe(1000);
  });

  it.each([
    { nominal: 148, tolerance: 1.5 },
    { nominal: 150, tolerance: 1.5 },
    { nominal: 297, tolerance: 2 },
    { nominal: 600, tolerance: 2 },
    { nominal: 841, tolerance: 3 },
  ])("a side of $nominal mm may be $tolerance mm off", ({ nominal, tolerance }) => {
    expect(isoTolerance(mm(nominal))).toBe(mm(tolerance));
  });

  it("just past 150 and 600 mm the next tolerance holds", () => {
    expect(isoTolerance(mm(150.01))).toBe(mm(2));
    expect(isoTolerance(mm(600.01))).toBe(mm(3));
  });

  it("[B6] the smallest ISO size round a 200 x 287 mm window with 5 mm at every side is A4", () => {
    const { outer } = work({
      unit: "mm",
      window: { show: "typed", width: "200", height: "287" },
      outer: { smallest: "iso", border: "5" },
      lift: { rule: "none" },
    });
    expect([outer.width.text, outer.height.text]).toEqual(["210 mm", "297 mm"]);
  });
});

describe("ANSI drawing sizes in millimetres (ANSI/ASME Y14.1, encyclopaedia table)", () => {
  it.each([
    { name: "A", size: ["8 1/2 in", "11 in"], metric: ["≈ 216 mm", "≈ 279 mm"] },
    { name: "B", size: ["11 in", "17 in"], metric: ["≈ 279 mm", "≈ 432 mm"] },
    { name: "C", size: ["17 in", "22 in"], metric: ["≈ 432 mm", "≈ 559 mm"] },
    { name: "D", size: ["22 in", "34 in"], metric: ["≈ 559 mm", "≈ 864 mm"] },
    { name: "E", size: ["34 in", "44 in"], metric: ["≈ 864 mm", "≈ 1118 mm"] },
    { name: "F", size: ["28 in", "40 in"], metric: ["≈ 711 mm", "1016 mm"] },
  ] as const)("[L9] $name: $size is $metric", ({ size, metric }) => {
    const { width, height } = board(size[0], size[1]);
    expect([width.text, height.text]).toEqual(metric);
  });
});

describe("photograph sizes (encyclopaedia page on print sizes)", () => {
  it.each([
    { name: "2R", size: ["2 1/2 in", "3 1/2 in"], metric: [63.5, 89] },
    { name: "3R", size: ["3.5 in", "5 in"], metric: [89, 127] },
    { name: "8R", size: ["8 in", "10 in"], metric: [203, 254] },
  ] as const)("$name: $size is $metric mm", ({ size, metric }) => {
    const { width, height } = board(size[0], size[1]);
    // Printed to half a millimetre at best.
    expect(Math.abs(width.mm - metric[0])).toBeLessThan(0.25);
    expect(Math.abs(height.mm - metric[1])).toBeLessThan(0.25);
  });

  it("5R, 8R and 20R are ready-made sizes of the inch list", () => {
    expect([hasInches(5, 7), hasInches(8, 10), hasInches(20, 24)]).toEqual([true, true, true]);
  });

  it("a known wrong number: 12R is not 12 x 15.5 in, and no list here has it", () => {
    expect(hasInches(12, 15.5)).toBe(false);
  });
});

describe("museum mats", () => {
  it.each([
    { size: ["8", "10"], metric: [20.3, 25.4] },
    { size: ["10", "12"], metric: [25.4, 30.5] },
    { size: ["14", "18"], metric: [35.6, 45.7] },
    { size: ["16", "22"], metric: [40.6, 55.9] },
    { size: ["22", "28"], metric: [55.9, 71.1] },
    { size: ["28", "36"], metric: [71.1, 91.4] },
  ] as const)(
    "$size in is $metric cm (Canadian Conservation Institute, CCI Notes 11/5, Mat Size)",
    ({ size, metric }) => {
      const { width, height } = board(`${size[0]} in`, `${size[1]} in`);
      expect(Math.abs(width.mm / 10 - metric[0])).toBeLessThanOrEqual(0.05);
      expect(Math.abs(height.mm / 10 - metric[1])).toBeLessThanOrEqual(0.05);
    },
  );

  it("a known slip: 30 in is 76.2 cm, not 75.6 cm (The Paper Conservator 27, 2003, 35-45, endnotes)", () => {
    const { width } = board("30 in", "45 in");
    expect(width.mm).toBe(762);
    expect(width.mm).not.toBe(756);
  });

  it.each([
    { width: 14, height: 18, source: "M. T. Jackson, The Museum, 1917, p. 175" },
    { width: 22, height: 28, source: "M. T. Jackson, The Museum, 1917, p. 175" },
    { width: 20, height: 24, source: "exhibit-preparation handbook, Window mats" },
  ])("$width x $height in stands in the inch list ($source)", ({ width, height }) => {
    expect(hasInches(width, height)).toBe(true);
  });
});

describe("ready-made frames", () => {
  it("the inch list has the common ones (US list partly seen in retail charts, the rest from memory)", () => {
    const common = [
      [5, 7],
      [8, 10],
      [11, 14],
      [12, 16],
      [14, 18],
      [16, 20],
      [18, 24],
      [20, 24],
      [22, 28],
      [24, 36],
    ] as const;
    expect(common.filter(([width, height]) => !hasInches(width, height))).toEqual([]);
  });

  it("the metric list has the common ones (from memory)", () => {
    const common = [
      [130, 180],
      [180, 240],
      [240, 300],
      [300, 400],
      [400, 500],
      [500, 700],
      [600, 800],
      [700, 1000],
    ];
    expect(inMillimetres("metric")).toEqual(expect.arrayContaining(common));
  });
});
