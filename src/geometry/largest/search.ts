import type { RealPoint } from "../types.ts";
import { type Band, bandOf, type Effort, type Lane, type Span, xAt } from "./bands.ts";
import { type Found, largestInCell } from "./cell.ts";
import { Queue } from "./queue.ts";

/**
 * All rectangles whose head lies in one band and whose foot in another (or the same). `between` is
 * free of edges over everything between the two bands; where they touch or are one it is how far
 * both reach. `bound` is no less than the area of any of the rectangles.
 */
interface Family {
  readonly head: Band;
  readonly foot: Band;
  readonly between: Span;
  readonly bound: number;
}

export interface SearchResult {
  /** The largest rectangle that was found; null when there is none. */
  readonly found: Found | null;
  /** No rectangle inside has a larger area: that of `found`, unless the search was ended early. */
  readonly bound: number;
}

/** What halving a family and solving a cell cost, counted in edges looked at. */
const FAMILY_EFFORT = 40;
const CELL_EFFORT = 100;

/**
 * The largest upright rectangle inside a simple polygon, in doubles, by branch and bound over the
 * bands in which its head and its foot lie: the family with the highest bound is taken, and either
 * solved or halved, until no bound is above the best area found. Ends early when `most` effort is
 * spent (about one for each edge looked at); what was found by then stands.
 */
export function searchLargest(points: readonly RealPoint[], origin: RealPoint, most: number): SearchResult {
  const effort: Effort = { spent: 0 };
  const all = bandOf(points, origin, effort);
  if (all === null) return { found: null, bound: 0 };
  const tallest = all.bottom - all.top;
  const open = new Queue<Family>();
  let best: Found | null = null;

  const bestArea = (): number => best?.area ?? 0;

  const consider = (head: Band, foot: Band, span: Span): void => {
    // A rectangle lies within the reach of both bands that it ends in.
    const left = Math.max(span.left, head.left, foot.left);
    const right = Math.min(span.right, head.right, foot.right);
    const bound = (right - left) * (foot.bottom - head.top);
    if (!(right > left && bound > bestArea())) return;
    const sure = (right - left) * (foot.top - head.bottom);
    if (head !== foot && sure > bestArea()) {
      best = { left, right, top: head.bottom, bottom: foot.top, area: sure };
    }
    open.put({ head, foot, between: { left, right }, bound });
  };

  const halve = ({ head, foot, between }: Family): void => {
    const least = bestArea() / tallest;
    if (head === foot) {
      const [upper, lower] = head.halves;
      consider(upper, lower, between);
      consider(upper, upper, between);
      consider(lower, lower, between);
    } else if (foot.undivided || (!head.undivided && head.bottom - head.top >= foot.bottom - foot.top)) {
      const [upper, lower] = head.halves;
      for (const span of common(lower.free(least), between)) consider(upper, foot, span);
      consider(lower, foot, between);
    } else {
      const [upper, lower] = foot.halves;
      for (const span of common(upper.free(least), between)) consider(head, lower, span);
      consider(head, upper, between);
    }
  };

  const solve = ({ head, foot, between }: Family): void => {
    const bands = { headFrom: head.top, headTo: head.bottom, footFrom: foot.top, footTo: foot.bottom };
    const tall = foot.bottom - head.top;
    if (head === foot) {
      for (const lane of head.lanes) {
        if (widestOf(lane, head) * tall <= bestArea()) continue;
        best = largestInCell({ ...bands, upper: lane, lower: lane, between }, best);
        effort.spent += CELL_EFFORT;
      }
      return;
    }
    // What ends in both bands passes the lower end of the one and the upper end of the other.
    for (const upper of head.lanes) {
      const above = narrowed(between, upper, head.bottom);
      if ((above.right - above.left) * tall <= bestArea()) continue;
      for (const lower of foot.lanes) {
        const through = narrowed(above, lower, foot.top);
        if ((through.right - through.left) * tall <= bestArea()) continue;
        best = largestInCell({ ...bands, upper, lower, between: through }, best);
        effort.spent += CELL_EFFORT;
      }
    }
    effort.spent += head.lanes.length + foot.lanes.length;
  };

  consider(all, all, all);
  for (let family = open.take(); family !== undefined; family = open.take()) {
    if (family.bound <= bestArea()) break;
    if (effort.spent >= most) return { found: best, bound: family.bound };
    effort.spent += FAMILY_EFFORT;
    if (family.head.undivided && family.foot.undivided) solve(family);
    else halve(family);
  }
  return { found: best, bound: bestArea() };
}

function common(spans: readonly Span[], within: Span): readonly Span[] {
  return spans.flatMap((span) => {
    const left = Math.max(span.left, within.left);
    const right = Math.min(span.right, within.right);
    return right > left ? [{ left, right }] : [];
  });
}

const narrowed = (span: Span, lane: Lane, y: number): Span => ({
  left: Math.max(span.left, xAt(lane.left, y)),
  right: Math.min(span.right, xAt(lane.right, y)),
});

const widestOf = (lane: Lane, band: Band): number =>
  Math.max(xAt(lane.right, band.top), xAt(lane.right, band.bottom)) -
  Math.min(xAt(lane.left, band.top), xAt(lane.left, band.bottom));
