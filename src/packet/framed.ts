import {
  bestFitting,
  type Fit,
  fitInto,
  type FramePlan,
  frameStops,
  type HoldPlan,
  planFrame,
} from "../assembly/index.ts";
import {
  fitJson,
  type FrameKind,
  framedJson,
  framePracticeFor,
  type PracticeDocument,
  readWorkFrame,
  readDesign,
} from "../show/index.ts";
import type { Language } from "../words/index.ts";
import type { ComposedWork, RowProblem } from "./works.ts";

/** Each work in its frame, in their order; null where it is not framed. */
export const planFramed = (
  works: readonly ComposedWork[],
  holds: readonly (HoldPlan | null)[],
): readonly (FramePlan | null)[] =>
  works.map(({ composition, frame, work }, index) =>
    frame === null
      ? null
      : planFrame(
          composition,
          frame.frame,
          holds[index] ?? null,
          work.process ?? work.design.print?.process ?? "",
        ),
  );

/** Whether a frame is made, or taken, for a work: its mats are cut, and nothing stops the frame itself. */
export const isFramed = (one: ComposedWork, plan: FramePlan | null | undefined): plan is FramePlan =>
  plan !== null && plan !== undefined && !one.stopped && frameStops(plan).length === 0;

/** Works that name a kind of frame when there is no more of it, by row. */
export function framesShort(works: readonly ComposedWork[]): readonly RowProblem[] {
  const taken = new Map<string, number>();
  return works.flatMap(({ row, frame, quantity, stopped }): readonly RowProblem[] => {
    if (frame === null || frame.kind.copies === null || stopped) return [];
    const { name, copies } = frame.kind;
    const all = (taken.get(name) ?? 0) + quantity;
    taken.set(name, all);
    if (all <= copies) return [];
    return [{ row, problem: { field: "frame", found: name, wanted: { kind: "at-most", most: copies } } }];
  });
}

/** What exists, and which works go into it best, the best one first. */
export interface Reuse {
  readonly kind: FrameKind;
  readonly fits: readonly { readonly work: ComposedWork; readonly fit: Fit }[];
}

/** Every frame and mat that exists with the works of a packet, as far as they can be read in it. */
export function reuseOf(works: readonly ComposedWork[], practice: PracticeDocument): readonly Reuse[] {
  const unit = practice.unit ?? works[0]?.composition.design.ruler.unit ?? "in";
  const read = framePracticeFor(practice, unit);
  if (!read.ok) return [];
  return read.value.frames
    .filter(({ opening, mat }) => opening !== null || mat !== null)
    .map((kind) => {
      const fits = works.flatMap((work) => {
        const fit = fitOf(work, kind.name, practice);
        return fit === null ? [] : [{ work, fit }];
      });
      return { kind, fits: bestFitting(fits.map(({ fit }) => fit)).flatMap((index) => fits[index] ?? []) };
    });
}

/** A work as though it named that kind and had no size of its own. */
function fitOf({ work }: ComposedWork, kind: string, practice: PracticeDocument): Fit | null {
  const { outer: _, ...free } = work.design;
  const design = readDesign(free, practice);
  if (!design.ok) return null;
  const framed = readWorkFrame({ frame: kind, design: free }, practice, design.value.ruler.unit);
  return framed.ok && framed.value.frame !== null ? fitInto(design.value, framed.value.frame) : null;
}

/** A framed work in the open format, `{"framed": …}`, nothing where it is not framed. */
export const framedOfWork = (
  { composition }: ComposedWork,
  plan: FramePlan | null | undefined,
  language: Language,
): { readonly framed?: object } =>
  plan === null || plan === undefined
    ? {}
    : { framed: framedJson(plan, { ruler: composition.design.ruler, language }) };

/** What exists and what goes into it, in the open format; nothing where nothing exists. */
export const reuseJson = (reuse: readonly Reuse[], language: Language): { readonly reuse?: object } =>
  reuse.length === 0
    ? {}
    : {
        reuse: reuse.map(({ kind, fits }) => ({
          kind: kind.name,
          copies: kind.copies,
          fits: fits.map(({ work, fit }) => ({
            row: work.row,
            title: work.work.title,
            ...fitJson(fit, { ruler: work.composition.design.ruler, language }),
          })),
        })),
      };
