import type { Fill, Mark } from "../../drawings/index.ts";
import { type Length, mm, subtract } from "../../lengths/index.ts";
import type { PlannedSheet } from "../../plans/cutting/index.ts";
import { atScale, CUT_PLAN } from "../../words/cut-plan.ts";
import { beside, type Block, block, cornersOf, placed } from "../block.ts";
import { ringBlock } from "../tags.ts";
import { textLine } from "../text.ts";
import { TYPE } from "../type.ts";
import type { CuttingDesk } from "./desk.ts";
import { fenceSettings } from "./fence.ts";
import { LETTER } from "./rings.ts";

/** What rings, hatches and dashes mean, only those that are on the drawing, and its scale at the right. */
export function legend(desk: CuttingDesk, sheet: PlannedSheet, over: number, width: Length): Block {
  const said = (sign: Block, words: string): Block =>
    beside([sign, textLine(desk, words, TYPE.caption)], mm(1.6), "middle");
  const windows = sheet.placements.some((lies) => desk.job.job.pieces[lies.piece]?.window !== null);
  const strips = fenceSettings(sheet).some(({ comesOff }) => comesOff.boards.length > 0);
  const signs = [
    ...(sheet.cuts.length > 0 ? [said(ringBlock(desk, "3", "black"), CUT_PLAN.legendCut)] : []),
    ...(strips ? [said(textLine(desk, "A", LETTER), CUT_PLAN.legendStrip)] : []),
    said(ringBlock(desk, "3", "white"), CUT_PLAN.legendBlank),
    ...(sheet.left.some(({ keep }) => keep) ? [said(swatch("hatch-out"), CUT_PLAN.legendKeep)] : []),
    ...(sheet.left.some(({ keep }) => !keep) ? [said(swatch("hatch-waste"), CUT_PLAN.legendWaste)] : []),
    ...(windows ? [said(dashes(), CUT_PLAN.legendWindow)] : []),
  ];
  const row = beside(signs, mm(5), "middle");
  const scale = textLine(desk, atScale(over), TYPE.caption);
  const drop = (row.height - scale.height) / 2;
  return block(width, row.height, [
    ...row.marks,
    ...placed(scale, subtract(width, scale.width), drop > 0 ? mm(1.2) : mm(0)),
  ]);
}

const swatch = (fill: Fill): Block =>
  block(mm(8), mm(4), [
    {
      kind: "area",
      points: cornersOf({ left: mm(0), top: mm(0), width: mm(8), height: mm(4) }),
      fill,
      line: "thin",
    },
  ]);

function dashes(): Block {
  const line: Mark = {
    kind: "line",
    from: { x: mm(0), y: mm(0.5) },
    to: { x: mm(9), y: mm(0.5) },
    line: "hidden",
  };
  return block(mm(9), mm(1), [line]);
}
