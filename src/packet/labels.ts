import { labels } from "../papers/index.ts";
import type { Typeface } from "../drawings/index.ts";
import type { LabelsJob } from "../papers/index.ts";
import type { Page, PaperSize } from "../papers/index.ts";
import { type Packeted, workWords } from "./bench-sheets.ts";
import type { Blanks } from "./blanks.ts";
import type { PlannedBoard } from "./boards.ts";
import type { ComposedWork } from "./works.ts";

/** The labels of a packet: two for every work that is cut, one for every blank. */
export function packetLabels(
  works: readonly ComposedWork[],
  boards: readonly PlannedBoard[],
  blanks: Blanks,
  shared: Packeted,
  size: PaperSize,
  typeface: Typeface,
): readonly Page[] {
  const job: LabelsJob = {
    works: works
      .filter(({ stopped }) => !stopped)
      .map((one) => ({ work: workWords(one), composition: one.composition, mark: "" })),
    blanks: boards.flatMap(({ board, uses, plan }, place) =>
      plan.sheets.flatMap((sheet, at) =>
        sheet.placements.flatMap((lies, index) => {
          const use = uses[lies.piece];
          const work = use === undefined ? undefined : works[use.work];
          const number = blanks.numbers[place]?.[at]?.[index];
          if (use === undefined || work === undefined || number === undefined) return [];
          return [
            {
              number,
              title: work.work.title,
              becomes: use.mat ?? ("mount" as const),
              mats: work.composition.mats.length,
              size: { width: lies.width, height: lies.height },
              board,
            },
          ];
        }),
      ),
    ),
    house: shared.house,
    plan: shared.plan,
    language: shared.practice.language,
    ruler: shared.practice.ruler,
  };
  return labels({ ...job, blanks: job.blanks.toSorted((a, b) => a.number - b.number) }, size, typeface);
}
