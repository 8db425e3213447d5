import type { Typeface } from "../../drawings/index.ts";
import { type Length, mm, ZERO } from "../../lengths/index.ts";
import { type Money, totalOf } from "../../plans/index.ts";
import { sizeRuns } from "../../words/index.ts";
import { currencyWords, sayMoney } from "../../words/quote.ts";
import { LOAN, loanTitle } from "../../words/travel.ts";
import { type Block, block, gap, placed, rule, stack, restOf } from "../block.ts";
import { flowingPaper } from "../flowing.ts";
import { pageHead, voidFacts } from "../head.ts";
import { type Desk, type Page, paperOf, type PaperSize, points } from "../paper.ts";
import { printable, printableAll } from "../printable.ts";
import { type Column, type Flowing, tableHead, tableRow } from "../table.ts";
import { ruledHead, tickBox, writingLines } from "../tags.ts";
import { clampedLines, paragraph, setLines, textAt, textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { LentWork, LoanListJob } from "./job.ts";

const BETWEEN = mm(3);
const TITLE: TextStyle = { ...TYPE.line, weight: "semibold" };
const SIZE: TextStyle = { ...TYPE.line, figures: { whole: points(12), stacked: points(13) } };
const VALUE: TextStyle = { size: points(12), weight: "regular", leading: points(14) };
const TOTAL: TextStyle = { size: points(16), weight: "bold", leading: points(18) };

interface LoanDesk extends Desk {
  readonly job: LoanListJob;
  readonly missing: number;
}

/** Every work that leaves, by whose it is, with its value and two ticks, and room for both hands to sign. */
export function loanList(job: LoanListJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk = deskOf(job, size, typeface);
  const { width } = desk.paper.content;
  const { works, planWords, currency } = desk.job;
  const head = pageHead(
    desk,
    {
      title: loanTitle(works.reduce((all, { work }) => all + work.quantity, 0)),
      line: LOAN.line,
      facts: [
        { name: LOAN.money, value: currency === null ? LOAN.notTold : currencyWords(currency) },
        ...voidFacts(planWords),
      ],
    },
    width,
  );
  const lenders = [...new Set(works.map(({ lender }) => lender))];
  const rows: readonly Flowing[] = [
    { block: lines(width, [LOAN.borrower, LOAN.from, LOAN.until]), withNext: true },
    ...lenders.flatMap((lender) =>
      lenderRows(
        desk,
        lender,
        works.filter((one) => one.lender === lender),
        width,
      ),
    ),
    { block: totalRow(desk, width) },
    { block: lines(width, [LOAN.out, LOAN.returned]) },
  ];
  return flowingPaper(desk, LOAN.paper, { house: desk.job.house, plan: planWords }, head, rows);
}

function lenderRows(
  desk: LoanDesk,
  lender: string,
  works: readonly LentWork[],
  width: Length,
): readonly Flowing[] {
  const widths = { number: mm(22), size: mm(40), value: mm(30), tick: mm(9) };
  const title = restOf(width, BETWEEN, [...Object.values(widths), widths.tick]);
  const columns: readonly Column[] = [
    { name: LOAN.number, width: widths.number, align: "start" },
    { name: LOAN.work, width: title, align: "start" },
    { name: LOAN.size, width: widths.size, align: "start" },
    { name: LOAN.value, width: widths.value, align: "end" },
    { name: LOAN.going, width: widths.tick, align: "middle" },
    { name: LOAN.back, width: widths.tick, align: "middle" },
  ];
  const head = tableHead(desk, columns, BETWEEN);
  const named = ruledHead(desk, lender === "" ? LOAN.own : `${LOAN.lentBy}${lender}`, width);
  return [
    { block: stack([gap(mm(5)), named, head]), withNext: true },
    ...works.map((own): Flowing => {
      const { work } = own;
      const said = [work.maker, work.year, work.quantity > 1 ? `${work.quantity} alike` : ""]
        .filter((text) => text !== "")
        .join(", ");
      return {
        block: tableRow(
          columns,
          [
            paragraph(desk, own.mark, TITLE, widths.number),
            stack([
              setLines(clampedLines(desk, work.title, TITLE, title, 3), TITLE, title),
              ...(said === "" ? [] : [gap(mm(0.6)), paragraph(desk, said, TYPE.caption, title)]),
            ]),
            paragraph(desk, sizeRuns(own.size, own.ruler, "up"), SIZE, widths.size),
            own.value === null
              ? writeLine(widths.value)
              : textLine(desk, sayMoney(own.value, desk.job.digits), VALUE),
            tickBox(),
            tickBox(),
          ],
          BETWEEN,
        ),
        again: stack([gap(mm(2)), named, head]),
      };
    }),
  ];
}

/** A line for a figure in a hand's own writing. */
const writeLine = (width: Length): Block => block(width, mm(6), placed(rule(width, "edge"), ZERO, mm(6)));

function totalRow(desk: LoanDesk, width: Length): Block {
  const { works, digits } = desk.job;
  const told = works.flatMap(({ value }): Money[] => (value === null ? [] : [value]));
  if (told.length === 0) return gap(mm(1));
  const name = told.length === works.length ? LOAN.inAll : LOAN.asFarAsKnown;
  const right = restOf(width, BETWEEN, [mm(9), mm(9)]);
  return block(width, mm(12), [
    textAt(ZERO, mm(8), name, { ...TITLE, weight: "bold" }),
    textAt(right, mm(8), sayMoney(totalOf(told), digits), TOTAL, "end"),
  ]);
}

const lines = (width: Length, names: readonly string[]): Block =>
  stack([gap(mm(6)), writingLines(width, names, mm(13))]);

function deskOf(job: LoanListJob, size: PaperSize, typeface: Typeface): LoanDesk {
  const house = printableAll(job.house, typeface);
  let missing = house.missing;
  const works = job.works.map((own) => {
    const { title, maker, year } = own.work;
    const words = printableAll({ title, maker, year, mark: own.mark, lender: own.lender }, typeface);
    missing += words.missing;
    return {
      ...own,
      work: { ...own.work, title: words.texts.title, maker: words.texts.maker, year: words.texts.year },
      mark: words.texts.mark,
      lender: words.texts.lender,
    };
  });
  return {
    paper: paperOf(size),
    typeface,
    missing,
    job: {
      ...job,
      works,
      house: house.texts,
      currency: job.currency === null ? null : printable(job.currency, typeface).text,
    },
  };
}
