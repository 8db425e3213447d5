import { assert, double, integer, property } from "fast-check";
import { describe, expect, it } from "vitest";
import {
  ellipsePins,
  frameMoulding,
  ninthsMargins,
  railLongPoint,
  railShortPoint,
} from "../../src/geometry/index.ts";
import {
  inch,
  type Length,
  mm,
  subtract,
  sum,
  ticks,
  times,
  toInches,
  toMillimetres,
} from "../../src/lengths/index.ts";

describe("an ellipse by two pins and a loop (Fine Woodworking tip)", () => {
  it("16 x 10 in: pins 12.49 in apart, 6 1/4 in each side (Family Handyman)", () => {
    const { apart } = ellipsePins(inch(16), inch(10));
    expect(toInches(apart)).toBeCloseTo(12.49, 3);
    // On a ruler of sixteenths.
    expect(Math.round((toInches(apart) / 2) * 16) / 16).toBe(6.25);
  });

  it("a rounded number, not to be taken as exact: the pins of 16 x 10 in are not 12 1/2 in apart (Family Handyman prints 12 1/2)", () => {
    expect(ellipsePins(inch(16), inch(10)).apart).toBeLessThan(inch(25, 2));
  });

  it("16 x 10 in: the loop is 28.49 in (Fine Woodworking rule)", () => {
    expect(toInches(ellipsePins(inch(16), inch(10)).loop)).toBeCloseTo(28.49, 3);
  });

  it.each([
    { width: 14, height: 11, apart: 8.66 },
    { width: 10, height: 8, apart: 6 },
    { width: 8, height: 10, apart: 6 },
  ])("$width x $height in: pins $apart in apart (Fine Woodworking rule)", ({ width, height, apart }) => {
    expect(toInches(ellipsePins(inch(width), inch(height)).apart)).toBeCloseTo(apart, 3);
  });

  it("the string reaches every point of the ellipse: both pins' distances always make the long axis (plain geometry)", () => {
    const axis = integer({ min: 80_000, max: 80_000_000 });
    assert(
      property(axis, axis, double({ min: 0, max: 7, noNaN: true }), (width, height, turn) => {
        const long = Math.max(width, height);
        const short = Math.min(width, height);
        const { apart, loop } = ellipsePins(ticks(width), ticks(height));
        const [x, y] = [(long / 2) * Math.cos(turn), (short / 2) * Math.sin(turn)];
        const reach = Math.hypot(x - apart / 2, y) + Math.hypot(x + apart / 2, y);
        // Each pin stands at most a quarter of a tick off.
        expect(Math.abs(reach - long)).toBeLessThanOrEqual(0.6);
        expect(loop).toBe(apart + long);
      }),
    );
  });

  it("a circle has both pins in one place, and an ellipse of no width is refused", () => {
    expect(ellipsePins(mm(200), mm(200))).toEqual({ apart: 0, loop: mm(200) });
    expect(() => ellipsePins(mm(0), mm(10))).toThrow(RangeError);
  });
});

const hundredths = (length: Length): number => Math.round(toInches(length) * 100) / 100;

describe("a page's margins by ninths (Van de Graaf, Rosarivo; encyclopaedia copy)", () => {
  it("6 x 9 in: inner 0.667, outer 1.333, top 1, bottom 2 (book designer's page)", () => {
    const { inner, outer, head, foot } = ninthsMargins({ width: inch(6), height: inch(9) });
    expect(toInches(inner)).toBeCloseTo(0.667, 3);
    expect(toInches(outer)).toBeCloseTo(1.333, 3);
    expect([head, foot]).toEqual([inch(1), inch(2)]);
  });

  it("5 1/4 x 8 in: 0.58, 1.17, 0.89, 1.78 (book designer's page)", () => {
    const { inner, outer, head, foot } = ninthsMargins({ width: inch(21, 4), height: inch(8) });
    expect([inner, outer, head, foot].map(hundredths)).toEqual([0.58, 1.17, 0.89, 1.78]);
  });

  it("known slips: the same page prints 1.16 and 1.77, cut off and not rounded", () => {
    const { outer, foot } = ninthsMargins({ width: inch(21, 4), height: inch(8) });
    expect(hundredths(outer)).not.toBe(1.16);
    expect(hundredths(foot)).not.toBe(1.77);
  });

  it("A4: 23.33, 46.67, 33 and 66 mm (ISO 216 by ninths)", () => {
    const { inner, outer, head, foot } = ninthsMargins({ width: mm(210), height: mm(297) });
    expect(toMillimetres(inner)).toBeCloseTo(23.33, 2);
    expect(toMillimetres(outer)).toBeCloseTo(46.67, 2);
    expect([head, foot]).toEqual([mm(33), mm(66)]);
  });

  it("on a 2:3 page the text is as high as the page is wide, margins inner : top : outer : bottom = 2 : 3 : 4 : 6 (equality: design blog; ratio: from memory)", () => {
    const page = { width: inch(6), height: inch(9) };
    const { inner, outer, head, foot } = ninthsMargins(page);
    expect(subtract(page.height, sum([head, foot]))).toBe(page.width);
    for (const [margin, parts] of [
      [inner, 2],
      [head, 3],
      [outer, 4],
      [foot, 6],
    ] as const) {
      expect(Math.abs(margin - (page.width / 18) * parts)).toBeLessThanOrEqual(0.5);
    }
  });
});

/** A moulding in inches. */
const inches = (overall: number, rabbet: number, allowance: number) => ({
  overall: inch(overall),
  rabbet: inch(rabbet),
  allowance: inch(allowance),
});

describe("mitred rails", () => {
  it("long point = mat + 1/16 in fit + 2 x (rabbet edge to outer edge) (Fine Woodworking no. 275, 2019)", () => {
    expect(railLongPoint(inch(11), inches(1.25, 0.25, 1 / 16))).toBe(inch(11 + 1 / 16 + 2));
  });

  it("package 8, moulding 2, rabbet 1/8 in: 11 3/4 in (woodworker's blog)", () => {
    expect(railLongPoint(inch(8), inches(2, 1 / 8, 0))).toBe(inch(47, 4));
  });

  it("package 8, moulding 2, rabbet 1/8, allowance 1/8 in: 11 7/8 in from the package and from the sight size (common practice, no source)", () => {
    const rail = inches(2, 1 / 8, 1 / 8);
    expect(railLongPoint(inch(8), rail)).toBe(inch(95, 8));
    expect(sum([railShortPoint(inch(8), rail), times(rail.overall, 2)])).toBe(inch(95, 8));
  });

  it("a known wrong number: the allowance is not added again to the sight size, 12 in (common practice, no source)", () => {
    expect(railLongPoint(inch(8), inches(2, 1 / 8, 1 / 8))).not.toBe(inch(12));
  });

  it("a known trap: twice the rabbet's width comes off, not its width and its depth, which agree only where both are 1/4 in (woodworker's blog)", () => {
    const depth = 3 / 8;
    const trap = (rabbet: number) => inch(8 + 4 - rabbet - depth);
    expect(railLongPoint(inch(8), inches(2, 3 / 8, 0))).toBe(trap(3 / 8));
    expect(railLongPoint(inch(8), inches(2, 1 / 4, 0))).not.toBe(trap(1 / 4));
  });

  it("rough order length, full face at every mitre: 305 x 407 mm, fit 1 mm a rail, face 66 mm is 1956 mm (common practice, no source)", () => {
    const rail = { overall: mm(66), rabbet: mm(0), allowance: mm(1) };
    expect(frameMoulding({ width: mm(305), height: mm(407) }, rail, mm(0))).toBe(mm(1956));
  });

  it("one frame's stock is 2 (D1 + D2) + 4 (2 (W - R) + A) + 3 C (common practice, no source)", () => {
    const frame = { width: inch(11), height: inch(14) };
    const rail = inches(2, 1 / 4, 1 / 8);
    const expected = 2 * (11 + 14) + 4 * (2 * (2 - 1 / 4) + 1 / 8) + 3 * (1 / 8);
    expect(frameMoulding(frame, rail, inch(1, 8))).toBe(inch(expected));
  });
});
