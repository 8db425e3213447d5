import { isDay } from "../packet/index.ts";
import type { PaperSize } from "../papers/index.ts";
import { CLI } from "../words/cli.ts";
import { Unreadable } from "./input.ts";

/** The paper that `--paper` names, in any letter case; null where it is absent. */
export function readPaper(paper: string | undefined): PaperSize | null {
  if (paper === undefined) return null;
  const name = paper.toLowerCase();
  if (name === "a4" || name === "letter") return name;
  throw new Unreadable(CLI.problem("--paper", paper, "a4 or letter"));
}

/** The day that `--date` names. */
export function readDate(date: string): string {
  if (isDay(date)) return date;
  throw new Unreadable(CLI.problem("--date", date, "a day as YYYY-MM-DD"));
}
