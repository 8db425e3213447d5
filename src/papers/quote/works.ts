import { mm, type Length } from "../../lengths/index.ts";
import { type Costs, GOODS_GROUPS, type Money } from "../../plans/index.ts";
import { type Phrase, sizeRuns } from "../../words/index.ts";
import { alikeWords, groupWord, minutesWords, QUOTE, sayMoney } from "../../words/quote.ts";
import { type Block, gap, rule, stack, restOf } from "../block.ts";
import { points } from "../paper.ts";
import { type Column, type Flowing, tableHead, tableRow } from "../table.ts";
import { ruledHead } from "../tags.ts";
import { clampedLines, paragraph, setLines, textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { QuoteDesk } from "./job.ts";

export const SUM: TextStyle = { size: points(10.5), weight: "regular", leading: points(13) };
export const SUM_STRONG: TextStyle = { ...SUM, weight: "bold" };
const TITLE: TextStyle = { ...TYPE.line, weight: "semibold" };
const SIZE: TextStyle = { ...TYPE.caption, figures: { whole: points(10), stacked: points(11) } };
const BETWEEN = mm(2.5);

/** One column of sums: its name, what stands in a row, and what it is in all. */
interface SumColumn {
  readonly name: string;
  readonly width: Length;
  readonly of: (costs: Costs) => readonly Phrase[];
  readonly strong?: boolean;
}

/** Every work with what it costs, and the show's sum, to which the works' add up. */
export function workRows(desk: QuoteDesk, width: Length): readonly Flowing[] {
  const { quote, job, sizes, language } = desk.job;
  const say = (money: Money): string => sayMoney(money, job.digits);
  const groups = GOODS_GROUPS.filter((group) => quote.goods.some(({ of }) => of.group === group));
  const sums: readonly SumColumn[] = [
    ...groups.map((group) => ({
      name: groupWord(group, language),
      width: mm(17),
      of: ({ goods }: Costs) => [say(goods[group])],
    })),
    ...(quote.fittings.length === 0
      ? []
      : [{ name: QUOTE.parts, width: mm(15), of: ({ fittings }: Costs) => [say(fittings)] }]),
    ...(quote.labour.length === 0
      ? []
      : [
          {
            name: QUOTE.labour,
            width: mm(21),
            of: ({ minutes, labour }: Costs) =>
              job.hour === null ? [minutesWords(minutes)] : [say(labour), minutesWords(minutes)],
          },
        ]),
    { name: QUOTE.inAll, width: mm(19), strong: true, of: ({ all }: Costs) => [say(all)] },
    ...(quote.having.length === 0
      ? []
      : [{ name: QUOTE.having, width: mm(19), of: ({ having }: Costs) => [say(having)] }]),
  ];
  const first = restOf(
    width,
    BETWEEN,
    sums.map((column) => column.width),
  );
  const columns: readonly Column[] = [
    { name: QUOTE.work, width: first, align: "start" },
    ...sums.map((column) => ({ name: column.name, width: column.width, align: "end" as const })),
  ];
  const cells = (costs: Costs): readonly Block[] =>
    sums.map(({ of, strong, width: wide }) => {
      const [main = "", ...more] = of(costs);
      return stack([
        paragraph(desk, main, strong === true ? SUM_STRONG : SUM, wide, "end"),
        ...more.flatMap((words) => [gap(mm(0.6)), paragraph(desk, words, TYPE.caption, wide, "end")]),
      ]);
    });
  const head = tableHead(desk, columns, BETWEEN);
  const again = stack([gap(mm(1.5)), head, rule(width, "rule-thin")]);
  const rows = quote.works.map((costs, index): Flowing => {
    const work = job.works[index];
    const own = sizes[index];
    const title = stack([
      setLines(clampedLines(desk, work?.title ?? "", TITLE, first, 2), TITLE, first),
      gap(mm(0.8)),
      paragraph(
        desk,
        own === undefined ? "" : [sizeRuns(own.size, own.ruler), alikeWords(work?.copies ?? 1)],
        SIZE,
        first,
      ),
    ]);
    return { block: tableRow(columns, [title, ...cells(costs)], BETWEEN), again };
  });
  const total = stack([
    rule(width, "rule"),
    tableRow(columns, [textLine(desk, QUOTE.inAll, SUM_STRONG), ...cells(quote.show)], BETWEEN, {
      above: mm(2),
      below: mm(2),
      line: null,
    }),
  ]);
  const title = stack([gap(mm(4)), ruledHead(desk, QUOTE.eachWork, width), gap(mm(1))]);
  return [
    { block: stack([title, head, rule(width, "rule-thin")]), withNext: true },
    ...rows,
    { block: total, again },
  ];
}
