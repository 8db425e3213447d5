import { add, half, type Length, larger, smaller, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import { at } from "../at.ts";
import type { LaidWall, WallCheck, WallJob, WallRule } from "./job.ts";
import { type InLine, lineOf } from "./line.ts";
import { groups, isJoined } from "./sets.ts";

/**
 * Frames in so many rows from the top, in their order: shared out so that the widest row is as narrow as
 * it can be, a set never parted. Every row stands about the group's middle with equal gaps, its frames'
 * middles on one line, and the group's middle hangs on the eye line; a row that meets what must stay free is parted
 * at it. Gaps are those at the group's ends. Throws RangeError without a row.
 */
export function rowsOf(job: WallJob, rule: Extract<WallRule, { readonly kind: "rows" }>): LaidWall {
  if (!(rule.count >= 1)) throw new RangeError(`rows are one or more, not ${rule.count}`);
  const rows = shareOut(job, rule.count, rule.gap);
  const widths = rows.map((row) => widthOf(job, row, rule.gap));
  const heights = rows.map((row) => row.map((index) => at(job.frames, index).height).reduce(larger, ZERO));
  const widest = widths.reduce(larger, ZERO);
  const left =
    rule.centre === null
      ? half(subtract(job.wall.width, widest), "down")
      : subtract(rule.centre, half(widest, "nearest"));
  const high = add(sum(heights), times(rule.rowGap, rows.length - 1));
  const places = job.frames.map(() => ({ x: ZERO, y: ZERO }));
  const checks: WallCheck[] = [];
  let top = add(job.eyeLine, half(high, "nearest"));
  rows.forEach((row, turn) => {
    const line = subtract(top, half(at(heights, turn), "nearest"));
    let x = add(left, half(subtract(widest, at(widths, turn)), "down"));
    const asked = row.map((index) => {
      const from = x;
      x = add(add(x, at(job.frames, index).width), rule.gap);
      return from;
    });
    const items = row.map((index, place): InLine => {
      const { width, height } = at(job.frames, index);
      const joined = isJoined(job.frames, row, place);
      return { width, height, y: subtract(line, half(height, "nearest")), joined };
    });
    const stands = rule.centre === null ? "middle" : "asked";
    const laid = lineOf(job, items, asked, { kind: "gap", gap: rule.gap, stands });
    checks.push(...laid.checks);
    row.forEach((index, place) => {
      places[index] = { x: at(laid.lefts, place), y: at(items, place).y };
    });
    top = subtract(top, add(at(heights, turn), rule.rowGap));
  });
  const from = places.map(({ x }) => x).reduce(smaller);
  const to = places.map(({ x }, index) => add(x, at(job.frames, index).width)).reduce(larger);
  return {
    places,
    order: rows.flat(),
    gaps: [from, subtract(job.wall.width, to)],
    centre: add(from, half(subtract(to, from), "nearest")),
    checks: together(checks),
  };
}

/** That rows gave way is said once for all of them. */
function together(checks: readonly WallCheck[]): readonly WallCheck[] {
  const parted = checks.flatMap((check) => (check.code === "parted" ? check.obstacles : []));
  const others = checks.filter(({ code }) => code !== "parted");
  if (parted.length === 0) return others;
  const obstacles = [...new Set(parted)].toSorted((a, b) => a - b);
  return [...others, { level: "note", code: "parted", obstacles }];
}

const widthOf = (job: WallJob, row: readonly number[], gap: Length): Length =>
  add(sum(row.map((index) => at(job.frames, index).width)), times(gap, Math.max(0, row.length - 1)));

/** Sets and single frames in their order, cut into rows so that the widest is narrowest; fewer rows where there are fewer sets. */
function shareOut(job: WallJob, count: number, gap: Length): readonly (readonly number[])[] {
  const blocks = groups(job.frames);
  const rows = Math.min(count, blocks.length);
  const wide = blocks.map((block) => widthOf(job, block, gap) as number);
  const span = (from: number, to: number): number =>
    wide.slice(from, to).reduce((all, one) => all + one, gap * (to - from - 1));
  // best[r][n]: the widest of r rows of the first n blocks, as narrow as can be, and where the last begins.
  let best = blocks.map((_, index) => ({ widest: span(0, index + 1), cuts: [0] as readonly number[] }));
  for (let row = 2; row <= rows; row++) {
    const before = best;
    best = before.map((one, index) => {
      let found = one;
      for (let from = row - 1; from <= index; from++) {
        const above = at(before, from - 1);
        const widest = Math.max(above.widest, span(from, index + 1));
        if (above.cuts.length === row - 1 && (found === one || widest < found.widest))
          found = { widest, cuts: [...above.cuts, from] };
      }
      return found;
    });
  }
  const { cuts } = at(best, blocks.length - 1);
  return cuts.map((from, row) => blocks.slice(from, cuts[row + 1] ?? blocks.length).flat());
}
