import { capital } from "./capital.ts";
import type { Level } from "../../assembly/index.ts";
import { dateWords } from "../dates.ts";
import { wholeWords } from "../figures.ts";
import { LEVEL_WORDS } from "./says.ts";

/** What is said of all works of a show. */

/** "Twenty-four works for 14 December 2026". */
export function worksTitle(works: number, date: string | undefined): string {
  const number = works === 0 ? "no works yet" : works === 1 ? "one work" : `${wholeWords(works)} works`;
  return capital(date === undefined ? number : `${number} for ${dateWords(date)}`);
}

/** What follows from the state of all works. */
export function worksState(stops: number, warns: number, unread: number): string {
  const parts: string[] = [];
  if (unread > 0) parts.push(`${wholeWords(unread)} cannot be read`);
  if (stops > 0)
    parts.push(`${wholeWords(stops)} must be mended before ${stops === 1 ? "it is" : "they are"} cut`);
  if (warns > 0) parts.push(`${wholeWords(warns)} ${warns === 1 ? "is" : "are"} worth a look`);
  return parts.length === 0 ? "All can be cut as they are." : `${capital(parts.join(", "))}.`;
}

export const TABLE_HINT =
  "All at one scale, in the order of the wall. Take one up with the mouse or with Space to put it elsewhere.";

/** Putting works in order without a mouse or keys. */
export const ORDER = {
  act: "Move works one by one",
  [-1]: { short: "Earlier", long: "one place earlier" },
  [1]: { short: "Later", long: "one place later" },
} as const;

/** The scale bar's own length. */
export const SCALE_BAR = { in: "12\u00a0in", mm: "300\u00a0mm" } as const;

export const LIST_COLUMNS = {
  place: "No.",
  title: "Work",
  maker: "Made by",
  window: "Window",
  board: "Board",
  checks: "To look at",
} as const;

/** Moving a work with the keys, announced. */
export const takenUp = (title: string): string =>
  `${title} is taken up. The arrows carry it, Space lays it down, Escape puts it back.`;
export const carried = (title: string, place: number, works: number): string =>
  `${title}, place ${place} of ${works}.`;
export const laidDown = (title: string, place: number, works: number): string =>
  `${title} is laid down, place ${place} of ${works}.`;
export const putBackSays = (title: string): string => `${title} is back where it was.`;
export const openWork = (title: string, size: string, level: Level | null): string =>
  `${title}, ${size}${level === null ? "" : `, ${LEVEL_WORDS[level]}`}`;
export const workMoved = (title: string, place: number): string => `${title} to place ${place}`;
export const workAdded = (title: string): string => `added ${title}`;
export const workRemoved = (title: string): string => `took off ${title}`;
