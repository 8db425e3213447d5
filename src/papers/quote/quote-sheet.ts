import type { Typeface } from "../../drawings/index.ts";
import { type Length, mm, subtract, ZERO } from "../../lengths/index.ts";
import { type Money, minorUnits } from "../../plans/index.ts";
import {
  minutesWords,
  pricesLine,
  QUOTE,
  quoteTitle,
  sayMissing,
  sayMoney,
  currencyWords,
} from "../../words/quote.ts";
import { beside, type Block, block, gap, stack } from "../block.ts";
import { flowingPaper } from "../flowing.ts";
import { pageHead, voidFacts } from "../head.ts";
import { type Page, paperOf, type PaperSize, part, points } from "../paper.ts";
import { printable, printableAll } from "../printable.ts";
import type { Flowing } from "../table.ts";
import { caution, type Fact, writingLines } from "../tags.ts";
import { textAt } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { boughtRows } from "./bought.ts";
import type { QuoteDesk, QuoteSheetJob } from "./job.ts";
import { workRows } from "./works.ts";

const KEY: TextStyle = { size: points(24), weight: "bold", leading: points(26) };
const KEY_BESIDE: TextStyle = { size: points(15), weight: "semibold", leading: points(17) };

/**
 * What a show costs: in all, work by work, then what is bought, the minutes, and beside it what having it done
 * costs. What is not known is named before any sum.
 */
export function quoteSheet(job: QuoteSheetJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk = deskOf(job, size, typeface);
  const { width } = desk.paper.content;
  const head = headOf(desk, width);
  const rows: readonly Flowing[] = [
    ...workRows(desk, width),
    ...boughtRows(desk, width),
    { block: closing(width) },
  ];
  return flowingPaper(desk, QUOTE.paper, { house: desk.job.house, plan: desk.job.planWords }, head, rows);
}

function headOf(desk: QuoteDesk, width: Length): Block {
  const { quote, job, currency, stockDate, practiceDate, planWords } = desk.job;
  const facts: readonly Fact[] = [
    { name: QUOTE.money, value: currencyWords(currency) },
    ...(quote.show.minutes === 0 ? [] : [{ name: QUOTE.labour, value: minutesWords(quote.show.minutes) }]),
    ...voidFacts(planWords),
  ];
  return stack([
    pageHead(
      desk,
      {
        title: quoteTitle(job.works.reduce((sum, { copies }) => sum + copies, 0)),
        line: pricesLine(stockDate, practiceDate),
        cautions: quote.missing.map((one) => caution(desk, sayMissing(one), width)),
        facts,
      },
      width,
    ),
    gap(mm(3)),
    keySums(desk, width),
    gap(mm(1)),
  ]);
}

/** The show's sum, large, and what stands beside it. */
function keySums(desk: QuoteDesk, width: Length): Block {
  const { quote, job } = desk.job;
  const { show } = quote;
  const goods = minorUnits(show.goods.board + show.goods.glazing + show.goods.moulding + show.fittings);
  const known = quote.missing.every(({ code }) => code !== "price");
  const all: readonly (readonly [name: string, sum: Money])[] = [
    [QUOTE.goods, goods],
    ...(quote.labour.length === 0 || job.hour === null ? [] : [[QUOTE.labour, show.labour] as const]),
    ...(show.without === null ? [] : [[QUOTE.without, minorUnits(show.without + show.fittings)] as const]),
    ...(quote.having.length === 0 ? [] : [[QUOTE.having, show.having] as const]),
  ];
  const keyWidth = part(width, 0.3);
  const each = part(subtract(width, keyWidth), 1 / Math.max(all.length, 3));
  const key = (name: string, sum: Money, style: TextStyle, wide: Length): Block =>
    block(wide, mm(15), [
      textAt(ZERO, mm(3.2), name, TYPE.caption),
      textAt(ZERO, mm(13), sayMoney(sum, job.digits), style),
    ]);
  return beside([
    key(known ? QUOTE.inAll : QUOTE.asFarAsKnown, show.all, KEY, keyWidth),
    ...all.map(([name, sum]) => key(name, sum, KEY_BESIDE, each)),
  ]);
}

/** For whom, until when, and whose word it is. */
const closing = (width: Length): Block =>
  stack([gap(mm(8)), writingLines(width, [QUOTE.forWhom, QUOTE.until, QUOTE.signed], mm(14))]);

function deskOf(job: QuoteSheetJob, size: PaperSize, typeface: Typeface): QuoteDesk {
  let missing = 0;
  const text = (one: string, most?: number): string => {
    const printed = printable(one, typeface, most);
    missing += printed.missing;
    return printed.text;
  };
  const house = printableAll(job.house, typeface);
  missing += house.missing;
  const { quote } = job;
  const printed: QuoteSheetJob = {
    ...job,
    house: house.texts,
    currency: job.currency === null ? null : text(job.currency),
    job: { ...job.job, works: job.job.works.map((work) => ({ ...work, title: text(work.title, 300) })) },
    quote: {
      ...quote,
      goods: quote.goods.map((line) => ({ ...line, of: { ...line.of, name: text(line.of.name) } })),
      fittings: quote.fittings.map((line) => ({ ...line, of: { ...line.of, name: text(line.of.name) } })),
      having: quote.having.map((line) => ({ ...line, of: { ...line.of, what: text(line.of.what) } })),
      missing: quote.missing.map((one) => (one.code === "price" ? { ...one, name: text(one.name) } : one)),
    },
  };
  return { paper: paperOf(size), typeface, missing, job: printed };
}
