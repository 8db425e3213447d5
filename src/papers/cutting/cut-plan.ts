import type { Typeface } from "../../drawings/index.ts";
import { mm } from "../../lengths/index.ts";
import { CUT_PLAN, sheetTitle } from "../../words/cut-plan.ts";
import { missingLine } from "../../words/cutting.ts";
import { gap, stack } from "../block.ts";
import { type Body, pagesOf, type PaperHead, paperHead } from "../frame.ts";
import { pageHead, voidFacts } from "../head.ts";
import { type Page, paperOf, type PaperSize } from "../paper.ts";
import { printable, printableAll } from "../printable.ts";
import { caution } from "../tags.ts";
import { paragraph } from "../text.ts";
import { TYPE } from "../type.ts";
import type { CutPlanJob, CuttingDesk, DrawnSheet, OutsOf } from "./desk.ts";
import { type OutSheet, outsPages } from "./outs-pages.ts";
import { sheetPages, type Way } from "./sheet-page.ts";
import { mirrored } from "./turning.ts";

/**
 * The cut plan of one material: for each sheet, in the order of the plan, what to measure first, its
 * layout, and the fence's settings with the cuts; then the windows that fall out and are cut later.
 * Pieces that the plan could not make are named on a page that comes first.
 */
export function cutPlan(job: CutPlanJob, size: PaperSize, typeface: Typeface): readonly Page[] {
  const desk = deskOf(job, size, typeface);
  const { plan, numbers } = desk.job;
  const drawn = plan.sheets.map(
    (sheet, index): DrawnSheet => ({ index, sheet, turned: false, numbers: numbers[index] ?? [] }),
  );
  const outsOf = (one: DrawnSheet): OutsOf => outsIn(drawn, one);
  const wayOf = (one: DrawnSheet): Way => ({ drawn: one, outsOf: outsOf(one) });
  const bought = drawn.filter(({ sheet }) => sheet.from.kind === "stock");
  const outs = drawn.flatMap((one): OutSheet[] => {
    const { from } = one.sheet;
    if (from.kind !== "drop-out") return [];
    const host = plan.sheets[from.sheet]?.placements[from.placement];
    return [
      {
        drawn: one,
        host: numbers[from.sheet]?.[from.placement] ?? 0,
        hostName: desk.job.job.pieces[host?.piece ?? -1]?.name ?? "",
        outsOf: outsOf(one),
      },
    ];
  });
  const head = paperHead(CUT_PLAN.paper, desk.job.house, desk.job.planWords);
  const board = desk.job.board;
  return [
    ...paged(desk, head, board, missingPage(desk)),
    ...bought.flatMap((one, index) =>
      pagesOf(
        desk,
        head,
        sheetTitle(board, index + 1, bought.length),
        sheetPages(desk, [wayOf(laidDown(one)), wayOf(upended(laidDown(one)))], index + 1, bought.length),
      ),
    ),
    ...paged(desk, head, `${board}: ${CUT_PLAN.outsTells}`, outsPages(desk, outs)),
  ];
}

/** The layouts that are cut from windows of one sheet's pieces, turned as it is. */
export const outsIn =
  (drawn: readonly DrawnSheet[], { index, turned }: DrawnSheet): OutsOf =>
  (placement) => {
    const out = drawn.find(
      ({ sheet: { from } }) =>
        from.kind === "drop-out" && from.sheet === index && from.placement === placement,
    );
    if (out === undefined) return null;
    return turned ? upended(out) : out;
  };

/** Beside its fence table a layout has more room across than down: a sheet that stands upright is laid down. */
export const laidDown = (drawn: DrawnSheet): DrawnSheet =>
  drawn.sheet.size.height > drawn.sheet.size.width ? upended(drawn) : drawn;

const upended = (drawn: DrawnSheet): DrawnSheet => ({
  ...drawn,
  sheet: mirrored(drawn.sheet),
  turned: !drawn.turned,
});

const paged = (
  desk: CuttingDesk,
  head: PaperHead,
  bookmark: string,
  bodies: readonly Body[],
): readonly Page[] => (bodies.length === 0 ? [] : pagesOf(desk, head, bookmark, bodies));

/** What could not be planned, told before anything is cut. */
function missingPage(desk: CuttingDesk): readonly Body[] {
  const { plan, job, board } = desk.job;
  const stops = plan.checks.filter((check) => check.level === "stop");
  if (stops.length === 0) return [];
  const width = desk.paper.content.width;
  const lines = stops
    .slice(0, MOST_NAMED)
    .map((check) => caution(desk, missingLine(check, job, desk.speech.ruler), width));
  const more = stops.length - lines.length;
  return [
    {
      block: stack([
        pageHead(
          desk,
          {
            title: CUT_PLAN.notInPlan(board),
            line: CUT_PLAN.notInPlanLine,
            facts: voidFacts(desk.job.planWords),
          },
          width,
        ),
        gap(mm(3)),
        stack(lines, mm(2.4)),
        ...(more > 0 ? [gap(mm(3)), paragraph(desk, CUT_PLAN.moreMissing(more), TYPE.caution, width)] : []),
      ]),
      tells: CUT_PLAN.missingTells,
    },
  ];
}

/** As many as one page holds; the command line and the page name them all. */
const MOST_NAMED = 18;

export function deskOf(job: CutPlanJob, size: PaperSize, typeface: Typeface): CuttingDesk {
  const house = printableAll(job.house, typeface);
  const board = printable(job.board, typeface);
  const pieces = job.job.pieces.map((piece) => ({ piece, name: printable(piece.name, typeface) }));
  return {
    paper: paperOf(size),
    typeface,
    speech: { ruler: job.ruler, language: job.language },
    missing: house.missing + board.missing + pieces.reduce((sum, { name }) => sum + name.missing, 0),
    job: {
      ...job,
      board: board.text,
      house: house.texts,
      job: { ...job.job, pieces: pieces.map(({ piece, name }) => ({ ...piece, name: name.text })) },
    },
  };
}
