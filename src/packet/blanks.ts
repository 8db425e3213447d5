import type { BlanksOfWork } from "../papers/index.ts";
import type { Placement } from "../plans/cutting/index.ts";
import type { PieceUse, PlannedBoard } from "./boards.ts";
import type { ComposedWork } from "./works.ts";

/** One piece of board, as it is cut. */
export interface Blank {
  /** It stands for this piece in the whole packet, whatever it is cut from. */
  readonly number: number;
  readonly use: PieceUse;
  readonly work: ComposedWork;
  readonly board: PlannedBoard;
  /** Place of its sheet in the board's plan, and how it lies there. */
  readonly sheet: number;
  readonly lies: Placement;
  /** The blank out of whose window it is cut; null: out of a sheet. */
  readonly host: number | null;
}

/** What every blank of a packet is called, and the blanks of each work. */
export interface Blanks {
  /** By number, from 1 on. */
  readonly all: readonly Blank[];
  /** For each board's plan, for each of its sheets, the number of each placement. */
  readonly numbers: readonly (readonly (readonly number[])[])[];
  /** Beside the works; null for one that gets no board. */
  readonly ofWork: readonly (BlanksOfWork | null)[];
}

/** Numbers the blanks of all plans from 1 on, in the order in which they are cut. */
export function numberBlanks(
  works: readonly ComposedWork[],
  boards: readonly PlannedBoard[],
  cutPlan: number,
): Blanks {
  let next = 1;
  const numbers = boards.map(({ plan }) => plan.sheets.map((sheet) => sheet.placements.map(() => next++)));
  const all = boards.flatMap((board, place) => blanksOf(works, board, numbers[place] ?? []));
  const ofWork = works.map(({ composition, stopped }) =>
    stopped
      ? null
      : {
          mats: composition.mats.map((): number[] => []),
          mounts: [] as number[],
          fromOut: composition.mats.map((): number | null => null),
        },
  );
  for (const { number, use, host } of all) {
    if (use.layer === "mount") ofWork[use.work]?.mounts.push(number);
    else if (use.mat !== null) ofWork[use.work]?.mats[use.mat]?.push(number);
    // The host is told what becomes of its OUT: the first blank that is cut from it.
    const from = host === null ? undefined : all[host - 1]?.use;
    if (from === undefined || from.mat === null) continue;
    const hosting = ofWork[from.work];
    if (hosting) hosting.fromOut[from.mat] ??= number;
  }
  return { all, numbers, ofWork: ofWork.map((work) => (work === null ? null : { cutPlan, ...work })) };
}

function blanksOf(
  works: readonly ComposedWork[],
  board: PlannedBoard,
  numbers: readonly (readonly number[])[],
): Blank[] {
  const { plan, uses } = board;
  return plan.sheets.flatMap(({ from, placements }, sheet) => {
    const host = from.kind === "stock" ? null : (numbers[from.sheet]?.[from.placement] ?? null);
    return placements.map((lies, index): Blank => {
      const use = uses[lies.piece];
      const work = use === undefined ? undefined : works[use.work];
      const number = numbers[sheet]?.[index];
      if (use === undefined || work === undefined || number === undefined)
        throw new RangeError(`a placement of piece ${lies.piece} that no work asked for`);
      return { number, use, work, board, sheet, lies, host };
    });
  });
}
