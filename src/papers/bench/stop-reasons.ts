import type { Check } from "../../assembly/index.ts";
import type { Side } from "../../geometry/index.ts";
import { type Length, subtract, ZERO } from "../../lengths/index.ts";
import type { StopCode } from "../../words/bench-sheet.ts";
import type { BenchDesk } from "./desk.ts";

/** One reason at one side: the sheet that fails worst, and every sheet of an edition that fails there. */
export interface Reason {
  readonly check: Check;
  readonly code: StopCode;
  readonly sheets: readonly string[];
}

/** A check's code where it can stop a work; null for what only warns or is noted. */
function stopCode({ code }: Check): StopCode | null {
  switch (code) {
    case "paper-ends":
    case "hold-short":
    case "border-negative":
    case "window-gone":
    case "reveal-gone":
    case "no-size":
    case "sheet-past-board":
      return code;
    default:
      return null;
  }
}

/** Checks of level "stop", those of one kind at one side of one mat together. */
export function reasonsOf(desk: BenchDesk): readonly Reason[] {
  const found = new Map<string, Reason>();
  for (const check of desk.job.composition.checks) {
    const code = stopCode(check);
    if (check.level !== "stop" || code === null) continue;
    const key = `${check.code} ${"side" in check ? check.side : ""} ${"mat" in check ? check.mat : ""}`;
    const known = found.get(key);
    const sheets = [
      ...(known?.sheets ?? []),
      ...("sheet" in check && check.sheet !== null ? [check.sheet] : []),
    ];
    const worse = known === undefined || (shortBy(check) ?? 0) > (shortBy(known.check) ?? 0);
    found.set(key, { check: worse ? check : known.check, code, sheets });
  }
  return [...found.values()];
}

/** The figure that is missing, by kind of check; null where no one figure says it. */
export function shortBy(check: Check): Length | null {
  switch (check.code) {
    case "paper-ends":
    case "sheet-past-board":
      return check.by;
    case "hold-short":
      return subtract(check.hold, check.cover);
    case "border-negative":
      return subtract(ZERO, check.border);
    case "reveal-gone":
      return subtract(ZERO, check.cut);
    default:
      return null;
  }
}

export const sideOf = (check: Check): Side | null => ("side" in check ? check.side : null);
