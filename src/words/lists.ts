import { printExact, toMillimetres } from "../lengths/index.ts";
import type { DimensionsFault, Part, Size } from "../show/lists/dimensions/records.ts";
import type { Bounded, FileFault, ListNote, ListProblem, ListWanted } from "../show/lists/records.ts";
import { sayLengthFault, sayWanted } from "./problems.ts";

/** A problem of a list as one line: where, what was found, what is wanted. */
export function sayListProblem(problem: ListProblem): string {
  const where = whereOf(problem.row, problem.column);
  const found = `found ${problem.found}; wanted: ${sayListWanted(problem.wanted)}`;
  return where === "" ? found : `${where}: ${found}`;
}

const whereOf = (row: number | null, column: string | null): string =>
  [...(row === null ? [] : [`row ${row}`]), ...(column === null ? [] : [column])].join(", ");

const size = ({ height, width }: Size): string => `${height.text} high, ${width.text} wide`;
const inDirection = (direction: "width" | "height"): string => (direction === "width" ? "wide" : "high");

/** What is wanted in a cell, a row or a file, as the end of "… wanted: …". One case for every kind. */
export function sayListWanted(wanted: ListWanted): string {
  switch (wanted.kind) {
    case "list-file":
      return sayFileFault(wanted.fault);
    case "bound":
      return sayBound(wanted.what, wanted.most);
    case "title-column":
      return 'a header with a column "title"';
    case "title":
      return "a title";
    case "quantity":
      return `a whole number from 1 to ${wanted.most}`;
    case "closed-quote":
      return "a row whose quotation marks fit: one that opens a cell closes it, and one inside is written twice";
    case "cells":
      return `at most ${wanted.columns} cells, as in the header, not ${wanted.cells}: a cell that holds the separator goes in quotation marks`;
    case "one-column":
      return "one column of this name; the first that is filled is read";
    case "same-twice":
      return `the same as the other column of this name, ${wanted.other}`;
    case "length-not-date":
      return "a length; the spreadsheet has made it a date: format the cells as text and type it again";
    case "known-unit":
      return "in, ft, mm, cm or m as the unit in the header, or one in each cell";
    case "some-size":
      return "a sheet width and height, an image width and height, dimensions, or a picture";
    case "both-of":
      return `a length here too, beside ${wanted.other}`;
    case "for-place":
      return wanted.needs === "image"
        ? "an image width and height, without which a place says nothing"
        : "a sheet width and height, without which the image has no edge to lie from";
    case "believable":
      return `${wanted.least > 0 ? "a size" : "a place"} from ${printExact(wanted.least, "mm")} to ${toMillimetres(wanted.most) / 1000} m, not ${wanted.figure}: is the unit right?`;
    case "within-sheet":
      return `an image that lies on its sheet: the image is ${wanted.image} ${inDirection(wanted.direction)}, the sheet ${wanted.sheet}`;
    case "place-on-sheet":
      return `at most ${wanted.most}, so that the image ends on its sheet`;
    case "dimensions":
      return sayDimensionsFault(wanted.fault);
    default:
      return sayWanted(wanted);
  }
}

function sayFileFault(fault: FileFault): string {
  switch (fault) {
    case "empty":
      return "a list; the file is empty";
    case "not-text":
      return "a list as CSV or XLSX; this is neither";
    case "old-or-locked-workbook":
      return "a workbook as XLSX, without a password; save it as XLSX or CSV";
    case "open-document":
      return "a list as CSV or XLSX; save the workbook as one of them";
    case "pdf":
      return "a list as CSV or XLSX; this is a PDF";
    case "web-page":
      return "a list as CSV or XLSX; this is a web page or XML: open it in a spreadsheet and save it as one of them";
    case "broken-workbook":
      return "a workbook that opens; this one is damaged: open it in a spreadsheet and save it again";
    case "no-sheet":
      return "a workbook with a sheet that is not hidden";
    case "blank":
      return "a list; nothing is written in this one";
  }
}

function sayBound(what: Bounded, most: number): string {
  switch (what) {
    case "bytes":
      return `a file of at most ${most / 2 ** 20} MB`;
    case "unpackedBytes":
      return `a workbook that unpacks to at most ${most / 2 ** 20} MB`;
    case "entries":
      return `a workbook of at most ${most} parts`;
    case "rows":
      return `at most ${most} rows`;
    case "columns":
      return `at most ${most} columns`;
    case "cells":
      return `at most ${most} cells, blank ones between them counted`;
    case "cell":
      return `at most ${most} characters in a cell`;
  }
}

/** Why dimensions were not taken, as what is wanted instead. */
export function sayDimensionsFault(fault: DimensionsFault): string {
  const example = "such as image: 241 x 191 mm; sheet: 254 x 203 mm, height first";
  switch (fault.code) {
    case "not-understood":
      return `dimensions ${example}; not understood: "${fault.fragment}"`;
    case "length":
      return `${sayLengthFault(fault.fault)}, in place of ${fault.fragment}`;
    case "one-figure":
      return `a height and a width of ${ofPart(fault.part)}`;
    case "many-figures":
      return `a height, a width and at most a depth of ${ofPart(fault.part)}`;
    case "not-flat":
      return `a work on paper; this is ${fault.depth} deep`;
    case "two-sizes":
      return `one size of ${ofPart(fault.part)}, not both ${size(fault.first)} and ${size(fault.second)}; one row for each work`;
    case "unnamed-beside-sheet":
      return "each size with its name, image or sheet: one here has none";
    case "no-sheet-or-image":
      return "a size of the image or the sheet";
  }
}

function ofPart(part: Part): string {
  return part === "whole" ? "the work" : `the ${part}`;
}

/** A note on a list as a sentence, with where it belongs before it. One case for every code. */
export function sayListNote(note: ListNote): string {
  const where = whereOf(note.row, note.column);
  const sentence = noteSentence(note);
  return where === "" ? sentence : `${where}: ${sentence}`;
}

function noteSentence(note: ListNote): string {
  switch (note.code) {
    case "encoding":
      return note.encoding === "utf-16"
        ? "The list is written in UTF-16."
        : "The list is not in UTF-8 and was read as Windows-1252. Look whether the names are right; if not, save it as CSV UTF-8.";
    case "control-characters":
      return `${note.count} control characters were dropped from the list.`;
    case "header-line":
      return `The header is line ${note.line} of the list. It is counted as row 1.`;
    case "sheet-read":
      return `The sheet "${note.name}" was read, not ${note.others.map((name) => `"${name}"`).join(", ")}.`;
    case "sheet-ends-at-image":
      return "Only the image's size is given: the sheet is taken to end at the image.";
    case "image-is-sheet":
      return "Only the sheet's size is given: the image is taken to be the whole sheet.";
    case "image-centred":
      return note.direction === "both"
        ? "The image is taken as centred on its sheet. Measure where it lies before you cut."
        : `The image is taken as centred in its sheet's ${note.direction}. Measure where it lies before you cut.`;
    case "size-from-picture":
      return "No size is given: it has to come from the picture.";
    case "typed-window-wins":
      return `A window is typed: it is taken, and not "${note.show}".`;
    case "columns-win":
      return `The columns make the ${note.part} ${size(note.columns)}, the dimensions ${size(note.dimensions)}. The columns are taken. Measure before you cut.`;
    case "looks-like-date":
      return `${note.found} looks like a date: a spreadsheet makes one of 4/12. Format the cells as text if it is none.`;
    case "twice-differs":
      return `The size of ${ofPart(note.part)} is given twice and differs: ${size(note.metric)}, and ${size(note.inch)}. The first is taken. Measure before you cut.`;
    case "plate-is-image":
      return "The plate's size is taken as the image's.";
    case "part-not-used":
      return `The size of ${ofPart(note.part)}, ${size(note.size)}, is not used.`;
    case "part-not-named":
      return "It is not said whether this is the image or the sheet: it is taken as the sheet. Measure before you cut.";
    case "frame-smaller":
      return `The frame, ${size(note.frame)}, is smaller than the sheet, ${size(note.sheet)}. Measure before you cut.`;
    case "unit-taken":
      return `No unit is written: ${note.unit} is taken.`;
    case "each":
      return "These are the sizes of each of several. Give each a row, or say the quantity.";
    case "not-exact":
      return `The size is given as "${note.word}". Measure before you cut.`;
  }
}
