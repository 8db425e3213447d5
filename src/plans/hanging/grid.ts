import { add, half, type Length, larger, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import { at } from "../at.ts";
import type { WallJob, WallPlan, WallRule } from "./job.ts";
import { setOrder } from "./sets.ts";

/**
 * Frames in columns and rows, read from the top left: every column as wide as its widest frame, every row
 * as high as its highest, each frame in the middle of its cell. The group's middle hangs on the eye line.
 * Columns, gaps and what is left at both ends make the wall exactly. Throws RangeError without columns.
 */
export function gridOf(
  job: WallJob,
  rule: Extract<WallRule, { readonly kind: "grid" }>,
): Pick<WallPlan, "places" | "order" | "gaps" | "centre"> {
  if (!(rule.columns >= 1)) throw new RangeError(`a grid has a column or more, not ${rule.columns}`);
  const order = setOrder(job.frames);
  const columns = Math.min(rule.columns, order.length);
  const cells = order.map((index, turn) => ({
    index,
    column: turn % columns,
    row: Math.floor(turn / columns),
  }));
  const widths: Length[] = [];
  const heights: Length[] = [];
  for (const { index, column, row } of cells) {
    const { width, height } = at(job.frames, index);
    widths[column] = larger(widths[column] ?? ZERO, width);
    heights[row] = larger(heights[row] ?? ZERO, height);
  }
  const whole = add(sum(widths), times(rule.gap, columns - 1));
  const high = add(sum(heights), times(rule.rowGap, heights.length - 1));
  const left =
    rule.centre === null
      ? half(subtract(job.wall.width, whole), "down")
      : subtract(rule.centre, half(whole, "nearest"));
  const top = add(job.eyeLine, half(high, "nearest"));
  const from = starts(widths, rule.gap);
  const down = starts(heights, rule.rowGap);
  const places = job.frames.map(() => ({ x: ZERO, y: ZERO }));
  for (const { index, column, row } of cells) {
    const { width, height } = at(job.frames, index);
    const x = add(add(left, at(from, column)), half(subtract(at(widths, column), width), "down"));
    const below = add(at(down, row), half(add(at(heights, row), height), "nearest"));
    places[index] = { x, y: subtract(top, below) };
  }
  const inner = widths.slice(1).map(() => rule.gap);
  return {
    places,
    order,
    gaps: [left, ...inner, subtract(job.wall.width, add(left, whole))],
    centre: add(left, half(whole, "nearest")),
  };
}

/** Where each part begins when parts and gaps follow each other. */
function starts(sizes: readonly Length[], gap: Length): readonly Length[] {
  let next = ZERO;
  return sizes.map((size) => {
    const start = next;
    next = add(add(start, size), gap);
    return start;
  });
}
