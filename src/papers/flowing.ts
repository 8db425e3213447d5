import { subtract } from "../lengths/index.ts";
import { type Block, stack } from "./block.ts";
import { bodyHeight, pagesOf, paperHead } from "./frame.ts";
import type { House, PlanWords } from "./job.ts";
import type { Desk, Page } from "./paper.ts";
import { flow, type Flowing } from "./table.ts";

/** A paper whose head stands on its first page, and whose rows flow over as many as they need. */
export function flowingPaper(
  desk: Desk,
  paper: string,
  { house, plan }: { readonly house: House; readonly plan: PlanWords },
  head: Block,
  rows: readonly Flowing[],
): readonly Page[] {
  const room = bodyHeight(desk.paper);
  return pagesOf(
    desk,
    paperHead(paper, house, plan),
    paper,
    flow(rows, subtract(room, head.height), room).map((page, index) => ({
      block: index === 0 ? stack([head, page]) : page,
      tells: null,
    })),
  );
}
