import type { Size } from "../geometry/index.ts";
import { printExact, type Unit } from "../lengths/index.ts";
import { type CuttingPlan, isWorthKeeping, type Placement } from "../plans/cutting/index.ts";
import { type CutBlankDocument, nameOfWork, type Stock, type StockDocument } from "../show/index.ts";
import { RACK_NAMES } from "../words/packet.ts";
import type { BoardJob } from "./boards.ts";
import type { ComposedWork } from "./works.ts";

/** What a show says of its boards: the rack, and what is cut already. */
export interface Boarded {
  readonly stock: StockDocument;
  readonly cut: readonly CutBlankDocument[];
}

type Sheet = StockDocument["sheets"][number];

/**
 * The rack and the list of cut blanks after one sheet of a plan has been cut: the sheet is gone where
 * there were only so many, its blanks are cut, and what is worth keeping lies in the rack, each leftover
 * and each window that falls out as a sheet of one copy that costs nothing. A window that others are to
 * be cut from is kept whatever its size. Throws RangeError for a sheet that is none of the stock.
 */
export function afterCutting(
  { board, job, uses, stock: own }: Pick<BoardJob, "board" | "job" | "uses" | "stock">,
  plan: CuttingPlan,
  index: number,
  works: readonly ComposedWork[],
  stock: Stock,
  before: Boarded,
): Boarded {
  const sheet = plan.sheets[index];
  const from = sheet?.from;
  const source = from?.kind === "stock" ? own[from.sheet] : undefined;
  if (sheet === undefined || source === undefined)
    throw new RangeError(`sheet ${index} is none of the stock`);
  const unit = before.stock.unit ?? "in";
  const gone = stock.sheets.indexOf(source);
  const rest = before.stock.sheets.flatMap((one, place): Sheet[] => {
    if (place !== gone || typeof one.copies !== "number") return [one];
    return one.copies > 1 ? [{ ...one, copies: one.copies - 1 }] : [];
  });
  const kept = (name: string, { width, height }: Size): Sheet => ({
    name,
    board,
    width: printExact(width, unit),
    height: printExact(height, unit),
    cost: 0,
    copies: 1,
  });
  const left = sheet.left.filter(({ keep }) => keep).map((one) => kept(RACK_NAMES.left(source.name), one));
  const windows = sheet.placements.flatMap((lies, placement): Sheet[] => {
    const piece = job.pieces[lies.piece];
    const window = job.dropOuts ? (piece?.window ?? null) : null;
    if (piece === undefined || window === null) return [];
    const hosts = plan.sheets.some(
      (other) =>
        other.from.kind === "drop-out" && other.from.sheet === index && other.from.placement === placement,
    );
    return hosts || isWorthKeeping(window, job.least) ? [kept(RACK_NAMES.window(piece.name), window)] : [];
  });
  return {
    stock: { ...before.stock, sheets: [...left, ...windows].reduce(withSheet, rest) },
    cut: sheet.placements.reduce(
      (cut, lies) => withBlank(cut, blankOf(lies, board, uses[lies.piece]?.work, works, unit)),
      before.cut,
    ),
  };
}

/** A list with one more of something: alike ones are one entry that is counted. */
function withOne<Entry extends object>(
  list: readonly Entry[],
  one: Entry,
  alike: readonly (keyof Entry)[],
  counted: (entry: Entry) => Entry,
): Entry[] {
  const there = list.findIndex((entry) => alike.every((key) => entry[key] === one[key]));
  return there < 0 ? [...list, one] : list.map((entry, index) => (index === there ? counted(entry) : entry));
}

const withSheet = (sheets: readonly Sheet[], sheet: Sheet): Sheet[] =>
  withOne(sheets, sheet, ["name", "board", "width", "height", "cost"], (one) => ({
    ...one,
    copies: (one.copies ?? 0) + 1,
  }));

const withBlank = (cut: readonly CutBlankDocument[], blank: CutBlankDocument): CutBlankDocument[] =>
  withOne(cut, blank, ["work", "board", "width", "height"], (one) => ({
    ...one,
    count: (one.count ?? 1) + 1,
  }));

function blankOf(
  { width, height }: Placement,
  board: string,
  place: number | undefined,
  works: readonly ComposedWork[],
  unit: Unit,
): CutBlankDocument {
  const one = place === undefined ? undefined : works[place];
  if (one === undefined) throw new RangeError("a blank that no work asked for");
  const [long, short] = width > height ? [width, height] : [height, width];
  return {
    work: nameOfWork(one.work),
    board,
    width: printExact(long, unit),
    height: printExact(short, unit),
  };
}
