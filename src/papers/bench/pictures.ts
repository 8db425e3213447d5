import type { Mark } from "../../drawings/index.ts";
import { add, fromReal, type Length, larger, mm, smaller, subtract, sum, ZERO } from "../../lengths/index.ts";
import { BENCH_SHEET, railCaption, railTitle, scrapCaption } from "../../words/bench-sheet.ts";
import { bold, flat, NBSP, readOff } from "../../words/index.ts";
import { EVERY_PAPER } from "../../words/papers.ts";
import { type Block, block, columns, cornersOf, placed, stack } from "../block.ts";
import { dimensionLine, extensionLine } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { handTag } from "../tags.ts";
import { paragraph, textAt } from "../text.ts";
import { FIGURE, TYPE } from "../type.ts";
import { type BenchDesk, fineRuler } from "./desk.ts";

export const PICTURES_HEIGHT = mm(26.8);

/** Three pictures of what words say badly: the turn, the side of the rail, the corner past the line. */
export function threePictures(desk: BenchDesk, width: Length): Block {
  const [first = ZERO, second = ZERO, third = ZERO] = columns(width, mm(5), [58, 62, 56]);
  return block(width, PICTURES_HEIGHT, [
    ...turnPicture(desk, first).marks,
    ...placed(railPicture(desk, second), add(first, mm(5)), ZERO),
    ...placed(cornerPicture(desk, third), sum([first, second, mm(10)]), ZERO),
  ]);
}

const TITLE_BASE = mm(4.4);
const CARD = { width: mm(10), height: mm(12.2) };
const CARD_TOP = mm(9.6);

const box = (left: Length, top: Length, width: Length, height: Length): ReturnType<typeof cornersOf> =>
  cornersOf({ left, top, width, height });

/** Front, a turn to the side, back: head stays at the head. */
function turnPicture(desk: BenchDesk, width: Length): Block {
  const { mats } = desk.job.composition;
  const borders = mats[0]?.borders;
  const frontLeft = mm(1.5);
  const backLeft = mm(24.5);
  const uneven = borders !== undefined && borders.left !== borders.right;
  // The front's wider side is shown wider, and lies on the other side once the board is turned.
  const shift = uneven ? (borders.right > borders.left ? mm(-1) : mm(1)) : ZERO;
  const windowBox = (left: Length, by: Length): ReturnType<typeof cornersOf> =>
    box(sum([left, mm(2.2), by]), add(CARD_TOP, mm(2.8)), mm(5.6), mm(6.6));
  const label = (left: Length, words: string): readonly Mark[] => [
    textAt(
      add(left, part(CARD.width, 0.5)),
      subtract(CARD_TOP, mm(1.4)),
      EVERY_PAPER.head,
      { ...TYPE.fine, weight: "bold" },
      "middle",
    ),
    { kind: "area", points: box(left, CARD_TOP, CARD.width, CARD.height), fill: "none", line: "edge" },
    textAt(
      add(left, part(CARD.width, 0.5)),
      sum([CARD_TOP, CARD.height, mm(3.6)]),
      words,
      TYPE.caption,
      "middle",
    ),
  ];
  const front = windowBox(frontLeft, shift);
  const [corner] = front;
  const hill = [
    { x: corner.x, y: add(corner.y, mm(5.2)) },
    { x: add(corner.x, mm(1.9)), y: add(corner.y, mm(2)) },
    { x: add(corner.x, mm(3.3)), y: add(corner.y, mm(4)) },
    { x: add(corner.x, mm(4.2)), y: add(corner.y, mm(3)) },
    { x: add(corner.x, mm(5.6)), y: add(corner.y, mm(5.2)) },
  ];
  const textLeft = mm(37.5);
  const textWidth = subtract(width, textLeft);
  const side = uneven
    ? stack(
        [
          paragraph(desk, BENCH_SHEET.widerSide, TYPE.caption, textWidth),
          handTag(desk, borders.right > borders.left ? "left" : "right"),
        ],
        mm(1.2),
      )
    : paragraph(desk, BENCH_SHEET.sidesEqual, TYPE.line, textWidth);
  return block(width, PICTURES_HEIGHT, [
    textAt(ZERO, TITLE_BASE, BENCH_SHEET.turn, TYPE.band),
    ...label(frontLeft, BENCH_SHEET.front),
    { kind: "area", points: front, fill: "none", line: "thin" },
    { kind: "polyline", points: hill, line: "thin" },
    ...label(backLeft, BENCH_SHEET.backUp),
    { kind: "area", points: windowBox(backLeft, subtract(ZERO, shift)), fill: "hatch-floor", line: "thin" },
    ...turnArrow(sum([frontLeft, CARD.width, mm(2.2)]), subtract(backLeft, mm(2.4)), add(CARD_TOP, mm(8))),
    ...placed(side, textLeft, CARD_TOP),
  ]);
}

/** An arc from one card to the other, as the hand goes. */
function turnArrow(from: Length, to: Length, level: Length): readonly Mark[] {
  const radius = subtract(to, from) / 2;
  const centre = { x: from + radius, y: level };
  const arc = Array.from({ length: 25 }, (_, index) => {
    const turn = Math.PI * (1 - index / 24);
    return {
      x: fromReal(centre.x + radius * Math.cos(turn), "nearest"),
      y: fromReal(centre.y - radius * 0.8 * Math.sin(turn), "nearest"),
    };
  });
  return [
    { kind: "polyline", points: arc.slice(0, 24), line: "edge" },
    { kind: "arrowhead", at: { x: to, y: add(level, mm(0.6)) }, degrees: 78, size: mm(2.8) },
  ];
}

/**
 * The rail from its end, the board on its face: which side the window lies on, and the bevel's true
 * lean. A left-handed bench mirrors this picture and its sentence, nothing else.
 */
function railPicture(desk: BenchDesk, width: Length): Block {
  const { bench, composition } = desk.job;
  const bevel = composition.mats.at(-1)?.bevel.degrees ?? 90;
  const mirrored = bench.hand === "left";
  const long = mm(52);
  const boardTop = mm(15.6);
  const boardLow = mm(21.4);
  const cutAt = mm(25);
  const lean = bevel === 90 ? 0 : 1 / Math.tan((bevel * Math.PI) / 180);
  const thick = subtract(boardLow, boardTop);
  // From the back (above) to the face (below) the cut leans towards the border.
  const tip = subtract(cutAt, fromReal(thick * Math.min(lean, 2.5), "nearest"));
  const across = (x: Length): Length => (mirrored ? subtract(long, x) : x);
  const point = (x: Length, y: Length): { x: Length; y: Length } => ({ x: across(x), y });
  const knife = mm(0.9);
  const shaft = mm(9);
  const up = (height: Length, off: Length): { x: Length; y: Length } =>
    point(
      add(add(tip, fromReal((thick + height) * Math.min(lean, 2.5), "nearest")), off),
      subtract(boardTop, height),
    );
  const centred = (x: Length, y: Length, words: string, isBold: boolean): Mark =>
    textAt(
      across(x),
      y,
      words,
      isBold ? { ...TYPE.band, size: points(11), weight: "black" } : TYPE.caption,
      "middle",
      isBold ? { halo: true } : {},
    );
  const blade: Mark = {
    kind: "area",
    points: [point(tip, boardLow), up(shaft, knife), up(shaft, subtract(ZERO, knife))],
    fill: "ink",
    line: null,
  };
  const bladeWords = across(add(cutAt, add(fromReal(9 * 80_000 * Math.min(lean, 1.2), "nearest"), mm(3))));
  return block(width, PICTURES_HEIGHT, [
    textAt(ZERO, TITLE_BASE, railTitle(bench.hand), TYPE.band),
    {
      kind: "area",
      points: [point(mm(1), mm(10)), point(mm(21), mm(10)), point(mm(21), mm(15.2)), point(mm(1), mm(15.2))],
      fill: "none",
      line: "edge",
    },
    centred(mm(11), mm(13.8), BENCH_SHEET.rail, false),
    {
      kind: "area",
      points: [point(ZERO, boardTop), point(cutAt, boardTop), point(tip, boardLow), point(ZERO, boardLow)],
      fill: "none",
      line: "edge",
    },
    {
      kind: "area",
      points: [point(cutAt, boardTop), point(long, boardTop), point(long, boardLow), point(tip, boardLow)],
      fill: "hatch-out",
      line: "edge",
    },
    blade,
    textAt(bladeWords, mm(9.2), BENCH_SHEET.blade, TYPE.caption, mirrored ? "end" : "start"),
    centred(mm(8.5), mm(19.6), BENCH_SHEET.border, false),
    centred(mm(41), mm(20), EVERY_PAPER.out, true),
    {
      kind: "line",
      from: { x: ZERO, y: add(boardLow, mm(0.5)) },
      to: { x: long, y: add(boardLow, mm(0.5)) },
      line: "thin",
    },
    textAt(ZERO, mm(25.8), railCaption(bevel), TYPE.caption),
  ]);
}

/** One corner at true size: how far the cut runs past the line that crosses it. */
function cornerPicture(desk: BenchDesk, width: Length): Block {
  const { bench } = desk.job;
  const { ruler } = desk.speech;
  const past = smaller(bench.overrun, mm(12));
  const corner = { x: mm(16), y: mm(14.4) };
  const low = mm(25.6);
  const level = mm(8.6);
  const figureLeft = larger(mm(31), sum([corner.x, past, mm(8)]));
  return block(width, PICTURES_HEIGHT, [
    textAt(ZERO, TITLE_BASE, BENCH_SHEET.pastTheLine, TYPE.band),
    {
      kind: "area",
      points: box(mm(1), corner.y, subtract(corner.x, mm(1)), subtract(low, corner.y)),
      fill: "hatch-out",
      line: null,
    },
    {
      kind: "line",
      from: { x: mm(1), y: corner.y },
      to: { x: add(corner.x, past), y: corner.y },
      line: "edge",
    },
    {
      kind: "line",
      from: { x: corner.x, y: subtract(corner.y, past) },
      to: { x: corner.x, y: low },
      line: "edge",
    },
    extensionLine("x", corner.x, subtract(corner.y, past), level),
    extensionLine("x", add(corner.x, past), corner.y, level),
    ...dimensionLine("x", corner.x, add(corner.x, past), level),
    textAt(mm(8), mm(22.6), EVERY_PAPER.out, { ...TYPE.band, size: points(11), weight: "black" }, "middle", {
      halo: true,
    }),
    textAt(
      figureLeft,
      mm(15.4),
      flat([
        bold(readOff(bench.overrun, fineRuler(desk))),
        { kind: "text", text: `${NBSP}${ruler.unit}`, weight: "regular", size: points(13) },
      ]),
      { size: FIGURE.scale, weight: "bold", leading: FIGURE.scale },
    ),
    ...placed(
      paragraph(desk, scrapCaption(bench.scaleTested), TYPE.caption, subtract(width, figureLeft)),
      figureLeft,
      mm(18.4),
    ),
  ]);
}
