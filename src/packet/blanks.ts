import type { BlanksOfWork } from "../papers/index.ts";
import type { PlannedBoard } from "./boards.ts";
import type { ComposedWork } from "./works.ts";

/** What every blank of a packet is called, and the blanks of each work. */
export interface Blanks {
  /** For each board's plan, for each of its sheets, the number of each placement. */
  readonly numbers: readonly (readonly (readonly number[])[])[];
  /** Beside the works; null for one that gets no board. */
  readonly ofWork: readonly (BlanksOfWork | null)[];
}

/**
 * Numbers the blanks of all plans from 1 on, in the order in which they are cut: a number stands for one
 * piece of board in the whole packet, whatever it is cut from.
 */
export function numberBlanks(
  works: readonly ComposedWork[],
  boards: readonly PlannedBoard[],
  cutPlan: number,
): Blanks {
  const ofWork = works.map(({ composition, stopped }) =>
    stopped
      ? null
      : {
          mats: composition.mats.map((): number[] => []),
          mounts: [] as number[],
          fromOut: composition.mats.map((): number | null => null),
        },
  );
  let next = 1;
  const numbers = boards.map(({ plan }) => plan.sheets.map((sheet) => sheet.placements.map(() => next++)));
  for (const [place, { plan, uses }] of boards.entries()) {
    for (const [at, sheet] of plan.sheets.entries()) {
      for (const [index, { piece }] of sheet.placements.entries()) {
        const number = numbers[place]?.[at]?.[index];
        const use = uses[piece];
        if (number === undefined || use === undefined) continue;
        if (use.mat === null) ofWork[use.work]?.mounts.push(number);
        else ofWork[use.work]?.mats[use.mat]?.push(number);
      }
      // A layout in a drop-out tells its host what becomes of the OUT: the first blank that is cut from it.
      if (sheet.from.kind !== "drop-out") continue;
      const host = plan.sheets[sheet.from.sheet]?.placements[sheet.from.placement];
      const use = host === undefined ? undefined : uses[host.piece];
      const [first] = numbers[place]?.[at] ?? [];
      if (use === undefined || use.mat === null || first === undefined) continue;
      const work = ofWork[use.work];
      if (work) work.fromOut[use.mat] ??= first;
    }
  }
  return { numbers, ofWork: ofWork.map((work) => (work === null ? null : { cutPlan, ...work })) };
}
