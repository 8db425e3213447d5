import type { Chance } from "../chance.ts";
import { cheapened, type Judged, judged, type Least } from "./rough.ts";
import { Ruin } from "./ruin.ts";
import type { WholeJob } from "./whole.ts";

/** How far a search goes. */
export interface Work {
  /** A cost at which there is nothing left to find. */
  readonly enough: number;
  /** It ends after as many steps without a cheaper plan. */
  readonly quiet: number;
  readonly chance: Chance;
  readonly timeIsUp: () => boolean;
}

/** Ever cheaper plans by ruin and recreate, from a plan on: each time the limit is set just below the best. */
export function improved(whole: WholeJob, least: Least, start: Judged, work: Work): Judged {
  const pieces = whole.kinds.reduce((sum, kind) => sum + kind.count, 0);
  const wanting = start.missing > 0;
  if (pieces === 0 || (!wanting && start.cost <= work.enough) || work.timeIsUp()) return start;
  const ruin = new Ruin(whole, start, work.chance);
  ruin.aimBelow(wanting ? Number.POSITIVE_INFINITY : start.cost);
  const between = Math.max(1, Math.floor(2000 / pieces));
  let best = start;
  for (let step = 0, last = 0; step - last < work.quiet; step++) {
    if (step % between === 0 && work.timeIsUp()) break;
    if (!ruin.step()) continue;
    const found = judged(whole, least, cheapened(whole, ruin.plan()));
    last = step;
    best = found;
    if (found.cost <= work.enough) break;
    ruin.aimBelow(found.cost);
  }
  return best;
}

/** After how many steps without a cheaper plan none is to be hoped for: more for more pieces, until a step itself takes long. */
export const quietSteps = (pieces: number): number =>
  Math.floor(Math.min(1500 + 10 * pieces ** 2, 1e7 / Math.max(1, pieces)));
