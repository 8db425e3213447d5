import * as fc from "fast-check";
import type { Design, LiftRule, MatRule, OuterRule, Print, WindowRule } from "../../src/assembly/index.ts";
import { inch, type Length, mm, ticks, TICKS_PER_MILLIMETRE, ZERO } from "../../src/lengths/index.ts";

/** A length of so many tenths of a millimetre. */
const tenths = (min: number, max: number): fc.Arbitrary<Length> =>
  fc.integer({ min, max }).map((count) => ticks((count * TICKS_PER_MILLIMETRE) / 10));

const print: fc.Arbitrary<Print> = fc
  .record({
    width: tenths(300, 9000),
    height: tenths(300, 9000),
    left: fc.double({ min: 0, max: 0.3, noNaN: true }),
    top: fc.double({ min: 0, max: 0.3, noNaN: true }),
    angle: fc.oneof(fc.constant(0), fc.double({ min: -12, max: 12, noNaN: true })),
    level: fc.constantFrom("image" as const, "sheet" as const),
    thickness: tenths(0, 40),
  })
  .map(({ width, height, left, top, angle, level, thickness }) => ({
    sheet: { width, height },
    image: {
      left: ticks(Math.floor(width * left)),
      top: ticks(Math.floor(height * top)),
      width: ticks(Math.floor(width * (1 - 2 * left))),
      height: ticks(Math.floor(height * (1 - 2 * top))),
    },
    outline: null,
    sheetOutline: null,
    angle,
    level,
    thickness,
    sure: ZERO,
    edition: [],
  }));

const window: fc.Arbitrary<WindowRule> = fc.oneof(
  fc.record({ show: fc.constant("overlap" as const), overlap: tenths(0, 200) }),
  fc.record({
    show: fc.constant("margins" as const),
    top: tenths(0, 400),
    side: tenths(0, 400),
    foot: tenths(0, 400),
  }),
  fc.record({ show: fc.constant("sheet" as const), gap: tenths(0, 200) }),
  fc.record({ show: fc.constant("typed" as const), width: tenths(1, 9000), height: tenths(1, 9000) }),
);

const outer: fc.Arbitrary<OuterRule> = fc.oneof(
  fc.record({ kind: fc.constant("size" as const), width: tenths(300, 12_000), height: tenths(300, 12_000) }),
  fc.record({
    kind: fc.constant("borders" as const),
    borders: fc.record({ head: tenths(0, 1500), side: tenths(0, 1500), foot: tenths(0, 1500) }),
    standard: fc.constant(null),
  }),
);

const lift: fc.Arbitrary<LiftRule> = fc.oneof(
  fc.constant({ rule: "none" as const }),
  fc.record({ rule: fc.constant("fixed" as const), by: tenths(0, 200) }),
  fc.constant({ rule: "optical" as const }),
);

const mat: fc.Arbitrary<MatRule> = fc.record({
  thickness: tenths(8, 40),
  bevel: fc.constantFrom(45, 52, 60, 90),
  reveal: tenths(0, 150),
  board: fc.constant("4-ply white rag"),
});

/** Designs of every kind, also ones that cannot be made. */
export const anyDesign: fc.Arbitrary<Design> = fc.record({
  ruler: fc.constantFrom(
    { unit: "in" as const, graduation: inch(1, 16) },
    { unit: "in" as const, graduation: inch(1, 32) },
    { unit: "mm" as const, graduation: mm(1) },
    { unit: "mm" as const, graduation: mm(0.5) },
  ),
  print,
  window,
  hold: fc.constant(mm(3)),
  play: fc.constant(mm(1)),
  outer,
  lift,
  holding: fc.constant("pockets" as const),
  mount: fc.constant("4-ply white rag"),
  mats: fc.array(mat, { minLength: 1, maxLength: 3 }),
  leastBorder: fc.constant(mm(25)),
  leastPocket: fc.constant(mm(12)),
  editionSpread: fc.constant(mm(2)),
  scaleOffset: fc.constant(ZERO),
});
