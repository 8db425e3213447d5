import { type Length, ZERO } from "../../lengths/index.ts";
import type { CuttingJob, PieceWanted, StockSheet } from "./job.ts";
import { moneyUnit } from "./money.ts";

/**
 * The job as the planners see it: whole numbers of the largest unit that all its lengths share, with
 * no trim and no kerf. Trim has shrunk the sheets; kerf has been added to every piece and once to
 * every sheet, both ways, which is exact for guillotine cuts: each cut takes its kerf from the part
 * before it, and the last part's kerf hangs over the edge. Pieces of one size are one kind.
 */
export interface WholeJob {
  /** Ticks in one unit. */
  readonly unit: number;
  /** What 1 of the stocks' costs is, in the job's money: they are whole numbers where prices have a common unit. */
  readonly money: number;
  /** In units. */
  readonly kerf: number;
  readonly kinds: readonly Kind[];
  /** The job's sheets, at the same indices, then the drop-outs. */
  readonly stocks: readonly Stock[];
  /** Pieces of the job that no sheet can give, with the reason. */
  readonly impossible: readonly Impossible[];
}

export interface Impossible {
  readonly piece: number;
  readonly why: "too-large" | "cut-too-long";
}

/** All pieces of one size. */
export interface Kind {
  readonly width: number;
  readonly height: number;
  /** False also for a square, which has nothing to turn. */
  readonly turns: boolean;
  readonly count: number;
  /** Indices into the job's pieces, and how many of each are wanted. */
  readonly pieces: readonly number[];
  readonly counts: readonly number[];
}

/** A rectangle to cut from, kerf once added both ways, trim taken off. */
export interface Stock {
  readonly width: number;
  readonly height: number;
  /** In the whole job's `money`. */
  readonly cost: number;
  /** Infinity: as many as wanted. */
  readonly copies: number;
  /** No cut in a part may be longer than this, in the planners' units; Infinity: any. */
  readonly longestCut: number;
  /** Whether pieces are held to `longestCut` too, since their edges at the trim are cut. */
  readonly trimmed: boolean;
  /** Pieces of the job whose window this is; null: a sheet of the stock. */
  readonly hosts: readonly number[] | null;
  /** Whether pieces that must not turn can be cut from it: not from a window that may itself lie turned. */
  readonly takesFixed: boolean;
}

/** Reads a sound job (see `requireSoundJob`) into whole units. */
export function wholeJob(job: CuttingJob): WholeJob {
  const reachable = job.pieces.map((piece) => reach(job, piece));
  const wanted = job.pieces.flatMap((piece, index) =>
    reachable[index] === "yes" && piece.count > 0 ? [index] : [],
  );
  const impossible = reachable.flatMap((why, piece) =>
    why === "yes" || job.pieces[piece]?.count === 0 ? [] : [{ piece, why }],
  );
  const unit = commonUnit(job, wanted);
  const kinds = kindsOf(job, wanted, unit);
  const dropOuts = job.dropOuts ? dropOutsOf(job, wanted, unit) : [];
  const money = moneyOf(job);
  return {
    unit,
    money,
    kerf: job.kerf / unit,
    kinds,
    stocks: [
      ...job.sheets.map((sheet) => stockOf(job, sheet, unit, money)),
      ...dropOuts.filter((stock) => kinds.some((kind) => fitsAtAll(kind, stock))),
    ],
    impossible,
  };
}

/** Whether some sheet can give the piece, alone on it. */
function reach(job: CuttingJob, piece: PieceWanted): "yes" | Impossible["why"] {
  let why: Impossible["why"] = "too-large";
  for (const sheet of job.sheets) {
    if (sheet.copies === 0) continue;
    const [width, height] = usable(sheet);
    const lies = (w: Length, h: Length) => w <= width && h <= height;
    const upright = lies(piece.width, piece.height);
    const turned = piece.turns && lies(piece.height, piece.width);
    if (!upright && !turned) continue;
    why = "cut-too-long";
    if (job.longestCut === null) return "yes";
    const limit = job.longestCut - 2 * sheet.trim;
    if (upright && canFree(width, height, piece.width, piece.height, limit, sheet.trim > 0)) return "yes";
    if (turned && canFree(width, height, piece.height, piece.width, limit, sheet.trim > 0)) return "yes";
  }
  return why;
}

/** Whether at most two cuts, none longer than `limit`, free a piece from the corner of a sheet. */
function canFree(width: number, height: number, w: number, h: number, limit: number, trimmed: boolean) {
  if (trimmed && (w > limit || h > limit)) return false;
  const upright = w === width || height <= limit;
  const level = h === height || width <= limit;
  return (upright && (h === height || w <= limit)) || (level && (w === width || h <= limit));
}

const usable = (sheet: StockSheet): readonly [number, number] => [
  sheet.width - 2 * sheet.trim,
  sheet.height - 2 * sheet.trim,
];

function commonUnit(job: CuttingJob, wanted: readonly number[]): number {
  let unit = job.kerf as number;
  const take = (length: number) => {
    if (length > 0) unit = greatestCommonDivisor(unit, length);
  };
  for (const sheet of job.sheets) for (const side of usable(sheet)) take(side);
  for (const index of wanted) {
    const piece = job.pieces[index];
    if (piece === undefined) continue;
    take(piece.width);
    take(piece.height);
    if (job.dropOuts && piece.window !== null) {
      take(piece.window.width);
      take(piece.window.height);
    }
  }
  return unit === 0 ? 1 : unit;
}

function greatestCommonDivisor(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b];
  return a;
}

function kindsOf(job: CuttingJob, wanted: readonly number[], unit: number): Kind[] {
  const kerf = job.kerf / unit;
  const kinds = new Map<
    string,
    { kind: Omit<Kind, "count" | "pieces" | "counts">; pieces: number[]; counts: number[] }
  >();
  for (const index of wanted) {
    const piece = job.pieces[index];
    if (piece === undefined) continue;
    const turns = piece.turns && piece.width !== piece.height;
    const [a, b] = [piece.width / unit + kerf, piece.height / unit + kerf];
    const [width, height] = turns && a < b ? [b, a] : [a, b];
    const key = `${width} ${height} ${turns}`;
    const entry = kinds.get(key) ?? { kind: { width, height, turns }, pieces: [], counts: [] };
    entry.pieces.push(index);
    entry.counts.push(piece.count);
    kinds.set(key, entry);
  }
  return [...kinds.values()]
    .map(({ kind, pieces, counts }) => ({
      ...kind,
      pieces,
      counts,
      count: counts.reduce((a, b) => a + b, 0),
    }))
    .toSorted((a, b) => b.width * b.height - a.width * a.height || b.width - a.width || b.height - a.height);
}

/** The unit of all prices, else a millionth of the largest: the planners take a difference of a millionth of it for none. */
function moneyOf({ sheets }: CuttingJob): number {
  const prices = sheets.map(({ cost }) => cost);
  const most = prices.reduce((one, other) => Math.max(one, other), 0);
  return moneyUnit(prices) ?? (most > 0 ? most * 1e-6 : 1);
}

/** A price in the planners' money, whole where it is a whole number of it. */
function costIn(money: number, price: number): number {
  const cost = price / money;
  const near = Math.round(cost);
  return Math.abs(cost - near) <= 1e-9 * near ? near : cost;
}

function stockOf(job: CuttingJob, sheet: StockSheet, unit: number, money: number): Stock {
  const kerf = job.kerf / unit;
  const [width, height] = usable(sheet);
  return {
    width: Math.max(0, width / unit) + kerf,
    height: Math.max(0, height / unit) + kerf,
    cost: costIn(money, sheet.cost),
    copies: width > 0 && height > 0 ? (sheet.copies ?? Number.POSITIVE_INFINITY) : 0,
    longestCut: cutLimit(job, unit, sheet.trim),
    trimmed: sheet.trim > 0,
    hosts: null,
    takesFixed: true,
  };
}

/** The bench's longest cut less the trim that a part may still carry at both ends. */
function cutLimit(job: CuttingJob, unit: number, trim: Length): number {
  if (job.longestCut === null) return Number.POSITIVE_INFINITY;
  return Math.floor((job.longestCut - 2 * trim) / unit) + job.kerf / unit;
}

/** Windows of one size are one stock with as many copies as their pieces are cut. */
function dropOutsOf(job: CuttingJob, wanted: readonly number[], unit: number): Stock[] {
  const kerf = job.kerf / unit;
  // A square has no direction in the sheet, whatever its grain.
  const fixedWanted = wanted.some((index) => {
    const piece = job.pieces[index];
    return piece !== undefined && !piece.turns && piece.width !== piece.height;
  });
  const stocks = new Map<
    string,
    { stock: Omit<Stock, "copies" | "hosts">; hosts: number[]; copies: number }
  >();
  for (const index of wanted) {
    const piece = job.pieces[index];
    if (piece === undefined || piece.window === null) continue;
    const [a, b] = [piece.window.width / unit + kerf, piece.window.height / unit + kerf];
    const hostTurns = piece.turns && piece.width !== piece.height;
    const [width, height] = (hostTurns || !fixedWanted) && a < b ? [b, a] : [a, b];
    const takesFixed = !fixedWanted || !hostTurns || a === b;
    const key = `${width} ${height} ${takesFixed}`;
    const entry = stocks.get(key) ?? {
      stock: { width, height, cost: 0, longestCut: cutLimit(job, unit, ZERO), trimmed: false, takesFixed },
      hosts: [],
      copies: 0,
    };
    entry.hosts.push(index);
    entry.copies += piece.count;
    stocks.set(key, entry);
  }
  return [...stocks.values()].map(({ stock, hosts, copies }) => ({ ...stock, hosts, copies }));
}

/** Whether a kind that must not turn is kept out of a stock that may itself lie turned. */
export const mayLieIn = (kind: Kind, stock: Stock): boolean =>
  stock.takesFixed || kind.turns || kind.width === kind.height;

/** Whether a kind fits a stock by size and direction; the bench's longest cut left aside. */
export const fitsAtAll = (kind: Kind, stock: Stock): boolean =>
  mayLieIn(kind, stock) &&
  ((kind.width <= stock.width && kind.height <= stock.height) ||
    (kind.turns && kind.height <= stock.width && kind.width <= stock.height));
