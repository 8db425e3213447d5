import * as fc from "fast-check";
import { inch, ticks, ZERO } from "../../src/lengths/index.ts";
import type { SeriesJob, SeriesSize, SeriesWork } from "../../src/plans/series/index.ts";

export const NO_REACH = { head: ZERO, left: ZERO, right: ZERO, foot: ZERO };

export const work = (width: number, height: number, count = 1): SeriesWork => ({
  name: `${width} x ${height}`,
  window: { width: inch(width), height: inch(height) },
  count,
  reach: NO_REACH,
});
export const size = (width: number, height: number, cost: number): SeriesSize => ({
  name: `${width} x ${height}`,
  width: inch(width),
  height: inch(height),
  cost,
});

export const LIMITS: SeriesJob["limits"] = {
  border: { least: inch(2), most: inch(4) },
  lift: { by: inch(1, 4), least: ZERO, most: inch(1, 2) },
  graduation: inch(1, 16),
  turns: true,
};

const eighths = (from: number, to: number) =>
  fc.integer({ min: from * 8, max: to * 8 }).map((n) => inch(n, 8));
/** Any length at all, off every ruler. */
const odd = (from: number, to: number) => fc.integer({ min: inch(from), max: inch(to) }).map(ticks);

/** Windows and sizes of a usual show, narrow or wide limits, some paper that reaches past the window. */
export const series = (works: number, sizes: number): fc.Arbitrary<SeriesJob> =>
  fc.record({
    works: fc.array(
      fc.record({
        name: fc.constant("work"),
        window: fc.record({ width: fc.oneof(eighths(3, 16), odd(3, 16)), height: eighths(3, 16) }),
        count: fc.integer({ min: 1, max: 4 }),
        reach: fc.record({
          head: eighths(0, 3),
          left: eighths(0, 3),
          right: eighths(0, 3),
          foot: eighths(0, 3),
        }),
      }),
      { maxLength: works },
    ),
    sizes: fc.array(
      fc.record({
        name: fc.constant("size"),
        width: eighths(5, 24),
        height: eighths(5, 24),
        cost: fc.integer({ min: 0, max: 60 }).map((n) => n / 4),
      }),
      { maxLength: sizes },
    ),
    limits: fc.record({
      border: fc.record({ least: eighths(0, 2), most: fc.option(eighths(3, 8), { nil: null }) }),
      lift: fc.tuple(eighths(0, 1), eighths(0, 1), eighths(0, 1)).map((three) => {
        const [least = ZERO, by = ZERO, most = ZERO] = three.toSorted((a, b) => a - b);
        return { least, by, most };
      }),
      graduation: fc.constantFrom(inch(1, 16), inch(1, 8), ticks(80_000)),
      turns: fc.boolean(),
    }),
  });
