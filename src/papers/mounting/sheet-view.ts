import type { Mark } from "../../drawings/index.ts";
import type { RealPoint } from "../../geometry/index.ts";
import { atScale } from "../../words/cut-plan.ts";
import { add, fromReal, type Length, mm, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import { isHinge } from "../../assembly/index.ts";
import { bare, NBSP, type Phrase } from "../../words/index.ts";
import { MOUNTING_SHEET, placesLine } from "../../words/mounting-sheet.ts";
import { type Block, block, cornersOf, placed } from "../block.ts";
import { dimensionLine, extensionLine } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { drawn, fittingScale } from "../scale.ts";
import { headArrow } from "../tags.ts";
import { paragraph, textAt, widthOf } from "../text.ts";
import { towards } from "../towards.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { MountingDesk } from "./desk.ts";

const PLACE: TextStyle = {
  size: points(15),
  weight: "semibold",
  leading: points(17),
  figures: { whole: points(15), stacked: points(17) },
};
/** Title and head arrow above the drawing, and what stands below it. */
const ABOVE = mm(13);
const PLACES = mm(9);
const BELOW = mm(5);

type Toward = (point: RealPoint) => { x: Length; y: Length };

const title = (words: string, beside: string, width: Length): readonly Mark[] => [
  textAt(ZERO, mm(3.7), words, TYPE.band),
  textAt(width, mm(3.7), beside, TYPE.caption, "end"),
];

/** The sheet with what holds it: from the back where it is hinged, else from the front on its mount. */
export const sheetView = (desk: MountingDesk, width: Length, high: Length): Block =>
  isHinge(desk.job.plan.way) ? hingedBack(desk, width, high) : onMount(desk, width, high);

/** The back of the sheet, head away: every hinge in its place, dimensioned from the left corner. */
function hingedBack(desk: MountingDesk, width: Length, high: Length): Block {
  const { plan, composition } = desk.job;
  const sheet = composition.design.print?.sheet ?? { width: ZERO, height: ZERO };
  const { hinges } = plan;
  const top = add(ABOVE, PLACES);
  const { ruler } = desk.speech;
  const figures = hinges.at.map((place): Phrase => bare(place, ruler));
  const list = paragraph(desk, placesLine(hinges.at, ruler), PLACE, width);
  const fitted = (below: Length): number =>
    fittingScale(
      sheet.width,
      sheet.height,
      subtract(width, mm(10)),
      subtract(high, sum([top, mm(8), BELOW, below])),
    );
  // Over the hinges where they keep clear of each other, else listed under the drawing.
  const over = fitsBetween(desk, figures, hinges.at, fitted(ZERO))
    ? fitted(ZERO)
    : fitted(add(list.height, mm(2)));
  const listed = !fitsBetween(desk, figures, hinges.at, over);
  const [wide, tall] = [drawn(sheet.width, over), drawn(sheet.height, over)];
  const left = part(subtract(width, wide), 0.5);
  const sheetTop = add(top, mm(7));
  const arrow = headArrow(desk, mm(4.6));
  const at = (place: Length): Length => add(left, drawn(place, over));
  const last = figures.length - 1;
  const unit = `${NBSP}${ruler.unit}`;
  const tabHigh = drawn(hinges.pasted, over);
  const foot = sum([sheetTop, tall, BELOW]);
  return block(width, listed ? sum([foot, mm(1), list.height]) : foot, [
    ...title(MOUNTING_SHEET.backOfSheet, MOUNTING_SHEET.headAway, width),
    textAt(ZERO, mm(8), atScale(over), TYPE.caption),
    ...placed(arrow, part(subtract(width, arrow.width), 0.5), mm(5.4)),
    {
      kind: "area",
      points: cornersOf({ left, top: sheetTop, width: wide, height: tall }),
      fill: "none",
      line: "outline",
    },
    ...hinges.at.flatMap((place, index): readonly Mark[] => {
      const x = at(place);
      const tab = drawn(hinges.tab.width, over);
      const down =
        plan.way === "T" ? ZERO : plan.way === "V" ? drawn(hinges.bare, over) : drawn(hinges.slit.down, over);
      return [
        {
          kind: "area",
          points: cornersOf({
            left: subtract(x, part(tab, 0.5)),
            top: add(sheetTop, down),
            width: tab,
            height: tabHigh,
          }),
          fill: "hatch-section",
          line: "edge",
        },
        { kind: "line", from: { x, y: subtract(sheetTop, mm(3)) }, to: { x, y: sheetTop }, line: "centre" },
        ...(listed
          ? []
          : [
              textAt(
                x,
                subtract(sheetTop, mm(5)),
                index === last ? [figures[index] ?? "", unit] : (figures[index] ?? ""),
                PLACE,
                "middle",
              ),
            ]),
      ];
    }),
    textAt(part(width, 0.5), sum([sheetTop, tall, mm(4)]), MOUNTING_SHEET.middles, TYPE.caption, "middle"),
    ...(listed ? placed(list, ZERO, add(foot, mm(1))) : []),
  ]);
}

/** Whether the figures over the hinges keep clear of each other. */
function fitsBetween(
  desk: MountingDesk,
  figures: readonly Phrase[],
  at: readonly Length[],
  over: number,
): boolean {
  const room = Math.min(...at.slice(1).map((place, index) => subtract(place, at[index] ?? ZERO))) / over;
  return figures.every((figure) => widthOf(desk, figure, PLACE) + mm(8) < room);
}

/** The mount from the front: sheet and window, and the pockets or strips on it. */
function onMount(desk: MountingDesk, width: Length, high: Length): Block {
  const { composition, plan } = desk.job;
  const { outer, print, mats } = composition;
  const lowest = mats[0];
  if (print === null || lowest === undefined) return block(width, ZERO);
  const side = mm(17);
  const over = fittingScale(
    outer.width,
    outer.height,
    subtract(width, times(side, 2)),
    subtract(high, sum([ABOVE, mm(10), BELOW])),
  );
  const [wide, tall] = [drawn(outer.width, over), drawn(outer.height, over)];
  const left = part(subtract(width, wide), 0.5);
  const top = add(ABOVE, mm(9));
  const to: Toward = ({ x, y }) => ({
    x: add(left, fromReal(x / over, "nearest")),
    y: add(top, fromReal(y / over, "nearest")),
  });
  const { borders, back } = lowest;
  const window = cornersOf({
    left: add(left, drawn(borders.left, over)),
    top: add(top, drawn(borders.head, over)),
    width: drawn(back.width, over),
    height: drawn(back.height, over),
  });
  const arrow = headArrow(desk, mm(4.6));
  const first = to(print.sheetCorners[0]);
  const level = subtract(left, mm(8));
  const across = subtract(top, mm(7));
  const { ruler } = desk.speech;
  return block(width, sum([top, tall, BELOW]), [
    ...title(MOUNTING_SHEET.onItsMount, MOUNTING_SHEET.fromFront, width),
    textAt(ZERO, mm(8), atScale(over), TYPE.caption),
    ...placed(arrow, part(subtract(width, arrow.width), 0.62), mm(5.4)),
    {
      kind: "area",
      points: cornersOf({ left, top, width: wide, height: tall }),
      fill: "none",
      line: "outline",
    },
    { kind: "area", points: (print.sheetOutline ?? print.sheetCorners).map(to), fill: "none", line: "edge" },
    { kind: "area", points: window, fill: "none", line: "hidden" },
    ...(plan.way === "pockets" ? pockets(desk, to) : plan.way === "strips" ? strips(desk, to) : []),
    textAt(
      part(
        add(add(left, drawn(borders.left, over)), add(left, drawn(add(borders.left, back.width), over))),
        0.5,
      ),
      add(top, drawn(add(borders.head, part(back.height, 0.5)), over)),
      MOUNTING_SHEET.window,
      TYPE.caption,
      "middle",
    ),
    // Where the sheet's corner lies, from the mount's own edges.
    ...(print.angle === 0
      ? [
          extensionLine("x", first.x, top, across),
          extensionLine("x", left, top, across),
          ...dimensionLine("x", left, first.x, across),
          textAt(
            part(add(left, first.x), 0.5),
            subtract(across, mm(3.9)),
            bare(print.left, ruler),
            PLACE,
            "middle",
          ),
          extensionLine("y", first.y, left, level),
          extensionLine("y", top, left, level),
          ...dimensionLine("y", top, first.y, level),
          textAt(
            subtract(level, mm(1.6)),
            add(part(add(top, first.y), 0.5), mm(1.8)),
            bare(print.top, ruler),
            PLACE,
            "end",
          ),
        ]
      : []),
  ]);
}

/** Each pocket as the triangle that it covers. */
function pockets({ job: { composition, plan } }: MountingDesk, to: Toward): readonly Mark[] {
  const corners = composition.print?.sheetCorners ?? [];
  const leg = plan.pockets?.leg ?? ZERO;
  return corners.map((corner, index): Mark => {
    const [before, after] = [
      corners.at(index - 1) ?? corner,
      corners[(index + 1) % corners.length] ?? corner,
    ];
    return {
      kind: "area",
      points: [corner, towards(corner, before, leg), towards(corner, after, leg)].map(to),
      fill: "hatch-section",
      line: "edge",
    };
  });
}

/** Each strip as the band that it covers. */
function strips({ job: { composition, plan } }: MountingDesk, to: Toward): readonly Mark[] {
  const [a, b, c, d] = composition.print?.sheetCorners ?? [];
  if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
  const edges = { left: [a, d, b], right: [b, c, a], foot: [d, c, a], head: [a, b, d] } as const;
  return (plan.strips?.each ?? []).map(({ side, from, length, reach }): Mark => {
    const [start, end, inward] = edges[side];
    const near = towards(start, end, from);
    const far = towards(start, end, from + length);
    const [dx, dy] = [towards(start, inward, reach).x - start.x, towards(start, inward, reach).y - start.y];
    const moved = ({ x, y }: RealPoint): RealPoint => ({ x: x + dx, y: y + dy });
    return {
      kind: "area",
      points: [near, far, moved(far), moved(near)].map(to),
      fill: "hatch-section",
      line: "edge",
    };
  });
}
