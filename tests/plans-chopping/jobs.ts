import fc from "fast-check";
import { inch, type Length } from "../../src/lengths/index.ts";
import type { ChoppingJob } from "../../src/plans/index.ts";

const eighths = (least: number, most: number): fc.Arbitrary<Length> =>
  fc.integer({ min: least * 8, max: most * 8 }).map((marks) => inch(marks, 8));

/** Jobs of at most so many rails: bought lengths of several prices, and now and then an offcut. */
export const jobs = (most: number, copies: number): fc.Arbitrary<ChoppingJob> =>
  fc.record({
    lengths: fc
      .tuple(
        fc.array(
          fc.record({
            name: fc.constant("bought"),
            length: eighths(40, 120),
            cost: fc.integer({ min: 0, max: 60 }).map((halves) => halves / 2),
            copies: fc.constant(null),
          }),
          { minLength: 1, maxLength: 3 },
        ),
        fc.array(
          fc.record({
            name: fc.constant("offcut"),
            length: eighths(5, 60),
            cost: fc.constant(0),
            copies: fc.integer({ min: 0, max: 2 }),
          }),
          { maxLength: 2 },
        ),
      )
      .map(([bought, offcuts]) => [...bought, ...offcuts]),
    rails: fc.array(
      fc.record({
        name: fc.constant("rail"),
        length: eighths(4, 45),
        shortPoint: fc.constant(null),
        count: fc.integer({ min: 0, max: copies }),
        frame: fc.constant(null),
      }),
      { minLength: 1, maxLength: most },
    ),
    frames: fc.constant([]),
    kerf: fc.constantFrom(inch(0), inch(1, 8), inch(1, 4)),
    waste: fc.constantFrom(inch(0), inch(1, 2)),
  });

/** A clock that goes on by itself, so that a plan depends on its job alone. */
export function steps(each = 1): () => number {
  let now = 0;
  return () => (now += each);
}
