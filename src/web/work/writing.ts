import type { Design, LiftRule, MatRule, WindowRule } from "../../assembly/index.ts";
import type { Size } from "../../geometry/index.ts";
import { type Length, toGraduation } from "../../lengths/index.ts";
import { type ComposeDocument, DEFAULT_HABITS } from "../../show/index.ts";
import { Speller } from "./document-of.ts";

/** What a choice writes: the rule under its new name, with figures where the practice has none for it. */

export function windowUnder(
  show: WindowRule["show"],
  design: Design,
): NonNullable<ComposeDocument["window"]> {
  if (show !== "typed") return { show };
  const { print, window, ruler } = design;
  // A set window begins as the largest that covers the image on this ruler.
  const size: Size | undefined = window.show === "typed" ? window : print?.image;
  if (size === undefined) return { show: "overlap" };
  const down = (length: Length): Length => toGraduation(length, ruler.graduation, "down");
  return { show, ...new Speller(ruler.unit).size({ width: down(size.width), height: down(size.height) }) };
}

export function liftUnder(rule: LiftRule["rule"]): NonNullable<ComposeDocument["lift"]> {
  // Five parts at the foot to four at the head: a first figure to change, common practice, no source.
  return rule === "ratio" ? { rule, foot: 1.25 } : { rule };
}

/** As many mats as asked: a new one goes on top, of the same board as the one below it; the top ones go first. */
export function withMats(
  { mats, ruler }: Pick<Design, "mats" | "ruler">,
  number: number,
): readonly MatRule[] {
  const kept = mats.slice(0, number);
  const below = kept.at(-1);
  if (below === undefined) return mats;
  const usual = DEFAULT_HABITS[ruler.unit].mats[0]?.reveal ?? below.reveal;
  const reveal = kept.length > 1 ? below.reveal : usual;
  return [...kept, ...Array.from({ length: number - kept.length }, () => ({ ...below, reveal }))];
}

/** An image where none was said: an eighth of the shorter side in from every edge, on the ruler. */
export function firstImage(sheet: Size, graduation: Length) {
  const inset = toGraduation(Math.round(Math.min(sheet.width, sheet.height) / 8) as Length, graduation, "up");
  const less = (side: Length): Length => (side - 2 * inset) as Length;
  return { left: inset, top: inset, width: less(sheet.width), height: less(sheet.height) };
}
