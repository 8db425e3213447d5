import type { Mark } from "../../drawings/index.ts";
import type { Point } from "../../geometry/index.ts";
import { add, type Length, mm, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import { CHOP_LIST, rabbetBehind, rabbetName, sectionAt } from "../../words/chop-list.ts";
import { bare, weighted } from "../../words/index.ts";
import { enlarged } from "../scale.ts";
import { beside, type Block, block, gap, stack } from "../block.ts";
import { dimensionLine, extensionLine } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { paragraph, textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { ChoppingDesk } from "./desk.ts";

const NAME: TextStyle = { size: points(13), weight: "bold", leading: points(15) };
const FIGURE: TextStyle = { ...TYPE.line, figures: { whole: points(14), stacked: points(16) } };
const SECTION_WIDTH = mm(66);

/** What a rail looks like and where it is measured, and the moulding in section: the lip told apart from the back. */
export const railPictures = (desk: ChoppingDesk, width: Length): Block =>
  beside([railFace(desk, subtract(width, add(SECTION_WIDTH, mm(8)))), section(desk, SECTION_WIDTH)], mm(8));

const RAIL_HIGH = mm(12);

/** The rail seen from its face, no true proportions: its long point at the back, its short point along the lip. */
function railFace(desk: ChoppingDesk, width: Length): Block {
  const [top, left] = [mm(8), mm(4)];
  const right = subtract(width, mm(4));
  const foot = add(top, RAIL_HIGH);
  const inner = { left: add(left, RAIL_HIGH), right: subtract(right, RAIL_HIGH) };
  const rabbet = subtract(foot, mm(4));
  const slant = part(subtract(rabbet, top), 1);
  const [above, below] = [mm(2.6), add(foot, mm(8.6))];
  const middle = part(width, 0.5);
  const marks: Mark[] = [
    area(
      [
        { x: left, y: top },
        { x: right, y: top },
        { x: inner.right, y: foot },
        { x: inner.left, y: foot },
      ],
      "none",
      "outline",
    ),
    {
      kind: "line",
      from: { x: add(left, slant), y: rabbet },
      to: { x: subtract(right, slant), y: rabbet },
      line: "hidden",
    },
    ...dimensioned(desk, left, right, above, top, CHOP_LIST.longPoint),
    ...dimensioned(desk, inner.left, inner.right, below, foot, CHOP_LIST.shortPoint),
    textAt(middle, subtract(rabbet, mm(1.4)), rabbetBehind(desk.speech), TYPE.caption, "middle"),
    textAt(middle, add(foot, mm(4.2)), CHOP_LIST.lipSide, { ...TYPE.caption, weight: "semibold" }, "middle"),
  ];
  return stack([
    paragraph(desk, CHOP_LIST.fromItsFace, TYPE.band, width),
    gap(mm(1.6)),
    block(width, add(below, mm(3)), marks),
  ]);
}

/** A dimension across with its name breaking the line. */
function dimensioned(
  desk: ChoppingDesk,
  from: Length,
  to: Length,
  level: Length,
  outline: Length,
  name: string,
): readonly Mark[] {
  const middle = part(add(from, to), 0.5);
  const half = add(part(widthOf(desk, name, NAME), 0.5), mm(2));
  return [
    ...dimensionLine("x", from, to, level),
    extensionLine("x", from, outline, level),
    extensionLine("x", to, outline, level),
    clear(subtract(middle, half), subtract(level, mm(2.4)), times(half, 2), mm(4.8)),
    textAt(middle, add(level, part(NAME.size, 0.33)), name, NAME, "middle"),
  ];
}

const ENLARGED = [4, 3, 2, 1];
const LIP_HIGH = mm(5);
const BODY_HIGH = mm(17);

/** The moulding cut across, face up: widths true to the scale it says, heights only as they follow one another. */
function section(desk: ChoppingDesk, width: Length): Block {
  const { overall, rabbet } = desk.job.moulding;
  const { ruler } = desk.speech;
  const room = mm(36);
  const by = ENLARGED.find((each) => enlarged(overall, each) <= room) ?? 1;
  const shown = enlarged(overall, by) <= room ? enlarged(overall, by) : room;
  const lip = part(shown, rabbet / overall);
  const back = subtract(shown, lip);
  const figure = (length: Length) => weighted("semibold", bare(length, ruler));
  const rabbetLevel = add(LIP_HIGH, mm(4));
  const overallLevel = add(BODY_HIGH, mm(4.5));
  const beyond = add(shown, mm(6));
  const top = mm(4);
  const marks: Mark[] = [
    area(
      [
        { x: ZERO, y: top },
        { x: shown, y: top },
        { x: shown, y: add(top, LIP_HIGH) },
        { x: back, y: add(top, LIP_HIGH) },
        { x: back, y: add(top, BODY_HIGH) },
        { x: ZERO, y: add(top, BODY_HIGH) },
      ],
      "hatch-section",
      "outline",
    ),
    textAt(part(shown, 0.5), subtract(top, mm(1)), CHOP_LIST.face, TYPE.fine, "middle"),
    textAt(add(shown, mm(2)), sum([top, mm(3.4)]), CHOP_LIST.lip, { ...TYPE.caption, weight: "semibold" }),
    ...dimensionLine("x", back, shown, add(top, rabbetLevel)),
    ...dimensionLine("x", ZERO, shown, add(top, overallLevel)),
    extensionLine("x", ZERO, add(top, BODY_HIGH), add(top, overallLevel)),
    extensionLine("x", shown, add(top, LIP_HIGH), add(top, overallLevel)),
    ...figured(desk, beyond, add(top, rabbetLevel), figure(rabbet), rabbetName(desk.speech)),
    ...figured(desk, beyond, add(top, overallLevel), figure(overall), CHOP_LIST.overallShort),
  ];
  return stack([
    paragraph(desk, sectionAt(by), TYPE.band, width),
    gap(mm(1.6)),
    block(width, sum([top, overallLevel, mm(3)]), marks),
  ]);
}

/** A figure and what it is, on a dimension's level beyond its right end. */
function figured(
  desk: ChoppingDesk,
  x: Length,
  level: Length,
  figure: ReturnType<typeof weighted>,
  name: string,
): readonly Mark[] {
  const baseline = add(level, mm(1.7));
  return [
    textAt(x, baseline, figure, FIGURE),
    textAt(sum([x, widthOf(desk, figure, FIGURE), mm(2)]), baseline, name, TYPE.caption),
  ];
}

const area = (corners: readonly Point[], fill: "none" | "hatch-section", line: "outline"): Mark => ({
  kind: "area",
  points: corners,
  fill,
  line,
});

const clear = (left: Length, top: Length, width: Length, height: Length): Mark => ({
  kind: "area",
  points: [
    { x: left, y: top },
    { x: add(left, width), y: top },
    { x: add(left, width), y: add(top, height) },
    { x: left, y: add(top, height) },
  ],
  fill: "paper",
  line: null,
});
