import fc from "fast-check";
import { expect, test } from "vitest";
import {
  divide,
  figureOf,
  half,
  inch,
  type Length,
  mm,
  printExact,
  printLength,
  readLength,
  type Rounding,
  type Ruler,
  scale,
  ticks,
  toGraduation,
  toMillimetres,
  wholeNumber,
} from "../../src/lengths/index.ts";

const sixteenths: Ruler = { unit: "in", graduation: inch(1, 16) };
const wholeMillimetres: Ruler = { unit: "mm", graduation: mm(1) };
const anyLength = fc.integer({ min: 0, max: 8_000_000_000 }).map(ticks);
const anyRounding = fc.constantFrom<Rounding>("down", "up", "nearest");

test("[L8] every length printed exactly reads back to the same ticks, in both units", () => {
  const onMarks = fc.oneof(
    fc.integer({ min: 0, max: 500_000 }).map((n) => ticks(n * 15_875)),
    fc.integer({ min: 0, max: 10_000_000 }).map((n) => ticks(n * 800)),
    fc.integer({ min: 0, max: 3_000_000 }).map((n) => ticks(n * 2032)),
    anyLength,
  );
  fc.assert(
    fc.property(onMarks, fc.constantFrom<"in" | "mm">("in", "mm"), (length, unit) => {
      const text = printExact(length, unit);
      expect(text).not.toContain("≈");
      expect([text, readLength(text, "mm")]).toEqual([text, { ok: true, length }]);
    }),
    { numRuns: 3000 },
  );
});

test("[L8] what a ruler prints without ≈ reads back to the same ticks; with ≈ it is another length", () => {
  const rulers = fc.constantFrom<Ruler>(
    sixteenths,
    wholeMillimetres,
    { unit: "in", graduation: inch(1, 32) },
    { unit: "in", graduation: inch(1, 64) },
    { unit: "in", graduation: inch(1, 10) },
    { unit: "mm", graduation: mm(0.5) },
    { unit: "mm", graduation: mm(0.1) },
  );
  fc.assert(
    fc.property(anyLength, rulers, anyRounding, (length, ruler, rounding) => {
      for (const value of [length, toGraduation(length, ruler.graduation, "down")]) {
        const text = printLength(value, ruler, rounding);
        const back = readLength(text.replace("≈ ", ""), ruler.unit);
        expect(back.ok && back.length === value).toBe(!text.startsWith("≈"));
      }
    }),
    { numRuns: 2000 },
  );
});

test("[L9] a length is printed to the ruler's graduation, the named way, with ≈ when it is not exact there", () => {
  expect(printLength(inch(7, 4), sixteenths)).toBe("1 3/4 in");
  expect(printLength(inch(0), sixteenths)).toBe("0 in");
  expect(printLength(inch(3, 8), sixteenths)).toBe("3/8 in");
  expect(printLength(inch(3, 32), sixteenths, "down")).toBe("≈ 1/16 in");
  expect(printLength(inch(3, 32), sixteenths, "up")).toBe("≈ 1/8 in");
  expect(printLength(mm(59.4), wholeMillimetres)).toBe("≈ 59 mm");
  expect(printLength(mm(59.5), { unit: "mm", graduation: mm(0.5) })).toBe("59.5 mm");
  expect(printLength(inch(1), { unit: "mm", graduation: mm(0.1) })).toBe("25.4 mm");
  expect(printLength(inch(29, 4), { unit: "in", graduation: inch(1, 10) })).toBe("≈ 7.3 in");
  expect(toMillimetres(inch(7, 4))).toBe(44.45);
});

test("[L10] to the nearest is half away from zero, for negatives too", () => {
  expect(wholeNumber(2.5, "nearest")).toBe(3);
  expect(wholeNumber(-2.5, "nearest")).toBe(-3);
  expect(toGraduation(mm(2.5), mm(1), "nearest")).toBe(mm(3));
  expect(toGraduation(mm(-2.5), mm(1), "nearest")).toBe(mm(-3));
  expect(half(ticks(5), "nearest")).toBe(ticks(3));
  expect([
    divide(5n, 2n, "nearest"),
    divide(-5n, 2n, "nearest"),
    divide(-5n, 2n, "down"),
    divide(-5n, 2n, "up"),
  ]).toEqual([3n, -3n, -3n, -2n]);
});

test("[L10] scaling is exact before it is rounded once", () => {
  fc.assert(
    fc.property(
      anyLength,
      fc.bigInt(-1_000_000n, 1_000_000n),
      fc.bigInt(1n, 1_000_000n),
      (length, over, under) => {
        const down = BigInt(scale(length, over, under, "down"));
        const up = BigInt(scale(length, over, under, "up"));
        const exact = BigInt(length) * over;
        expect(down * under <= exact && exact < (down + 1n) * under).toBe(true);
        expect(up - down).toBe(down * under === exact ? 0n : 1n);
      },
    ),
    { numRuns: 500 },
  );
});

test("[L11] a figure keeps whole and fraction apart: 1 1/16, 11/16 and 1 11/16 never look alike", () => {
  const parts = (length: Length): string[] => {
    const { whole, numerator, denominator } = figureOf(length, sixteenths);
    return [whole, numerator, denominator];
  };
  expect(parts(inch(17, 16))).toEqual(["1", "1", "16"]);
  expect(parts(inch(11, 16))).toEqual(["", "11", "16"]);
  expect(parts(inch(27, 16))).toEqual(["1", "11", "16"]);
  expect(parts(inch(2))).toEqual(["2", "", ""]);
});
