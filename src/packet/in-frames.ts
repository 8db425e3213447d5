import type { FramePlan, HoldPlan } from "../assembly/index.ts";
import type { PracticeDocument, RowWork, ShowRead } from "../show/index.ts";
import { planFramed, withFrameStops } from "./framed.ts";
import { asHeld, planHolds } from "./hold.ts";
import { type ComposedWork, composeWorks, type RowProblem } from "./works.ts";

/** A list's works composed, held and framed; all lists run beside the works. */
export interface WorksInFrames {
  readonly works: readonly ComposedWork[];
  /** How each is held; null for a mat without a print. */
  readonly holds: readonly (HoldPlan | null)[];
  /** Each in its frame; null where it is not framed. */
  readonly framed: readonly (FramePlan | null)[];
  readonly problems: readonly RowProblem[];
}

/** Composes every work of a list, and plans what holds it and its frame; what cannot be read is listed by its row. */
export function worksInFrames(listed: readonly RowWork[], practice: PracticeDocument): WorksInFrames {
  const composed = composeWorks(listed, practice);
  const holds = planHolds(composed.works, practice);
  const held = composed.works.map((work, index) => asHeld(work, holds.plans[index] ?? null));
  const framed = planFramed(held, holds.plans);
  return {
    works: withFrameStops(held, framed),
    holds: holds.plans,
    framed,
    problems: [...composed.problems, ...holds.problems],
  };
}

/** The practice that a show is made by: its own, with its own kinds of frame before those of the same name. */
export function practiceOfShow(
  { practice, frames, unit }: Pick<ShowRead, "practice" | "frames" | "unit">,
  instead: PracticeDocument | null = null,
): PracticeDocument {
  const document = instead ?? practice ?? { unit };
  return frames.length === 0 ? document : { ...document, frames: [...frames, ...(document.frames ?? [])] };
}
