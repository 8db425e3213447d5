import type { Size } from "../../geometry/index.ts";
import { larger, type Length, subtract, ZERO } from "../../lengths/index.ts";

/** A kind of sheet that can be cut from: bought, or an offcut of the rack (one copy, cost nought, trim nought). */
export interface StockSheet {
  readonly name: string;
  readonly width: Length;
  readonly height: Length;
  /** What one costs, in the money of the practice; nought or more. */
  readonly cost: number;
  /** How many there are; null: as many as wanted. */
  readonly copies: number | null;
  /** Comes off each of the four edges before anything is cut. */
  readonly trim: Length;
}

/** A blank that is wanted, `count` times. */
export interface PieceWanted {
  readonly name: string;
  readonly width: Length;
  readonly height: Length;
  readonly count: number;
  /** The usable board that falls out when this piece's window is cut, smaller than the piece both ways; null: none. */
  readonly window: Size | null;
  /** Whether it may lie turned by a quarter: false where the board has a grain or a pattern. */
  readonly turns: boolean;
}

/** One material's job: what is wanted and what it can be cut from. All cuts run from edge to edge (guillotine). */
export interface CuttingJob {
  readonly sheets: readonly StockSheet[];
  readonly pieces: readonly PieceWanted[];
  /** Whether windows that fall out are stock for other pieces, once for each piece cut. */
  readonly dropOuts: boolean;
  /** What the blade turns to dust between two neighbours; nought for a knife. */
  readonly kerf: Length;
  /** A leftover at least this large, either way up, is worth keeping; null: none is. */
  readonly least: Size | null;
  /** The longest cut that the bench can make; null: any. */
  readonly longestCut: Length | null;
  /** A layout that leaves no more than this of its sheet, in one direction, is warned about. */
  readonly tight: Length;
}

/** The most pieces in one job: past it neither the plan nor its papers are of use to a hand. */
export const MOST_PIECES = 20_000;
/** The most different pieces or sheets in one job. */
export const MOST_ENTRIES = 5_000;
/** The longest side of a sheet or a piece, 20 m: whole units stay within 31 bits. */
export const LONGEST_SIDE = 1_600_000_000 as Length;

const side = (length: number): boolean =>
  Number.isSafeInteger(length) && length > 0 && length <= LONGEST_SIDE;
const whole = (count: number): boolean => Number.isSafeInteger(count) && count >= 0;

/**
 * Refuses a job that no planner can read: a side that is not above nought or past 20 m, a count or a
 * price that is not a number of its kind, a window as large as its piece, too many pieces.
 * Throws RangeError with the entry's name. Demand that cannot be met is no such fault: it is planned
 * as far as it goes, and a check names the piece.
 */
export function requireSoundJob(job: CuttingJob): void {
  for (const sheet of job.sheets) {
    if (!side(sheet.width) || !side(sheet.height)) throw new RangeError(`sheet ${sheet.name}: size`);
    if (!whole(sheet.trim)) throw new RangeError(`sheet ${sheet.name}: trim`);
    if (!Number.isFinite(sheet.cost) || sheet.cost < 0) throw new RangeError(`sheet ${sheet.name}: cost`);
    if (sheet.copies !== null && !whole(sheet.copies)) throw new RangeError(`sheet ${sheet.name}: copies`);
  }
  let pieces = 0;
  for (const piece of job.pieces) {
    if (!side(piece.width) || !side(piece.height)) throw new RangeError(`piece ${piece.name}: size`);
    if (!whole(piece.count)) throw new RangeError(`piece ${piece.name}: count`);
    const { window } = piece;
    if (window !== null) {
      const inside = window.width < piece.width && window.height < piece.height;
      if (!side(window.width) || !side(window.height) || !inside)
        throw new RangeError(`piece ${piece.name}: window`);
    }
    pieces += piece.count;
  }
  if (pieces > MOST_PIECES) throw new RangeError(`${pieces} pieces in one job`);
  if (!whole(job.kerf)) throw new RangeError("kerf");
}

/** What of a sheet pieces may lie on: all of it within its trim. */
export const usableOf = ({ width, height, trim }: Pick<StockSheet, "width" | "height" | "trim">): Size => ({
  width: larger(ZERO, subtract(width, (2 * trim) as Length)),
  height: larger(ZERO, subtract(height, (2 * trim) as Length)),
});

/** Whether a board is worth keeping: at least as large as `least`, either way up; null: none is. */
export const isWorthKeeping = (board: Size, least: Size | null): boolean =>
  least !== null &&
  ((board.width >= least.width && board.height >= least.height) ||
    (board.width >= least.height && board.height >= least.width));
