import { type Length, mm } from "../../lengths/index.ts";
import type { Money } from "../../plans/index.ts";
import { sentence } from "../../words/index.ts";
import {
  operationWord,
  partsWords,
  piecesWord,
  QUOTE,
  sayMoney,
  sayPrice,
  timesMinutes,
  timesPer,
} from "../../words/quote.ts";
import { type Block, gap, stack, restOf } from "../block.ts";
import { type Column, type Flowing, tableHead, tableRow } from "../table.ts";
import { ruledHead } from "../tags.ts";
import { paragraph } from "../text.ts";
import { TYPE } from "../type.ts";
import type { QuoteDesk } from "./job.ts";
import { SUM, SUM_STRONG } from "./works.ts";

const BETWEEN = mm(3);
const MONEY = mm(27);

/** What is bought, the small parts, the minutes, and what having it done costs: each line with its sum. */
export function boughtRows(desk: QuoteDesk, width: Length): readonly Flowing[] {
  const { quote, job } = desk.job;
  const say = (money: Money | null, otherwise: string = QUOTE.unknown): string =>
    money === null ? otherwise : sayMoney(money, job.digits);
  const price = (one: Parameters<typeof sayPrice>[0]): string => sayPrice(one, job.digits);
  const what = restOf(width, BETWEEN, [MONEY, MONEY, MONEY]);
  const goods: readonly Column[] = [
    { name: "", width: what, align: "start" },
    { name: QUOTE.ownMeasure, width: MONEY, align: "end" },
    { name: QUOTE.newOnly, width: MONEY, align: "end" },
    { name: QUOTE.paid, width: MONEY, align: "end" },
  ];
  const plain: readonly Column[] = [
    { name: "", width: restOf(width, BETWEEN, [MONEY]), align: "start" },
    { name: QUOTE.paid, width: MONEY, align: "end" },
  ];
  const named = (name: string, of: string, wide: Length): Block =>
    stack([
      paragraph(desk, sentence(name), { ...TYPE.line, weight: "semibold" }, wide),
      gap(mm(0.6)),
      paragraph(desk, of, TYPE.caption, wide),
    ]);
  const cell = (text: string, strong = false): Block =>
    paragraph(desk, text, strong ? SUM_STRONG : SUM, MONEY, "end");
  const plainRow = (name: string, of: string, text: string): Block =>
    tableRow(plain, [named(name, of, plain[0]?.width ?? what), cell(text, true)], BETWEEN);
  return [
    ...section(
      desk,
      QUOTE.bought,
      width,
      quote.goods.map(({ of }) =>
        tableRow(
          goods,
          [
            named(of.name, piecesWord(of.group, of.bought), what),
            cell(say(of.byMeasure)),
            cell(say(of.without, of.cost === null ? QUOTE.unknown : QUOTE.noPlan)),
            cell(say(of.cost), true),
          ],
          BETWEEN,
        ),
      ),
      tableHead(desk, goods, BETWEEN),
      paragraph(desk, QUOTE.measureNote, TYPE.caption, width),
    ),
    ...section(
      desk,
      QUOTE.smallParts,
      width,
      quote.fittings.map(({ of, sum: paid }) =>
        plainRow(of.name, partsWords(of.count, of.pack, price(of.price)), say(paid)),
      ),
    ),
    ...section(
      desk,
      QUOTE.byHand,
      width,
      quote.labour.map(({ of, sum: paid }) =>
        plainRow(
          operationWord(of.operation),
          timesMinutes(of.count, job.minutes[of.operation] ?? 0, of.minutes),
          job.hour === null ? "" : say(paid),
        ),
      ),
    ),
    ...section(
      desk,
      QUOTE.done,
      width,
      quote.having.map(({ of, sum: paid }) =>
        plainRow(of.what, timesPer(of.count, of.per, price(of.price)), say(paid)),
      ),
    ),
  ];
}

/** A named group of rows; nothing where there is none. */
function section(
  desk: QuoteDesk,
  name: string,
  width: Length,
  rows: readonly Block[],
  head: Block | null = null,
  note: Block | null = null,
): readonly Flowing[] {
  if (rows.length === 0) return [];
  const named = ruledHead(desk, name, width);
  const again = stack([gap(mm(1.5)), named, ...(head === null ? [] : [head])]);
  const title = stack([
    gap(mm(5)),
    named,
    ...(note === null ? [] : [gap(mm(1)), note]),
    ...(head === null ? [] : [head]),
  ]);
  return [{ block: title, withNext: true }, ...rows.map((block) => ({ block, again }))];
}
