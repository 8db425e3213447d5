import { LABEL_LIMITS, labelChecks } from "../assembly/index.ts";
import type { LabelsJob } from "../papers/index.ts";
import { checkJson, type WorkDocument } from "../show/index.ts";
import { sayLabelCheck } from "../words/labels.ts";
import { type Packeted, workWords, inventoryMark } from "./bench-sheets.ts";
import type { Blanks } from "./blanks.ts";
import type { Prepared } from "./order.ts";

/** The labels of a packet: one for the back of every copy and one for the wall for every work that is cut, one for every blank. */
export function labelsJob({ works, holds, framed }: Prepared, blanks: Blanks, shared: Packeted): LabelsJob {
  return {
    works: works.flatMap((one, index) => {
      if (one.stopped) return [];
      const { record = {} } = one.work;
      return {
        work: workWords(one),
        composition: one.composition,
        held: holds[index] ?? null,
        glazing: one.glazing,
        weight: framed[index]?.mass.total ?? null,
        text: record.label ?? "",
        mark: inventoryMark(one),
      };
    }),
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
}

/** What a work's wall label breaks of the published limits, in the open format; nothing where it breaks none. */
export function labelJson(work: WorkDocument): { readonly label?: object } {
  const checks = labelChecks(work.record?.label ?? "");
  return checks.length === 0
    ? {}
    : {
        label: {
          checks: checks.map((check) => checkJson(check, sayLabelCheck(check, LABEL_LIMITS), "record.label")),
        },
      };
}
