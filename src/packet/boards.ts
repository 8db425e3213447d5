import { type Length, type Ruler, subtract, times, ZERO } from "../lengths/index.ts";
import type { Size } from "../geometry/index.ts";
import { type CuttingJob, type PieceWanted, type PlanOptions } from "../plans/cutting/index.ts";
import {
  CutAlready,
  type CutBlank,
  type Glazing,
  nameOfWork,
  type Practice,
  type Stock,
  type StockBoard,
} from "../show/index.ts";
import { type PlanWithSaved, planWithSaved } from "./saved.ts";
import type { ComposedWork } from "./works.ts";

/** What a piece of a job is for: a mat of a work, by its place from the lowest up, or another layer of its package. */
export type PieceUse = {
  /** Place of the work among the composed works. */
  readonly work: number;
} & (
  | { readonly layer: "mat"; readonly mat: number }
  | { readonly layer: "mount" | "backing" | "glazing"; readonly mat: null }
);

/** What a job's sheets are made of, as far as the hand must know it. */
export type Material = "board" | Glazing["kind"];

/** One material's job. `uses` runs beside the job's pieces. */
export interface BoardJob {
  readonly board: string;
  readonly material: Material;
  readonly job: CuttingJob;
  readonly uses: readonly PieceUse[];
  /** The stock's own entries, beside the job's sheets. */
  readonly stock: readonly StockBoard[];
  /** What its figures are printed on: the ruler of its works where they share one unit, else the practice's. */
  readonly ruler: Ruler;
}

/** The same with its plan. */
export interface PlannedBoard extends BoardJob, PlanWithSaved {}

/** What one material is wanted for. */
interface Wanted {
  readonly material: Material;
  readonly kerf: Length;
  /** Whether sheets that name no board serve for it too. */
  readonly anySheet: boolean;
  readonly entries: { readonly piece: PieceWanted; readonly use: PieceUse }[];
}

/** Plans the job of each material. */
export function planBoards(
  works: readonly ComposedWork[],
  practice: Practice,
  stock: Stock,
  options: PlanOptions,
  told: (board: string) => void,
  cut: readonly CutBlank[] = [],
): readonly PlannedBoard[] {
  return boardJobs(works, practice, stock, cut).map((one) => {
    told(one.board);
    return { ...one, ...planWithSaved(one.job, options) };
  });
}

/** All pieces of a list that are not cut yet, one job for each material, in the order in which the materials are first needed. */
export function boardJobs(
  works: readonly ComposedWork[],
  practice: Practice,
  stock: Stock,
  cut: readonly CutBlank[] = [],
): readonly BoardJob[] {
  return [...wantedOf(works, practice, new CutAlready(cut))].map(
    ([board, { material, kerf, anySheet, entries }]) => {
      const own = stock.sheets.filter((sheet) => servesFor(sheet, board, anySheet, practice));
      const job: CuttingJob = {
        sheets: own,
        pieces: entries.map(({ piece }) => piece),
        dropOuts: material === "board",
        kerf,
        least: stock.least,
        longestCut: stock.longestCut,
        tight: practice.squaringTrim,
      };
      const uses = entries.map(({ use }) => use);
      return { board, material, job, uses, stock: own, ruler: rulerOf(works, uses, practice) };
    },
  );
}

/** Every piece of some works that is not cut yet, by what it is of. */
export function wantedOf(
  works: readonly ComposedWork[],
  practice: Practice,
  cut: CutAlready = new CutAlready([]),
): ReadonlyMap<string, Wanted> {
  const wanted = new Map<string, Wanted>();
  const want = (
    board: string,
    piece: PieceWanted,
    use: PieceUse,
    of: Omit<Wanted, "entries"> = { material: "board", kerf: ZERO, anySheet: true },
  ): void => {
    const { work } = works[use.work] ?? {};
    const { width, height } = piece;
    const there =
      work === undefined ? 0 : cut.take({ work: nameOfWork(work), board, width, height }, piece.count);
    if (there === piece.count) return;
    const entry = wanted.get(board) ?? { ...of, entries: [] };
    entry.entries.push({ piece: { ...piece, count: piece.count - there }, use });
    wanted.set(board, entry);
  };
  const going = works.flatMap((one, work) => (one.stopped ? [] : [{ ...one, index: work }]));
  for (const { index, work, composition, quantity, ready } of going) {
    const { outer, design } = composition;
    const base = { name: work.title, ...outer, count: quantity, turns: true };
    for (const [mat, rule] of ready ? [] : design.mats.entries()) {
      const opening = composition.mats[mat]?.back;
      const window = opening === undefined ? null : squared(opening, practice.squaringTrim);
      want(rule.board, { ...base, window }, { work: index, mat, layer: "mat" });
    }
    want(design.mount, { ...base, window: null }, { work: index, mat: null, layer: "mount" });
  }
  for (const { index, work, composition, quantity, backing, glazing } of going) {
    const layers = [
      ...(backing === null ? [] : [{ ...backing, layer: "backing", material: "board", kerf: ZERO } as const]),
      ...(glazing === null ? [] : [{ ...glazing, layer: "glazing", material: glazing.kind } as const]),
    ];
    for (const { board, less, layer, material, kerf } of layers) {
      const width = subtract(composition.outer.width, less);
      const height = subtract(composition.outer.height, less);
      // A package that is all clearance has no such layer.
      if (width <= 0 || height <= 0) continue;
      want(
        board,
        { name: work.title, width, height, count: quantity, window: null, turns: true },
        { work: index, mat: null, layer },
        { material, kerf, anySheet: false },
      );
    }
  }
  return wanted;
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
export function servesFor(sheet: StockBoard, board: string, anySheet: boolean, practice: Practice): boolean {
  if (sheet.board !== null) return sheet.board === board;
  return anySheet && (sheet.copies === null || board === practice.mats[0]?.board);
}

/** What falls out of a window as square-edged board; null when nothing is left of it. */
function squared(opening: Size, trim: Length): Size | null {
  const width = subtract(opening.width, times(trim, 2));
  const height = subtract(opening.height, times(trim, 2));
  return width > 0 && height > 0 ? { width, height } : null;
}
