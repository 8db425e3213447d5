import type { Size } from "../geometry/index.ts";
import { type Length, type Ruler, subtract, times } from "../lengths/index.ts";
import {
  type CuttingJob,
  type CuttingPlan,
  type PieceWanted,
  planCutting,
  type PlanOptions,
} from "../plans/cutting/index.ts";
import type { Practice, Stock, StockBoard } from "../show/index.ts";
import type { ComposedWork } from "./works.ts";

/** What a piece of a job is for: a mat of a work, or what the work is mounted on (`mat` null). */
export interface PieceUse {
  /** Place of the work among the composed works. */
  readonly work: number;
  readonly mat: number | null;
}

/** One board's job with its plan. `uses` runs beside the job's pieces. */
export interface PlannedBoard {
  readonly board: string;
  readonly job: CuttingJob;
  readonly uses: readonly PieceUse[];
  readonly plan: CuttingPlan;
  /** What its figures are printed on: the ruler of its works where they share one unit, else the practice's. */
  readonly ruler: Ruler;
}

/** All blanks of a list, one job and plan for each board, in the order in which the boards are first needed. */
export function planBoards(
  works: readonly ComposedWork[],
  practice: Practice,
  stock: Stock,
  options: PlanOptions,
  told: (board: string) => void,
): readonly PlannedBoard[] {
  const wanted = new Map<string, { piece: PieceWanted; use: PieceUse }[]>();
  const want = (board: string, piece: PieceWanted, use: PieceUse): void => {
    const entries = wanted.get(board) ?? [];
    entries.push({ piece, use });
    wanted.set(board, entries);
  };
  for (const [index, { work, composition, stopped, quantity }] of works.entries()) {
    if (stopped) continue;
    const { outer, design } = composition;
    const base = { name: work.title, ...outer, count: quantity, turns: true };
    for (const [mat, rule] of design.mats.entries()) {
      const opening = composition.mats[mat]?.back;
      const window = opening === undefined ? null : squared(opening, practice.squaringTrim);
      want(rule.board, { ...base, window }, { work: index, mat });
    }
    want(design.mount, { ...base, window: null }, { work: index, mat: null });
  }
  return [...wanted].map(([board, entries]) => {
    told(board);
    const job: CuttingJob = {
      sheets: stock.sheets.filter((sheet) => servesFor(sheet, board, practice)),
      pieces: entries.map(({ piece }) => piece),
      dropOuts: true,
      kerf: 0 as Length,
      least: stock.least,
      longestCut: stock.longestCut,
      tight: practice.squaringTrim,
    };
    const uses = entries.map(({ use }) => use);
    return { board, job, uses, plan: planCutting(job, options), ruler: rulerOf(works, uses, practice) };
  });
}

function rulerOf(works: readonly ComposedWork[], uses: readonly PieceUse[], practice: Practice): Ruler {
  const rulers = uses.flatMap(({ work }) => works[work]?.composition.design.ruler ?? []);
  const [first] = rulers;
  if (
    first === undefined ||
    first.unit === practice.ruler.unit ||
    rulers.some(({ unit }) => unit !== first.unit)
  ) {
    return practice.ruler;
  }
  return rulers.reduce((finest, ruler) => (ruler.graduation < finest.graduation ? ruler : finest));
}

/** A sheet that names no board serves for any when it is bought; when there is only so much of it, it is one of the practice's own board. */
function servesFor(sheet: StockBoard, board: string, practice: Practice): boolean {
  if (sheet.board !== null) return sheet.board === board;
  return sheet.copies === null || board === practice.mats[0]?.board;
}

/** What falls out of a window as square-edged board; null when nothing is left of it. */
function squared(opening: Size, trim: Length): Size | null {
  const width = subtract(opening.width, times(trim, 2));
  const height = subtract(opening.height, times(trim, 2));
  return width > 0 && height > 0 ? { width, height } : null;
}
