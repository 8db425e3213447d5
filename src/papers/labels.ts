import type { Composition } from "../assembly/index.ts";
import type { Mark, Typeface } from "../drawings/index.ts";
import type { Size } from "../geometry/index.ts";
import { add, type Length, larger, mm, subtract, sum, times, ZERO } from "../lengths/index.ts";
import { dateWords, type Language, NBSP, type Phrase, type Speech, sizeRuns } from "../words/index.ts";
import {
  blankFor,
  boardLabelsTitle,
  closedWords,
  heldWords,
  LABELS,
  labelsTitle,
  makerLine,
  releaseWords,
  sizesLine,
  touchesWords,
} from "../words/labels.ts";
import { EVERY_PAPER, missingSigns, planWords } from "../words/papers.ts";
import { aligned, type Block, beside, block, gap, placed, rule, stack } from "./block.ts";
import { bodyHeight, pagesOf, type PaperHead } from "./frame.ts";
import type { House, PlanWords, WorkWords } from "./job.ts";
import { type Desk, type Page, paperOf, type PaperSize, part, points } from "./paper.ts";
import { printableAll, printableDesign } from "./printable.ts";
import { flow, type Flowing } from "./table.ts";
import { headArrow, ringBlock } from "./tags.ts";
import { brokenLines, fitting, paragraph, setLines, shortened, textAt } from "./text.ts";
import { TYPE, type TextStyle } from "./type.ts";

/** A work and what its two labels say. */
export interface LabelledWork {
  readonly work: WorkWords;
  readonly composition: Composition;
  /** The work's own mark in the show: `SW 3`. Empty where it has none. */
  readonly mark: string;
}

/** One blank of the cut plan. */
export interface LabelledBlank {
  readonly number: number;
  readonly title: string;
  /** Which of the work's mats it becomes, from the lowest up; or its mount. */
  readonly becomes: number | "mount";
  readonly mats: number;
  readonly size: Size;
  readonly board: string;
}

export interface LabelsJob {
  readonly works: readonly LabelledWork[];
  readonly blanks: readonly LabelledBlank[];
  readonly house: House;
  readonly plan: PlanWords;
  readonly language: Language;
  /** The ruler that blanks are measured on; a work's own labels follow its own. */
  readonly ruler: Speech["ruler"];
}

const BETWEEN = mm(4);
const CROP = mm(3.6);
const PADDING = mm(6);

/**
 * Back and wall labels, two works a page, then a label for every blank, ten a page. Crop marks, no
 * boxes: cut from mark to mark. No page at all where there is neither work nor blank.
 */
export function labels(job: LabelsJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk: Desk = { paper: paperOf(size), typeface };
  const house = printableAll({ studio: job.house.studio, show: job.house.show }, typeface).texts;
  const head: PaperHead = {
    paper: LABELS.paper,
    house: [house.studio, house.show].filter((name) => name !== "").join(" · "),
    plan: planWords(job.plan.number, dateWords(job.plan.date)),
  };
  const printed = { ...job, house };
  const bodies = [...workPages(desk, printed), ...blankPages(desk, printed)];
  return pagesOf(
    desk,
    head,
    LABELS.paper,
    bodies.map((body) => ({ block: body, tells: null })),
  );
}

function sheetTitle(desk: Desk, title: string, below: string, missing: number): Block {
  const { width } = desk.paper.content;
  const text = stack(
    [
      gap(mm(0.4)),
      paragraph(desk, title, TYPE.title, width),
      paragraph(desk, below, TYPE.line, width),
      ...(missing > 0 ? [paragraph(desk, missingSigns(missing), TYPE.fact, width)] : []),
    ],
    mm(1.2),
  );
  return stack([text, gap(mm(1.6)), rule(width, "rule-thin"), gap(mm(4))]);
}

/** Rows of labels under a title that every page repeats. */
function pagesOfRows(desk: Desk, title: Block, rows: readonly Block[]): readonly Block[] {
  const room = subtract(bodyHeight(desk.paper), title.height);
  const flowing: readonly Flowing[] = rows.map((row) => ({ block: stack([row, gap(BETWEEN)]) }));
  return rows.length === 0 ? [] : flow(flowing, room, room).map((column) => stack([title, column]));
}

function inTwos(cells: readonly Block[]): readonly Block[] {
  return cells.flatMap((_, index) =>
    index % 2 === 0 ? [beside(cells.slice(index, index + 2), BETWEEN)] : [],
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

const cropCorner = (x: Length, y: Length, right: 1 | -1, down: 1 | -1): readonly Mark[] => [
  { kind: "line", from: { x, y }, to: { x: add(x, times(CROP, right)), y }, line: "thin" },
  { kind: "line", from: { x, y }, to: { x, y: add(y, times(CROP, down)) }, line: "thin" },
];

/** Four corners to cut between. */
function cropped(label: Block): Block {
  const { width, height } = label;
  return block(width, height, [
    ...label.marks,
    ...cropCorner(ZERO, ZERO, 1, 1),
    ...cropCorner(width, ZERO, -1, 1),
    ...cropCorner(ZERO, height, 1, -1),
    ...cropCorner(width, height, -1, -1),
  ]);
}

const TITLES: readonly TextStyle[] = [19, 17, 15, 13].map((size) => ({
  size: points(size),
  weight: "semibold",
  leading: points(size * 1.18),
}));
const BODY: TextStyle = {
  size: points(11.5),
  weight: "regular",
  leading: points(15),
  figures: { whole: points(14), stacked: points(15) },
};

/** The whole title, at the largest size at which it keeps to a few lines: this is where it is never cut. */
function wholeTitle(desk: Desk, title: string, width: Length): Block {
  const style =
    TITLES.find((each) => brokenLines(desk, title, each, width).length <= 3) ?? TITLES.at(-1) ?? TYPE.title;
  return paragraph(desk, title, style, width);
}

/** Which way up, what it is, what touches it, how it is held and how it is released, when it was closed. */
function backLabel(
  desk: Desk,
  own: LabelledWork,
  { plan, house, language }: LabelsJob,
  width: Length,
  height: Length,
): Block {
  const inner = subtract(width, times(PADDING, 2));
  const { design, outer } = own.composition;
  const speech: Speech = { ruler: design.ruler, language };
  const up = beside(
    [headArrow(desk, mm(6)), paragraph(desk, EVERY_PAPER.thisWayUp, TYPE.line, mm(30))],
    mm(2),
    "foot",
  );
  const section = (name: string, words: Phrase): readonly Block[] => [
    gap(mm(3.6)),
    paragraph(desk, name, { ...BODY, weight: "bold" }, inner),
    gap(mm(1)),
    paragraph(desk, words, BODY, inner),
  ];
  const line = (text: string): readonly Block[] =>
    text === "" ? [] : [gap(mm(1.6)), paragraph(desk, text, BODY, inner)];
  const { work } = own;
  const text = stack([
    aligned(up, inner, "middle"),
    gap(mm(4)),
    wholeTitle(desk, work.title, inner),
    ...line(makerLine(work.maker, work.year)),
    ...line([work.process, work.edition].filter((word) => word !== "").join(", ")),
    gap(mm(1.6)),
    paragraph(desk, sizesLine(design.print?.sheet ?? null, outer, speech), BODY, inner),
    gap(mm(2.4)),
    rule(inner, "rule-thin"),
    ...section(LABELS.touches, touchesWords(design, speech)),
    ...section(LABELS.held, heldWords(design, speech)),
    ...section(LABELS.release, releaseWords(design, speech)),
  ]);
  const footHeight = mm(11);
  const foot = block(inner, footHeight, [
    ...rule(inner, "rule-thin").marks,
    textAt(ZERO, mm(6.4), own.mark, { ...TYPE.head, weight: "bold" }),
    textAt(inner, mm(4.4), closedWords(dateWords(plan.date), plan.number), TYPE.caption, "end"),
    textAt(
      inner,
      mm(8.6),
      shortened(desk, house.studio, TYPE.caption, part(inner, 0.6)),
      TYPE.caption,
      "end",
    ),
  ]);
  const footTop = larger(subtract(height, add(footHeight, mm(1.5))), sum([text.height, mm(6)]));
  return block(width, larger(height, add(footTop, footHeight)), [
    ...placed(text, PADDING, mm(4)),
    ...placed(foot, PADDING, footTop),
  ]);
}

/**
 * A label's lines keep under 45 characters (the Smithsonian Guidelines for Accessible Exhibition
 * Design, section III, ask for at most 55 and call 45 to 50 better) and nothing is under 16 points.
 */
const WALL_TITLE: readonly TextStyle[] = [22, 20, 18, 16].map((size) => ({
  size: points(size),
  weight: "italic",
  leading: points(size * 1.2),
}));
const WALL_MAKER: TextStyle = { size: points(17), weight: "semibold", leading: points(21) };
const WALL_LINE: TextStyle = { size: points(16), weight: "regular", leading: points(20) };

/** Maker, title, year, process: what a visitor reads. */
function wallLabel(desk: Desk, work: WorkWords, width: Length, least: Length): Block {
  const inner = subtract(width, times(PADDING, 2));
  const title = fitting(desk, work.title, WALL_TITLE, inner) ?? WALL_TITLE.at(-1) ?? WALL_LINE;
  const line = (text: string, style: TextStyle): readonly Block[] =>
    text === "" ? [] : [setLines(brokenLines(desk, text, style, inner), style, inner)];
  const text = stack(
    [
      ...line(work.maker, WALL_MAKER),
      ...line(work.title, title),
      ...line(work.year, WALL_LINE),
      ...line([work.process, work.edition].filter((word) => word !== "").join(", "), WALL_LINE),
    ],
    mm(2),
  );
  return block(width, larger(least, add(text.height, times(PADDING, 2))), placed(text, PADDING, PADDING));
}

/** A slip for every blank: its number in a ring on a bar, what it becomes, of which work, its size. */
function blankPages(desk: Desk, job: LabelsJob): readonly Block[] {
  const speech: Speech = { ruler: job.ruler, language: job.language };
  const width = part(subtract(desk.paper.content.width, BETWEEN), 0.5);
  const texts = job.blanks.map((blank) =>
    printableAll({ title: blank.title, board: blank.board }, desk.typeface),
  );
  const missing = texts.reduce((all, text) => all + text.missing, 0);
  const title = sheetTitle(desk, boardLabelsTitle(job.blanks.length), LABELS.boards, missing);
  const cells = job.blanks.map((blank, index) => {
    const { title: name = "", board = "" } = texts[index]?.texts ?? {};
    const ringed = ringBlock(desk, String(blank.number), "white", mm(7.5));
    const left = sum([mm(4), ringed.width, mm(4.5)]);
    const inner = subtract(width, add(left, mm(4)));
    const text = stack(
      [
        paragraph(desk, sizeRuns(blank.size, job.ruler), BLANK_SIZE, inner),
        paragraph(
          desk,
          blankFor(blank.becomes, blank.mats, speech),
          { ...TYPE.words, weight: "bold" },
          inner,
        ),
        paragraph(desk, shortened(desk, name, TYPE.fact, inner), TYPE.fact, inner),
        paragraph(
          desk,
          `${board}${board === "" ? "" : ` ·${NBSP}`}plan${NBSP}${job.plan.number}`,
          TYPE.caption,
          inner,
        ),
      ],
      mm(1.4),
    );
    const height = mm(36);
    return cropped(
      block(width, height, [
        ...placed(ringed, mm(4), part(subtract(height, ringed.height), 0.5)),
        ...placed(text, left, part(subtract(height, text.height), 0.5)),
      ]),
    );
  });
  return pagesOfRows(desk, title, inTwos(cells));
}

const BLANK_SIZE: TextStyle = { ...TYPE.line, figures: { whole: points(20), stacked: points(21) } };
