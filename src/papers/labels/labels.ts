import type { Typeface } from "../../drawings/index.ts";
import { add, mm, subtract, times } from "../../lengths/index.ts";
import { LABELS, labelsTitle } from "../../words/labels.ts";
import { type Block, beside } from "../block.ts";
import { bodyHeight, pagesOf, paperHead } from "../frame.ts";
import { type Desk, type Page, paperOf, type PaperSize, part } from "../paper.ts";
import { printableAll, printableDesign } from "../printable.ts";
import { backLabel } from "./back-label.ts";
import { blankPages } from "./blank-labels.ts";
import type { LabelsJob } from "./job.ts";
import { BETWEEN, cropped, pagesOfRows, sheetTitle } from "./sheet.ts";
import { wallLabel } from "./wall-label.ts";

/**
 * Back and wall labels, two works a page, then a label for every blank, ten a page. Crop marks, no
 * boxes: cut from mark to mark. No page at all where there is neither work nor blank.
 */
export function labels(job: LabelsJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk: Desk = { paper: paperOf(size), typeface };
  const house = printableAll({ studio: job.house.studio, show: job.house.show }, typeface).texts;
  const head = paperHead(LABELS.paper, house, job.plan);
  const printed = { ...job, house };
  const bodies = [...workPages(desk, printed), ...blankPages(desk, printed)];
  return pagesOf(
    desk,
    head,
    LABELS.paper,
    bodies.map((body) => ({ block: body, tells: null })),
  );
}

function workPages(desk: Desk, job: LabelsJob): readonly Block[] {
  const printed = job.works.map((own) => {
    const { title, maker, year, process, edition } = own.work;
    const words = printableAll({ title, maker, year, process, edition, mark: own.mark }, desk.typeface);
    const boards = printableDesign(own.composition.design, desk.typeface);
    return {
      ...own,
      composition: { ...own.composition, design: boards.design },
      work: { ...own.work, ...words.texts },
      mark: words.texts.mark,
      missing: words.missing + boards.missing,
    };
  });
  const missing = printed.reduce((all, own) => all + own.missing, 0);
  const title = sheetTitle(desk, labelsTitle(job.works.length), LABELS.cut, missing);
  const width = part(subtract(desk.paper.content.width, BETWEEN), 0.5);
  const room = subtract(bodyHeight(desk.paper), title.height);
  const wallHeight = mm(62);
  const backHeight = subtract(room, add(wallHeight, times(BETWEEN, 2)));
  const pairs = printed.flatMap((_, index) => (index % 2 === 0 ? [printed.slice(index, index + 2)] : []));
  const rows = pairs.flatMap((pair) => [
    beside(
      pair.map((own) => cropped(backLabel(desk, own, job, width, backHeight))),
      BETWEEN,
    ),
    beside(
      pair.map((own) => cropped(wallLabel(desk, own.work, width, wallHeight))),
      BETWEEN,
    ),
  ]);
  return pagesOfRows(desk, title, rows);
}
