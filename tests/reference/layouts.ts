import type { CuttingJob } from "../../src/plans/index.ts";

/** A piece as it lies on a sheet, from the sheet's corner. */
export interface LaidPiece {
  readonly piece: number;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** One sheet of the job's stock with what lies on it. */
export interface LaidSheet {
  readonly stock: number;
  readonly pieces: readonly LaidPiece[];
}

/**
 * What is wrong with layouts, whoever made them: a piece of another size or outside its sheet, two too
 * close, no straight cuts that part them, a piece too often or not often enough, a sheet used more
 * often than there are. Empty: the job could be cut so. Windows are not looked at.
 */
export function layoutFaults(job: CuttingJob, sheets: readonly LaidSheet[]): string[] {
  const faults: string[] = [];
  const made = job.pieces.map(() => 0);
  const used = job.sheets.map(() => 0);
  sheets.forEach(({ stock, pieces }, index) => {
    const sheet = job.sheets[stock];
    if (sheet === undefined) {
      faults.push(`sheet ${index}: no such stock`);
      return;
    }
    used[stock] = (used[stock] ?? 0) + 1;
    for (const lies of pieces) {
      const piece = job.pieces[lies.piece];
      made[lies.piece] = (made[lies.piece] ?? 0) + 1;
      const upright = piece?.width === lies.width && piece.height === lies.height;
      const turned = piece?.turns === true && piece.width === lies.height && piece.height === lies.width;
      if (!upright && !turned) faults.push(`sheet ${index}: piece ${lies.piece} has another size`);
      const inside =
        Math.min(lies.left, lies.top) >= sheet.trim &&
        lies.left + lies.width <= sheet.width - sheet.trim &&
        lies.top + lies.height <= sheet.height - sheet.trim;
      if (!inside) faults.push(`sheet ${index}: piece ${lies.piece} lies outside`);
    }
    if (!parted(pieces, job.kerf)) faults.push(`sheet ${index}: no straight cuts part it`);
  });
  job.pieces.forEach(({ count }, piece) => {
    if (made[piece] !== count) faults.push(`piece ${piece}: ${made[piece]} of ${count}`);
  });
  job.sheets.forEach(({ copies }, stock) => {
    if (copies !== null && (used[stock] ?? 0) > copies) faults.push(`stock ${stock}: used ${used[stock]}`);
  });
  return faults;
}

/** Whether the pieces fall apart, down to each by itself, along gaps of a kerf that run right through. */
function parted(pieces: readonly LaidPiece[], kerf: number): boolean {
  if (pieces.length <= 1) return true;
  const sides = [
    { from: (one: LaidPiece) => one.left, to: (one: LaidPiece) => one.left + one.width },
    { from: (one: LaidPiece) => one.top, to: (one: LaidPiece) => one.top + one.height },
  ];
  for (const { from, to } of sides) {
    const sorted = pieces.toSorted((a, b) => from(a) - from(b));
    let reach = Number.NEGATIVE_INFINITY;
    for (const [index, one] of sorted.entries()) {
      if (index > 0 && from(one) >= reach + kerf)
        return parted(sorted.slice(0, index), kerf) && parted(sorted.slice(index), kerf);
      reach = Math.max(reach, to(one));
    }
  }
  return false;
}
