import type { Length } from "../../lengths/index.ts";
import type { Wanted } from "../problem.ts";
import type { Column } from "./columns.ts";
import type { DimensionsFault, Part, Size } from "./dimensions/records.ts";

/** A list as it was read: texts only, each row with the number that it has under its header. */
export interface Table {
  readonly header: readonly string[];
  readonly rows: readonly TableRow[];
  readonly notes: readonly ListNote[];
  /** Rows that could not be told apart into cells; they are not among `rows`. */
  readonly problems: readonly ListProblem[];
}

export interface TableRow {
  /** The record's number: the header is 1, a blank line counts, a line break inside a cell does not. */
  readonly row: number;
  readonly cells: readonly string[];
}

export type TableRead =
  | { readonly ok: true; readonly table: Table }
  | { readonly ok: false; readonly problem: ListProblem };

/** Something in a list that could not be taken, as a record; `words` says it. */
export interface ListProblem {
  /** Null: the file as a whole. */
  readonly row: number | null;
  /** The column's name, or its header where it is none that is known. Null: the row as a whole. */
  readonly column: string | null;
  /** The cell as it stands there, cut short; "nothing" where it is blank. */
  readonly found: string;
  readonly wanted: ListWanted;
}

/** What a file is that is no list. */
export type FileFault =
  | "empty"
  | "not-text"
  | "old-or-locked-workbook"
  | "open-document"
  | "pdf"
  | "web-page"
  | "broken-workbook"
  | "no-sheet"
  | "blank";

/** What has a bound. */
export type Bounded = "bytes" | "unpackedBytes" | "entries" | "rows" | "columns" | "cells" | "cell";

export type ListWanted =
  | Wanted
  | { readonly kind: "list-file"; readonly fault: FileFault }
  | { readonly kind: "bound"; readonly what: Bounded; readonly most: number }
  /** The list has no column of titles. */
  | { readonly kind: "title-column" }
  | { readonly kind: "title" }
  /** A whole number from 1 on. */
  | { readonly kind: "quantity"; readonly most: number }
  /** A quotation mark opens a cell and does not close it. */
  | { readonly kind: "closed-quote" }
  /** The row has more cells than the header. */
  | { readonly kind: "cells"; readonly cells: number; readonly columns: number }
  /** A column of this name stands there already. */
  | { readonly kind: "one-column" }
  /** Two columns of one name do not say the same. */
  | { readonly kind: "same-twice"; readonly other: string }
  /** A spreadsheet program has made a date of what was typed. */
  | { readonly kind: "length-not-date" }
  | { readonly kind: "known-unit" }
  /** A size of the sheet or the image, in whichever columns. */
  | { readonly kind: "some-size" }
  /** The other half of a pair is given, this one is not. */
  | { readonly kind: "both-of"; readonly other: Column }
  /** A place of the image is given without the size or the sheet that it needs. */
  | { readonly kind: "for-place"; readonly needs: "image" | "sheet" }
  /** A size, or a place where `least` is nought, that no print has: `figure` is it. */
  | { readonly kind: "believable"; readonly figure: string; readonly least: Length; readonly most: Length }
  /** The image is larger than its sheet. */
  | {
      readonly kind: "within-sheet";
      readonly direction: "width" | "height";
      readonly image: string;
      readonly sheet: string;
    }
  /** The image begins so far in that it passes the sheet's other edge. */
  | { readonly kind: "place-on-sheet"; readonly direction: "width" | "height"; readonly most: string }
  | { readonly kind: "dimensions"; readonly fault: DimensionsFault };

/** "warn": someone should look before cutting. "note": how something was taken. */
export type ListNote = {
  readonly level: "warn" | "note";
  /** Null: the list as a whole. */
  readonly row: number | null;
  readonly column: string | null;
} & ListNoteBody;

export type Encoding = "utf-16" | "windows-1252";

export type ListNoteBody =
  | { readonly code: "encoding"; readonly encoding: Encoding }
  /** Characters that no cell can hold were dropped. */
  | { readonly code: "control-characters"; readonly count: number }
  /** The header is the `line`-th row of the file; rows are counted from it. */
  | { readonly code: "header-line"; readonly line: number }
  | { readonly code: "sheet-read"; readonly name: string; readonly others: readonly string[] }
  /** Only the image's size is known. */
  | { readonly code: "sheet-ends-at-image" }
  /** Only the sheet's size is known. */
  | { readonly code: "image-is-sheet" }
  | { readonly code: "image-centred"; readonly direction: "both" | "width" | "height" }
  | { readonly code: "size-from-picture" }
  /** `show` names a window and a window is typed beside it; the typed one is taken. */
  | { readonly code: "typed-window-wins"; readonly show: string }
  /** The columns are taken, not `dimensions`, which says otherwise. */
  | {
      readonly code: "columns-win";
      readonly part: "sheet" | "image";
      readonly columns: Size;
      readonly dimensions: Size;
    }
  | { readonly code: "looks-like-date"; readonly found: string }
  | DimensionsNote;

export type DimensionsNote =
  /** The size stands there twice and does not agree with itself; the metric one is taken. */
  | { readonly code: "twice-differs"; readonly part: Part; readonly metric: Size; readonly inch: Size }
  | { readonly code: "plate-is-image" }
  | { readonly code: "part-not-used"; readonly part: Part; readonly size: Size }
  /** It is not said of what this is the size. */
  | { readonly code: "part-not-named" }
  /** The frame that is given would not take the sheet. */
  | { readonly code: "frame-smaller"; readonly frame: Size; readonly sheet: Size }
  /** No unit is written; the list's own is taken. */
  | { readonly code: "unit-taken"; readonly unit: string }
  /** Several things of this one size. */
  | { readonly code: "each" }
  | { readonly code: "not-exact"; readonly word: string };
