import { readLength, type Length, type Unit, ZERO } from "../../lengths/index.ts";
import { foundText } from "../problem.ts";
import { AGREES_WITHIN, LARGEST, SMALLEST } from "./bounds.ts";
import type { Column, LengthColumn } from "./columns.ts";
import type { Size, WrittenLength } from "./dimensions/records.ts";
import { withoutInvisible } from "./header.ts";
import type { Layout, Source } from "./layout.ts";
import type { ListNote, ListNoteBody, ListProblem, ListWanted, TableRow } from "./records.ts";

/** What a cell gives: nothing written there, something that is refused (and said), or a value. */
export type Given<T> =
  | { readonly state: "blank" }
  | { readonly state: "bad" }
  | { readonly state: "given"; readonly value: T };

const BLANK = { state: "blank" } as const;
const BAD = { state: "bad" } as const;

/** Dashes are how a person writes that there is nothing to write. */
const NOTHING = /^[-\u2010-\u2015]+$/;
const DATE = /^\d{4}-\d{2}-\d{2}(?: \d{2}:\d{2})?$/;

/** Reads the cells of one row and gathers every problem and note of it. */
export class RowReader {
  readonly problems: ListProblem[] = [];
  readonly notes: ListNote[] = [];
  private readonly row: TableRow;
  private readonly layout: Layout;
  private readonly unit: Unit;

  constructor(row: TableRow, layout: Layout, unit: Unit) {
    this.row = row;
    this.layout = layout;
    this.unit = unit;
  }

  /** The cell's words, spaces and line breaks between them made one space; "" where there is none. */
  words(column: Column): string {
    return this.cell(column).replace(/\s+/g, " ").trim();
  }

  /** The cell's text with its line breaks. */
  prose(column: Column): string {
    return this.cell(column).trim();
  }

  /** The unit that the header of a column names, and whether it names one that is none. */
  headerUnit(column: Column): { readonly unit: string | null; readonly bad: boolean } {
    const source = this.layout.known.get(column)?.[0];
    return { unit: source?.unit ?? null, bad: source?.badUnit !== null && source !== undefined };
  }

  /** A size: above nought, and one that a print can have. */
  size(column: LengthColumn): Given<WrittenLength> {
    return this.length(column, SMALLEST);
  }

  /** A place from an edge, which may be nought. */
  place(column: LengthColumn): Given<WrittenLength> {
    return this.length(column, ZERO);
  }

  /** A width and a height, of which neither goes without the other. */
  pair(width: LengthColumn, height: LengthColumn): Given<Size> {
    const across = this.size(width);
    const down = this.size(height);
    if (across.state === "bad" || down.state === "bad") return BAD;
    if (across.state === "given" && down.state === "given") {
      return { state: "given", value: { width: across.value, height: down.value } };
    }
    if (across.state === "blank" && down.state === "blank") return BLANK;
    const [missing, other] = across.state === "blank" ? [width, height] : [height, width];
    this.refuse(missing, "", { kind: "both-of", other });
    return BAD;
  }

  refuse(column: Column, found: string, wanted: ListWanted): void {
    this.problems.push({
      row: this.row.row,
      column,
      found: found === "" ? foundText(undefined) : foundText(found),
      wanted,
    });
  }

  note(level: ListNote["level"], column: Column, body: ListNoteBody): void {
    this.notes.push({ level, row: this.row.row, column, ...body });
  }

  /** Refuses a length that no print has; true where it did. `found` is the cell it stands in. */
  unbelievable(column: Column, found: string, { text, length }: WrittenLength, least: Length): boolean {
    if (least > ZERO && length === ZERO) this.refuse(column, found, { kind: "size" });
    else if (length < least || length > LARGEST) {
      this.refuse(column, found, { kind: "believable", figure: text, least, most: LARGEST });
    } else return false;
    return true;
  }

  /** Columns that the format has no place for. */
  kept(): Record<string, string> {
    return Object.fromEntries(
      this.layout.kept
        .map(({ index, name }): [string, string] => [name, (this.row.cells[index] ?? "").trim()])
        .filter(([, text]) => text !== ""),
    );
  }

  private cell(column: Column): string {
    const source = this.layout.known.get(column)?.[0];
    return source === undefined ? "" : (this.row.cells[source.index] ?? "");
  }

  /** The first of the columns of this name that has something; another that says otherwise is a problem. */
  private length(column: LengthColumn, least: Length): Given<WrittenLength> {
    let first: Given<WrittenLength> = BLANK;
    for (const source of this.layout.known.get(column) ?? []) {
      const read = this.read(column, source, least);
      if (read.state === "bad") return BAD;
      if (read.state === "blank") continue;
      if (first.state === "blank") first = read;
      else if (Math.abs(read.value.length - first.value.length) > AGREES_WITHIN) {
        this.refuse(column, read.value.text, { kind: "same-twice", other: first.value.text });
        return BAD;
      }
    }
    return first;
  }

  private read(column: LengthColumn, source: Source, least: Length): Given<WrittenLength> {
    const found = this.row.cells[source.index] ?? "";
    const text = withoutInvisible(found).replace(/\s+/g, " ").trim();
    if (text === "" || NOTHING.test(text)) return BLANK;
    const refuse = (wanted: ListWanted): typeof BAD => {
      this.refuse(column, found, wanted);
      return BAD;
    };
    if (DATE.test(text)) return refuse({ kind: "length-not-date" });
    const ownUnit = /[\p{L}"'′″‘’“”]/u.test(text);
    if (!ownUnit && source.badUnit !== null) return refuse({ kind: "known-unit" });
    // With a unit in the header a comma can only be decimal; with none it may be either, and is asked about.
    const written = ownUnit || source.unit === null ? text : `${text} ${source.unit}`;
    const read = readLength(written, this.unit);
    if (!read.ok) return refuse({ kind: "length", fault: read.fault });
    const value = {
      text: ownUnit || source.unit !== null ? written : `${text} ${this.unit}`,
      length: read.length,
    };
    return this.unbelievable(column, found, value, least) ? BAD : { state: "given", value };
  }
}
