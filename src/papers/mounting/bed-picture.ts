import { FLUTES, type HeldBed, layersFor, MANY_LAYERS, type WallPiece } from "../../assembly/index.ts";
import type { Mark } from "../../drawings/index.ts";
import { add, fineRuler, type Length, mm, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import { type Phrase, withUnit } from "../../words/index.ts";
import {
  fluteWords,
  layersLine,
  MOUNTING_SHEET,
  riserSize,
  roomRound,
  spacerSize,
  wallPiece,
} from "../../words/mounting-sheet.ts";
import { beside, type Block, block, cornersOf, gap, stack } from "../block.ts";
import { dimensionLine, extensionLine } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { ruledHead } from "../tags.ts";
import { paragraph, textAt } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { MountingDesk } from "./desk.ts";

const SIZE: TextStyle = { ...TYPE.line, figures: { whole: points(14), stacked: points(16) } };
const FLOOR = mm(25);
const MOUNT = mm(3);
/** More layers than this are drawn as one stack. */
const MOST_DRAWN = 8;

/** What the sheet lies in or on, in section, with its sizes; null where it lies flat on its mount. */
export function bedBand(desk: MountingDesk, width: Length): Block | null {
  const { bed } = desk.job.plan;
  if (bed.kind === "flat") return null;
  const picture = mm(84);
  const between = mm(5);
  const room = subtract(width, add(picture, between));
  const [name, drawing, sizes] =
    bed.kind === "sink"
      ? ([MOUNTING_SHEET.sinkInSection, sinkSection(desk, bed, picture), sinkSizes(desk, bed, room)] as const)
      : ([
          MOUNTING_SHEET.riserInSection,
          riserSection(desk, bed, picture),
          riserSizes(desk, bed, room),
        ] as const);
  return stack([ruledHead(desk, name, width), gap(mm(1)), beside([drawing, sizes], between), gap(mm(1.6))]);
}

const board = (left: Length, top: Length, wide: Length, high: Length): Mark => ({
  kind: "area",
  points: cornersOf({ left, top, width: wide, height: high }),
  fill: "hatch-section",
  line: "edge",
});

type Sink = Extract<HeldBed, { kind: "sink" }>;

function sinkSection(desk: MountingDesk, bed: Sink, width: Length): Block {
  const { ruler } = desk.speech;
  const wall = mm(15);
  const room = mm(5);
  const inner = subtract(width, mm(26));
  const layers = Math.min(bed.layers, MOST_DRAWN);
  const each = part(mm(14), 1 / layers);
  const depth = times(each, layers);
  const top = subtract(FLOOR, depth);
  const rightWall = subtract(inner, wall);
  // The sheet reaches so far up the wall as its thickness does of the depth.
  const object = part(depth, subtract(bed.depth, bed.clears) / bed.depth);
  const [objectLeft, objectRight] = [add(wall, room), subtract(rightWall, room)];
  const level = add(inner, mm(4));
  return block(width, sum([FLOOR, MOUNT, mm(8)]), [
    board(ZERO, FLOOR, inner, MOUNT),
    ...Array.from({ length: layers }, (_, index) => add(top, times(each, index))).flatMap((y) => [
      board(ZERO, y, wall, each),
      board(rightWall, y, wall, each),
    ]),
    {
      kind: "area",
      points: cornersOf({
        left: objectLeft,
        top: subtract(FLOOR, object),
        width: subtract(objectRight, objectLeft),
        height: object,
      }),
      fill: "paper",
      line: "edge",
    },
    textAt(
      part(inner, 0.5),
      subtract(FLOOR, part(object, 0.3)),
      MOUNTING_SHEET.object,
      TYPE.caption,
      "middle",
    ),
    // A ruler laid over the walls.
    {
      kind: "area",
      points: cornersOf({
        left: mm(4),
        top: subtract(top, mm(2)),
        width: subtract(inner, mm(8)),
        height: mm(2),
      }),
      fill: "none",
      line: "thin",
    },
    textAt(part(inner, 0.5), subtract(top, mm(3.4)), MOUNTING_SHEET.ruler, TYPE.caption, "middle"),
    extensionLine("y", top, inner, level),
    extensionLine("y", FLOOR, inner, level),
    ...dimensionLine("y", top, FLOOR, level),
    textAt(
      add(level, mm(2)),
      add(part(add(top, FLOOR), 0.5), mm(1.8)),
      withUnit(bed.depth, fineRuler(ruler)),
      SIZE,
    ),
    textAt(ZERO, sum([FLOOR, MOUNT, mm(5.4)]), roomRound(bed.room, ruler), SIZE),
  ]);
}

function sinkSizes(desk: MountingDesk, bed: Sink, width: Length): Block {
  const { speech } = desk;
  const line = (words: Phrase): readonly Block[] => [paragraph(desk, words, SIZE, width), gap(mm(1.2))];
  const layer = (name: string, pieces: readonly WallPiece[]): readonly Block[] => [
    paragraph(desk, name, TYPE.fact, width),
    gap(mm(0.8)),
    ...pieces.flatMap(({ side, length, width: wide }) => line(wallPiece(`${side}: `, length, wide, speech))),
  ];
  return stack([
    ...line(layersLine(bed.layers, bed.layer, fineRuler(speech.ruler), bed.board)),
    ...(bed.layers > MANY_LAYERS
      ? line(fluteWords(layersFor(subtract(bed.depth, bed.clears), FLUTES.B)))
      : []),
    ...layer(MOUNTING_SHEET.oddLayers, bed.odd),
    ...(bed.layers > 1 ? layer(MOUNTING_SHEET.evenLayers, bed.even) : []),
  ]);
}

type Raised = Extract<HeldBed, { kind: "raised" }>;

function riserSection(desk: MountingDesk, bed: Raised, width: Length): Block {
  const { ruler } = desk.speech;
  const inner = subtract(width, mm(28));
  const riserHigh = mm(8);
  const [riserLeft, riserRight] = [mm(24), subtract(inner, mm(24))];
  const [sheetLeft, sheetRight] = [mm(16), subtract(inner, mm(16))];
  const riserTop = subtract(FLOOR, riserHigh);
  const spacerTop = subtract(riserTop, mm(7));
  const level = add(inner, mm(4));
  const insetLevel = sum([FLOOR, MOUNT, mm(4)]);
  const spacer = (left: Length): Mark => board(left, spacerTop, mm(5), subtract(FLOOR, spacerTop));
  return block(width, sum([FLOOR, MOUNT, mm(13)]), [
    board(ZERO, FLOOR, inner, MOUNT),
    board(riserLeft, riserTop, subtract(riserRight, riserLeft), riserHigh),
    {
      kind: "area",
      points: cornersOf({
        left: sheetLeft,
        top: subtract(riserTop, mm(1.3)),
        width: subtract(sheetRight, sheetLeft),
        height: mm(1.3),
      }),
      fill: "ink",
      line: null,
    },
    spacer(ZERO),
    spacer(subtract(inner, mm(5))),
    {
      kind: "line",
      from: { x: ZERO, y: subtract(spacerTop, mm(0.6)) },
      to: { x: inner, y: subtract(spacerTop, mm(0.6)) },
      line: "phantom",
    },
    textAt(part(inner, 0.5), subtract(riserTop, mm(3)), MOUNTING_SHEET.object, TYPE.caption, "middle"),
    extensionLine("y", spacerTop, inner, level),
    extensionLine("y", FLOOR, inner, level),
    ...dimensionLine("y", spacerTop, FLOOR, level),
    textAt(
      add(level, mm(2)),
      add(part(add(spacerTop, FLOOR), 0.5), mm(1.8)),
      ["≥ ", withUnit(bed.spacer, ruler, "up")],
      SIZE,
    ),
    extensionLine("x", sheetLeft, riserTop, insetLevel),
    extensionLine("x", riserLeft, add(FLOOR, MOUNT), insetLevel),
    ...dimensionLine("x", sheetLeft, riserLeft, insetLevel),
    textAt(
      add(riserLeft, mm(2)),
      add(insetLevel, mm(5.4)),
      [`${MOUNTING_SHEET.inset} `, withUnit(bed.inset, ruler)],
      SIZE,
    ),
  ]);
}

const riserSizes = ({ speech: { ruler }, ...desk }: MountingDesk, bed: Raised, width: Length): Block =>
  stack([
    paragraph(desk, riserSize(bed.riser, bed.height, ruler), SIZE, width),
    gap(mm(1.6)),
    paragraph(desk, spacerSize(bed.spacer, ruler), SIZE, width),
  ]);
