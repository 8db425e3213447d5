import { holdStops } from "../../assembly/index.ts";
import { type Length, mm } from "../../lengths/index.ts";
import { sayHoldCheck, sayRefused } from "../../words/held.ts";
import { sentence } from "../../words/index.ts";
import { MOUNTING_SHEET } from "../../words/mounting-sheet.ts";
import { type Block, gap, stack } from "../block.ts";
import { points } from "../paper.ts";
import { stopPanel } from "../stop-panel.ts";
import { paragraph } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { MountingDesk } from "./desk.ts";

const TEXT: TextStyle = { ...TYPE.step, leading: points(17), size: points(12) };

/** Takes the place of everything that is set, pasted or ticked: what stands in the way, and the ways out. */
export function doNotMount(desk: MountingDesk, width: Length): Block {
  const stops = holdStops(desk.job.plan);
  return stack([
    gap(mm(3)),
    stopPanel(MOUNTING_SHEET.doNotMount, null, width),
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
