import type { Unit } from "../../lengths/index.ts";
import { SMALLEST } from "./bounds.ts";
import type { Column } from "./columns.ts";
import { agree, readDimensions, type Size, unitWord } from "./dimensions/index.ts";
import type { Given, RowReader } from "./row-reader.ts";

/** The sheet and the image of a row, and which column each came from. */
export interface Sizes {
  readonly sheet: Size | null;
  readonly image: Size | null;
  readonly sheetFrom: "columns" | "dimensions";
  readonly imageFrom: "columns" | "dimensions";
}

/** The column to name when something is said of a size: its own, or `dimensions`. */
export const columnOf = (from: "columns" | "dimensions", column: Column): Column =>
  from === "columns" ? column : "dimensions";

/** A size as a document holds it: the texts. */
export const textsOf = ({ width, height }: Size): { width: string; height: string } => ({
  width: width.text,
  height: height.text,
});

/** Sheet and image from their columns, else from `dimensions`; null where one of them was refused. */
export function readSizes(reader: RowReader, unit: Unit): Sizes | null {
  const sheet = reader.pair("sheet width", "sheet height");
  const image = reader.pair("image width", "image height");
  const written = readWrittenDimensions(reader, unit);
  if (sheet.state === "bad" || image.state === "bad" || written.state === "bad") return null;
  const own = written.state === "given" ? written.value : { sheet: null, image: null };
  const chosen = (part: "sheet" | "image", given: Given<Size>): Size | null => {
    if (given.state !== "given") return own[part];
    const other = own[part];
    if (other !== null && !agree(given.value, other)) {
      reader.note("warn", "dimensions", {
        code: "columns-win",
        part,
        columns: given.value,
        dimensions: other,
      });
    }
    return given.value;
  };
  return {
    sheet: chosen("sheet", sheet),
    image: chosen("image", image),
    sheetFrom: sheet.state === "given" ? "columns" : "dimensions",
    imageFrom: image.state === "given" ? "columns" : "dimensions",
  };
}

function readWrittenDimensions(
  reader: RowReader,
  unit: Unit,
): Given<{ readonly sheet: Size | null; readonly image: Size | null }> {
  const text = reader.prose("dimensions");
  if (text === "") return { state: "blank" };
  const header = reader.headerUnit("dimensions");
  const read = readDimensions(text, (header.unit === null ? null : unitWord(header.unit)) ?? unit);
  if (!read.ok) {
    reader.refuse("dimensions", text, { kind: "dimensions", fault: read.fault });
    return { state: "bad" };
  }
  let bad = false;
  for (const size of [read.sheet, read.image]) {
    if (size === null) continue;
    for (const length of [size.width, size.height])
      bad = reader.unbelievable("dimensions", text, length, SMALLEST) || bad;
  }
  for (const { level, note } of read.notes) {
    if (note.code !== "unit-taken") reader.note(level, "dimensions", note);
    else if (header.bad) {
      reader.refuse("dimensions", text, { kind: "known-unit" });
      bad = true;
    } else if (header.unit === null) reader.note(level, "dimensions", note);
  }
  return bad ? { state: "bad" } : { state: "given", value: { sheet: read.sheet, image: read.image } };
}
