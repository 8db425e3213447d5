import type { Mark } from "../../drawings/index.ts";
import { add, type Length, mm, subtract } from "../../lengths/index.ts";
import { cornersOf } from "../block.ts";
import { part } from "../paper.ts";

/** A white field for a name on a hatched ground. */
export const clearField = (middle: Length, base: Length, wide: Length): Mark => ({
  kind: "area",
  points: cornersOf({
    left: subtract(middle, add(part(wide, 0.5), mm(1))),
    top: subtract(base, mm(2.6)),
    width: add(wide, mm(2)),
    height: mm(5),
  }),
  fill: "paper",
  line: null,
});
