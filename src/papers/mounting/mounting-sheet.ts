import { type HoldPlan, holdingOfWay, holdStops, isHinge } from "../../assembly/index.ts";
import type { Typeface } from "../../drawings/index.ts";
import { add, fineRuler, larger, type Length, mm, smaller, subtract, sum } from "../../lengths/index.ts";
import { withUnit } from "../../words/index.ts";
import {
  bufferWords,
  gramsWords,
  holdCaution,
  holdLine,
  MOUNTING_SHEET,
  neverWords,
} from "../../words/mounting-sheet.ts";
import { unitWords } from "../../words/papers.ts";
import { beside, type Block, block, gap, rule, stack } from "../block.ts";
import { type Body, bodyHeight, pagesOf, paperHead } from "../frame.ts";
import { pageHead, voidFacts } from "../head.ts";
import { STEPS_WIDTH, stepPieces } from "../bench/steps.ts";
import { type Page, paperOf, type PaperSize } from "../paper.ts";
import { printable, printableAll, printableDesign } from "../printable.ts";
import { flow } from "../table.ts";
import { caution, type Fact } from "../tags.ts";
import { mountingActs, toldFirst } from "./acts.ts";
import { bedBand } from "./bed-picture.ts";
import type { MountingDesk, MountingSheetJob } from "./desk.ts";
import { holdDetail } from "./detail.ts";
import { doNotMount } from "./do-not-mount.ts";
import { sheetView } from "./sheet-view.ts";
import { sideColumn } from "./side.ts";

/** A hinge is drawn at true size. */
const DETAIL = { hinges: mm(80), pockets: mm(62), strips: mm(62) };
const GUTTER = mm(5);
const LEAST_VIEW = mm(64);
const MOST_VIEW = mm(110);

/**
 * The mounting and closing sheet of one work: what holds it and where, drawn and figured, then every act
 * from the boards to the closed package. Two pages where one does not hold it all: pictures, then steps. Where
 * nothing may hold it one page says DO NOT MOUNT.
 */
export function mountingSheet(job: MountingSheetJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk = deskOf(job, size, typeface);
  return pagesOf(
    desk,
    paperHead(MOUNTING_SHEET.paper, desk.job.house, desk.job.planWords),
    desk.job.work.title,
    bodiesOf(desk),
  );
}

function bodiesOf(desk: MountingDesk): readonly Body[] {
  const width = desk.paper.content.width;
  const room = bodyHeight(desk.paper);
  const head = headOf(desk, width);
  if (holdStops(desk.job.plan).length > 0)
    return [{ block: stack([head, doNotMount(desk, width)]), tells: null }];
  const bed = bedBand(desk, width);
  const side = sideColumn(desk, subtract(width, add(STEPS_WIDTH, GUTTER)));
  const steps = stack(stepPieces(desk, mountingActs(desk), STEPS_WIDTH, mm(1.8)).map((piece) => piece.block));
  const lower = stack([gap(mm(2)), beside([block(STEPS_WIDTH, steps.height, steps.marks), side], GUTTER)]);
  const { way } = desk.job.plan;
  const detailWidth = DETAIL[way === null ? "hinges" : holdingOfWay(way)];
  const detail = holdDetail(desk, detailWidth);
  const viewWidth = subtract(width, add(detailWidth, GUTTER));
  const pictures = (high: Length): Block =>
    stack([
      gap(mm(2)),
      beside([fixedWidth(sheetView(desk, viewWidth, high), viewWidth), detail], GUTTER),
      gap(mm(2)),
      rule(width, "rule"),
    ]);
  const beds = bed === null ? [] : [stack([gap(mm(1.6)), bed, rule(width, "rule")])];
  const least = larger(LEAST_VIEW, detail.height);
  const spare = subtract(room, sum([head.height, mm(4), ...beds.map(({ height }) => height)]));
  const alone = subtract(spare, lower.height);
  if (alone >= least)
    return [{ block: stack([head, pictures(smaller(MOST_VIEW, alone)), ...beds, lower]), tells: null }];
  // Pictures first, the steps after; a sink goes with the steps where it does not fit below the pictures.
  const together = spare >= least;
  const free = together ? spare : subtract(room, add(head.height, mm(4)));
  const first = stack([head, pictures(smaller(MOST_VIEW, free)), ...(together ? beds : [])]);
  const pieces = [
    { block: head, withNext: true },
    ...(together ? [] : beds.map((piece) => ({ block: piece }))),
    { block: lower, again: head },
  ];
  return [
    { block: first, tells: MOUNTING_SHEET.holdTells },
    ...flow(pieces, room, room).map((page) => ({ block: page, tells: MOUNTING_SHEET.closeTells })),
  ];
}

const fixedWidth = (piece: Block, width: Length): Block => block(width, piece.height, piece.marks);

/** Hinges are counted by the weight: where it is not known, that is told. */
function weightFact({ grams, way }: HoldPlan): readonly Fact[] {
  if (grams !== null) return [{ name: MOUNTING_SHEET.weight, value: gramsWords(grams) }];
  return isHinge(way) ? [{ name: MOUNTING_SHEET.weight, value: MOUNTING_SHEET.notWeighed }] : [];
}

function headOf(desk: MountingDesk, width: Length): Block {
  const { work, composition, plan, planWords } = desk.job;
  const { speech } = desk;
  const { checks } = plan;
  const told = checks.filter((check) => check.level === "warn" && toldFirst(check));
  const { movement } = plan;
  const facts: readonly Fact[] = [
    { name: MOUNTING_SHEET.unit, value: unitWords(speech.ruler) },
    ...weightFact(plan),
    {
      name: MOUNTING_SHEET.moves,
      value: [
        withUnit(movement.width, fineRuler(speech.ruler), "up"),
        ", ",
        withUnit(movement.height, fineRuler(speech.ruler), "up"),
      ],
    },
    { name: MOUNTING_SHEET.buffer, value: bufferWords(plan.buffer) },
    ...voidFacts(planWords),
  ];
  const said = [work.maker, work.year, work.process].filter((part) => part !== "").join(", ");
  return pageHead(
    desk,
    {
      title: work.title,
      line: [said === "" ? "" : `${said}. `, holdLine(plan, composition.design.mount, speech)],
      cautions: [
        ...(plan.never.length === 0 ? [] : [caution(desk, neverWords(plan.never), width)]),
        ...told.map((check) => caution(desk, holdCaution(check, speech), width)),
      ],
      facts,
    },
    width,
  );
}

function deskOf(job: MountingSheetJob, size: PaperSize, typeface: Typeface): MountingDesk {
  const { title, maker, year, process, edition } = job.work;
  const work = printableAll({ title, maker, year, process, edition }, typeface);
  const house = printableAll(job.house, typeface);
  const boards = printableDesign(job.composition.design, typeface);
  const { bed } = job.plan;
  const layer = printable(bed.kind === "sink" ? bed.board : "", typeface);
  return {
    paper: paperOf(size),
    typeface,
    speech: { ruler: boards.design.ruler, language: job.language },
    missing: work.missing + house.missing + boards.missing + layer.missing,
    job: {
      ...job,
      composition: { ...job.composition, design: boards.design },
      plan: { ...job.plan, bed: bed.kind === "sink" ? { ...bed, board: layer.text } : bed },
      work: { ...job.work, ...work.texts },
      house: house.texts,
    },
  };
}
