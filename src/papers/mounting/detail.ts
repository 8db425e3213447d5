import { type HeldPockets, isHinge } from "../../assembly/index.ts";
import type { Mark } from "../../drawings/index.ts";
import { CORNERS } from "../../geometry/index.ts";
import { add, figureOf, type Length, mm, subtract, sum, ZERO } from "../../lengths/index.ts";
import { CORNER_WORDS } from "../../words/bench-sheet.ts";
import { wayName } from "../../words/held.ts";
import { figureWords, NBSP, type Phrase, runs, sentence, withUnit } from "../../words/index.ts";
import { MOUNTING_SHEET, stripAlong, stripOver } from "../../words/mounting-sheet.ts";
import { type Block, block, cornersOf, gap, placed, stack } from "../block.ts";
import { dimensionLine, extensionLine } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { drawn, fittingScale } from "../scale.ts";
import { SET_FIGURE, setFigure } from "../set-figure.ts";
import { ruledHead } from "../tags.ts";
import { paragraph, textAt, textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { MountingDesk } from "./desk.ts";
import { hingePicture } from "./hinge-picture.ts";

const SIZE: TextStyle = { ...TYPE.line, figures: { whole: points(14), stacked: points(16) } };

/** What holds the sheet, drawn with its figures: one pocket, the strips in a row each, or one hinge. */
export function holdDetail(desk: MountingDesk, width: Length): Block {
  const { way } = desk.job.plan;
  if (way === null) return block(width, ZERO);
  const head = ruledHead(desk, sentence(wayName(way)), width);
  const picture = isHinge(way)
    ? hingePicture(desk, width)
    : way === "pockets"
      ? pocketDetail(desk, width)
      : stripsDetail(desk, width);
  return stack([head, gap(mm(1.6)), picture]);
}

/** One pocket on its corner, its leg large, and how much each corner would hide. */
function pocketDetail(desk: MountingDesk, width: Length): Block {
  const { pockets } = desk.job.plan;
  if (pockets === null) return block(width, ZERO);
  const { ruler } = desk.speech;
  const over = fittingScale(pockets.leg, pockets.leg, mm(22), mm(22));
  const leg = drawn(pockets.leg, over);
  const left = mm(14);
  const top = mm(12);
  const rest = mm(6);
  const corner = { x: left, y: top };
  const level = subtract(top, mm(5));
  const picture = block(width, sum([top, leg, rest, mm(4)]), [
    // The sheet's corner, and the pocket over it.
    {
      kind: "polyline",
      points: [{ x: left, y: sum([top, leg, rest]) }, corner, { x: sum([left, leg, rest]), y: top }],
      line: "outline",
    },
    {
      kind: "area",
      points: [corner, { x: add(left, leg), y: top }, { x: left, y: add(top, leg) }],
      fill: "hatch-section",
      line: "edge",
    },
    extensionLine("x", left, top, level),
    extensionLine("x", add(left, leg), top, level),
    ...dimensionLine("x", left, add(left, leg), level),
    ...placed(
      textLine(desk, MOUNTING_SHEET.fold, TYPE.caption),
      sum([left, part(leg, 0.6), mm(2)]),
      add(top, part(leg, 0.5)),
    ),
    textAt(sum([left, leg, rest, mm(1.4)]), add(top, mm(1)), MOUNTING_SHEET.sheetWord, TYPE.caption),
  ]);
  const figure = figureOf(pockets.leg, ruler, "down");
  return stack([
    paragraph(desk, [MOUNTING_SHEET.pocketLeg, figureWords(figure)], TYPE.words, width),
    gap(mm(1.6)),
    textLine(desk, setFigure(pockets.leg, ruler), SET_FIGURE),
    picture,
    paragraph(desk, runs`${withUnit(pockets.play, ruler, "up")} of ${MOUNTING_SHEET.play}`, SIZE, width),
    gap(mm(1.6)),
    ...hiddenLines(desk, pockets).flatMap((line) => [paragraph(desk, line, SIZE, width), gap(mm(0.8))]),
  ]);
}

/** How much each corner would hide: one line where they are alike. */
function hiddenLines({ speech }: MountingDesk, { each, least }: HeldPockets): readonly Phrase[] {
  const said = (hidden: Length, where: string): Phrase =>
    runs`${MOUNTING_SHEET.hiddenUpTo} ${withUnit(hidden, speech.ruler, "down")}${NBSP} ${where}`;
  return each.every(({ hidden }) => hidden === least.hidden)
    ? [said(least.hidden, MOUNTING_SHEET.everyCorner)]
    : CORNERS.map((name) =>
        said(each.find(({ corner }) => corner === name)?.hidden ?? ZERO, CORNER_WORDS[name]),
      );
}

/** A strip over the sheet's edge in section, and a row for each side. */
function stripsDetail(desk: MountingDesk, width: Length): Block {
  const { strips } = desk.job.plan;
  if (strips === null) return block(width, ZERO);
  const { ruler } = desk.speech;
  const edge = mm(22);
  const floor = mm(22);
  const sheetTop = subtract(floor, mm(2.6));
  const fold = subtract(edge, mm(3));
  const over = add(edge, mm(15));
  const picture: readonly Mark[] = [
    {
      kind: "area",
      points: cornersOf({ left: ZERO, top: floor, width: subtract(width, mm(4)), height: mm(3) }),
      fill: "hatch-section",
      line: "edge",
    },
    {
      kind: "area",
      points: cornersOf({
        left: edge,
        top: sheetTop,
        width: subtract(width, add(edge, mm(4))),
        height: mm(1.3),
      }),
      fill: "ink",
      line: null,
    },
    // Stuck to the mount outside the sheet, folded up and over its edge.
    {
      kind: "polyline",
      points: [
        { x: subtract(fold, mm(13)), y: subtract(floor, mm(0.7)) },
        { x: fold, y: subtract(floor, mm(0.7)) },
        { x: fold, y: subtract(sheetTop, mm(1)) },
        { x: over, y: subtract(sheetTop, mm(1)) },
      ],
      line: "edge",
    },
    extensionLine("x", edge, sheetTop, mm(10)),
    extensionLine("x", over, sheetTop, mm(10)),
    ...dimensionLine("x", edge, over, mm(10)),
    textAt(add(edge, mm(1)), mm(7), MOUNTING_SHEET.reach, TYPE.caption),
    textAt(subtract(fold, mm(13)), subtract(floor, mm(3)), MOUNTING_SHEET.strip, TYPE.caption),
    textAt(ZERO, add(floor, mm(6.6)), MOUNTING_SHEET.mountWord, TYPE.caption),
    textAt(add(over, mm(2)), subtract(sheetTop, mm(1.4)), MOUNTING_SHEET.sheetWord, TYPE.caption),
  ];
  const rows = strips.each.map(({ side, reach, from, length, gap: off }) =>
    stack([
      paragraph(desk, stripOver(side, reach, off, ruler), SIZE, width),
      gap(mm(0.6)),
      paragraph(desk, stripAlong(length, from, ruler), SIZE, width),
      gap(mm(2.4)),
    ]),
  );
  return stack([block(width, add(floor, mm(9)), picture), ...rows]);
}
