import { add, fromReal, larger, type Length, mm, smaller, subtract, sum, ZERO } from "../../lengths/index.ts";
import { BENCH_SHEET } from "../../words/bench-sheet.ts";
import { type Block, block, gap, placed, rule, stack } from "../block.ts";
import type { Body } from "../frame.ts";
import { flow, type Flowing } from "../table.ts";
import { actsOf } from "./acts.ts";
import { type BenchDesk, numberedStops } from "./desk.ts";
import { editionPieces } from "./edition.ts";
import { sheetHead } from "./head.ts";
import { layingPanel } from "./laying.ts";
import { benchPanel, leastBand, matBand } from "./mat-band.ts";
import { pocketsPanel } from "./pockets.ts";
import { PICTURES_HEIGHT, threePictures } from "./pictures.ts";
import { matsSection } from "./section.ts";
import { STEPS_WIDTH, stepPieces } from "./steps.ts";

/** Over eight settings on a page, or what is too high together, is parted: a page for each mat. */
const MOST_STOPS = 8;
const MOST_BAND = mm(150);
const GUTTER = mm(8);
const STEP_GAPS = [mm(2.2), mm(0.9)];
const SIDE_GAP = mm(5);

/** The cuts first, every mat's drawing beside its stops from the top mat down; then the steps. */
export function severalPages(desk: BenchDesk, head: Block, width: Length, room: Length): readonly Body[] {
  const { stops } = desk.job.composition;
  const numbered = numberedStops(stops);
  const free = subtract(room, head.height);
  const pages = cutsByPage(desk, free);
  // A last page with one mat leaves room for the pictures, nearer to the cuts than the steps are.
  const last = pages.at(-1);
  const [lastMat = 0] = last ?? [];
  const withPictures = last?.length === 1 && add(leastBand(desk, lastMat, numbered), PICTURES_HEIGHT) <= free;
  const cutPages = pages.map((page): Body => {
    const pictured = withPictures && page === last;
    const left = pictured ? subtract(free, PICTURES_HEIGHT) : free;
    const height = smaller(fromReal(left / page.length, "down"), MOST_BAND);
    const bands = page.flatMap((mat) => [matBand(desk, mat, numbered, width, height), rule(width, "rule")]);
    return {
      tells: BENCH_SHEET.cut,
      block: stack([head, ...(pictured ? [...bands, threePictures(desk, width)] : bands.slice(0, -1))]),
    };
  });
  return [...cutPages, ...stepPages(desk, width, room, !withPictures)];
}

/** Which mats share a page, from the top mat down. */
function cutsByPage(desk: BenchDesk, free: Length): readonly (readonly number[])[] {
  const { mats, stops } = desk.job.composition;
  const numbered = numberedStops(stops);
  const pages: number[][] = [];
  for (const mat of mats.map((_, index) => mats.length - 1 - index)) {
    const page = pages.at(-1);
    const together = [...(page ?? []), mat];
    const settings = stops.filter((stop) => together.includes(stop.mat)).length;
    const high = sum(together.map((each) => leastBand(desk, each, numbered)));
    if (page && settings <= MOST_STOPS && high <= free) page.push(mat);
    else pages.push([mat]);
  }
  return pages;
}

/** Steps with what must be at hand, an edition's sheets; beside them laying, pockets and section. */
function stepPages(desk: BenchDesk, width: Length, room: Length, pictures: boolean): readonly Body[] {
  const head = sheetHead(desk, width, false);
  const top = stack([
    head,
    ...(pictures ? [threePictures(desk, width), rule(width, "rule")] : []),
    gap(mm(3)),
  ]);
  const first = subtract(room, top.height);
  const next = subtract(room, add(head.height, mm(3)));
  const sideWidth = subtract(width, add(STEPS_WIDTH, GUTTER));
  // Air gives way before a further page is begun.
  const columns = STEP_GAPS.map((between) =>
    flow(
      [
        { block: stack([benchPanel(desk, STEPS_WIDTH), gap(between)]) },
        ...stepPieces(desk, actsOf(desk), STEPS_WIDTH, between),
        ...editionPieces(desk, STEPS_WIDTH),
      ],
      first,
      next,
    ),
  ).reduce((best, tighter) => (tighter.length < best.length ? tighter : best));
  const sides = flow(sidePieces(desk, sideWidth), first, next);
  return Array.from({ length: Math.max(columns.length, sides.length) }, (_, index) => {
    const column = columns[index] ?? block(ZERO, ZERO);
    const side = sides[index] ?? block(ZERO, ZERO);
    return {
      tells: BENCH_SHEET.steps,
      block: stack([
        index === 0 ? top : stack([head, gap(mm(3))]),
        block(width, larger(column.height, side.height), [
          ...column.marks,
          ...placed(side, add(STEPS_WIDTH, GUTTER), ZERO),
        ]),
      ]),
    };
  });
}

function sidePieces(desk: BenchDesk, width: Length): readonly Flowing[] {
  const { print, design } = desk.job.composition;
  const hasPockets = print !== null && desk.held?.way === "pockets" && design.window.show !== "sheet";
  const section = matsSection(desk, width);
  return [
    ...(print === null ? [] : [layingPanel(desk, print, width, mm(56))]),
    ...(hasPockets ? [pocketsPanel(desk, print, width)] : []),
    ...(section === null ? [] : [section]),
  ].map((piece, index) => ({ block: index === 0 ? piece : stack([gap(SIDE_GAP), piece]) }));
}
