import { half, type Length, printExact, subtract, type Unit, ZERO } from "../../lengths/index.ts";
import type { ComposeDocument, WorkDocument } from "../schema.ts";
import { SMALLEST } from "./bounds.ts";
import { type Column, TEXT_COLUMNS } from "./columns.ts";
import { agree, readDimensions, type Size, unitWord } from "./dimensions/index.ts";
import type { Given, RowReader } from "./row-reader.ts";

type Print = NonNullable<ComposeDocument["print"]>;
type Window = NonNullable<ComposeDocument["window"]>;

/** What a list takes for granted. */
export interface ListOptions {
  /** Of a figure that has none of its own and none in its header. */
  readonly unit: Unit;
  /** The finest mark of the ruler, `1/16 in`; the practice's where absent. */
  readonly graduation?: string;
}

/** The sheet and the image of a row, and which column each came from. */
interface Sizes {
  readonly sheet: Size | null;
  readonly image: Size | null;
  readonly sheetFrom: "columns" | "dimensions";
  readonly imageFrom: "columns" | "dimensions";
}

/** One row as a work. Every fault goes to the reader; what is returned is of use only where there is none. */
export function rowToWork(reader: RowReader, options: ListOptions): WorkDocument {
  const texts: Partial<Record<(typeof TEXT_COLUMNS)[number], string>> = {};
  for (const column of TEXT_COLUMNS) {
    const text = column === "notes" ? reader.prose(column) : reader.words(column);
    if (text !== "") texts[column] = text;
  }
  const { title = "", ...rest } = texts;
  if (title === "") reader.refuse("title", "", { kind: "title" });
  if (rest.edition !== undefined && /^\d{4}-\d{2}-\d{2}$/.test(rest.edition)) {
    reader.note("warn", "edition", { code: "looks-like-date", found: rest.edition });
  }
  const quantity = readQuantity(reader);
  const angle = readAngle(reader);
  const sizes = readSizes(reader, options.unit);
  const print = sizes === null ? null : readPrint(reader, sizes, texts.picture !== undefined, options.unit);
  const window = readWindow(reader);
  const outer = reader.pair("outer width", "outer height");
  const more = reader.kept();
  return {
    title,
    ...rest,
    ...(quantity === null ? {} : { quantity }),
    ...(Object.keys(more).length === 0 ? {} : { more }),
    design: {
      unit: options.unit,
      ...(options.graduation === undefined ? {} : { graduation: options.graduation }),
      ...(print === null && angle === null
        ? {}
        : { print: { ...print, ...(angle === null ? {} : { angle }) } }),
      ...(window === null ? {} : { window }),
      ...(outer.state === "given" ? { outer: textsOf(outer.value) } : {}),
    },
  };
}

const textsOf = ({ width, height }: Size): { width: string; height: string } => ({
  width: width.text,
  height: height.text,
});

/** A whole number from 1 to 1000. */
function readQuantity(reader: RowReader): number | null {
  const text = reader.words("quantity");
  if (text === "") return null;
  const quantity = /^\d{1,9}(?:[.,]0+)?$/.test(text) ? Number.parseInt(text, 10) : 0;
  if (quantity >= 1 && quantity <= 1000) return quantity;
  reader.refuse("quantity", text, { kind: "quantity", most: 1000 });
  return null;
}

/** Degrees clockwise, as the design itself takes them: above -45, at most 45. */
function readAngle(reader: RowReader): number | null {
  const text = reader.words("angle");
  if (text === "") return null;
  const plain = text.replace(/[\u2212\u2013]/g, "-").replace(/ ?(?:°|º|deg\.?|degrees?)$/i, "");
  const angle = /^[+-]?(?:\d{1,3}(?:[.,]\d{1,12})?|[.,]\d{1,12})$/.test(plain)
    ? Number(plain.replace(",", "."))
    : Number.NaN;
  // Plus nought, never minus nought.
  if (angle > -45 && angle <= 45) return angle + 0;
  reader.refuse("angle", text, { kind: "number", above: -45, to: 45, what: "degrees" });
  return null;
}

/** The window: typed, or one of the three that `show` names; null leaves it to the practice. */
function readWindow(reader: RowReader): Window | null {
  const typed = reader.pair("window width", "window height");
  const written = reader.words("show");
  const show = written.toLowerCase();
  if (show !== "" && show !== "overlap" && show !== "margins" && show !== "sheet") {
    reader.refuse("show", written, { kind: "one-of", options: ["overlap", "margins", "sheet"] });
    return null;
  }
  if (typed.state === "given") {
    if (show !== "") reader.note("warn", "show", { code: "typed-window-wins", show });
    return { show: "typed", ...textsOf(typed.value) };
  }
  return show === "" ? null : { show };
}

/** Sheet and image from their columns, else from `dimensions`; null where one of them was refused. */
function readSizes(reader: RowReader, unit: Unit): Sizes | null {
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

/** The print on its sheet; null where only a picture says how large it is. */
function readPrint(reader: RowReader, sizes: Sizes, picture: boolean, unit: Unit): Print | null {
  const left = reader.place("image left");
  const top = reader.place("image top");
  const { sheet, image } = sizes;
  const placed = [
    left.state === "given" ? ("image left" as const) : null,
    top.state === "given" ? ("image top" as const) : null,
  ];
  if (image === null) {
    for (const column of placed) {
      if (column !== null) reader.refuse(column, reader.words(column), { kind: "for-place", needs: "image" });
    }
    if (sheet !== null) {
      reader.note("note", columnOf(sizes.sheetFrom, "sheet width"), { code: "image-is-sheet" });
      return textsOf(sheet);
    }
    if (!picture) reader.refuse("sheet width", "", { kind: "some-size" });
    else reader.note("note", "picture", { code: "size-from-picture" });
    return null;
  }
  if (sheet === null) {
    for (const [column, place] of [["image left", left] as const, ["image top", top] as const]) {
      if (place.state !== "given" || place.value.length === ZERO) continue;
      reader.refuse(column, place.value.text, { kind: "for-place", needs: "sheet" });
    }
    reader.note("note", columnOf(sizes.imageFrom, "image width"), { code: "sheet-ends-at-image" });
    const none = `0 ${unit}`;
    return { ...textsOf(image), image: { left: none, top: none, ...textsOf(image) } };
  }
  const across = placeOn(reader, "width", sizes, left, unit);
  const down = placeOn(reader, "height", sizes, top, unit);
  if (across === null || down === null) return null;
  if (across.centred || down.centred) {
    const direction = across.centred && down.centred ? "both" : across.centred ? "width" : "height";
    reader.note("note", columnOf(sizes.imageFrom, "image left"), {
      code: "image-centred",
      direction,
    });
  }
  return { ...textsOf(sheet), image: { left: across.text, top: down.text, ...textsOf(image) } };
}

const columnOf = (from: "columns" | "dimensions", column: Column): Column =>
  from === "columns" ? column : "dimensions";

/** Where the image begins in one direction: as written, or in the middle of the sheet; null where it does not fit. */
function placeOn(
  reader: RowReader,
  direction: "width" | "height",
  { sheet, image, imageFrom }: Sizes,
  place: ReturnType<RowReader["place"]>,
  unit: Unit,
): { readonly text: string; readonly centred: boolean } | null {
  const paper = sheet?.[direction];
  const printed = image?.[direction];
  if (paper === undefined || printed === undefined) return null;
  const room: Length = subtract(paper.length, printed.length);
  const column = columnOf(imageFrom, direction === "width" ? "image width" : "image height");
  if (room < ZERO) {
    reader.refuse(column, reader.words(column), {
      kind: "within-sheet",
      direction,
      image: printed.text,
      sheet: paper.text,
    });
    return null;
  }
  if (place.state === "bad") return null;
  if (place.state === "given") {
    if (place.value.length <= room) return { text: place.value.text, centred: false };
    const at = direction === "width" ? "image left" : "image top";
    reader.refuse(at, place.value.text, { kind: "place-on-sheet", direction, most: printExact(room, unit) });
    return null;
  }
  return { text: printExact(half(room, "down"), unit), centred: room > ZERO };
}
