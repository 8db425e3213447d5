import type { Size } from "../../geometry/index.ts";
import { add, larger, type Length, mm, subtract, sum } from "../../lengths/index.ts";
import {
  CUT_PLAN,
  joined,
  justFits,
  outsAreBlanks,
  outSquares,
  pencilMarks,
  sheetLine,
  sheetTitle,
  trimLine,
} from "../../words/cut-plan.ts";
import { type Phrase, runs, sizeRuns, strong } from "../../words/index.ts";
import { fittingScale } from "../scale.ts";
import { beside, type Block, block, gap, placed, rule, stack } from "../block.ts";
import { type Body, bodyHeight } from "../frame.ts";
import { part, points } from "../paper.ts";
import { flow } from "../table.ts";
import { caution } from "../tags.ts";
import { paragraph } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { pageHead } from "../head.ts";
import { CHAIN_ABOVE, CHAIN_LEFT, dimensionChains } from "./chain.ts";
import type { CuttingDesk, DrawnSheet, OutsOf } from "./desk.ts";
import { layoutDrawing } from "./drawing.ts";
import { fenceSettings } from "./fence.ts";
import { fenceRows } from "./fence-table.ts";
import { firstBand, tightEdges } from "./first-band.ts";
import { pageFacts, sheetFacts, trimOf } from "./head.ts";
import type { BlankWords } from "./label.ts";
import { legend } from "./legend.ts";

/** Below this a layout on one page with its fence table would be too small to be cut from. */
const LEAST_DRAWING = mm(88);
const SMALL: TextStyle = { ...TYPE.line, figures: { whole: points(11.5), stacked: points(13) } };

/** A sheet as it may lie on the page, with what is cut from its windows. */
export interface Way {
  readonly drawn: DrawnSheet;
  readonly outsOf: OutsOf;
}

/**
 * The pages of one sheet: measure it first, then the layout, then the fence's settings. On two pages,
 * the layout and the fence, where one would make the layout too small; then it lies the way that
 * makes it larger. `ways` are the ways it may lie, the one for a single page first.
 */
export function sheetPages(
  desk: CuttingDesk,
  ways: readonly [Way, ...Way[]],
  number: number,
  of: number,
): readonly Body[] {
  const title = sheetTitle(desk.job.board, number, of);
  const one = onePage(desk, ways[0], title);
  if (one !== null && one.unwritten === 0) return [{ block: one.block, tells: null }];
  const tried = ways.map((way) => layoutPage(desk, way, title));
  const best = tried.reduce((a, b) => (b.over < a.over ? b : a));
  // A second page is worth its paper where it brings sizes back onto their blanks.
  if (one !== null && best.unwritten >= one.unwritten) return [{ block: one.block, tells: null }];
  return [
    { block: best.block, tells: CUT_PLAN.layoutTells },
    ...fencePages(desk, best.way, title).map((page) => ({ block: page, tells: CUT_PLAN.fenceTells })),
  ];
}

/** Everything on one page; null where that would make the layout too small. */
function onePage(
  desk: CuttingDesk,
  way: Way,
  title: string,
): { readonly block: Block; readonly unwritten: number } | null {
  const width = desk.paper.content.width;
  const room = bodyHeight(desk.paper);
  const { sheet, numbers } = way.drawn;
  const head = headOf(desk, way, title);
  const rows = fenceRows(desk, sheet, numbers, width);
  if (sum(rows.map(({ block: row }) => row.height)) > room) return null;
  const fenced =
    sheet.cuts.length === 0
      ? stack([gap(mm(2)), paragraph(desk, CUT_PLAN.noCut, TYPE.line, width)])
      : stack(rows.map(({ block: row }) => row));
  const layout = fitted(desk, way, (unwritten) =>
    subtract(room, sum([head.height, fenced.height, mm(2), closing(desk, way, unwritten).height])),
  );
  if (layout.room < LEAST_DRAWING) return null;
  const page = stack([
    head,
    layout.block,
    rule(width, "rule"),
    fenced,
    gap(mm(2)),
    closing(desk, way, layout.unwritten),
  ]);
  return { block: page, unwritten: layout.unwritten.length };
}

/** The layout on a page of its own, with its scale. */
function layoutPage(
  desk: CuttingDesk,
  way: Way,
  title: string,
): { readonly block: Block; readonly over: number; readonly unwritten: number; readonly way: Way } {
  const head = headOf(desk, way, title);
  const layout = fitted(desk, way, (unwritten) =>
    subtract(bodyHeight(desk.paper), sum([head.height, mm(3), closing(desk, way, unwritten).height])),
  );
  const page = stack([head, layout.block, gap(mm(3)), closing(desk, way, layout.unwritten)]);
  return { block: page, over: layout.over, unwritten: layout.unwritten.length, way };
}

function fencePages(desk: CuttingDesk, { drawn }: Way, title: string): readonly Block[] {
  const width = desk.paper.content.width;
  const head = pageHead(
    desk,
    { title, line: CUT_PLAN.fenceLine, facts: pageFacts(desk, drawn.sheet) },
    width,
  );
  const room = subtract(bodyHeight(desk.paper), head.height);
  return flow(fenceRows(desk, drawn.sheet, drawn.numbers, width), room, room).map((page) =>
    stack([head, page]),
  );
}

function headOf(desk: CuttingDesk, way: Way, title: string): Block {
  const width = desk.paper.content.width;
  const { sheet } = way.drawn;
  const fromOuts = outsCutFrom(way).reduce((count, { blanks }) => count + blanks.length, 0);
  const tight = tightEdges(sheet, desk.job.job.tight);
  const { material } = desk.job;
  const cautions: readonly Phrase[] = [
    ...(material === "board" ? [] : [CUT_PLAN.handle[material]]),
    ...(tight.length === 0 ? [] : [justFits(tight, trimOf(desk, sheet) > 0, desk.speech.ruler)]),
  ];
  const line = sheetLine(sheet.placements.length, fromOuts, desk.job.plan.proven);
  return stack([
    pageHead(desk, { title, line, facts: sheetFacts(desk, sheet) }, width),
    gap(mm(1.6)),
    firstBand(desk, sheet, width),
    gap(mm(1.6)),
    ...cautions.flatMap((words) => [caution(desk, words, width), gap(mm(1.6))]),
    rule(width, "rule-thin"),
    gap(mm(1.2)),
  ]);
}

interface FittedLayout {
  readonly block: Block;
  readonly unwritten: readonly BlankWords[];
  readonly over: number;
  /** Height that there was for it. */
  readonly room: Length;
}

const LEGEND = mm(8);

/**
 * The layout as large as its room allows, with dimensions and legend. Blanks too small to be written
 * in are listed below it, which takes room from the drawing: it shrinks until both fit.
 */
function fitted(
  desk: CuttingDesk,
  { drawn, outsOf }: Way,
  roomBeside: (unwritten: readonly BlankWords[]) => Length,
): FittedLayout {
  const width = desk.paper.content.width;
  const { size } = drawn.sheet;
  let high = subtract(roomBeside([]), add(CHAIN_ABOVE, LEGEND));
  for (;;) {
    const over = fittingScale(size.width, size.height, subtract(width, CHAIN_LEFT), larger(mm(5), high));
    const { block: layout, unwritten } = layoutDrawing(desk, drawn, over, outsOf, null);
    const left = add(CHAIN_LEFT, part(subtract(subtract(width, CHAIN_LEFT), layout.width), 0.4));
    const drawing = block(width, add(CHAIN_ABOVE, layout.height), [
      ...placed(block(mm(0), mm(0), dimensionChains(desk, drawn.sheet, over)), left, CHAIN_ABOVE),
      ...placed(layout, left, CHAIN_ABOVE),
    ]);
    const piece = stack([drawing, gap(mm(1.6)), legend(desk, drawn.sheet, over, width), gap(mm(1))]);
    const room = roomBeside(unwritten);
    if (piece.height <= room || high <= mm(5)) return { block: piece, unwritten, over, room };
    high = subtract(layout.height, mm(1));
  }
}

interface OutsFrom {
  readonly host: number;
  readonly blanks: readonly number[];
}

/** Which blanks come out of which blank's window. */
function outsCutFrom({ drawn: { sheet, numbers }, outsOf }: Way): readonly OutsFrom[] {
  return sheet.placements.flatMap((_, placement) => {
    const out = outsOf(placement);
    return out === null ? [] : [{ host: numbers[placement] ?? 0, blanks: out.numbers }];
  });
}

/** What must not be thrown away, what the other windows give, and the blanks that the drawing had no room for. */
function closing(desk: CuttingDesk, way: Way, unwritten: readonly BlankWords[]): Block {
  const width = desk.paper.content.width;
  const outs = outsCutFrom(way);
  const half = part(subtract(width, mm(6)), outs.length > 0 ? 0.46 : 0);
  const right = subtract(width, outs.length > 0 ? add(half, mm(6)) : mm(0));
  const kept = keptWindows(desk, way.drawn, new Set(outs.map(({ host }) => host)));
  const { sheet } = way.drawn;
  const strips = fenceSettings(sheet).some(({ comesOff }) => comesOff.boards.length > 0);
  const trim = trimOf(desk, sheet);
  const saying: Phrase = joined(
    [
      pencilMarks(strips, desk.job.material),
      ...(trim > 0 && sheet.cuts.length > 0 ? [trimLine(trim, desk.speech.ruler)] : []),
      ...kept,
    ],
    " ",
  );
  const sides = [
    ...(outs.length > 0 ? [caution(desk, outsAreBlanks(outs), half)] : []),
    paragraph(desk, saying, SMALL, right),
  ];
  const list = unwritten.map((words) => smallBlank(desk, words));
  return stack([
    ...(list.length > 0
      ? [
          paragraph(desk, [strong(`${CUT_PLAN.small}: `), joined(list, "; "), "."], SMALL, width),
          gap(mm(1.4)),
        ]
      : []),
    beside(sides, mm(6)),
  ]);
}

const smallBlank = (desk: CuttingDesk, { number, size, name }: BlankWords): Phrase =>
  runs`${strong(String(number))} is ${sizeRuns(size, desk.speech.ruler)}${name === "" ? "" : `, ${name}`}`;

/** Windows that go to the rack, alike ones together. */
function keptWindows(
  desk: CuttingDesk,
  { sheet, numbers }: DrawnSheet,
  used: ReadonlySet<number>,
): readonly Phrase[] {
  const { pieces, least } = desk.job.job;
  const found = new Map<string, { size: Size; hosts: number[] }>();
  sheet.placements.forEach((lies, placement) => {
    const window = pieces[lies.piece]?.window;
    const number = numbers[placement] ?? 0;
    if (window === null || window === undefined || least === null || used.has(number)) return;
    const long = Math.max(window.width, window.height) >= Math.max(least.width, least.height);
    const short = Math.min(window.width, window.height) >= Math.min(least.width, least.height);
    if (!long || !short) return;
    const key = `${window.width} ${window.height}`;
    const entry = found.get(key) ?? { size: window, hosts: [] };
    entry.hosts.push(number);
    found.set(key, entry);
  });
  return [...found.values()].map(({ size, hosts }) => outSquares(hosts, size, desk.speech.ruler));
}
