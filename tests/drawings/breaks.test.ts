import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shorten } from "../../src/drawings/views/breaks.ts";

const places = fc.array(fc.integer({ min: -500, max: 5000 }), { minLength: 2, maxLength: 8 });

describe("a long part drawn short", () => {
  it("[D10] leaves alone what fits", () => {
    const { map, breaks } = shorten([0, 10, 90], 90, 20);
    expect([0, 10, 90].map(map)).toEqual([0, 10, 90]);
    expect(breaks).toEqual([]);
  });

  it("[D10] takes out of the longest stretch first, and stands its break in the middle", () => {
    const { map, breaks } = shorten([0, 30, 130], 90, 20);
    expect([0, 30, 130].map(map)).toEqual([0, 30, 90]);
    expect(breaks).toEqual([60]);
  });

  it("[D10] keeps the order of places, and no stretch below the least unless it is so by itself", () => {
    fc.assert(
      fc.property(places, fc.integer({ min: 0, max: 3000 }), (all, room) => {
        const least = 44;
        const { map, breaks } = shorten(all, room, least);
        const sorted = [...new Set(all)].toSorted((a, b) => a - b);
        let broken = 0;
        for (const [index, place] of sorted.entries()) {
          const next = sorted[index + 1];
          if (next === undefined) continue;
          const drawn = map(next) - map(place);
          expect(drawn).toBeGreaterThanOrEqual(Math.min(next - place, least) - 1e-9);
          expect(drawn).toBeLessThanOrEqual(next - place + 1e-9);
          if (drawn < next - place - 1e-9) broken += 1;
        }
        expect(breaks).toHaveLength(broken);
        const whole = map(sorted.at(-1) ?? 0) - map(sorted[0] ?? 0);
        const shortest = sorted
          .slice(1)
          .reduce((sum, x, index) => sum + Math.min(x - (sorted[index] ?? x), least), 0);
        expect(whole).toBeLessThanOrEqual(Math.max(room, shortest) + 1e-9);
      }),
    );
  });
});
