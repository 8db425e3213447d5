import type { PartMass, StackLayer } from "../../assembly/index.ts";
import { add, fineRuler, type Length, mm } from "../../lengths/index.ts";
import { layerName, partName } from "../../words/frame.ts";
import { FRAME_SHEET, gramsOfPart, inUnit, thickWords } from "../../words/frame-sheet.ts";
import { type Phrase, sizeRuns, strong, withUnit } from "../../words/index.ts";
import { massWords } from "../../words/weights.ts";
import { type Block, block, gap, stack, restOf } from "../block.ts";
import { points } from "../paper.ts";
import { type Column, tableHead, tableRow } from "../table.ts";
import { ringBlock, ruledHead } from "../tags.ts";
import { paragraph, shortened, textLine } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { FrameDesk } from "./desk.ts";

const CELL: TextStyle = { ...TYPE.line, figures: { whole: points(14), stacked: points(15) } };
const WEIGHT: TextStyle = TYPE.line;
const BETWEEN = mm(3);
const FIXED = { number: mm(6), layer: mm(30), thick: mm(20), cut: mm(46), weight: mm(22) } as const;
const ROW = { above: mm(0.6), below: mm(0.6), line: "rule-thin" } as const;

/** Every layer from the face: what it is of, how thick, what it is cut to, what it weighs; then the moulding, and the sums. */
export function layersTable(desk: FrameDesk, width: Length): Block {
  const { plan } = desk.job;
  const { stack: layers, mass } = plan;
  const mats = layers.layers.filter(({ kind }) => kind === "mat").length;
  const board = restOf(width, BETWEEN, Object.values(FIXED));
  const fine = fineRuler(desk.speech.ruler);
  const columns: readonly Column[] = [
    { name: FRAME_SHEET.headNumber, width: FIXED.number, align: "start" },
    { name: FRAME_SHEET.headLayer, width: FIXED.layer, align: "start" },
    { name: FRAME_SHEET.headBoard, width: board, align: "start" },
    { name: inUnit(FRAME_SHEET.headThick, fine), width: FIXED.thick, align: "start" },
    { name: inUnit(FRAME_SHEET.headCut, fine), width: FIXED.cut, align: "start" },
    { name: FRAME_SHEET.headWeight, width: FIXED.weight, align: "end" },
  ];
  const row = (cells: readonly Block[]): Block => tableRow(columns, cells, BETWEEN, ROW);
  const text = (words: Phrase, wide: Length): Block => paragraph(desk, words, CELL, wide);
  const blank = block(mm(0), mm(0));
  const weighed = (one: PartMass | undefined): Block =>
    one === undefined || one.mass === 0
      ? blank
      : textLine(desk, gramsOfPart(one.mass, one.by === "assumed"), WEIGHT);
  const others = mass.parts.slice(layers.layers.length);
  return stack([
    ruledHead(desk, FRAME_SHEET.layers, width),
    tableHead(desk, columns, BETWEEN),
    ...layers.layers.map((layer, index) =>
      row([
        ringBlock(desk, String(index + 1), "white", mm(2.3)),
        text(layerName(layer, mats, desk.speech), FIXED.layer),
        textLine(desk, shortened(desk, layer.board, TYPE.line, board), TYPE.line),
        textLine(desk, thickWords(layer.thickness, layer.within, fine), CELL),
        layer.kind === "print" ? blank : cutSize(desk, layer, fine),
        weighed(mass.parts[index]),
      ]),
    ),
    ...others.map((one) =>
      row([
        blank,
        text(partName(one, mats, desk.speech), FIXED.layer),
        textLine(
          desk,
          one.part === "moulding" ? shortened(desk, plan.frame.profile.name, TYPE.line, board) : "",
          TYPE.line,
        ),
        blank,
        blank,
        weighed(one),
      ]),
    ),
    row([
      blank,
      text(strong(FRAME_SHEET.inAll), add(FIXED.layer, board)),
      blank,
      text(strong(withUnit(layers.depth, fine, "up")), FIXED.thick),
      textLine(desk, FRAME_SHEET.weightNote, TYPE.fine),
      textLine(desk, strong(massWords(mass.total)), WEIGHT),
    ]),
    gap(mm(1.6)),
  ]);
}

/** Strips are cut as the steps say. */
const cutSize = (desk: FrameDesk, { kind, size }: StackLayer, fine: ReturnType<typeof fineRuler>): Block =>
  kind === "spacer" || kind === "float-spacer" || kind === "sink"
    ? block(mm(0), mm(0))
    : textLine(desk, sizeRuns(size, fine, "down", false), CELL);
