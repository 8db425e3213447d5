import MultiBinPacker from "multi-bin-packer";
import type { CuttingJob } from "../../src/plans/index.ts";
import { Chance } from "../../tests/reference/chance.ts";
import { type LaidSheet, layoutFaults } from "../../tests/reference/layouts.ts";

interface Rectangle {
  readonly piece: number;
  readonly width: number;
  readonly height: number;
}

const ORDERS: readonly ((one: Rectangle) => number)[] = [
  ({ width, height }) => Math.max(width, height),
  ({ width, height }) => width * height,
  ({ height }) => height,
  ({ width }) => width,
];

/**
 * The cheapest job that a general packer of rectangles makes, one whose bins are split in two again
 * and again and so can be cut edge to edge. It neither turns rectangles nor knows prices, so it is run
 * for every bought sheet, with the offcuts filled first, in several orders, with the pieces flat, upright
 * and as they come, then again and again at random until the time is up; the cheapest is taken. Every
 * plan that is taken is checked. Windows are left aside.
 */
export function packerCost(job: CuttingJob, seconds: number, clock: () => number): number {
  const until = clock() + seconds * 1000;
  const chance = new Chance(1);
  const pieces = job.pieces.flatMap(({ width, height, count }, piece) =>
    Array.from({ length: count }, (): Rectangle => ({ piece, width, height })),
  );
  const bought = job.sheets.flatMap(({ copies }, index) => (copies === null ? [index] : []));
  let best = Number.POSITIVE_INFINITY;
  const tries = ORDERS.flatMap((order) =>
    [0, 1, 0.5].flatMap((flat) => bought.map((stock) => ({ order, flat, stock, blur: 0 }))),
  );
  for (let turn = 0; turn < tries.length || clock() < until; turn++) {
    const tried = tries[turn % tries.length];
    if (tried === undefined || (turn > 0 && clock() >= until)) break;
    const { order, flat, stock } = tried;
    const blur = turn < tries.length ? 0 : 0.4;
    const ranked = pieces
      .map((one) => turned(job, one, flat, chance))
      .map((one) => ({ one, rank: order(one) * (1 + blur * chance.next()) }))
      .toSorted((a, b) => b.rank - a.rank)
      .map(({ one }) => one);
    const sheets = packed(job, ranked, stock);
    if (sheets === null) continue;
    const cost = sheets.reduce((sum, one) => sum + (job.sheets[one.stock]?.cost ?? 0), 0);
    if (cost >= best) continue;
    const [fault] = layoutFaults(job, sheets);
    if (fault !== undefined) throw new Error(`the packer's plan does not hold: ${fault}`);
    best = cost;
  }
  return best;
}

function turned(job: CuttingJob, one: Rectangle, flat: number, chance: Chance): Rectangle {
  const lies = one.width >= one.height;
  if (job.pieces[one.piece]?.turns !== true || lies === chance.happens(flat)) return one;
  return { piece: one.piece, width: one.height, height: one.width };
}

/** Offcuts first, the rest on one kind of bought sheet; null where a piece fits neither way. */
function packed(job: CuttingJob, pieces: readonly Rectangle[], bought: number): LaidSheet[] | null {
  const sheets: LaidSheet[] = [];
  let rest = pieces;
  const fill = (stock: number, most: number): void => {
    const sheet = job.sheets[stock];
    if (sheet === undefined) return;
    const [width, height] = [sheet.width - 2 * sheet.trim, sheet.height - 2 * sheet.trim];
    const packer = new MultiBinPacker(width, height, job.kerf);
    const left: Rectangle[] = [];
    rest.forEach((asked, index) => {
      const one = standing(job, asked, width, height);
      if (one !== null) packer.add(one.width, one.height, index);
      // A further bin than there are is taken away again.
      const over = packer.bins.length > most;
      if (over) packer.bins.pop();
      if (one === null || over) left.push(asked);
    });
    for (const { rects } of packer.bins) {
      sheets.push({
        stock,
        pieces: rects.map((rect) => ({
          piece: rest[rect.data]?.piece ?? -1,
          left: rect.x + sheet.trim,
          top: rect.y + sheet.trim,
          width: rect.width,
          height: rect.height,
        })),
      });
    }
    rest = left;
  };
  job.sheets.forEach(({ copies }, stock) => {
    if (copies !== null) fill(stock, copies);
  });
  fill(bought, Number.POSITIVE_INFINITY);
  return rest.length === 0 ? sheets : null;
}

/** The piece as it is asked for, or turned where only so it fits; null where it does not. */
function standing(job: CuttingJob, one: Rectangle, width: number, height: number): Rectangle | null {
  if (one.width <= width && one.height <= height) return one;
  const turns = job.pieces[one.piece]?.turns === true;
  if (!turns || one.height > width || one.width > height) return null;
  return { piece: one.piece, width: one.height, height: one.width };
}
