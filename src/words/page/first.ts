import { dateWords } from "../dates.ts";
import { wholeWords } from "../figures.ts";

/** What is said where a show begins. */

export const FIRST = {
  title: "Begin with one print.",
  list: "A spreadsheet with a line for each print, or its lines pasted here; any order of columns.",
  pasted: "Pasted list",
  example: "Twenty-four invented works, to try everything on.",
  copy: "A show that was saved as a file, here or on another machine.",
  kept: "Kept in this browser",
  studio: "In the studio",
  gone: "The studio has this show no longer.",
  noExample: "The example could not be fetched: Margent's server does not answer.",
} as const;

export const openShow = (name: string): string => `Open “${name}”`;
export const worksKept = (works: number, at: string): string =>
  `${works === 1 ? "one work" : `${wholeWords(works)} works`}, kept ${at}`;

/** The day on which something was kept, `25 Nov 2026`. */
export const keptDay = (at: string): string => dateWords(at.slice(0, 10));

export const sayNotAbove = "That cannot be: a length above 0 is wanted.";

/** The ways in which a show begins. */
export const BEGINNING = {
  layOnTable: "Lay it on the table",
  openExample: "Open the example show",
  openCopy: "Open a saved copy",
} as const;
