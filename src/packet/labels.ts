import type { Typeface } from "../drawings/index.ts";
import { labels, type LabelsJob, type Page, type PaperSize } from "../papers/index.ts";
import { type Packeted, workWords } from "./bench-sheets.ts";
import type { Blanks } from "./blanks.ts";
import type { ComposedWork } from "./works.ts";

/** The labels of a packet: two for every work that is cut, one for every blank. */
export function packetLabels(
  works: readonly ComposedWork[],
  blanks: Blanks,
  shared: Packeted,
  size: PaperSize,
  typeface: Typeface,
): readonly Page[] {
  const job: LabelsJob = {
    works: works
      .filter(({ stopped }) => !stopped)
      .map((one) => ({ work: workWords(one), composition: one.composition, mark: "" })),
    blanks: blanks.all.map(({ number, use, work, board, lies }) => ({
      number,
      title: work.work.title,
      becomes: use.layer === "mat" ? use.mat : use.layer,
      mats: work.composition.mats.length,
      size: { width: lies.width, height: lies.height },
      board: board.board,
    })),
    house: shared.house,
    plan: shared.plan,
    language: shared.practice.language,
    ruler: shared.practice.ruler,
  };
  return labels(job, size, typeface);
}
