import { holdStops } from "../../assembly/index.ts";
import { type Length, mm } from "../../lengths/index.ts";
import { sayHoldCheck, sayRefused } from "../../words/held.ts";
import { sentence } from "../../words/index.ts";
import { MOUNTING_SHEET } from "../../words/mounting-sheet.ts";
import { type Block, gap } from "../block.ts";
import { STOP_TEXT, stopPage, stopReason } from "../stop-panel.ts";
import { paragraph } from "../text.ts";
import { TYPE } from "../type.ts";
import type { MountingDesk } from "./desk.ts";

/** Takes the place of everything that is set, pasted or ticked: what stands in the way, and the ways out. */
export function doNotMount(desk: MountingDesk, width: Length): Block {
  const stops = holdStops(desk.job.plan);
  const why = stops.flatMap((check) =>
    check.code === "no-holding"
      ? [
          ...check.refused.flatMap((one) => [
            paragraph(desk, sentence(`${sayRefused(one, desk.speech)}.`), STOP_TEXT, width),
            gap(mm(1.6)),
          ]),
          gap(mm(1.6)),
          paragraph(desk, MOUNTING_SHEET.waysOut, { ...STOP_TEXT, weight: "semibold" }, width),
          gap(mm(3)),
        ]
      : stopReason(desk, sayHoldCheck(check, desk.speech), width),
  );
  const stays = paragraph(desk, MOUNTING_SHEET.stays, TYPE.line, width);
  return stopPage(MOUNTING_SHEET.doNotMount, null, [...why, stays], width);
}
