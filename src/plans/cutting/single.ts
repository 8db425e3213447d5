import { at } from "../at.ts";
import { cuttable } from "./cuttable.ts";
import { resized } from "./layout.ts";
import { type Pattern, patternOf } from "./pool.ts";
import { mayLieIn, type WholeJob } from "./whole.ts";

/** One piece of a kind alone on the cheapest sheet that never runs out; null: there is none. */
export function single(job: WholeJob, index: number): Pattern | null {
  const kind = at(job.kinds, index);
  const ways = [{ width: kind.width, height: kind.height }];
  if (kind.turns) ways.push({ width: kind.height, height: kind.width });
  let best: Pattern | null = null;
  let least = Number.POSITIVE_INFINITY;
  job.stocks.forEach((stock, place) => {
    if (stock.copies !== Number.POSITIVE_INFINITY || stock.cost >= least || !mayLieIn(kind, stock)) return;
    for (const { width, height } of ways) {
      if (width > stock.width || height > stock.height) continue;
      const piece = { is: "piece", kind: index, width, height } as const;
      const root = resized(piece, stock.width, stock.height);
      if (!cuttable(root, stock)) continue;
      best = patternOf({ stock: place, root }, job.kinds.length);
      least = stock.cost;
    }
  });
  return best;
}
