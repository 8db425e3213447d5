import { holdStops } from "../../assembly/index.ts";
import { type Length, mm, sum, ZERO } from "../../lengths/index.ts";
import { sayHoldCheck, sayRefused } from "../../words/held.ts";
import { sentence } from "../../words/index.ts";
import { MOUNTING_SHEET } from "../../words/mounting-sheet.ts";
import { type Block, block, cornersOf, gap, stack } from "../block.ts";
import { points } from "../paper.ts";
import { paragraph, textAt } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { MountingDesk } from "./desk.ts";

const TEXT: TextStyle = { ...TYPE.step, leading: points(17), size: points(12) };

/** Takes the place of everything that is set, pasted or ticked: what stands in the way, and the ways out. */
export function doNotMount(desk: MountingDesk, width: Length): Block {
  const stops = holdStops(desk.job.plan);
  return stack([
    gap(mm(3)),
    panel(width),
    gap(mm(4)),
    ...stops.flatMap((check) =>
      check.code === "no-holding"
        ? [
            ...check.refused.flatMap((one) => [
              paragraph(desk, sentence(`${sayRefused(one, desk.speech)}.`), TEXT, width),
              gap(mm(1.6)),
            ]),
            gap(mm(1.6)),
            paragraph(desk, MOUNTING_SHEET.waysOut, { ...TEXT, weight: "semibold" }, width),
            gap(mm(3)),
          ]
        : [paragraph(desk, sayHoldCheck(check, desk.speech), TEXT, width), gap(mm(3))],
    ),
    paragraph(desk, MOUNTING_SHEET.stays, TYPE.line, width),
  ]);
}

const panel = (width: Length): Block =>
  block(width, mm(15), [
    {
      kind: "area",
      points: cornersOf({ left: ZERO, top: ZERO, width, height: mm(15) }),
      fill: "ink",
      line: null,
    },
    textAt(
      mm(4.5),
      sum([mm(7.5), mm(3.1)]),
      MOUNTING_SHEET.doNotMount,
      { size: points(27), weight: "black", leading: points(27) },
      "start",
      { onInk: true },
    ),
  ]);
