import type { Mark } from "../../drawings/index.ts";
import {
  add,
  fineRuler,
  type Length,
  larger,
  mm,
  smaller,
  subtract,
  sum,
  times,
  ZERO,
} from "../../lengths/index.ts";
import { atScale } from "../../words/cut-plan.ts";
import { FRAME_SHEET, seenAt, standsWords } from "../../words/frame-sheet.ts";
import { type Block, block, cornersOf, gap, stack } from "../block.ts";
import { part, points } from "../paper.ts";
import { drawn, fittingScale } from "../scale.ts";
import { paragraph, textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { FrameDesk } from "./desk.ts";

const FIGURE: TextStyle = { ...TYPE.line, figures: { whole: points(14), stacked: points(15) } };
/** Over and under the drawing, where head and foot stand. */
const ABOVE = mm(16);
const BELOW = mm(8);

const box = (left: Length, top: Length, width: Length, height: Length) =>
  cornersOf({ left, top, width, height });

/** The frame from the front: what is seen of each border inside the lip, at its own side. */
export function seenBlock(desk: FrameDesk, width: Length, high: Length): Block {
  const { plan, composition } = desk.job;
  const { outer, sight } = plan.sizes;
  const { seen } = plan.stands;
  const ruler = fineRuler(desk.speech.ruler);
  const side = larger(
    widthOf(desk, seenAt("left", seen.left, ruler), FIGURE),
    widthOf(desk, seenAt("right", seen.right, ruler), FIGURE),
  );
  const note = paragraph(
    desk,
    standsWords(plan, desk.speech),
    { ...TYPE.caption, figures: { whole: points(11), stacked: points(12) } },
    width,
  );
  const room = subtract(high, sum([ABOVE, BELOW, note.height, mm(2)]));
  const over = fittingScale(
    outer.width,
    outer.height,
    subtract(width, times(add(side, mm(2)), 2)),
    larger(room, mm(20)),
  );
  const [wide, tall] = [drawn(outer.width, over), drawn(outer.height, over)];
  const left = part(subtract(width, wide), 0.5);
  const rail = drawn(plan.frame.profile.overall, over);
  const within = box(add(left, rail), add(ABOVE, rail), drawn(sight.width, over), drawn(sight.height, over));
  const back = composition.mats[0]?.back ?? sight;
  const window = box(
    sum([left, rail, drawn(seen.left, over)]),
    sum([ABOVE, rail, drawn(seen.head, over)]),
    drawn(back.width, over),
    drawn(back.height, over),
  );
  const middle = part(width, 0.5);
  const across = add(ABOVE, part(tall, 0.5));
  const marks: readonly Mark[] = [
    textAt(ZERO, mm(3.7), FRAME_SHEET.asSeen, TYPE.band),
    textAt(ZERO, mm(7.8), `${FRAME_SHEET.fromFront}, ${atScale(over)}`, TYPE.caption),
    {
      kind: "area",
      points: box(left, ABOVE, wide, tall),
      holes: [within],
      fill: "hatch-section",
      line: "outline",
    },
    { kind: "area", points: within, fill: "none", line: "edge" },
    { kind: "area", points: window, fill: "none", line: "thin" },
    textAt(middle, subtract(ABOVE, mm(2)), seenAt("head", seen.head, ruler), FIGURE, "middle"),
    textAt(middle, sum([ABOVE, tall, mm(5.4)]), seenAt("foot", seen.foot, ruler), FIGURE, "middle"),
    textAt(subtract(left, mm(1.6)), add(across, mm(1.8)), seenAt("left", seen.left, ruler), FIGURE, "end"),
    textAt(sum([left, wide, mm(1.6)]), add(across, mm(1.8)), seenAt("right", seen.right, ruler), FIGURE),
  ];
  return stack([block(width, sum([ABOVE, tall, BELOW]), marks), gap(smaller(mm(1), high)), note]);
}
