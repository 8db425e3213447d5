import type { Size } from "../../geometry/index.ts";
import { add, type Length, mm, subtract } from "../../lengths/index.ts";
import type { PlannedSheet } from "../../plans/cutting/index.ts";
import { CUT_PLAN, larger, orMore } from "../../words/cut-plan.ts";
import { aligned, beside, type Block, block, placed, stack } from "../block.ts";
import { part, points } from "../paper.ts";
import { tickLine, writeBox } from "../tags.ts";
import { textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { CuttingDesk } from "./desk.ts";

const FIRST: TextStyle = { size: points(13), weight: "bold", leading: points(15) };
const SAY: TextStyle = { size: points(11.5), weight: "regular", leading: points(14) };
const GO: TextStyle = {
  size: points(11),
  weight: "semibold",
  leading: points(14),
  figures: { whole: points(15), stacked: points(17) },
};
const BOX = { width: mm(25), height: mm(8.5) };

/** What is measured before the first cut: room for both sides, the least that serves, and what to do when it is less. */
export function firstBand(desk: CuttingDesk, sheet: PlannedSheet, width: Length): Block {
  const out = sheet.from.kind === "drop-out";
  const { ruler } = desk.speech;
  const needs = longFirst(sheet);
  const measure = beside(
    [
      textLine(desk, CUT_PLAN.first, FIRST),
      textLine(desk, out ? CUT_PLAN.measureOut : CUT_PLAN.measure, SAY),
      captioned(desk, CUT_PLAN.longSide),
      textLine(desk, "×", SAY),
      captioned(desk, CUT_PLAN.shortSide),
      textLine(desk, ruler.unit, SAY),
    ],
    mm(3.2),
    "middle",
  );
  const left = add(measure.width, mm(7));
  const room = subtract(width, left);
  const exact = needs.width === longSide(sheet.size) || needs.height === shortSide(sheet.size);
  const lines = [
    tickLine(desk, orMore(needs, ruler), GO, room),
    tickLine(desk, out ? CUT_PLAN.outLess : CUT_PLAN.less, GO, room),
    ...(exact && !out
      ? [tickLine(desk, larger, { ...GO, size: points(9.5), leading: points(11.5) }, room)]
      : []),
  ];
  const choices = stack(lines, mm(1.2));
  const height = measure.height > choices.height ? measure.height : choices.height;
  return block(width, height, [
    ...placed(measure, mm(0), part(subtract(height, measure.height), 0.5)),
    ...placed(choices, left, part(subtract(height, choices.height), 0.5)),
  ]);
}

/** What a layout needs along the sheet's longer side first. */
export function longFirst({ size, needs }: PlannedSheet): Size {
  return size.width >= size.height ? needs : { width: needs.height, height: needs.width };
}

/** The sheet's edges of which the layout leaves no more than `tight`: the longer first. */
export function tightEdges(
  sheet: PlannedSheet,
  tight: Length,
): readonly { readonly edge: Length; readonly spare: Length }[] {
  const needs = longFirst(sheet);
  const edges = [
    { edge: longSide(sheet.size), needs: needs.width },
    { edge: shortSide(sheet.size), needs: needs.height },
  ];
  return edges
    .map(({ edge, needs: least }) => ({ edge, spare: subtract(edge, least) }))
    .filter(({ spare }) => spare <= tight);
}

const longSide = ({ width, height }: Size): Length => (width > height ? width : height);
const shortSide = ({ width, height }: Size): Length => (width > height ? height : width);

const CAPTION = mm(4);

/** A box to write in with its name below, hung so that boxes and words beside them share a middle. */
function captioned(desk: CuttingDesk, name: string): Block {
  const caption = textLine(desk, name, TYPE.fine);
  return stack([
    block(mm(0), CAPTION),
    writeBox(BOX.width, BOX.height),
    aligned(block(caption.width, CAPTION, placed(caption, mm(0), mm(0.8))), BOX.width, "middle"),
  ]);
}
