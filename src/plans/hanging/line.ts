import {
  half,
  larger,
  type Length,
  negate,
  smaller,
  subtract,
  sum,
  times,
  ZERO,
} from "../../lengths/index.ts";
import { at } from "../at.ts";
import { meet } from "./clear.ts";
import type { WallCheck, WallJob } from "./job.ts";
import { equalParts } from "./row.ts";

/** What stands in a line across a wall: a frame, or a column of them. */
export interface InLine {
  readonly width: Length;
  readonly height: Length;
  /** How high its foot is. */
  readonly y: Length;
  /** Whether it is never parted from the one before it. */
  readonly joined: boolean;
}

/** How a line stands in each free stretch of wall that takes a part of it. */
export type LineRule =
  /** Equal gaps that fill the stretch, its ends included. */
  | { readonly kind: "spread" }
  /** The gap given; "middle": the part in the stretch's middle, "asked": as near as can be to where it was asked. */
  | { readonly kind: "gap"; readonly gap: Length; readonly stands: "middle" | "asked" };

export interface Line {
  /** Where each begins, from the wall's left corner. */
  readonly lefts: readonly Length[];
  /** That it gave way, or that it could not. */
  readonly checks: readonly WallCheck[];
}

/** A stretch of wall on which nothing must stay free, and how far its ends are kept clear. */
interface Stretch {
  readonly from: Length;
  readonly to: Length;
  readonly left: Length;
  readonly right: Length;
}

/**
 * A line as it was asked, where it touches nothing that must stay free; else parted at what it meets, never moved up or
 * down. Of all ways to part it that which leaves the most room at the ends of the tightest part is taken, or of a line
 * with a place of its own that which moves it least. It keeps its own gap from what must stay free; where that cannot be,
 * it touches nothing at least. Where no way is, it stays, with a check of level "stop".
 */
export function lineOf(
  job: WallJob,
  items: readonly InLine[],
  asked: readonly Length[],
  rule: LineRule,
): Line {
  const { avoid } = job;
  const boxes = items.map((item, index) => ({ ...item, x: at(asked, index) }));
  if (!boxes.some((box) => avoid.some((other) => meet(box, other)))) return { lefts: asked, checks: [] };
  const met = avoid.flatMap((other, index) =>
    items.some(({ y, height }) => y < other.y + other.height && other.y < y + height) ? [index] : [],
  );
  for (const clear of rule.kind === "spread" ? [ZERO] : [rule.gap, ZERO]) {
    const lefts = shareOut(items, asked, stretchesOf(job, met, clear), rule);
    if (lefts !== null) return { lefts, checks: [{ level: "note", code: "parted", obstacles: met }] };
  }
  const between = rule.kind === "spread" ? ZERO : times(rule.gap, items.length - 1);
  const needs = sum([...items.map(({ width }) => width), between]);
  const free = stretchesOf(job, met, ZERO).map(({ from, to }) => subtract(to, from));
  return { lefts: asked, checks: [{ level: "stop", code: "no-way-past", obstacles: met, needs, free }] };
}

/** The wall's width without what must stay free. */
function stretchesOf({ wall, avoid }: WallJob, met: readonly number[], clear: Length): readonly Stretch[] {
  const stretches: Stretch[] = [];
  let from = ZERO;
  let left = ZERO;
  const end = (to: Length, right: Length): void => {
    if (to > from) stretches.push({ from, to, left, right });
  };
  for (const { x, width } of met.map((index) => at(avoid, index)).toSorted((a, b) => a.x - b.x)) {
    const to = sum([x, width]);
    if (to <= from || x >= wall.width) continue;
    end(x, clear);
    from = to;
    left = clear;
  }
  end(wall.width, ZERO);
  return stretches;
}

/** The best that the first so many of a line can have in the first so many stretches. */
interface Best {
  readonly score: number;
  readonly lefts: readonly Length[];
}

/** Where each stands, shared out over the stretches in their order; null where they take not all of them. */
function shareOut(
  items: readonly InLine[],
  asked: readonly Length[],
  stretches: readonly Stretch[],
  rule: LineRule,
): readonly Length[] | null {
  const parts = items.map((_, index) => index).filter((index) => !at(items, index).joined);
  const ends = [...parts, items.length];
  const byMove = rule.kind === "gap" && rule.stands === "asked";
  const both = (a: number, b: number): number => (byMove ? a + b : Math.min(a, b));
  let best = new Map<number, Best>([[0, { score: byMove ? 0 : Number.POSITIVE_INFINITY, lefts: [] }]]);
  for (const stretch of stretches) {
    const next = new Map(best);
    for (const [first, before] of best)
      for (const end of ends) {
        if (end <= first) continue;
        const placed = placeIn(stretch, items.slice(first, end), at(asked, first), rule);
        if (placed === null) break;
        const score = both(before.score, placed.score);
        if (score > (next.get(end)?.score ?? Number.NEGATIVE_INFINITY))
          next.set(end, { score, lefts: [...before.lefts, ...placed.lefts] });
      }
    best = next;
  }
  return best.get(items.length)?.lefts ?? null;
}

/** A part of a line in one stretch, and how good that is; null where the stretch does not take it. */
function placeIn(
  { from, to, left, right }: Stretch,
  items: readonly InLine[],
  asked: Length,
  rule: LineRule,
): Best | null {
  const widths = items.map(({ width }) => width);
  const room = subtract(to, from);
  const free = subtract(room, sum(widths));
  if (rule.kind === "spread") {
    if (free < 0) return null;
    const lefts = follow(from, widths, equalParts(free, widths.length + 1));
    return { score: free / (widths.length + 1), lefts };
  }
  const rest = subtract(free, times(rule.gap, widths.length - 1));
  const laid = (start: Length, score: number): Best => ({
    score,
    lefts: follow(
      from,
      widths,
      widths.map((_, index) => (index === 0 ? subtract(start, from) : rule.gap)),
    ),
  });
  if (rule.stands === "middle") {
    const end = half(rest, "down");
    return end < larger(left, right) ? null : laid(sum([from, end]), end);
  }
  const [least, most] = [sum([from, left]), sum([from, rest, negate(right)])];
  if (most < least) return null;
  const start = larger(least, smaller(most, asked));
  return laid(start, -Math.abs(start - asked) * widths.length);
}

/** Where each begins when gaps and widths follow each other. */
function follow(from: Length, widths: readonly Length[], gaps: readonly Length[]): readonly Length[] {
  let x = from;
  return widths.map((width, index) => {
    const left = sum([x, at(gaps, index)]);
    x = sum([left, width]);
    return left;
  });
}
