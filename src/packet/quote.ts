import type { Typeface } from "../drawings/index.ts";
import { type Page, type PaperSize, quoteSheet } from "../papers/index.ts";
import type { Costs, Money } from "../plans/index.ts";
import { QUOTE, sayMissing, sayMoney } from "../words/quote.ts";
import type { Packeted } from "./bench-sheets.ts";
import type { TableOut } from "./file.ts";
import type { Quoted } from "./money.ts";
import type { Prepared } from "./order.ts";

/** Whether any price or minute is known: without one there is nothing to quote. */
export const isPriced = ({ stock, practice: { money } }: Prepared): boolean =>
  stock.priced ||
  money.fittings.length > 0 ||
  money.having.length > 0 ||
  Object.keys(money.minutes).length > 0;

/** The pages of the quote. */
export const quotePages = (
  { job, quote, works, currency }: Quoted,
  prepared: Prepared,
  { house, plan: planWords, practice }: Packeted,
  size: PaperSize,
  typeface: Typeface,
): readonly Page[] =>
  quoteSheet(
    {
      job,
      quote,
      sizes: works.flatMap((index) => {
        const work = prepared.works[index];
        return work === undefined
          ? []
          : [{ size: work.composition.outer, ruler: work.composition.design.ruler }];
      }),
      currency,
      stockDate: prepared.stock.date,
      practiceDate: practice.money.date ?? prepared.stock.date,
      house,
      planWords,
      language: practice.language,
    },
    size,
    typeface,
  );

const sumOut = (sum: Money | null, digits: number): string | null =>
  sum === null ? null : sayMoney(sum, digits);

/** Costs under the names of the open format, in the order of the table's columns. */
function costsOut(costs: Costs, digits: number): Readonly<Record<string, string | number | null>> {
  const { goods, fittings, minutes, labour, all, byMeasure, without, having } = costs;
  const money = (sum: Money | null): string | null => sumOut(sum, digits);
  return {
    board: money(goods.board),
    glazing: money(goods.glazing),
    moulding: money(goods.moulding),
    parts: money(fittings),
    minutes: minutes / 100,
    work: money(labour),
    all: money(all),
    byMeasure: money(byMeasure),
    without: money(without),
    having: money(having),
  };
}

/** Every work's costs as a row, the show's last: they add up to it, column by column. */
export function quoteTable({ job, quote, works }: Quoted, prepared: Prepared): TableOut {
  const cells = (costs: Costs): readonly string[] =>
    Object.values(costsOut(costs, job.digits)).map((value) => String(value ?? ""));
  const copies = job.works.reduce((sum, work) => sum + work.copies, 0);
  return {
    header: QUOTE.csv,
    rows: [
      ...quote.works.map((costs, index) => [
        String(prepared.works[works[index] ?? -1]?.row ?? ""),
        job.works[index]?.title ?? "",
        String(job.works[index]?.copies ?? ""),
        ...cells(costs),
      ]),
      ["", QUOTE.csvTotal, String(copies), ...cells(quote.show)],
    ],
  };
}

/** What a packet costs in the open format: sums as texts with their currency's decimals, so that no reader makes a binary fraction of them. */
export function moneyJson(
  { job, quote, works, currency }: Quoted,
  { works: composed, stock, practice }: Prepared,
): object {
  const money = (sum: Money | null): string | null => sumOut(sum, job.digits);
  const costs = (one: Costs): object => costsOut(one, job.digits);
  return {
    currency,
    dates: { stock: stock.date, practice: practice.money.date },
    show: costs(quote.show),
    works: quote.works.map((one, index) => ({
      row: composed[works[index] ?? -1]?.row ?? null,
      title: job.works[index]?.title,
      ...costs(one),
    })),
    goods: quote.goods.map(({ of }) => ({
      name: of.name,
      group: of.group,
      bought: of.bought,
      cost: money(of.cost),
      byMeasure: money(of.byMeasure),
      without: money(of.without),
    })),
    missing: quote.missing.map((one) => ({ code: one.code, text: sayMissing(one) })),
  };
}
