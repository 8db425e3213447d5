import { add, half, type Length, larger, smaller, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import { at } from "../at.ts";
import type { LaidWall, WallJob, WallRule } from "./job.ts";
import { type InLine, lineOf } from "./line.ts";
import { gapsOf } from "./row.ts";
import { isJoined, setOrder } from "./sets.ts";

/**
 * Frames in columns and rows, read from the top left: every column as wide as its widest frame, every row
 * as high as its highest, each frame in the middle of its cell. The group's middle hangs on the eye line.
 * Columns, gaps and what is left at both ends make the wall exactly. A grid that meets what must stay free is parted
 * between two columns. Throws RangeError without columns.
 */
export function gridOf(job: WallJob, rule: Extract<WallRule, { readonly kind: "grid" }>): LaidWall {
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
  const asked = starts(widths, rule.gap).map((start) => add(left, start));
  const down = starts(heights, rule.rowGap);
  const footOf = (index: number, row: number): Length =>
    subtract(top, add(at(down, row), half(add(at(heights, row), at(job.frames, index).height), "nearest")));
  // Two columns stay together where a set goes from one to the other.
  const joins = new Set(
    cells.flatMap(({ column }, turn) => (column > 0 && isJoined(job.frames, order, turn) ? [column] : [])),
  );
  const items = widths.map((width, column): InLine => {
    const own = cells.filter((cell) => cell.column === column);
    const tops = own.map(({ index, row }) => add(footOf(index, row), at(job.frames, index).height));
    const y = own.map(({ index, row }) => footOf(index, row)).reduce(smaller);
    return { width, height: subtract(tops.reduce(larger), y), y, joined: joins.has(column) };
  });
  const stands = rule.centre === null ? "middle" : "asked";
  const { lefts, checks } = lineOf(job, items, asked, { kind: "gap", gap: rule.gap, stands });
  const places = job.frames.map(() => ({ x: ZERO, y: ZERO }));
  for (const { index, column, row } of cells) {
    const { width } = at(job.frames, index);
    const x = add(at(lefts, column), half(subtract(at(widths, column), width), "down"));
    places[index] = { x, y: footOf(index, row) };
  }
  return { places, order, ...gapsOf(job, lefts, widths), checks };
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
