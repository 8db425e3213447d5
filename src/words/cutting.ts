import { type Length, printExact } from "../lengths/index.ts";
import type { BoundArgument, CuttingCheck, CuttingJob } from "../plans/index.ts";
import type { CutUnit, CutWanted } from "../show/read-cut.ts";
import { sayWanted } from "./problems.ts";

/** What a cutting plan is spoken about with: its job, for the names, and the unit of its figures. */
export interface CuttingSpeech {
  readonly job: CuttingJob;
  readonly unit: CutUnit;
}

/** A length with its unit; a whole number of ticks as it is. */
const length = (value: Length, unit: CutUnit): string =>
  unit === "tick" ? String(value) : printExact(value, unit);

const size = ({ width, height }: { width: Length; height: Length }, unit: CutUnit): string =>
  `${length(width, unit)} × ${length(height, unit)}`;

function pieceName({ job, unit }: CuttingSpeech, index: number): string {
  const piece = job.pieces[index];
  if (piece === undefined) return `Piece ${index + 1}`;
  return `${piece.name === "" ? `Piece ${index + 1}` : piece.name} (${size(piece, unit)})`;
}

function sheetName({ job, unit }: CuttingSpeech, index: number): string {
  const sheet = job.sheets[index];
  if (sheet === undefined) return `Sheet ${index + 1}`;
  return sheet.name === "" ? `Sheet of ${size(sheet, unit)}` : sheet.name;
}

/** A check of a cutting plan: which piece or sheet, the figure, and a way out. */
export function sayCuttingCheck(check: CuttingCheck, speech: CuttingSpeech): string {
  const { unit } = speech;
  switch (check.code) {
    case "piece-too-large":
      return check.largest === null
        ? `${pieceName(speech, check.piece)}: there is no sheet to cut it from. Add one to the stock.`
        : `${pieceName(speech, check.piece)}: no sheet is large enough; the largest gives ${size(check.largest, unit)}. Add a larger sheet, or make it smaller.`;
    case "cut-too-long":
      return `${pieceName(speech, check.piece)}: no cut of at most ${length(check.longest, unit)} frees it from a sheet. Have the sheet cut down in the shop, or use a longer bench.`;
    case "stock-short":
      return `${pieceName(speech, check.piece)}: the sheets run out; ${check.missing} of ${check.wanted} ${check.missing === 1 ? "is" : "are"} not in the plan. Add sheets to the stock.`;
    case "just-fits":
      return `${sheetName(speech, check.sheet)}: ${check.sheets === 1 ? "one sheet needs" : `${check.sheets} sheets need`} ${length(check.needs, unit)} of the ${check.direction} and ${check.sheets === 1 ? "has" : "have"} ${check.spare === 0 ? "nothing" : length(check.spare, unit)} to spare. Measure before you cut; where a sheet is short or an edge is damaged, ask for a new plan with a trim.`;
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
    case "area":
      return "the area of the pieces against the area of the sheets";
    case "values":
      return "the most that straight cuts can get out of each sheet, by area, reckoned exactly";
    case "columns":
      return "the best mix of all straight-cut layouts, sheets taken in parts (a linear programme)";
  }
}

/** What a layout is cut from, when it is the window of a piece. */
export const sayDropOutOf = (name: string): string =>
  name === "" ? "window that falls out" : `window of ${name}`;

/** What is wanted in a field of a cutting job. */
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
    default:
      return sayWanted(wanted);
  }
}
