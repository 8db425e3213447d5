import { exactFigure, type Length, type Ruler } from "../lengths/index.ts";
import type { BoundArgument, CuttingCheck, CuttingJob } from "../plans/index.ts";
import type { CutUnit, CutWanted } from "../show/job-reader.ts";
import { sayWanted } from "./problems.ts";
import { figureRuns, flat, NBSP, type Phrase, plainText, withUnit } from "./runs.ts";

/** What a cutting plan is spoken about with: its job, for the names, and the unit of its figures. */
export interface CuttingSpeech {
  readonly job: CuttingJob;
  readonly unit: CutUnit;
}

/** How a sentence sets its lengths. */
export type Setting = (value: Length) => Phrase;

/** Exact, in the unit in which it is exact; a whole number of ticks as it is. */
export const exactly =
  (unit: CutUnit): Setting =>
  (value) => {
    if (unit === "tick") return String(value);
    const figure = exactFigure(value, unit);
    return [figureRuns(figure), `${NBSP}${figure.unit}`];
  };

const size = ({ width, height }: { width: Length; height: Length }, set: Setting): Phrase => [
  set(width),
  " × ",
  set(height),
];

function pieceName(job: CuttingJob, index: number, set: Setting): Phrase {
  const piece = job.pieces[index];
  if (piece === undefined) return `Piece ${index + 1}`;
  return [piece.name === "" ? `Piece ${index + 1}` : piece.name, " (", size(piece, set), ")"];
}

function sheetName(job: CuttingJob, index: number, set: Setting): Phrase {
  const sheet = job.sheets[index];
  if (sheet === undefined) return `Sheet ${index + 1}`;
  return sheet.name === "" ? ["Sheet of ", size(sheet, set)] : sheet.name;
}

/** A check of a cutting plan in plain text: which piece or sheet, the figure, and a way out. */
export const sayCuttingCheck = (check: CuttingCheck, { job, unit }: CuttingSpeech): string =>
  plainText(flat(checkPhrase(check, job, exactly(unit))));

/** The same for a paper, on a ruler, its fractions stacked. */
export const missingLine = (check: CuttingCheck, job: CuttingJob, ruler: Ruler): Phrase =>
  checkPhrase(check, job, (value) => withUnit(value, ruler));

function checkPhrase(check: CuttingCheck, job: CuttingJob, set: Setting): Phrase {
  switch (check.code) {
    case "piece-too-large":
      return check.largest === null
        ? [pieceName(job, check.piece, set), ": there is no sheet to cut it from. Add one to the stock."]
        : [
            pieceName(job, check.piece, set),
            ": no sheet is large enough; the largest gives ",
            size(check.largest, set),
            ". Add a larger sheet, or make it smaller.",
          ];
    case "cut-too-long":
      return [
        pieceName(job, check.piece, set),
        ": no cut of at most ",
        set(check.longest),
        " frees it from a sheet. Have the sheet cut down in the shop, or use a longer bench.",
      ];
    case "stock-short":
      return [
        pieceName(job, check.piece, set),
        `: the sheets run out; ${check.missing} of ${check.wanted} ${check.missing === 1 ? "is" : "are"} not in the plan. Add sheets to the stock.`,
      ];
    case "just-fits":
      return [
        sheetName(job, check.sheet, set),
        `: ${check.sheets === 1 ? "one sheet needs" : `${check.sheets} sheets need`} `,
        set(check.needs),
        ` of the ${check.direction} and ${check.sheets === 1 ? "has" : "have"} `,
        check.spare === 0 ? "nothing" : set(check.spare),
        " to spare. Measure before you cut; where a sheet is short or an edge is damaged, ask for a new plan with a trim.",
      ];
    case "drop-outs-used":
      return `${check.count === 1 ? "One piece comes" : `${check.count} pieces come`} out of windows that fall out. Pencil the number on each; do not throw it away.`;
  }
}

/** What a check is about: the entry of the job that mends it. */
export function aboutCutting(check: CuttingCheck): string {
  switch (check.code) {
    case "piece-too-large":
    case "cut-too-long":
    case "stock-short":
      return `pieces.${check.piece}`;
    case "just-fits":
      return `sheets.${check.sheet}`;
    case "drop-outs-used":
      return "dropouts";
  }
}

/** Why no plan can cost less than the bound. */
export function sayBound(how: BoundArgument): string {
  switch (how) {
    case "none":
      return "nothing better than 0 is known";
    case "piece":
      return "the cheapest sheet that takes one of the pieces";
    case "area":
      return "the area of the pieces against the area of the sheets";
    case "values":
      return "the most that straight cuts can get out of each sheet, by area, reckoned exactly";
    case "columns":
      return "the best mix of all straight-cut layouts, sheets taken in parts (a linear programme)";
    case "counts":
      return "the cheapest whole numbers of sheets that hold what any mix of straight-cut layouts must (linear programmes)";
    case "every-way":
      return "every way to cut these few pieces was tried";
  }
}

/** What a layout is cut from, when it is the window of a piece. */
export const sayDropOutOf = (name: string): string =>
  name === "" ? "window that falls out" : `window of ${name}`;

/** What is wanted in a field of a cutting or a chopping job. */
export function sayCutWanted(wanted: CutWanted): string {
  switch (wanted.kind) {
    case "whole":
      return wanted.most === null ? "a whole number of 0 or more" : `a whole number from 0 to ${wanted.most}`;
    case "side":
      return "a length above 0, at most 20 m";
    case "price":
      return "a price of 0 or more";
    case "seconds":
      return "seconds from 0 to 3600";
    case "smaller-window":
      return "a window smaller than its piece, both ways";
    case "fewer-pieces":
      return `at most ${wanted.most} pieces in one job`;
    case "fewer-rails":
      return `at most ${wanted.most} rails in one job`;
    case "rails-or-frames":
      return "rails, or frames with the moulding that they are made of";
    case "kerf-or-saw":
      return "the kerf along the length, or the saw's thickness, not both";
    case "moulding":
      return "the moulding's overall width and its rabbet";
    case "narrower-rabbet":
      return "a rabbet narrower than the moulding";
    case "seen-through":
      return "a package larger than what the rabbets of two rails cover";
    default:
      return sayWanted(wanted);
  }
}
