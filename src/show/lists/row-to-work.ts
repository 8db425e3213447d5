import type { Unit } from "../../lengths/index.ts";
import type { ComposeDocument, WorkDocument } from "../schema.ts";
import { TEXT_COLUMNS, type TextColumn } from "./columns.ts";
import { recordOfColumns } from "./record-columns.ts";
import { readPrint } from "./row-print.ts";
import type { RowReader } from "./row-reader.ts";
import { readSizes, textsOf } from "./row-sizes.ts";

type Window = NonNullable<ComposeDocument["window"]>;

/** What a list takes for granted. */
export interface ListOptions {
  /** Of a figure that has none of its own and none in its header. */
  readonly unit: Unit;
  /** The finest mark of the ruler, `1/16 in`; the practice's where absent. */
  readonly graduation?: string;
}

/** One row as a work. Every fault goes to the reader; what is returned is of use only where there is none. */
export function rowToWork(reader: RowReader, options: ListOptions): WorkDocument {
  const texts: Partial<Record<TextColumn, string>> = {};
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
  const places = { left: reader.place("image left"), top: reader.place("image top") };
  const print =
    sizes === null ? null : readPrint(reader, sizes, places, texts.picture !== undefined, options.unit);
  const window = readWindow(reader);
  const frame = reader.words("frame");
  const outer = reader.pair("outer width", "outer height");
  const more = reader.kept();
  const record = recordOfColumns(more);
  return {
    title,
    ...rest,
    ...(quantity === null ? {} : { quantity }),
    ...(frame === "" ? {} : { frame: frame.toLowerCase() === UNFRAMED ? null : frame }),
    ...(Object.keys(more).length === 0 ? {} : { more }),
    ...(record === null ? {} : { record }),
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

/** In the column of frames: the work has none, nor glazing and backing. */
export const UNFRAMED = "none";

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
