import type { Typeface } from "../../drawings/index.ts";
import { add, type Length, mm, subtract } from "../../lengths/index.ts";
import {
  CHOP_LIST,
  chopLine,
  chopTitle,
  frameWords,
  lossFact,
  missingRail,
  notInChop,
  plusFact,
  rabbetFact,
  rabbetName,
  scrapFirst,
} from "../../words/chop-list.ts";
import { bare } from "../../words/index.ts";
import { unitWords } from "../../words/papers.ts";
import { beside, type Block, block, columns, gap, rule, stack } from "../block.ts";
import { type Body, bodyHeight, pagesOf, paperHead } from "../frame.ts";
import { type Page, paperOf, type PaperSize, part, points } from "../paper.ts";
import { printable, printableAll } from "../printable.ts";
import { type Flowing, flow } from "../table.ts";
import { caution, type Fact, ringBlock } from "../tags.ts";
import { fitting, paragraph, shortened, textLine, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { pageHead, voidFacts } from "../head.ts";
import type { ChoppingDesk, ChopListJob, FrameMade } from "./desk.ts";
import { railPictures } from "./pictures.ts";
import { stickRows } from "./sticks.ts";
import { stopRows } from "./stops.ts";

/**
 * The chop list of one moulding: what a rail is measured by, the saw's stops from the longest to the
 * shortest with a tick for each rail, then every stick with its rails in order and its sum. Rails that
 * the lengths do not give are named on a page that comes first.
 */
export function chopList(job: ChopListJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk = deskOf(job, size, typeface);
  const width = desk.paper.content.width;
  const room = bodyHeight(desk.paper);
  const [first, next] = [headOf(desk, width, true), headOf(desk, width, false)];
  const rows: Flowing[] = [...stopRows(desk, width), ...stickRows(desk, width), ...frameRows(desk, width)];
  const pages =
    desk.job.plan.sticks.length === 0
      ? []
      : flow(rows, subtract(room, first.height), subtract(room, next.height));
  const head = paperHead(CHOP_LIST.paper, desk.job.house, desk.job.planWords);
  const bodies: Body[] = [
    ...missingPage(desk, width),
    ...pages.map((page, index) => ({ block: stack([index === 0 ? first : next, page]), tells: null })),
  ];
  return pagesOf(desk, head, CHOP_LIST.paper, bodies);
}

function deskOf(job: ChopListJob, size: PaperSize, typeface: Typeface): ChoppingDesk {
  const house = printableAll(job.house, typeface);
  const name = printable(job.moulding.name, typeface);
  const frames = job.frames.map((kind) =>
    kind.map((frame) => ({ frame, title: printable(frame.title, typeface) })),
  );
  const rails = job.job.rails.map((rail) => ({ ...rail, name: printable(rail.name, typeface).text }));
  return {
    paper: paperOf(size),
    typeface,
    speech: { ruler: job.ruler, language: job.language },
    missing:
      house.missing + name.missing + frames.flat().reduce((count, { title }) => count + title.missing, 0),
    job: {
      ...job,
      house: house.texts,
      moulding: { ...job.moulding, name: name.text },
      frames: frames.map((kind) => kind.map(({ frame, title }) => ({ ...frame, title: title.text }))),
      job: { ...job.job, rails },
    },
  };
}

const TITLES: readonly TextStyle[] = [23, 20, 18, 16].map((size) => ({
  ...TYPE.title,
  size: points(size),
  leading: points(size * 1.15),
}));

/** What is chopped, in a line, and the facts on which its figures stand; with pictures and cautions on the first page. */
function headOf(desk: ChoppingDesk, width: Length, first: boolean): Block {
  const { job } = desk;
  const { plan, moulding } = job;
  const title = chopTitle(moulding.name, job.frames.flat().length, plan.sticks.length);
  const style = fitting(desk, title, TITLES, width) ?? TITLES.at(-1) ?? TYPE.title;
  const rails = plan.sticks.reduce((count, stick) => count + stick.rails.length, 0);
  const pair = columns(width, mm(6), [1, 1]);
  const head = pageHead(
    desk,
    {
      title,
      titleStyle: style,
      line: chopLine(rails, plan.frames, plan.proven),
      facts: factsOf(desk),
      under: first ? "rule-thin" : "rule",
    },
    width,
  );
  return stack([
    head,
    ...(first
      ? [
          gap(mm(1.8)),
          railPictures(desk, width),
          gap(mm(1.4)),
          rule(width, "rule-thin"),
          gap(mm(1.8)),
          beside(
            [
              caution(desk, scrapFirst(moulding.name), pair[0] ?? width),
              caution(desk, CHOP_LIST.clamp, pair[1] ?? width),
            ],
            mm(6),
          ),
          gap(mm(1.8)),
          rule(width, "rule"),
        ]
      : []),
  ]);
}

function factsOf(desk: ChoppingDesk): readonly Fact[] {
  const { moulding, job, planWords: plan } = desk.job;
  const { ruler } = desk.speech;
  return [
    { name: CHOP_LIST.unit, value: unitWords(ruler) },
    { name: CHOP_LIST.overall, value: bare(moulding.overall, ruler) },
    { name: rabbetName(desk.speech), value: rabbetFact(moulding.rabbet, moulding.depth, ruler) },
    { name: CHOP_LIST.allowance, value: plusFact(moulding.allowance, ruler) },
    { name: CHOP_LIST.loss, value: lossFact(job.kerf, ruler) },
    ...voidFacts(plan),
  ];
}

const FRAME: TextStyle = { ...TYPE.line, figures: { whole: points(11), stacked: points(12.5) } };

/** Which work a ring's number is, two beside each other. */
function frameRows(desk: ChoppingDesk, width: Length): readonly Flowing[] {
  const all = desk.job.frames.flat();
  const half = part(subtract(width, mm(6)), 0.5);
  const cell = (frame: FrameMade): Block => {
    const { ruler } = desk.speech;
    const named = subtract(half, add(mm(9), widthOf(desk, frameWords("", frame.size, ruler), FRAME)));
    const title = shortened(desk, frame.title, FRAME, subtract(named, mm(2)));
    const words = textLine(desk, frameWords(title, frame.size, ruler), FRAME);
    const piece = beside([ringBlock(desk, String(frame.number), "white"), words], mm(1.8), "middle");
    return block(half, mm(6.4), piece.marks);
  };
  const pairs = Array.from({ length: Math.ceil(all.length / 2) }, (_, row) =>
    all.slice(2 * row, 2 * row + 2),
  );
  return pairs.map((pair, index) => ({
    block: index === 0 ? stack([gap(mm(1.6)), rowOf(pair.map(cell), half)]) : rowOf(pair.map(cell), half),
    again: gap(mm(1.6)),
  }));
}

const rowOf = (cells: readonly Block[], half: Length): Block =>
  block(add(half, add(half, mm(6))), mm(6.4), beside(cells, mm(6)).marks);

/** What could not be planned, told before anything is chopped. */
function missingPage(desk: ChoppingDesk, width: Length): readonly Body[] {
  const { plan, moulding, job } = desk.job;
  if (plan.checks.length === 0) return [];
  const lines = plan.checks
    .slice(0, MOST_NAMED)
    .map((check) => caution(desk, missingRail(check, job.rails[check.rail], desk.speech.ruler), width));
  return [
    {
      block: stack([
        gap(mm(1.2)),
        paragraph(desk, shortened(desk, notInChop(moulding.name), TYPE.title, width), TYPE.title, width),
        gap(mm(0.6)),
        paragraph(desk, CHOP_LIST.notInPlanLine, TYPE.line, width),
        gap(mm(1.6)),
        rule(width, "rule"),
        gap(mm(3)),
        stack(lines, mm(2.4)),
      ]),
      tells: null,
    },
  ];
}

/** As many as one page holds. */
const MOST_NAMED = 18;
