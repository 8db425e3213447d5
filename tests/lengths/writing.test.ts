import fc from "fast-check";
import { expect, test } from "vitest";
import {
  inch,
  mm,
  Pen,
  printExact,
  printLength,
  type Rounding,
  type Ruler,
  ticks,
  toMillimetres,
  writeExact,
  writeLength,
  writeMillimetres,
} from "../../src/lengths/index.ts";

const written = (write: (pen: Pen) => void): string => {
  // Little room, so that it must be widened.
  const pen = new Pen(1);
  write(pen);
  return new TextDecoder().decode(pen.written());
};

const anyLength = fc.oneof(
  fc.integer({ min: -400_000, max: 400_000 }).map((n) => ticks(n * 15_875)),
  fc.integer({ min: -1_000_000, max: 1_000_000 }).map((n) => ticks(n * 800)),
  fc.integer({ min: -1_000_000, max: 1_000_000 }).map((n) => ticks(n * 2032)),
  fc.integer({ min: -8_000_000_000, max: 8_000_000_000 }).map(ticks),
  fc.integer({ min: -20, max: 20 }).map(ticks),
);
const anyRuler = fc.oneof(
  fc.constantFrom<Ruler>(
    { unit: "in", graduation: inch(1, 2) },
    { unit: "in", graduation: inch(1, 16) },
    { unit: "in", graduation: inch(1, 128) },
    { unit: "in", graduation: inch(1) },
    { unit: "in", graduation: inch(1, 10) },
    { unit: "in", graduation: mm(1) },
    { unit: "mm", graduation: mm(1) },
    { unit: "mm", graduation: mm(0.5) },
    { unit: "mm", graduation: inch(1, 16) },
  ),
  fc.record({
    unit: fc.constantFrom<"in" | "mm">("in", "mm"),
    graduation: fc.integer({ min: 1, max: 5_000_000 }).map(ticks),
  }),
);

test("[L12] a length is written as it is printed, on every ruler, rounded every way", () => {
  fc.assert(
    fc.property(
      anyLength,
      anyRuler,
      fc.constantFrom<Rounding>("down", "up", "nearest"),
      (length, ruler, rounding) => {
        expect(written((pen) => writeLength(pen, length, ruler, rounding))).toBe(
          printLength(length, ruler, rounding),
        );
      },
    ),
    { numRuns: 5000 },
  );
});

test("[L12] exactly, and in millimetres as a number, too", () => {
  fc.assert(
    fc.property(anyLength, fc.constantFrom<"in" | "mm">("in", "mm"), (length, unit) => {
      expect(written((pen) => writeExact(pen, length, unit))).toBe(printExact(length, unit));
      expect(written((pen) => writeMillimetres(pen, length))).toBe(String(toMillimetres(length)));
    }),
    { numRuns: 5000 },
  );
});

test("[L12] any text is written as UTF-8", () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: "binary" })), (texts) => {
      const whole = texts.join("");
      expect(written((pen) => pen.text(whole))).toBe(
        new TextDecoder().decode(new TextEncoder().encode(whole)),
      );
      expect(written((pen) => texts.forEach((text) => pen.text(text)))).toBe(
        texts.map((text) => new TextDecoder().decode(new TextEncoder().encode(text))).join(""),
      );
    }),
  );
  expect(written((pen) => pen.text("½ \ud83d \udda8 🖨 ≈"))).toBe("½ \ufffd \ufffd 🖨 ≈");
});

test("[L12] a text stands in JSON as JSON has it", () => {
  const text = fc.oneof(fc.string({ unit: "binary" }), fc.string());
  fc.assert(
    fc.property(text, (said) => {
      expect(written((pen) => pen.quoted(said))).toBe(JSON.stringify(said));
    }),
  );
  for (const said of ["", '"', "\\", "\u001f", "\u007f", "\u2028", "½ \ud83d ≈", "≈ 14 1/2 in"]) {
    expect(written((pen) => pen.quoted(said))).toBe(JSON.stringify(said));
  }
});

test("[L12] whole numbers have all their digits, however large", () => {
  fc.assert(
    fc.property(fc.oneof(fc.nat(), fc.maxSafeNat()), (value) => {
      expect(written((pen) => pen.whole(value))).toBe(String(value));
    }),
  );
  expect(written((pen) => pen.whole(0x7fffffff))).toBe("2147483647");
});
