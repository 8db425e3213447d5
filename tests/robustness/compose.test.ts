import { expect, test } from "vitest";
import { composeResult } from "../../src/show/index.ts";
import { hostileDocument } from "./hostile.ts";

const RUNS = Number(process.env["HOSTILE_RUNS"] ?? 3000);

test(`[R4] ${RUNS} mutated documents give a result whose figures are numbers, or a problem that names its field`, () => {
  let read = 0;
  for (let seed = 1; seed <= RUNS; seed++) {
    const text = composeResult(hostileDocument(seed)).text;
    const result = JSON.parse(text) as {
      error?: { field: unknown; found: unknown; wanted: unknown };
      outer?: object;
    };
    if (result.error === undefined) {
      read += 1;
      // JSON writes what is no number as null.
      expect([seed, /"mm":null|NaN|undefined/.test(text)]).toEqual([seed, false]);
      expect([seed, typeof result.outer]).toEqual([seed, "object"]);
    } else {
      const { field, found, wanted } = result.error;
      expect([seed, typeof field, typeof found, typeof wanted]).toEqual([seed, "string", "string", "string"]);
      expect([seed, String(wanted).length > 3, String(found).length <= 80]).toEqual([seed, true, true]);
    }
  }
  // Both outcomes must be common, or the test would say nothing.
  expect(read / RUNS).toBeGreaterThan(0.15);
  expect(read / RUNS).toBeLessThan(0.85);
});
