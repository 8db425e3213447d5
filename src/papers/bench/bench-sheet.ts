import { isStopped, NOTHING_KNOWN, planHold, USUAL_HOLD } from "../../assembly/index.ts";
import type { Typeface } from "../../drawings/index.ts";
import { subtract } from "../../lengths/index.ts";
import { BENCH_SHEET } from "../../words/bench-sheet.ts";
import { stack } from "../block.ts";
import { type Body, bodyHeight, pagesOf, paperHead } from "../frame.ts";
import type { BenchSheetJob } from "../job.ts";
import { type Page, paperOf, type PaperSize } from "../paper.ts";
import { printableAll, printableDesign } from "../printable.ts";
import type { BenchDesk } from "./desk.ts";
import { doNotCut } from "./do-not-cut.ts";
import { frameDoesNotTake } from "./frame-stops.ts";
import { sheetHead } from "./head.ts";
import { onePage } from "./one-page.ts";
import { severalPages } from "./several-pages.ts";

/**
 * The bench sheet of one work: one page for one mat where it fits, else the cuts first and the steps
 * after; with several mats always so. A work that cannot be made gets one page that says DO NOT CUT.
 * Throws RangeError only when one step alone is higher than a page.
 */
export function benchSheet(job: BenchSheetJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk = deskOf(job, size, typeface);
  const head = paperHead(BENCH_SHEET.paper, desk.job.house, desk.job.plan);
  return pagesOf(desk, head, desk.job.work.title, bodiesOf(desk));
}

function deskOf(job: BenchSheetJob, size: PaperSize, typeface: Typeface): BenchDesk {
  const { title, maker, year, process, edition } = job.work;
  const work = printableAll({ title, maker, year, process, edition }, typeface);
  const house = printableAll(job.house, typeface);
  const boards = printableDesign(job.composition.design, typeface);
  return {
    paper: paperOf(size),
    typeface,
    speech: { ruler: boards.design.ruler, language: job.language },
    held: job.held ?? planHold(job.composition, NOTHING_KNOWN, USUAL_HOLD[boards.design.ruler.unit]),
    missing: work.missing + house.missing + boards.missing,
    job: {
      ...job,
      composition: { ...job.composition, design: boards.design },
      work: { ...job.work, ...work.texts },
      house: house.texts,
    },
  };
}

function bodiesOf(desk: BenchDesk): readonly Body[] {
  const { composition } = desk.job;
  const width = desk.paper.content.width;
  const room = bodyHeight(desk.paper);
  const head = sheetHead(desk, width, true);
  if (isStopped(composition)) {
    const later = sheetHead(desk, width, false);
    return doNotCut(desk, width, subtract(room, head.height), subtract(room, later.height)).map(
      (page, index) => ({
        block: stack([index === 0 ? head : later, page]),
        tells: BENCH_SHEET.doNotCut.toLowerCase(),
      }),
    );
  }
  const { frameStops = [] } = desk.job;
  if (frameStops.length > 0) {
    const block = stack([head, frameDoesNotTake(desk, frameStops, width)]);
    return [{ block, tells: BENCH_SHEET.doNotCut.toLowerCase() }];
  }
  const alone = composition.mats.length === 1 && (composition.print?.edition ?? []).length === 0;
  const one = alone ? onePage(desk, head, width, room) : null;
  return one === null ? severalPages(desk, head, width, room) : [{ block: one, tells: null }];
}
