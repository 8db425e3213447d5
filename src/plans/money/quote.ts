import {
  type Done,
  type Fitting,
  type Goods,
  GOODS_GROUPS,
  type GoodsGroup,
  type Operation,
  OPERATIONS,
  type Per,
  type QuotedWork,
  type QuoteJob,
} from "./job.ts";
import { type Money, minorUnits, NOTHING, priced, pricedPart, totalOf } from "./price.ts";
import { shareOut } from "./share.ts";

/** What a quote cannot know, as a record: nothing is put in its place. */
export type Missing =
  | { readonly code: "price"; readonly group: GoodsGroup; readonly name: string }
  | { readonly code: "hour" }
  | { readonly code: "minutes"; readonly operations: readonly Operation[] }
  | { readonly code: "fittings" };

/** What one work costs, all its copies together, or a whole show. Hundredths of a minute. */
export interface Costs {
  readonly goods: Readonly<Record<GoodsGroup, Money>>;
  readonly fittings: Money;
  readonly minutes: number;
  readonly labour: Money;
  readonly all: Money;
  /** Goods by their own measure, waste left out; null: not known of some. */
  readonly byMeasure: Money | null;
  /** Goods without the rack and what falls out of windows; null: not known of some, or they could not be made. */
  readonly without: Money | null;
  /** What having it done costs. */
  readonly having: Money;
}

/** One line of what is bought or done, with each work's share of it. */
export interface Line<Of> {
  readonly of: Of;
  readonly sum: Money;
  readonly shares: readonly Money[];
}

export interface Counted {
  readonly count: number;
}

/** What a show costs. Each line's shares add up to its sum, and the works' costs to the show's, to the minor unit. */
export interface Quote {
  readonly goods: readonly Line<Goods>[];
  readonly fittings: readonly Line<Fitting & Counted>[];
  readonly labour: readonly Line<{ readonly operation: Operation; readonly minutes: number } & Counted>[];
  readonly having: readonly Line<Done & Counted>[];
  readonly works: readonly Costs[];
  readonly show: Costs;
  readonly missing: readonly Missing[];
}

/** How many of what a price goes by a work has. */
function countOf(work: QuotedWork, per: Per): number {
  switch (per) {
    case "work":
    case "show":
      return work.copies;
    case "mat":
      return work.mats;
    case "pane":
      return work.panes;
    case "frame":
      return work.frames;
  }
}

/** The weights by which a line is shared, and how many it is of: of the show itself one. */
function counted(
  works: readonly QuotedWork[],
  per: Per,
): { readonly count: number; readonly weights: readonly bigint[] } {
  const counts = works.map((work) => countOf(work, per));
  return {
    count: per === "show" ? 1 : counts.reduce((sum, one) => sum + one, 0),
    weights: counts.map(BigInt),
  };
}

/** What a show costs, by what is known; what is not is named. */
export function quoteShow(job: QuoteJob): Quote {
  const { works, digits, minutes: told, hour } = job;
  const goods = job.goods.map((of): Line<Goods> => {
    const sum = of.cost ?? NOTHING;
    return { of, sum, shares: shareOut(sum, of.uses) };
  });
  const byMeasure = knownLines(job.goods, ({ byMeasure: sum }) => sum);
  const without = knownLines(job.goods, ({ without: sum }) => sum);
  const fittings = job.fittings.map((of): Quote["fittings"][number] => {
    const { count: counts, weights } = counted(works, of.per);
    const count = counts * of.each;
    const sum = priced(of.price, BigInt(Math.ceil(count / of.pack)), digits);
    return { of: { ...of, count }, sum, shares: shareOut(sum, weights) };
  });
  const labour = OPERATIONS.flatMap((operation): Quote["labour"] => {
    const each = told[operation];
    const counts = works.map(({ done }) => done[operation]);
    const count = counts.reduce((sum, one) => sum + one, 0);
    if (each === undefined || count === 0) return [];
    const minutes = each * count;
    const sum = hour === null ? NOTHING : pricedPart(hour, BigInt(minutes), 6000n, digits);
    return [{ of: { operation, minutes, count }, sum, shares: shareOut(sum, counts.map(BigInt)) }];
  });
  const having = job.having.map((of): Quote["having"][number] => {
    const { count, weights } = counted(works, of.per);
    const sum = priced(of.price, BigInt(count), digits);
    return { of: { ...of, count }, sum, shares: shareOut(sum, weights) };
  });
  const ofWork = works.map((work, index) =>
    costs(
      (group) =>
        shareOf(
          goods.filter(({ of }) => of.group === group),
          index,
        ),
      shareOf(fittings, index),
      OPERATIONS.reduce((sum, operation) => sum + (told[operation] ?? 0) * work.done[operation], 0),
      shareOf(labour, index),
      byMeasure === null ? null : shareOf(byMeasure, index),
      without === null ? null : shareOf(without, index),
      shareOf(having, index),
    ),
  );
  const show = costs(
    (group) => sumOf(goods.filter(({ of }) => of.group === group)),
    sumOf(fittings),
    labour.reduce((sum, { of }) => sum + of.minutes, 0),
    sumOf(labour),
    byMeasure === null ? null : sumOf(byMeasure),
    without === null ? null : sumOf(without),
    sumOf(having),
  );
  return {
    goods,
    fittings,
    labour,
    having,
    works: ofWork,
    show,
    missing: missingIn(job),
  };
}

/** One sum of every material, shared by its uses; null where that of some is not known. */
function knownLines(
  goods: readonly Goods[],
  of: (one: Goods) => Money | null,
): readonly Line<Goods>[] | null {
  const lines = goods.flatMap((one): Line<Goods>[] => {
    const sum = of(one);
    return sum === null ? [] : [{ of: one, sum, shares: shareOut(sum, one.uses) }];
  });
  return lines.length === goods.length ? lines : null;
}

/** One work's part of several lines. */
const shareOf = (lines: readonly { readonly shares: readonly Money[] }[], work: number): Money =>
  totalOf(lines.map(({ shares }) => shares[work] ?? NOTHING));

const sumOf = (lines: readonly { readonly sum: Money }[]): Money => totalOf(lines.map(({ sum }) => sum));

function costs(
  ofGroup: (group: GoodsGroup) => Money,
  fittings: Money,
  minutes: number,
  labour: Money,
  byMeasure: Money | null,
  without: Money | null,
  having: Money,
): Costs {
  const goods = { board: ofGroup("board"), glazing: ofGroup("glazing"), moulding: ofGroup("moulding") };
  const all = minorUnits(GOODS_GROUPS.reduce((sum, group) => sum + goods[group], 0) + fittings + labour);
  return { goods, fittings, minutes, labour, all, byMeasure, without, having };
}

function missingIn({ goods, works, minutes, hour, fittings }: QuoteJob): readonly Missing[] {
  const done = OPERATIONS.filter((operation) => works.some((work) => work.done[operation] > 0));
  const untold = done.filter((operation) => minutes[operation] === undefined);
  return [
    ...goods.flatMap(({ cost, group, name }): Missing[] =>
      cost === null ? [{ code: "price", group, name }] : [],
    ),
    ...(fittings.length === 0 ? [{ code: "fittings" } as const] : []),
    ...(hour === null ? [{ code: "hour" } as const] : []),
    ...(untold.length === 0 ? [] : [{ code: "minutes", operations: untold } as const]),
  ];
}
