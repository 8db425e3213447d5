import { reachableBound } from "./bound.ts";
import type { Chance } from "./chance.ts";
import { generated } from "./columns.ts";
import { cheapestGreedy, dived } from "./dive.ts";
import { improved, quietSteps } from "./improve.ts";
import { regrouped } from "./near.ts";
import type { CostBound } from "./plan.ts";
import type { PricingTable } from "./pricing.ts";
import { cheapened, compareJudged, type Judged, judged, type Least } from "./rough.ts";
import type { WholeJob } from "./whole.ts";

/** A job with more pieces, or with as many of a kind, is given to column generation first. */
const MANY_PIECES = 150;
const MANY_ALIKE = 3;

const piecesOf = (whole: WholeJob): number => whole.kinds.reduce((sum, kind) => sum + kind.count, 0);

/** Whether columns are to come first. */
export const isMany = (whole: WholeJob): boolean =>
  piecesOf(whole) > MANY_PIECES || piecesOf(whole) >= MANY_ALIKE * whole.kinds.length;

/** Steps without a cheaper plan for the last sheets of a dive. */
const LAST_STEPS = 4000;

export interface Searched {
  readonly best: Judged;
  readonly bound: CostBound;
}

/**
 * The long search that follows the first plans: columns for a bound and, where pieces repeat, for the
 * plan; ruin and recreate for the whole job, and for groups of sheets. It ends by itself, or when
 * `timeLeft` (milliseconds) is nought. `table` is null where the stock may run out.
 */
export function searched(
  whole: WholeJob,
  table: PricingTable | null,
  least: Least,
  start: Judged,
  cheap: CostBound,
  chance: Chance,
  timeLeft: () => number,
): Searched {
  const pieces = piecesOf(whole);
  const many = isMany(whole);
  const timeIsUp = () => timeLeft() <= 0;
  let best = start;
  let bound = cheap;
  let enough = reachableBound(whole, bound) * (1 + 1e-9);
  const done = () => timeIsUp() || (best.missing === 0 && best.cost <= enough);
  const take = (found: Judged) => {
    if (compareJudged(found, best) < 0) best = found;
  };
  if (table !== null && !done()) {
    // Few unlike pieces need the time for laying them; there the columns are for the bound.
    const share = timeLeft() * (many ? 0.45 : 0.9);
    const columnsEnd = () => timeLeft() <= share;
    const mixture = generated(whole, table, best.layouts, Number.POSITIVE_INFINITY, columnsEnd);
    if (mixture.bound > bound.cost) bound = { cost: mixture.bound, how: "columns" };
    enough = reachableBound(whole, bound) * (1 + 1e-9);
    if (!done()) {
      const last = (rest: WholeJob) => {
        const laid = judged(rest, null, cheapestGreedy(rest));
        return improved(rest, null, laid, { enough: 0, quiet: LAST_STEPS, chance, timeIsUp });
      };
      const rough = dived(whole, table, mixture, last, () => timeLeft() <= share * 0.5);
      take(judged(whole, least, cheapened(whole, rough)));
    }
  }
  if (pieces > MANY_PIECES) {
    if (!done()) take(regrouped(whole, least, best, enough, chance, timeIsUp));
  } else if (!done()) {
    take(improved(whole, least, best, { enough, quiet: quietSteps(pieces), chance, timeIsUp }));
  }
  return { best, bound };
}
