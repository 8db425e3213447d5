import { frameStops } from "../../assembly/index.ts";
import type { Typeface } from "../../drawings/index.ts";
import { add, larger, type Length, mm, smaller, subtract, sum } from "../../lengths/index.ts";
import { sayFrameCheck } from "../../words/frame.ts";
import { frameLine, FRAME_SHEET } from "../../words/frame-sheet.ts";
import { sizeRuns, withUnit } from "../../words/index.ts";
import { unitWords } from "../../words/papers.ts";
import { massWords } from "../../words/weights.ts";
import { beside, type Block, block, gap, rule, stack } from "../block.ts";
import { stepPieces } from "../bench/steps.ts";
import { type Body, bodyHeight, pagesOf, paperHead } from "../frame.ts";
import { pageHead, voidFacts } from "../head.ts";
import { type Page, paperOf, type PaperSize, part } from "../paper.ts";
import { printable, printableAll, printableDesign } from "../printable.ts";
import { stopPage, stopReason } from "../stop-panel.ts";
import { flow } from "../table.ts";
import type { Fact } from "../tags.ts";
import { paragraph } from "../text.ts";
import { TYPE } from "../type.ts";
import { frameActs } from "./acts.ts";
import type { FrameDesk, FrameSheetJob } from "./desk.ts";
import { layersTable } from "./layers.ts";
import { sectionBlock } from "./section.ts";
import { seenBlock } from "./seen.ts";

const GUTTER = mm(6);
const SEEN_WIDE = mm(50);
const LEAST_DRAWING = mm(54);
const MOST_DRAWING = mm(104);

/**
 * The frame sheet of one work: its package in section with every layer's thickness, size and weight, what is seen of each
 * border inside the lip, and every act from the joined frame to the sealed back. Two pages where one does not hold it all.
 * Where it cannot be framed so, one page says DO NOT FRAME.
 */
export function frameSheet(job: FrameSheetJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk = deskOf(job, size, typeface);
  return pagesOf(
    desk,
    paperHead(FRAME_SHEET.paper, desk.job.house, desk.job.planWords),
    desk.job.work.title,
    bodiesOf(desk),
  );
}

function bodiesOf(desk: FrameDesk): readonly Body[] {
  const width = desk.paper.content.width;
  const room = bodyHeight(desk.paper);
  const head = headOf(desk, width);
  if (frameStops(desk.job.plan).length > 0)
    return [{ block: stack([head, doNotFrame(desk, width)]), tells: null }];
  const table = layersTable(desk, width);
  const acts = frameActs(desk);
  const half = subtract(width, GUTTER);
  const steps = inColumns(desk, acts, half, width);
  const drawings = (high: Length): Block =>
    stack([
      gap(mm(2)),
      beside(
        [sectionBlock(desk, subtract(width, add(SEEN_WIDE, GUTTER)), high), seenBlock(desk, SEEN_WIDE, high)],
        GUTTER,
      ),
      gap(mm(1)),
      rule(width, "rule"),
      gap(mm(1.6)),
    ]);
  const around = mm(4.6);
  const below = stack([rule(width, "rule"), gap(mm(2)), steps]);
  const spare = subtract(room, sum([head.height, table.height, below.height, around]));
  const all = stack([head, drawings(smaller(larger(spare, LEAST_DRAWING), MOST_DRAWING)), table, below]);
  if (all.height <= room) return [{ block: all, tells: null }];
  const alone = larger(LEAST_DRAWING, subtract(room, sum([head.height, table.height, around])));
  const pieces = [
    { block: head, withNext: true },
    { block: drawings(smaller(alone, MOST_DRAWING)) },
    { block: table, again: head },
    { block: stack([gap(mm(2)), steps]), again: head },
  ];
  return flow(pieces, room, room).map((page, index) => ({
    block: page,
    tells: index === 0 ? FRAME_SHEET.drawTells : FRAME_SHEET.closeTells,
  }));
}

/** Steps in two columns, parted where the first is full: a caution stays with the act that it is about. */
function inColumns(desk: FrameDesk, acts: ReturnType<typeof frameActs>, both: Length, width: Length): Block {
  const wide = part(both, 0.5);
  const pieces = stepPieces(desk, acts, wide, mm(1.8));
  const total = sum(pieces.map((piece) => piece.block.height));
  let high = mm(0);
  let parted = pieces.length;
  for (const [index, piece] of pieces.entries()) {
    if (high * 2 >= total && pieces[index - 1]?.withNext !== true) {
      parted = index;
      break;
    }
    high = add(high, piece.block.height);
  }
  const column = (from: number, to?: number): Block => {
    const one = stack(pieces.slice(from, to).map((piece) => piece.block));
    return block(wide, one.height, one.marks);
  };
  const columns = beside([column(0, parted), column(parted)], GUTTER);
  return block(width, columns.height, columns.marks);
}

function headOf(desk: FrameDesk, width: Length): Block {
  const { work, plan, planWords } = desk.job;
  const { ruler } = desk.speech;
  const said = [work.maker, work.year, work.process].filter((word) => word !== "").join(", ");
  const facts: readonly Fact[] = [
    { name: FRAME_SHEET.unit, value: unitWords(ruler) },
    { name: FRAME_SHEET.outer, value: sizeRuns(plan.sizes.outer, ruler) },
    { name: FRAME_SHEET.sight, value: sizeRuns(plan.sizes.sight, ruler) },
    { name: FRAME_SHEET.depth, value: withUnit(plan.depth, ruler, "up") },
    { name: FRAME_SHEET.weight, value: massWords(plan.mass.total) },
    ...voidFacts(planWords),
  ];
  return pageHead(
    desk,
    {
      title: work.title,
      line: [said === "" ? "" : `${said}. `, frameLine(plan, desk.speech)],
      facts,
    },
    width,
  );
}

/** Takes the place of everything that is cut, laid in or ticked. */
const doNotFrame = (desk: FrameDesk, width: Length): Block =>
  stopPage(
    FRAME_SHEET.doNotFrame,
    null,
    [
      ...frameStops(desk.job.plan).flatMap((check) =>
        stopReason(desk, sayFrameCheck(check, desk.speech), width),
      ),
      paragraph(desk, FRAME_SHEET.stays, TYPE.line, width),
    ],
    width,
  );

function deskOf(job: FrameSheetJob, size: PaperSize, typeface: Typeface): FrameDesk {
  const { title, maker, year, process, edition } = job.work;
  const work = printableAll({ title, maker, year, process, edition }, typeface);
  const house = printableAll(job.house, typeface);
  const boards = printableDesign(job.composition.design, typeface);
  const { plan } = job;
  const { frame, stack: layers, glazing } = plan;
  const print = (text: string): string => printable(text, typeface).text;
  const names = [frame.name, frame.profile.name, ...layers.layers.map(({ board }) => board)];
  const missing = names.reduce((count, name) => count + printable(name, typeface).missing, 0);
  return {
    paper: paperOf(size),
    typeface,
    speech: { ruler: boards.design.ruler, language: job.language },
    missing: work.missing + house.missing + missing,
    job: {
      ...job,
      composition: { ...job.composition, design: boards.design },
      plan: {
        ...plan,
        frame: {
          ...frame,
          name: print(frame.name),
          profile: { ...frame.profile, name: print(frame.profile.name) },
        },
        glazing: glazing === null ? null : { ...glazing, board: print(glazing.board) },
        stack: {
          ...layers,
          layers: layers.layers.map((layer) => ({ ...layer, board: print(layer.board) })),
        },
      },
      work: { ...job.work, ...work.texts },
      house: house.texts,
    },
  };
}
