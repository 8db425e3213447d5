import { type FrameCheck, type FramePlan, frameStops, type HoldPlan, planFrame } from "../assembly/index.ts";
import { framedJson, processOf } from "../show/index.ts";
import type { Language } from "../words/index.ts";
import type { ComposedWork, ReadWork, RowProblem } from "./works.ts";

/** Each work in its frame, in their order; null where it is not framed. */
export const planFramed = (
  works: readonly ReadWork[],
  holds: readonly (HoldPlan | null)[],
): readonly (FramePlan | null)[] =>
  works.map(({ composition, frame, work }, index) =>
    frame === null ? null : planFrame(composition, frame.frame, holds[index] ?? null, processOf(work)),
  );

/** The works in their order, each with what in its frame makes its mats useless; it is then not made. */
export const withFrameStops = (
  works: readonly ReadWork[],
  framed: readonly (FramePlan | null)[],
): readonly ComposedWork[] =>
  works.map((one, index) => {
    const stops = frameStops(framed[index] ?? null).filter(spoilsMats);
    return { ...one, frameStops: stops, stopped: one.stopped || stops.length > 0 };
  });

const spoilsMats = ({ code }: FrameCheck): boolean =>
  code === "package-large" || code === "edge-shows" || code === "lip-covers";

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

/** A framed work in the open format, `{"framed": …}`, nothing where it is not framed. */
export const framedOfWork = (
  { composition }: ComposedWork,
  plan: FramePlan | null | undefined,
  language: Language,
): { readonly framed?: object } =>
  plan === null || plan === undefined
    ? {}
    : { framed: framedJson(plan, { ruler: composition.design.ruler, language }) };
