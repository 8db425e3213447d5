import { type Box, type Point, quarterTurned } from "../../geometry/index.ts";
import type { Cut, PlannedSheet } from "../../plans/cutting/index.ts";

/**
 * A planned sheet mirrored about its diagonal: width and height change places, what lay along lies
 * down. Every size and setting stays what it was, so it is the same work for the hand, turned by a
 * quarter on the paper.
 */
export const mirrored = (sheet: PlannedSheet): PlannedSheet => ({
  ...sheet,
  size: quarterTurned(sheet.size),
  needs: quarterTurned(sheet.needs),
  placements: sheet.placements.map((lies) => ({ ...lies, ...box(lies) })),
  left: sheet.left.map((one) => ({ ...one, ...box(one) })),
  cuts: sheet.cuts.map(
    (cut): Cut => ({
      ...cut,
      from: point(cut.from),
      to: point(cut.to),
      across: cut.across === "x" ? "y" : "x",
      part: box(cut.part),
    }),
  ),
});

const point = ({ x, y }: Point): Point => ({ x: y, y: x });
const box = ({ left, top, width, height }: Box): Box => ({
  left: top,
  top: left,
  width: height,
  height: width,
});
