import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Costs,
  type Fitting,
  type Goods,
  GOODS_GROUPS,
  minorDigits,
  minorUnits,
  OPERATIONS,
  PER,
  priced,
  priceOf,
  type QuotedWork,
  type QuoteJob,
  quoteShow,
  readPrice,
  shareOut,
} from "../../src/plans/index.ts";
import { minutesWords, sayMissing, sayMoney, sayPrice } from "../../src/words/quote.ts";

const cents = fc.integer({ min: 0, max: 5_000_000 }).map((value) => minorUnits(value));
const maybe = fc.option(cents, { nil: null });
const price = fc
  .record({ units: fc.integer({ min: 0, max: 10_000_000 }), places: fc.integer({ min: 0, max: 4 }) })
  .map(({ units, places }) => ({ units: BigInt(units), places }));
const small = fc.integer({ min: 0, max: 40 });

const anyWork: fc.Arbitrary<QuotedWork> = fc
  .record({
    copies: fc.integer({ min: 1, max: 30 }),
    each: fc.array(small, { minLength: 10, maxLength: 10 }),
  })
  .map(({ copies, each }) => ({
    title: "Ebb",
    copies,
    mats: each[7] ?? 0,
    panes: each[8] ?? 0,
    frames: each[9] ?? 0,
    done: {
      blank: each[0] ?? 0,
      window: each[1] ?? 0,
      hold: each[2] ?? 0,
      glaze: each[3] ?? 0,
      frame: each[4] ?? 0,
      close: each[5] ?? 0,
      hang: each[6] ?? 0,
    },
  }));

const anyJob: fc.Arbitrary<QuoteJob> = fc.array(anyWork, { minLength: 1, maxLength: 12 }).chain((works) =>
  fc.record({
    digits: fc.constantFrom(0, 2, 3),
    works: fc.constant(works),
    goods: fc.array(
      fc.record<Goods>({
        name: fc.constant("board"),
        group: fc.constantFrom(...GOODS_GROUPS),
        bought: small,
        cost: maybe,
        without: maybe,
        byMeasure: maybe,
        uses: fc.array(fc.bigInt({ min: 0n, max: 10n ** 16n }), {
          minLength: works.length,
          maxLength: works.length,
        }),
      }),
      { maxLength: 5 },
    ),
    fittings: fc.array(
      fc.record<Fitting>({
        name: fc.constant("rings"),
        price,
        pack: fc.integer({ min: 1, max: 100 }),
        each: fc.integer({ min: 1, max: 8 }),
        per: fc.constantFrom(...PER),
      }),
      { maxLength: 4 },
    ),
    minutes: fc.dictionary(fc.constantFrom(...OPERATIONS), fc.integer({ min: 0, max: 9000 })),
    hour: fc.option(price, { nil: null }),
    having: fc.array(fc.record({ what: fc.constant("frame"), price, per: fc.constantFrom(...PER) }), {
      maxLength: 3,
    }),
  }),
);

/** Everything in a work's costs that adds up over works. */
const columnsOf = ({
  goods,
  fittings,
  minutes,
  labour,
  all,
  byMeasure,
  without,
  having,
}: Costs): readonly number[] => [
  goods.board,
  goods.glazing,
  goods.moulding,
  fittings,
  minutes,
  labour,
  all,
  byMeasure ?? 0,
  without ?? 0,
  having,
];

describe("what a show costs", () => {
  test("[MN2] every line's shares and every column of the works add up to the show's sum, to the minor unit", () => {
    fc.assert(
      fc.property(anyJob, (job) => {
        const quote = quoteShow(job);
        for (const line of [...quote.goods, ...quote.fittings, ...quote.labour, ...quote.having])
          expect(line.shares.reduce<number>((sum, share) => sum + share, 0)).toBe(line.sum);
        const sums = quote.works
          .map(columnsOf)
          .reduce((sum, row) => sum.map((value, at) => value + (row[at] ?? 0)));
        expect(sums).toEqual(columnsOf(quote.show));
        for (const costs of [...quote.works, quote.show]) {
          expect(columnsOf(costs).every((value) => Number.isSafeInteger(value) && value >= 0)).toBe(true);
          // MN8: what having it done costs is beside the sum, not in it.
          const { goods, fittings, labour } = costs;
          expect(costs.all).toBe(goods.board + goods.glazing + goods.moulding + fittings + labour);
        }
      }),
      { numRuns: 200 },
    );
  });

  test("[MN2] a share is its exact part, less than one minor unit off", () => {
    fc.assert(
      fc.property(
        cents,
        fc.array(fc.bigInt({ min: 0n, max: 10n ** 16n }), { minLength: 1, maxLength: 30 }),
        (sum, weights) => {
          const all = weights.reduce((total, weight) => total + weight, 0n);
          fc.pre(all > 0n);
          for (const [index, share] of shareOut(sum, weights).entries()) {
            const off = BigInt(share) * all - BigInt(sum) * (weights[index] ?? 0n);
            expect(off < all && off > -all).toBe(true);
          }
        },
      ),
    );
    expect(shareOut(minorUnits(100), [1n, 1n, 1n])).toEqual([34, 33, 33]);
    expect(shareOut(minorUnits(7), [0n, 0n])).toEqual([7, 0]);
    expect(() => shareOut(minorUnits(7), [])).toThrow(RangeError);
  });

  test("[MN5] minutes by operation, as often as each is done, at the hour's price", () => {
    const work: QuotedWork = {
      title: "Ebb",
      copies: 3,
      mats: 3,
      panes: 0,
      frames: 0,
      done: { blank: 6, window: 3, hold: 3, glaze: 0, frame: 0, close: 3, hang: 0 },
    };
    const job: QuoteJob = {
      digits: 2,
      works: [work, { ...work, copies: 1, done: { ...work.done, window: 1 } }],
      goods: [],
      fittings: [],
      minutes: { window: 750, glaze: 900, close: 1000 },
      hour: readPrice("28"),
      having: [],
    };
    const quote = quoteShow(job);
    expect(quote.labour.map(({ of, sum }) => [of.operation, of.count, of.minutes, sum])).toEqual([
      // 4 × 7.5 min = 30 min at 28.00 an hour.
      ["window", 4, 3000, 1400],
      ["close", 6, 6000, 2800],
    ]);
    expect(quote.works.map(({ minutes, labour }) => [minutes, labour])).toEqual([
      [5250, 1050 + 1400],
      [3750, 350 + 1400],
    ]);
    expect(quote.missing).toEqual([{ code: "fittings" }, { code: "minutes", operations: ["blank", "hold"] }]);
  });

  test("[MN6] what is not known is named, and costs nothing", () => {
    const work: QuotedWork = {
      title: "Ebb",
      copies: 1,
      mats: 1,
      panes: 1,
      frames: 0,
      done: { blank: 2, window: 1, hold: 1, glaze: 1, frame: 0, close: 1, hang: 0 },
    };
    const goods: Goods = {
      name: "grey rag",
      group: "board",
      bought: 1,
      cost: null,
      without: null,
      byMeasure: null,
      uses: [1n],
    };
    const quote = quoteShow({
      digits: 2,
      works: [work],
      goods: [goods],
      fittings: [],
      minutes: { window: 600 },
      hour: null,
      having: [],
    });
    expect(quote.show).toMatchObject({ all: 0, labour: 0, minutes: 600 });
    expect([quote.show, ...quote.works].map(({ byMeasure, without }) => [byMeasure, without])).toEqual([
      [null, null],
      [null, null],
    ]);
    expect(quote.missing.map(sayMissing)).toEqual([
      "No price is known for grey rag. Write its cost into the stock.",
      "No small parts are told: rings, screws, tape cost nothing here.",
      "No price of an hour is known: minutes cost nothing here.",
      "No minutes are told for cutting blanks, holding prints, cutting and cleaning glazing and closing.",
    ]);
  });
});

describe("prices", () => {
  test("[MN1] a price is read to its last decimal, what may be thousands is refused", () => {
    for (const [written, units, places] of [
      ["11.50", 1150n, 2],
      ["11,5", 115n, 1],
      ["24", 24n, 0],
      [0.45, 45n, 2],
      ["0.0625", 625n, 4],
      ["1\u00a0200.00", 120_000n, 2],
    ] as const)
      expect(readPrice(written), String(written)).toEqual({ units, places });
    for (const written of [
      "",
      "-1",
      "1,500",
      "1.2.3",
      "11.50 USD",
      "1e3",
      "0.1234567",
      "abc",
      -2,
      Number.NaN,
    ])
      expect(readPrice(written), String(written)).toBeNull();
  });

  test("[MN1] so many at a price is exact, rounded once to the nearest minor unit", () => {
    fc.assert(
      fc.property(
        price,
        fc.integer({ min: 0, max: 10_000 }),
        fc.constantFrom(0, 2, 3),
        (one, count, digits) => {
          const sum = BigInt(priced(one, BigInt(count), digits));
          const scale = 10n ** BigInt(one.places);
          const off = 2n * (one.units * BigInt(count) * 10n ** BigInt(digits) - sum * scale);
          expect(off >= -scale && off < scale).toBe(true);
        },
      ),
    );
    // Ten of 0.10 are 1.00, whatever a binary fraction makes of it.
    expect(priced(priceOf(0.1), 3n, 2)).toBe(30);
    expect(priced(priceOf(1.005), 1n, 2)).toBe(101);
    expect([minorDigits("USD"), minorDigits(null), minorDigits("jpy"), minorDigits("KWD")]).toEqual([
      2, 2, 0, 3,
    ]);
  });

  test("[MN1] sums and prices are printed with their currency's decimals", () => {
    expect([
      sayMoney(minorUnits(14_051), 2),
      sayMoney(minorUnits(5), 2),
      sayMoney(minorUnits(1200), 0),
      sayMoney(minorUnits(5), 3),
    ]).toEqual(["140.51", "0.05", "1200", "0.005"]);
    expect([
      sayPrice({ units: 115n, places: 1 }, 2),
      sayPrice({ units: 625n, places: 4 }, 2),
      sayPrice({ units: 7n, places: 0 }, 0),
    ]).toEqual(["11.50", "0.0625", "7"]);
    expect([0, 50, 3000, 6000, 34_250].map(minutesWords)).toEqual(
      ["0 min", "0.5 min", "30 min", "1 h", "5 h 42.5 min"].map((text) => text.replaceAll(" ", "\u00a0")),
    );
  });
});
