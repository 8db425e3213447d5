import { type Length, ZERO } from "../lengths/index.ts";
import { buying } from "../papers/index.ts";
import {
  cheaper,
  type ChoppingPlan,
  type Goods,
  type Money,
  NOTHING,
  planChopping,
  type PlanOptions,
  type Price,
  priced,
  pricedPart,
  priceOf,
  totalOf,
} from "../plans/index.ts";
import type { StockBoard } from "../show/index.ts";
import type { PlannedBoard } from "./boards.ts";
import type { PlannedFrames } from "./frames.ts";
import { total, usedSheets } from "./saved.ts";

/** So many square ticks of a sheet, or ticks of a length. */
type Measure = bigint;

/** Prices of one kind of sheet or length: of one, and of how many its price is. */
interface Rate {
  readonly price: Price;
  readonly of: bigint;
  readonly measure: Measure;
}

const areaOf = ({ width, height }: { readonly width: Length; readonly height: Length }): Measure =>
  BigInt(width) * BigInt(height);

/** What so many of each of a board's sheets cost, bought the cheapest way; null: a price is not known. */
function costOf(stock: readonly StockBoard[], used: readonly number[], digits: number): Money | null {
  const each = stock.flatMap((sheet, index): (Money | null)[] => {
    const count = used[index] ?? 0;
    if (count === 0) return [];
    if (!sheet.known) return [null];
    const { packs, singles } = buying(count, sheet.cost, sheet.singly, sheet.pack);
    return [
      ...(sheet.pack === null ? [] : [priced(priceOf(sheet.pack.cost), BigInt(packs), digits)]),
      priced(priceOf(sheet.singly ? sheet.cost : 0), BigInt(singles), digits),
    ];
  });
  return sumKnown(each);
}

const sumKnown = (each: readonly (Money | null)[]): Money | null =>
  each.includes(null) ? null : totalOf(each.map((sum) => sum ?? NOTHING));

/** One board's or pane's job as what must be paid for it, `at` the places of its works among those quoted. */
export function goodsOfBoard(
  { board, material, plan, plain, stock, uses }: PlannedBoard,
  at: ReadonlyMap<number, number>,
  works: number,
  digits: number,
): Goods {
  const used = usedSheets(plan, stock.length);
  const cost = costOf(stock, used, digits);
  const areas = Array.from({ length: works }, () => 0n);
  /** Square ticks of pieces, by the sheet at the root of what they are cut from. */
  const bySheet = stock.map(() => 0n);
  for (const { from, placements } of plan.sheets) {
    let root = from;
    while (root.kind !== "stock") root = plan.sheets[root.sheet]?.from ?? { kind: "stock", sheet: -1 };
    for (const placement of placements) {
      const work = at.get(uses[placement.piece]?.work ?? -1);
      if (work === undefined) throw new RangeError(`piece ${placement.piece} is of no work`);
      const area = areaOf(placement);
      areas[work] = (areas[work] ?? 0n) + area;
      bySheet[root.sheet] = (bySheet[root.sheet] ?? 0n) + area;
    }
  }
  return {
    name: board,
    group: material === "board" ? "board" : "glazing",
    bought: used.reduce((sum, count, index) => sum + (stock[index]?.cost === 0 ? 0 : count), 0),
    cost,
    without: plain === null ? cost : plain.serves ? costOf(stock, plain.used, digits) : null,
    byMeasure: byMeasure(bySheet, stock.map(rateOfSheet), digits),
    uses: areas,
  };
}

/** A rack's sheet has none of its own. */
function rateOfSheet(sheet: StockBoard): Rate | "rack" | null {
  if (!sheet.known) return null;
  if (sheet.cost === 0 && sheet.copies !== null) return "rack";
  return sheet.pack !== null && !sheet.singly
    ? { price: priceOf(sheet.pack.cost), of: BigInt(sheet.pack.of), measure: areaOf(sheet) }
    : { price: priceOf(sheet.cost), of: 1n, measure: areaOf(sheet) };
}

/**
 * What measures come to at the price of the sheet or length that they are cut from; out of the rack at that of the
 * cheapest that can be bought. Null where such a price is not known.
 */
function byMeasure(
  measures: readonly Measure[],
  rates: readonly (Rate | "rack" | null)[],
  digits: number,
): Money | null {
  const bought = rates.filter((rate) => rate !== null && rate !== "rack");
  const [first, ...others] = bought;
  const cheapest = others.reduce<Rate | undefined>(
    (best, rate) =>
      best === undefined || cheaper(rate.price, rate.of * rate.measure, best.price, best.of * best.measure)
        ? rate
        : best,
    first,
  );
  return sumKnown(
    measures.map((measure, index) => {
      if (measure === 0n) return NOTHING;
      const own = rates[index] ?? null;
      const rate = own === "rack" ? (cheapest ?? null) : own;
      return rate === null ? null : pricedPart(rate.price, measure, rate.of * rate.measure, digits);
    }),
  );
}

/** The moulding's job as what must be paid for it; `works` in the order of those quoted. */
export function goodsOfFrames(
  { moulding, job, plan, stock }: PlannedFrames,
  kindAt: readonly number[],
  works: number,
  options: PlanOptions,
  digits: number,
): Goods {
  const usedIn = (chopped: ChoppingPlan): readonly number[] =>
    stock.map((_, index) => chopped.sticks.filter(({ length }) => length === index).length);
  const cost = (used: readonly number[]): Money | null =>
    sumKnown(
      stock.map((one, index) => {
        const count = used[index] ?? 0;
        if (count === 0) return NOTHING;
        return one.known ? priced(priceOf(one.cost), BigInt(count), digits) : null;
      }),
    );
  const fromRack = stock.map(({ copies, cost: price }) => copies !== null && price === 0);
  const lengths = Array.from({ length: works }, () => 0n);
  const byLength = stock.map(() => 0n);
  for (const stick of plan.sticks) {
    for (const { rail } of stick.rails) {
      const wanted = job.rails[rail];
      const work = kindAt[wanted?.frame?.kind ?? -1];
      if (work === undefined) throw new RangeError(`rail ${rail} is of no work`);
      const length = BigInt(wanted?.length ?? ZERO);
      lengths[work] = (lengths[work] ?? 0n) + length;
      byLength[stick.length] = (byLength[stick.length] ?? 0n) + length;
    }
  }
  const used = usedIn(plan);
  const paid = cost(used);
  const saves = fromRack.some((rack, index) => rack && (used[index] ?? 0) > 0);
  const alone = saves
    ? planChopping(
        {
          ...job,
          lengths: job.lengths.map((one, index) => (fromRack[index] === true ? { ...one, copies: 0 } : one)),
        },
        options,
      )
    : null;
  const serves = alone !== null && total(alone.missing) <= total(plan.missing);
  return {
    name: moulding.name,
    group: "moulding",
    bought: used.reduce((sum, count, index) => sum + (fromRack[index] === true ? 0 : count), 0),
    cost: paid,
    without: alone === null ? paid : serves ? cost(usedIn(alone)) : null,
    byMeasure: byMeasure(
      byLength,
      stock.map((one, index) =>
        fromRack[index] === true
          ? "rack"
          : one.known
            ? { price: priceOf(one.cost), of: 1n, measure: BigInt(one.length) }
            : null,
      ),
      digits,
    ),
    uses: lengths,
  };
}
