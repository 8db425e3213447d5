import { at } from "../at.ts";
import type { Chance } from "../chance.ts";
import { improved, type Work } from "./improve.ts";
import { countKinds } from "./layout.ts";
import { judged, type Judged, type Least } from "./rough.ts";
import type { WholeJob } from "./whole.ts";

/** The most pieces that are laid anew together. */
const MOST_PIECES = 40;
/** Steps of ruin and recreate without a cheaper plan, for one group of sheets. */
const STEPS = 1500;

/**
 * Frees a few sheets of a large plan, the emptier ones rather than the full, lays their pieces anew as
 * a job of their own, and keeps what is cheaper; until the cost is `enough`, `quiet` groups in a row
 * have brought nothing, or the time is up.
 */
export function regrouped(
  whole: WholeJob,
  least: Least,
  start: Judged,
  enough: number,
  chance: Chance,
  timeIsUp: () => boolean,
): Judged {
  let best = start;
  const quiet = 20 + 2 * start.layouts.length;
  for (let turn = 0, last = 0; turn - last < quiet && best.cost > enough && !timeIsUp(); turn++) {
    const group = groupOf(whole, best, chance);
    if (group.size < 2 || group.size === best.layouts.length) break;
    const own = best.layouts.filter((_, index) => group.has(index));
    const others = best.layouts.filter((_, index) => !group.has(index));
    const rest = without(whole, best, group);
    const placed = Int32Array.from(rest.kinds, ({ count }) => count);
    const before = judged(rest, null, { layouts: own, placed });
    const work: Work = { enough: 0, quiet: STEPS, chance, timeIsUp };
    const after = improved(rest, null, before, work);
    if (after.cost >= before.cost) continue;
    best = judged(whole, least, { layouts: [...others, ...after.layouts], placed: best.placed });
    last = turn;
  }
  return best;
}

/** Places of sheets in the plan: each the emptier of two picked by chance, as many as the pieces allow. */
function groupOf(whole: WholeJob, plan: Judged, chance: Chance): Set<number> {
  const filled = plan.layouts.map(({ stock, root }) => {
    const counts = new Int32Array(whole.kinds.length);
    countKinds(root, counts);
    let area = 0;
    counts.forEach((count, kind) => {
      area += count * at(whole.kinds, kind).width * at(whole.kinds, kind).height;
    });
    const { width, height } = at(whole.stocks, stock);
    return { share: area / (width * height), pieces: counts.reduce((sum, count) => sum + count, 0) };
  });
  const group = new Set<number>();
  let pieces = 0;
  for (let tries = 0; tries < 60 && group.size < 8; tries++) {
    const [one, two] = [chance.below(filled.length), chance.below(filled.length)];
    const picked = at(filled, one).share <= at(filled, two).share ? one : two;
    if (group.has(picked)) continue;
    pieces += at(filled, picked).pieces;
    if (pieces > MOST_PIECES && group.size >= 2) break;
    group.add(picked);
  }
  return group;
}

/** The job of the group alone: its pieces, and the copies that the other sheets leave. */
function without(whole: WholeJob, plan: Judged, group: ReadonlySet<number>): WholeJob {
  const counts = new Int32Array(whole.kinds.length);
  const used = new Int32Array(whole.stocks.length);
  plan.layouts.forEach(({ stock, root }, index) => {
    if (group.has(index)) countKinds(root, counts);
    else used[stock] = at(used, stock) + 1;
  });
  return {
    ...whole,
    kinds: whole.kinds.map((kind, index) => ({ ...kind, count: at(counts, index) })),
    stocks: whole.stocks.map((stock, index) => ({ ...stock, copies: stock.copies - at(used, index) })),
  };
}
