import { LABEL_HEIGHT, LABEL_LIMITS, labelChecks } from "../../assembly/index.ts";
import type { Typeface } from "../../drawings/index.ts";
import { add, type Length, mm, subtract } from "../../lengths/index.ts";
import { backLabelsTitle, LABELS, labelCaution, wallLabelsTitle, wallLine } from "../../words/labels.ts";
import { type Block, gap, stack } from "../block.ts";
import { bodyHeight, pagesOf, paperHead } from "../frame.ts";
import { type Desk, type Page, paperOf, type PaperSize, part } from "../paper.ts";
import { printable, printableAll, printableDesign } from "../printable.ts";
import { caution } from "../tags.ts";
import { backLabel } from "./back-label.ts";
import { blankRows } from "./blank-labels.ts";
import type { LabelledWork, LabelsJob } from "./job.ts";
import { BETWEEN, cropped, inTwos, pagesOfRows, sheetTitle } from "./sheet.ts";
import { wallLabel, wideWallLabel } from "./wall-label.ts";

/** A back label for every copy of every work, as many a page as fit. Crop marks, no boxes. No page where there is no work. */
export function backLabels(job: LabelsJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk: Desk = { paper: paperOf(size), typeface };
  const works = printedWorks(job, typeface);
  const house = houseOf(job, typeface);
  const width = part(subtract(desk.paper.content.width, BETWEEN), 0.5);
  const cells = works.flatMap((own) => {
    const label = cropped(backLabel(desk, own, { ...job, house }, width));
    return Array.from({ length: own.work.quantity }, () => label);
  });
  const title = sheetTitle(desk, backLabelsTitle(cells.length), LABELS.onTheBack, missingIn(works));
  return labelPages(desk, job, LABELS.back, pagesOfRows(desk, title, inTwos(cells)));
}

/** A wall label for every work: two a row, one with a text alone in its row. What a text breaks of the published limits stands above it. */
export function wallLabels(job: LabelsJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk: Desk = { paper: paperOf(size), typeface };
  const { width } = desk.paper.content;
  const works = printedWorks(job, typeface);
  const half = part(subtract(width, BETWEEN), 0.5);
  const title = sheetTitle(
    desk,
    wallLabelsTitle(works.length),
    wallLine(LABEL_HEIGHT[job.ruler.unit], job.ruler),
    missingIn(works),
  );
  const room = subtract(bodyHeight(desk.paper), add(title.height, BETWEEN));
  const rows = [
    ...inTwos(
      works
        .filter(({ text }) => text === "")
        .map((own) => cropped(wallLabel(desk, own.work, half, LEAST_WALL))),
    ),
    ...works.filter(({ text }) => text !== "").map((own) => withCautions(desk, own, room)),
  ];
  return labelPages(desk, job, LABELS.wall, pagesOfRows(desk, title, rows));
}

/** A label with a text, under what it breaks of the published limits; nothing of it is higher than `room`. */
function withCautions(desk: Desk, own: PrintedWork, room: Length): Block {
  const { width } = desk.paper.content;
  const cautions = labelChecks(own.text)
    .filter(({ level }) => level === "warn")
    .flatMap((check) => [
      caution(desk, labelCaution(shortTitle(own.work.title), check, LABEL_LIMITS), width),
      gap(mm(2)),
    ]);
  const above = stack(cautions);
  return stack([above, cropped(wideWallLabel(desk, own, subtract(room, above.height)))]);
}

const shortTitle = (title: string): string =>
  title.length > 60 ? `${title.slice(0, 59).trimEnd()}…` : title;

/** A slip for every blank, ten a page. */
export function boardLabels(job: LabelsJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk: Desk = { paper: paperOf(size), typeface };
  return labelPages(desk, job, LABELS.board, blankRows(desk, job));
}

const houseOf = ({ house }: LabelsJob, typeface: Typeface): LabelsJob["house"] =>
  printableAll({ studio: house.studio, show: house.show }, typeface).texts;

const labelPages = (desk: Desk, job: LabelsJob, paper: string, bodies: readonly Block[]): readonly Page[] =>
  pagesOf(
    desk,
    paperHead(paper, houseOf(job, desk.typeface), job.plan),
    paper,
    bodies.map((body) => ({ block: body, tells: null })),
  );

/** Four rows a page. */
const LEAST_WALL = mm(51);

type PrintedWork = LabelledWork & { readonly missing: number };

const missingIn = (works: readonly PrintedWork[]): number =>
  works.reduce((all, { missing }) => all + missing, 0);

/** A label's text has at most so many signs: a page holds no more. */
const MOST_OF_TEXT = 1200;

const printedWorks = ({ works }: LabelsJob, typeface: Typeface): readonly PrintedWork[] =>
  works.map((own) => {
    const { title, maker, year, process, edition } = own.work;
    const words = printableAll({ title, maker, year, process, edition, mark: own.mark }, typeface);
    const boards = printableDesign(own.composition.design, typeface);
    const text = printable(own.text, typeface, MOST_OF_TEXT);
    const glazing = printable(own.glazing?.board ?? "", typeface);
    const bed = own.held?.bed;
    const sink = printable(bed?.kind === "sink" ? bed.board : "", typeface);
    return {
      ...own,
      composition: { ...own.composition, design: boards.design },
      work: { ...own.work, ...words.texts },
      held:
        own.held !== null && bed?.kind === "sink"
          ? { ...own.held, bed: { ...bed, board: sink.text } }
          : own.held,
      glazing: own.glazing === null ? null : { ...own.glazing, board: glazing.text },
      text: text.text,
      mark: words.texts.mark,
      missing: [words, boards, text, glazing, sink].reduce((all, one) => all + one.missing, 0),
    };
  });
