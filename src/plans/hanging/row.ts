import { add, fromReal, half, type Length, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import { at } from "../at.ts";
import type { FrameWanted, LaidWall, WallJob, WallRule } from "./job.ts";
import { setOrder } from "./sets.ts";

/** A row from the left: which frame, the gap before it, and after the last the gap to the wall's end. */
export interface Row {
  readonly order: readonly number[];
  readonly gaps: readonly Length[];
}

/**
 * Frames in one row: the given gap between them, or equal gaps that fill the wall. Gaps and widths make
 * the wall exactly; an odd tick goes to the right end, and equal gaps differ by a tick at most. Where the
 * wall is too narrow the outer gaps (or all of them) come out below nought.
 */
export function rowOf(job: WallJob, rule: Extract<WallRule, { readonly kind: "gap" | "spread" }>): Row {
  const order = setOrder(job.frames);
  const widths = order.map((index) => widthOf(job.frames, index));
  const taken = sum(widths);
  const free = subtract(job.wall.width, taken);
  if (rule.kind === "spread") return { order, gaps: equalParts(free, order.length + 1) };
  const between = times(rule.gap, Math.max(0, order.length - 1));
  const outside = subtract(free, between);
  const left =
    rule.centre === null
      ? half(outside, "down")
      : subtract(rule.centre, half(add(taken, between), "nearest"));
  const inner = order.slice(1).map(() => rule.gap);
  return { order, gaps: [left, ...inner, subtract(outside, left)] };
}

/** What a line of frames, or of columns, leaves of the wall: from the left corner on, the ends included; and where its middle is. */
export function gapsOf(
  { wall }: WallJob,
  lefts: readonly Length[],
  widths: readonly Length[],
): Pick<LaidWall, "gaps" | "centre"> {
  let end = ZERO;
  const before = lefts.map((left, index) => {
    const gap = subtract(left, end);
    end = add(left, at(widths, index));
    return gap;
  });
  const from = lefts[0] ?? ZERO;
  return {
    gaps: [...before, subtract(wall.width, end)],
    centre: add(from, half(subtract(end, from), "nearest")),
  };
}

/** A length in equal parts that add up to it; they differ by a tick at most. */
export function equalParts(length: Length, count: number): readonly Length[] {
  const ends = Array.from({ length: count + 1 }, (_, index) => fromReal((length * index) / count, "nearest"));
  return ends.slice(1).map((end, index) => subtract(end, ends[index] ?? end));
}

const widthOf = (frames: readonly FrameWanted[], index: number): Length => {
  const frame = frames[index];
  if (frame === undefined) throw new RangeError(`there is no frame ${index}`);
  return frame.width;
};
