import type { Size } from "../../geometry/index.ts";
import { at } from "../at.ts";
import type { RoughPlan } from "./first.ts";
import {
  countKinds,
  extent,
  type Layout,
  leastExtent,
  otherAxis,
  type Part,
  resized,
  transposed,
} from "./layout.ts";
import type { WholeJob } from "./whole.ts";

/** A rough plan with what it is judged by. Lower is better in all but the leftover. */
export interface Judged extends RoughPlan {
  /** Area of the pieces that it leaves out, in square units. */
  readonly missing: number;
  readonly cost: number;
  readonly sheets: number;
  /** Area of the largest single leftover worth keeping, in square units. */
  readonly leftover: number;
}

/** The least size worth keeping, in the planners' units, kerf included; null: none is. */
export type Least = { readonly width: number; readonly height: number } | null;

export const leastOf = (least: Size | null, whole: WholeJob): Least =>
  least === null
    ? null
    : { width: least.width / whole.unit + whole.kerf, height: least.height / whole.unit + whole.kerf };

export function judged(whole: WholeJob, least: Least, plan: RoughPlan): Judged {
  let missing = 0;
  whole.kinds.forEach((kind, index) => {
    missing += (kind.count - at(plan.placed, index)) * kind.width * kind.height;
  });
  let cost = 0;
  let sheets = 0;
  let leftover = 0;
  for (const { stock, root } of plan.layouts) {
    const { width, height, hosts } = at(whole.stocks, stock);
    cost += at(whole.stocks, stock).cost;
    sheets += Number(hosts === null);
    if (least !== null) leftover = Math.max(leftover, largestRest(resized(root, width, height), least));
  }
  return { ...plan, missing, cost, sheets, leftover };
}

/** Below nought when `a` is the better plan, above when `b` is, nought when only the cuts can tell. */
export const compareJudged = (a: Judged, b: Judged): number =>
  a.missing - b.missing || money(a.cost - b.cost) || a.sheets - b.sheets || b.leftover - a.leftover;

/** Sums of prices differ in their last digits by the order in which they were added. */
const money = (difference: number): number => (Math.abs(difference) < 1e-6 ? 0 : difference);

/** Area of the largest rest that is at least `least`, either way up; nought where none is worth keeping. */
export function largestRest(part: Part, least: Least): number {
  if (part.is === "piece" || least === null) return 0;
  const across = extent(part, otherAxis(part.axis));
  const [long, short] = [Math.max(part.rest, across), Math.min(part.rest, across)];
  const keeps = long >= Math.max(least.width, least.height) && short >= Math.min(least.width, least.height);
  return part.parts.reduce(
    (most, one) => Math.max(most, largestRest(one, least)),
    keeps ? part.rest * across : 0,
  );
}

/** The same plan with each layout moved to the cheapest sheet that still takes it, the dearest first. */
export function cheapened(whole: WholeJob, plan: RoughPlan): RoughPlan {
  const used = new Int32Array(whole.stocks.length);
  for (const { stock } of plan.layouts) used[stock] = (used[stock] ?? 0) + 1;
  const layouts = plan.layouts
    .toSorted((a, b) => at(whole.stocks, b.stock).cost - at(whole.stocks, a.stock).cost)
    .map((layout) => {
      if (at(whole.stocks, layout.stock).cost === 0) return layout;
      const moved = cheaper(whole, layout, used);
      used[layout.stock] = at(used, layout.stock) - 1;
      used[moved.stock] = at(used, moved.stock) + 1;
      return moved;
    });
  return { layouts, placed: plan.placed };
}

function cheaper(whole: WholeJob, layout: Layout, used: Int32Array): Layout {
  const own = at(whole.stocks, layout.stock);
  const need = leastExtent(layout.root);
  let best = layout;
  whole.stocks.forEach((stock, index) => {
    if (stock.hosts !== null || at(used, index) >= stock.copies) return;
    if (stock.cost >= at(whole.stocks, best.stock).cost) return;
    // On a sheet no larger either way the cuts can only become shorter.
    const safe = (width: number, height: number): boolean =>
      own.longestCut === Number.POSITIVE_INFINITY ||
      (width <= own.width && height <= own.height && stock.longestCut >= own.longestCut);
    const { width, height } = stock;
    if (need.width <= width && need.height <= height && safe(width, height)) {
      best = { stock: index, root: resized(layout.root, width, height) };
    } else if (
      need.height <= width &&
      need.width <= height &&
      safe(height, width) &&
      allTurn(whole, layout.root)
    ) {
      best = { stock: index, root: resized(transposed(layout.root), width, height) };
    }
  });
  return best;
}

/** Whether a layout may be turned as a whole: no piece in it has a direction. */
function allTurn(whole: WholeJob, root: Part): boolean {
  const counts = new Int32Array(whole.kinds.length);
  countKinds(root, counts);
  return whole.kinds.every(
    (kind, index) => at(counts, index) === 0 || kind.turns || kind.width === kind.height,
  );
}
