import fc from "fast-check";
import { expect, test } from "vitest";
import { readAnyLength, readLength } from "../../src/lengths/index.ts";
import { Chance } from "../reference/chance.ts";
import { drawLength } from "../reference/random-lengths.ts";

const unit = fc.constantFrom("in", "mm");

test("[L2] plain forms read sign by sign are what the reader of every form makes of them", () => {
  fc.assert(
    fc.property(fc.nat(), unit, (seed, of) => {
      const text = String(drawLength(new Chance(seed), of, 0, 900).said);
      expect(readLength(text, of)).toEqual(readAnyLength(text, of));
      expect(readLength(text, of).ok).toBe(true);
    }),
    { numRuns: 5000 },
  );
});

test("[L2] so are lengths gone wrong: any row of figures, marks and units", () => {
  const pieces = "0 1 7 12 128 ½ ⅞ ⅓ / ⁄ ∕ . , - – ' ″ ” \" mm cm m in in. inches ft ft. MM x".split(" ");
  const spaces = [" ", " ", "\u00a0", "\u2009", "\u202f", "\u3000"];
  const text = fc.array(fc.constantFrom(...pieces, ...spaces), { maxLength: 8 }).map((all) => all.join(""));
  fc.assert(
    fc.property(text, unit, fc.boolean(), (said, of, signed) => {
      expect(readLength(said, of, signed)).toEqual(readAnyLength(said, of, signed));
    }),
    { numRuns: 20_000 },
  );
});
