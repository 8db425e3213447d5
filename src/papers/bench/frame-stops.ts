import type { FrameCheck } from "../../assembly/index.ts";
import type { Length } from "../../lengths/index.ts";
import { BENCH_SHEET } from "../../words/bench-sheet.ts";
import { sayFrameCheck } from "../../words/frame.ts";
import type { Block } from "../block.ts";
import { stopPage, stopReason } from "../stop-panel.ts";
import { points } from "../paper.ts";
import { TYPE, type TextStyle } from "../type.ts";
import type { BenchDesk } from "./desk.ts";

const TEXT: TextStyle = { ...TYPE.step, leading: points(17) };

/** Takes the place of everything that is set, read or ticked where mats could be cut that their frame does not take. */
export const frameDoesNotTake = (desk: BenchDesk, checks: readonly FrameCheck[], width: Length): Block =>
  stopPage(
    BENCH_SHEET.doNotCut,
    BENCH_SHEET.frameReason,
    checks.flatMap((check) => stopReason(desk, sayFrameCheck(check, desk.speech), width, TEXT)),
    width,
  );
