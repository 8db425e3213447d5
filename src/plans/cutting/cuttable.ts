import { extent, otherAxis, type Part } from "./layout.ts";
import type { Stock } from "./whole.ts";

/** Whether no cut of a layout is longer than the bench's longest. */
export function cuttable(part: Part, stock: Stock): boolean {
  const { longestCut, trimmed } = stock;
  if (longestCut === Number.POSITIVE_INFINITY) return true;
  if (part.is === "piece") return !trimmed || (part.width <= longestCut && part.height <= longestCut);
  const cut = part.parts.length > 1 || part.rest > 0;
  if (cut && extent(part, otherAxis(part.axis)) > longestCut) return false;
  return part.parts.every((one) => cuttable(one, stock));
}
