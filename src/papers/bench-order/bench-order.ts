import type { Typeface } from "../../drawings/index.ts";
import { subtract, type Length } from "../../lengths/index.ts";
import { BENCH_ORDER_PAPER, dayLine } from "../../words/bench-order.ts";
import { BENCH_SHEET, handednessWords } from "../../words/bench-sheet.ts";
import { shortDate } from "../../words/index.ts";
import { unitWords } from "../../words/papers.ts";
import { type Block, stack } from "../block.ts";
import { bodyHeight, pagesOf, paperHead } from "../frame.ts";
import { type Page, paperOf, type PaperSize } from "../paper.ts";
import { printable, printableAll } from "../printable.ts";
import { flow } from "../table.ts";
import { type Fact } from "../tags.ts";
import { pageHead, voidFacts } from "../head.ts";
import { blankRows, markRows } from "./blanks.ts";
import type { OrderDesk } from "./desk.ts";
import type { BenchOrderJob } from "./job.ts";
import { cutRows } from "./runs.ts";

/**
 * One day at the bench: the blanks by size, what is marked alike, then the stop's settings in the order
 * that moves it least, each with the mats to cut at it. No page where nothing is cut.
 */
export function benchOrderPaper(job: BenchOrderJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  if (job.runs.length === 0) return [];
  const desk = deskOf(job, size, typeface);
  const { width } = desk.paper.content;
  const head = headOf(desk, width);
  const room = bodyHeight(desk.paper);
  const rows = [...blankRows(desk, width), ...markRows(desk, width), ...cutRows(desk, width)];
  const pages = flow(rows, subtract(room, head.height), room);
  return pagesOf(
    desk,
    paperHead(BENCH_ORDER_PAPER.paper, desk.job.house, desk.job.plan),
    BENCH_ORDER_PAPER.paper,
    pages.map((page, index) => ({ block: index === 0 ? stack([head, page]) : page, tells: null })),
  );
}

function deskOf(job: BenchOrderJob, size: PaperSize, typeface: Typeface): OrderDesk {
  const house = printableAll(job.house, typeface);
  let missing = house.missing;
  const shown = new Map<string, string>();
  const show = (text: string): string => {
    const known = shown.get(text);
    if (known !== undefined) return known;
    const own = printable(text, typeface);
    missing += own.missing;
    shown.set(text, own.text);
    return own.text;
  };
  const printed: BenchOrderJob = {
    ...job,
    house: house.texts,
    sizes: job.sizes.map((one) => ({ ...one, board: show(one.board) })),
    marked: job.marked.map((one) => ({ ...one, titles: one.titles.map(show) })),
    runs: job.runs.map((run) => ({
      ...run,
      cuts: run.cuts.map((cut) => ({ ...cut, title: show(cut.title) })),
    })),
  };
  return {
    paper: paperOf(size),
    typeface,
    speech: { ruler: job.ruler, language: job.language },
    job: printed,
    missing,
  };
}

function headOf(desk: OrderDesk, width: Length): Block {
  const { job } = desk;
  const all: readonly Fact[] = [
    { name: BENCH_ORDER_PAPER.unit, value: unitWords(job.ruler) },
    { name: BENCH_ORDER_PAPER.bench, value: handednessWords(job.bench.hand) },
    {
      name: BENCH_ORDER_PAPER.tested,
      value: job.bench.scaleTested === null ? BENCH_SHEET.scaleUntested : shortDate(job.bench.scaleTested),
    },
    ...voidFacts(job.plan),
  ];
  const mats = job.marked.reduce((sum, { blanks }) => sum + blanks.length, 0);
  return pageHead(
    desk,
    {
      title: BENCH_ORDER_PAPER.title,
      line: dayLine(job.works, mats, job.runs.length, job.bound, job.oneByOne),
      facts: all,
    },
    width,
  );
}
