import type { Mark } from "../../drawings/index.ts";
import { add, type Length, larger, mm, subtract, sum, times, ZERO } from "../../lengths/index.ts";
import { BENCH_SHEET, sectionLayer, sectionTitle, stripAsCut, fineRuns } from "../../words/bench-sheet.ts";
import { type Block, block, cornersOf, gap, stack } from "../block.ts";
import { dimensionLine, extensionLine, tailOf } from "../dimension.ts";
import { part, points } from "../paper.ts";
import { ruledHead } from "../tags.ts";
import { paragraph, textAt, widthOf } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import { enlarged } from "../scale.ts";
import { type BenchDesk } from "./desk.ts";

const ENLARGEMENTS = [5, 4, 3, 2, 1];
const STUB = mm(19);
/** From the lowest cut to the figure of its bevel, clear of the arrow outside it. */
const TO_BEVEL = mm(6.4);
/** Each strip is dimensioned on a line of its own. */
const STRIP_LINE = mm(7.6);
/** Below this a layer is too thin to be named inside. */
const NAMED_LAYER = mm(2.9);
const FIGURES: TextStyle = { ...TYPE.line, figures: { whole: points(14), stacked: points(15) } };

/**
 * All mats in section, face up, larger than life: each bevel at its true lean, the strip as it is
 * cut and not as it was asked. Null for a single mat, which has no strip, and where strips are so wide
 * that nothing is gained by drawing them.
 */
export function matsSection(desk: BenchDesk, width: Length): Block | null {
  const { mats, design } = desk.job.composition;
  if (mats.length < 2) return null;
  const bevelWidth = fineRuns(mats[0]?.bevel.plan ?? ZERO, desk.speech.ruler);
  const printRoom = add(TO_BEVEL, larger(widthOf(desk, bevelWidth, FIGURES), mm(8)));
  // From the lowest mat's back edge leftwards to the upper's, at life size.
  const span = sum(mats.map(({ bevel, revealAsCut }) => add(bevel.plan, revealAsCut ?? ZERO)));
  const by = ENLARGEMENTS.find((each) => sum([STUB, printRoom, enlarged(span, each)]) <= width);
  if (by === undefined) return null;
  const edge = add(STUB, enlarged(span, by));
  const thick = sum(mats.map(({ thickness }) => enlarged(thickness, by)));
  const above = add(times(STRIP_LINE, mats.length - 1), mm(1.6));
  const marks: Mark[] = [];
  let x = edge;
  let low = add(above, thick);
  const strips: {
    readonly from: Length;
    readonly to: Length;
    readonly level: Length;
    readonly mat: number;
  }[] = [];
  mats.forEach(({ thickness, bevel, revealAsCut }, index) => {
    if (index > 0) {
      const from = subtract(x, enlarged(revealAsCut ?? ZERO, by));
      strips.push({ from, to: x, level: low, mat: index });
      x = from;
    }
    const top = subtract(low, enlarged(thickness, by));
    const face = subtract(x, enlarged(bevel.plan, by));
    marks.push({
      kind: "area",
      points: [
        { x: ZERO, y: top },
        { x: face, y: top },
        { x, y: low },
        { x: ZERO, y: low },
      ],
      fill: "none",
      line: "edge",
    });
    if (subtract(low, top) >= NAMED_LAYER) {
      const middle = subtract(low, part(subtract(low, top), 0.5));
      marks.push(textAt(mm(1.4), add(middle, mm(1.1)), sectionLayer(index, mats.length), TYPE.caption));
    }
    x = face;
    low = top;
  });
  const floor = add(above, thick);
  const lowest = mats[0];
  const printRight = add(edge, mm(9));
  const dimLevel = add(floor, mm(5));
  return stack([
    ruledHead(desk, sectionTitle(mats.length, by), width),
    gap(mm(1)),
    block(width, add(floor, mm(8)), [
      ...marks,
      {
        kind: "area",
        points: cornersOf({ left: ZERO, top: floor, width: printRight, height: mm(1.1) }),
        fill: "ink",
        line: null,
      },
      textAt(add(edge, mm(2.4)), subtract(floor, mm(1.6)), BENCH_SHEET.printWord, TYPE.caption),
      ...strips.flatMap(({ from, to, level, mat }, index) => {
        const line = subtract(times(STRIP_LINE, index + 1), mm(0.4));
        const cut = mats[mat]?.revealAsCut ?? ZERO;
        return [
          extensionLine("x", from, level, line),
          extensionLine("x", to, level, line),
          ...dimensionLine("x", from, to, line),
          // Left of its own line, where no other strip's extension lines run.
          textAt(
            subtract(from, add(tailOf(from, to), mm(1.4))),
            add(line, mm(1.7)),
            fineRuns(cut, desk.speech.ruler),
            FIGURES,
            "end",
          ),
        ];
      }),
      ...(lowest === undefined || lowest.bevel.plan === 0
        ? []
        : [
            extensionLine(
              "x",
              subtract(edge, enlarged(lowest.bevel.plan, by)),
              add(floor, mm(1.1)),
              dimLevel,
            ),
            extensionLine("x", edge, add(floor, mm(1.1)), dimLevel),
            ...dimensionLine("x", subtract(edge, enlarged(lowest.bevel.plan, by)), edge, dimLevel),
            textAt(add(edge, TO_BEVEL), add(dimLevel, mm(1.8)), bevelWidth, FIGURES),
          ]),
    ]),
    gap(mm(1)),
    paragraph(
      desk,
      mats
        .slice(1)
        .map((mat, index) => [
          index === 0 ? "" : " ",
          stripAsCut(
            mats.length === 2 ? null : sectionLayer(index, mats.length),
            design.mats[index + 1]?.reveal ?? ZERO,
            mat.revealAsCut ?? ZERO,
            desk.speech,
          ),
        ]),
      { ...TYPE.line, figures: { whole: points(11), stacked: points(13) } },
      width,
    ),
  ]);
}
