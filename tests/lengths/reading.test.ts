import fc from "fast-check";
import { expect, test } from "vitest";
import { inch, type Length, mm, readLength, ticks, type Unit } from "../../src/lengths/index.ts";

const read = (text: string, unit: Unit = "in", signed = false): Length | string => {
  const result = readLength(text, unit, signed);
  return result.ok ? result.length : result.fault.code;
};

test("[L1] the inch is 25.4 mm exactly (international yard and pound agreement, 1959)", () => {
  expect(inch(1)).toBe(mm(25.4));
  expect(mm(0.01)).toBe(ticks(800));
  expect(inch(0.001)).toBe(ticks(2032));
  expect(inch(1, 128)).toBe(ticks(15_875));
  expect(() => inch(1, 3)).toThrow(/falls between two ticks/);
});

test("[L2] every spelling of seven and a quarter inches reads to the same ticks", () => {
  const spellings = [
    "7.25",
    "7 1/4",
    "7-1/4 in",
    '7¼"',
    "7 ¼ in",
    "7\u00a01/4\u00a0in",
    "7\u20091\u20444\u2033",
    "7 1/4”",
    "7.250 inches",
    "7,25 in",
    "7 1/4''",
    "  7 1/4 in. ",
    "7 2/8",
    "7 1\u22154",
    "7\u20131/4",
    "184.15 mm",
    "18.415 cm",
    "18,415cm",
    "0.18415 m",
    "0' 7 1/4\"",
  ];
  for (const text of spellings) expect([text, read(text)]).toEqual([text, inch(29, 4)]);
});

test("[L3] a bare number takes the unit; feet may go before inches", () => {
  expect(read("7", "in")).toBe(inch(7));
  expect(read("7", "mm")).toBe(mm(7));
  expect(read(`1' 2 1/2"`)).toBe(inch(29, 2));
  expect(read("1 ft 2 1/2 in", "mm")).toBe(inch(29, 2));
  expect(read("1' 2", "mm")).toBe(inch(14));
  expect(read("5 ft.")).toBe(inch(60));
  expect(read("3 furlong")).toBe("unknown-unit");
  expect(read("3 constructor")).toBe("unknown-unit");
});

test("[L4] a comma that may part decimals or thousands is refused without a unit, and decimal otherwise", () => {
  expect(read("1,500", "mm")).toBe("either-comma");
  expect(read("12,345", "in")).toBe("either-comma");
  expect(read("1,500 mm", "in")).toBe(mm(1.5));
  expect(read("1,5", "mm")).toBe(mm(1.5));
  expect(read("0,125", "in")).toBe(inch(1, 8));
  expect(read("1234,567", "mm")).toBe(mm(1234.567));
  expect(read("1.500", "mm")).toBe(mm(1.5));
  expect(read("1,500.5", "mm")).toBe("not-a-length");
});

test("[L5] an improper fraction is refused with what it may have meant", () => {
  expect(readLength("71/4", "in")).toEqual({
    ok: false,
    fault: { code: "improper-fraction", meant: ["7 1/4", "17 3/4"] },
  });
  expect(readLength("5/4", "in")).toEqual({
    ok: false,
    fault: { code: "improper-fraction", meant: ["1 1/4"] },
  });
  expect(readLength("7 8/8", "in")).toEqual({
    ok: false,
    fault: { code: "improper-fraction", meant: ["8"] },
  });
  expect(readLength("111/16", "in")).toEqual({
    ok: false,
    fault: { code: "improper-fraction", meant: ["1 11/16", "11 1/16", "6 15/16"] },
  });
});

test("[L6] a negative is refused, unless places may be negative", () => {
  expect(read("-3")).toBe("negative");
  expect(read("\u22123 mm")).toBe("negative");
  expect(read("-3 1/2", "in", true)).toBe(inch(-7, 2));
});

test("[L7] the rest is refused with its reason", () => {
  const reasons: Record<string, string> = {
    "": "empty",
    " \u00a0": "empty",
    "7 1/": "not-a-length",
    "/4": "not-a-length",
    "7 1/0": "nought-denominator",
    "7.5 1/4": "not-a-length",
    "1e3": "not-a-length",
    "7 8": "not-a-length",
    seven: "not-a-length",
    "7 1/4 1/8": "not-a-length",
    NaN: "not-a-length",
    "Infinity mm": "not-a-length",
    "100000 mm": "ok",
    "100001 mm": "too-long",
    "100.1 m": "too-long",
    "999999999999 ft": "too-long",
    "--3": "negative",
    "7 in 3": "not-a-length",
  };
  for (const [text, reason] of Object.entries(reasons)) {
    const result = readLength(text, "in");
    expect([text, result.ok ? "ok" : result.fault.code]).toEqual([text, reason]);
  }
});

test("[L7] no text whatever throws, hangs or reads to something that is not a length in range", () => {
  const unit = fc.constantFrom<Unit>("in", "mm");
  const nearly = fc
    .array(fc.constantFrom(..."0123456789 /.,-'\"½¼⁄″inmcft\u00a0"), { maxLength: 14 })
    .map((parts) => parts.join(""));
  fc.assert(
    fc.property(fc.oneof(fc.string(), nearly), unit, fc.boolean(), (text, u, signed) => {
      const result = readLength(text, u, signed);
      if (result.ok) {
        expect(Number.isSafeInteger(result.length)).toBe(true);
        expect(Math.abs(result.length)).toBeLessThanOrEqual(100_000 * 80_000);
        if (!signed) expect(result.length).toBeGreaterThanOrEqual(0);
      }
    }),
    { numRuns: 3000 },
  );
});

test("[L2] any mixed number reads to the same ticks however it is written", () => {
  const spaces = fc.constantFrom(" ", "\u00a0", "\u2009", "-", "  ");
  const slashes = fc.constantFrom("/", "\u2044", "\u2215");
  const units = fc.constantFrom("", " in", "in", '"', "\u2033", " inches", "\u201d", " in.");
  const binary = fc.constantFrom(2, 4, 8, 16, 32, 64, 128);
  fc.assert(
    fc.property(
      fc.nat(900),
      binary,
      fc.nat(127),
      spaces,
      slashes,
      units,
      (whole, under, seed, space, slash, unit) => {
        const over = 1 + (seed % (under - 1 || 1));
        if (over >= under) return;
        const expected = inch(whole * under + over, under);
        expect(read(`${whole}${space}${over}${slash}${under}${unit}`)).toBe(expected);
        expect(read(`${whole}.${String((over * 1e7) / under).padStart(7, "0")}${unit}`)).toBe(expected);
      },
    ),
  );
});
