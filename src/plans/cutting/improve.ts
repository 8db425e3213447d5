import { reachableBound } from "./bound.ts";
import type { Chance } from "./chance.ts";
import type { CostBound } from "./plan.ts";
import { cheapened, type Judged, judged, type Least } from "./rough.ts";
import { Ruin } from "./ruin.ts";
import type { WholeJob } from "./whole.ts";

/**
 * Ever cheaper plans by ruin and recreate, from a plan on: each time the limit is set just below the
 * best. Ends when the best costs no more than the bound, when `quietSteps` in a row have brought no
 * cheaper plan, or when `timeIsUp`.
 */
export function improved(
  whole: WholeJob,
  least: Least,
  start: Judged,
  bound: CostBound,
  chance: Chance,
  timeIsUp: () => boolean,
): Judged {
  const enough = reachableBound(whole, bound) * (1 + 1e-9);
  const pieces = whole.kinds.reduce((sum, kind) => sum + kind.count, 0);
  const wanting = start.missing > 0;
  if (pieces === 0 || (!wanting && start.cost <= enough) || timeIsUp()) return start;
  const ruin = new Ruin(whole, start, chance);
  ruin.aimBelow(wanting ? Number.POSITIVE_INFINITY : start.cost);
  const quiet = quietSteps(pieces);
  const between = Math.max(1, Math.floor(2000 / pieces));
  let best = start;
  for (let step = 0, last = 0; step - last < quiet; step++) {
    if (step % between === 0 && timeIsUp()) break;
    if (!ruin.step()) continue;
    const found = judged(whole, least, cheapened(whole, ruin.plan()));
    last = step;
    best = found;
    if (found.cost <= enough) break;
    ruin.aimBelow(found.cost);
  }
  return best;
}

/** After how many steps without a cheaper plan none is to be hoped for: more for more pieces, until a step itself takes long. */
const quietSteps = (pieces: number): number => Math.floor(Math.min(200 + 10 * pieces ** 2, 1e7 / pieces));
