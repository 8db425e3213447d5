import type { CuttingJob } from "../../src/plans/index.ts";

/**
 * What a patient hand without a plan does: the pieces from the highest down, each laid flat on the
 * first shelf with room, a new shelf below, a new sheet of the first stock when none is left. The
 * cost of the sheets is what a plan is held against.
 */
export function shelfCost(job: CuttingJob): number {
  const pieces = job.pieces
    .flatMap((piece) => {
      const flat = piece.turns && piece.height > piece.width;
      const [width, height] = flat ? [piece.height, piece.width] : [piece.width, piece.height];
      return Array.from({ length: piece.count }, () => ({ width, height }));
    })
    .toSorted((a, b) => b.height - a.height || b.width - a.width);
  const sheets: { cost: number; width: number; room: number; shelves: { height: number; used: number }[] }[] =
    [];
  for (const { width, height } of pieces) {
    if (sheets.some((sheet) => laid(sheet, width, height))) continue;
    const stock = job.sheets.find(
      (one) =>
        one.copies === null && one.width - 2 * one.trim >= width && one.height - 2 * one.trim >= height,
    );
    if (stock === undefined) throw new Error("a piece that no bought sheet takes");
    const sheet = {
      cost: stock.cost,
      width: stock.width - 2 * stock.trim,
      room: stock.height - 2 * stock.trim,
      shelves: [],
    };
    laid(sheet, width, height);
    sheets.push(sheet);
  }
  return sheets.reduce((sum, { cost }) => sum + cost, 0);
}

function laid(
  sheet: { width: number; room: number; shelves: { height: number; used: number }[] },
  width: number,
  height: number,
): boolean {
  const shelf = sheet.shelves.find((one) => one.height >= height && sheet.width - one.used >= width);
  if (shelf !== undefined) {
    shelf.used += width;
    return true;
  }
  if (sheet.room < height || sheet.width < width) return false;
  sheet.room -= height;
  sheet.shelves.push({ height, used: width });
  return true;
}
