import type { FrameCheck } from "../../assembly/index.ts";
import { type Length, mm } from "../../lengths/index.ts";
import { BENCH_SHEET } from "../../words/bench-sheet.ts";
import { sayFrameCheck } from "../../words/frame.ts";
import { type Block, gap, stack } from "../block.ts";
import { points } from "../paper.ts";
import { stopPanel } from "../stop-panel.ts";
import { paragraph } from "../text.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { BenchDesk } from "./desk.ts";

const TEXT: TextStyle = { ...TYPE.step, leading: points(17) };

/** Takes the place of everything that is set, read or ticked where mats could be cut that their frame does not take. */
export const frameDoesNotTake = (desk: BenchDesk, checks: readonly FrameCheck[], width: Length): Block =>
  stack([
    gap(mm(3)),
    stopPanel(BENCH_SHEET.doNotCut, BENCH_SHEET.frameReason, width),
    gap(mm(4)),
    ...checks.flatMap((check) => [
      paragraph(desk, sayFrameCheck(check, desk.speech), TEXT, width),
      gap(mm(3)),
    ]),
  ]);
