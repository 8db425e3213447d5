import type { Unit } from "../../lengths/index.ts";
import type { WorkDocument } from "../schema.ts";
import { recordOfColumns } from "./record-columns.ts";
import { type Column, COLUMNS, TEXT_COLUMNS } from "./columns.ts";
import { UNFRAMED } from "./row-to-work.ts";

/** A table of texts, ready to be written. */
export interface TableOut {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** What the columns of a list cannot say of a work: the paths in its document. Nothing is dropped unsaid. */
  readonly lost: readonly { readonly row: number; readonly fields: readonly string[] }[];
}

/**
 * Works back into the columns of a list: those that any work fills, the title always, then the columns that
 * were kept. Each length is written with its unit; `unit` is that of a bare one whose work names none. A list
 * that was read and is written and read again gives the same works.
 */
export function worksToTable(works: readonly WorkDocument[], unit: Unit): TableOut {
  const cells = works.map((work) => cellsOf(work, unit));
  const columns = COLUMNS.filter(
    (column) => column === "title" || cells.some((row) => row[column] !== undefined),
  );
  const kept = [...new Set(works.flatMap(({ more = {} }) => Object.keys(more)))];
  return {
    header: [...columns, ...kept],
    rows: works.map(({ more = {} }, index) => [
      ...columns.map((column) => cells[index]?.[column] ?? ""),
      ...kept.map((name) => (Object.hasOwn(more, name) ? (more[name] ?? "") : "")),
    ]),
    lost: works.flatMap((work, index) => {
      const fields = lostFields(work);
      return fields.length === 0 ? [] : [{ row: index + 2, fields }];
    }),
  };
}

type Cells = Partial<Record<Column, string>>;
type LengthText = string | number | undefined;

function cellsOf(work: WorkDocument, otherwise: Unit): Cells {
  const { print, window, outer, unit = otherwise } = work.design;
  const typed = window?.show === "typed" ? window : undefined;
  const sized = outer !== undefined && "width" in outer ? outer : undefined;
  const lengths: Partial<Record<Column, LengthText>> = {
    "sheet width": print?.width,
    "sheet height": print?.height,
    "image left": print?.image?.left,
    "image top": print?.image?.top,
    "image width": print?.image?.width,
    "image height": print?.image?.height,
    "window width": typed?.width,
    "window height": typed?.height,
    "outer width": sized?.width,
    "outer height": sized?.height,
  };
  const texts: Partial<Record<Column, string | undefined>> = {
    ...Object.fromEntries(TEXT_COLUMNS.map((column) => [column, work[column]])),
    ...Object.fromEntries(Object.entries(lengths).map(([column, text]) => [column, withUnit(text, unit)])),
    show: window === undefined || window.show === "typed" ? undefined : window.show,
    angle: print?.angle === undefined ? undefined : String(print.angle),
    frame: frameText(work.frame) ?? undefined,
    quantity: work.quantity === undefined ? undefined : String(work.quantity),
  };
  const cells: Cells = {};
  for (const column of COLUMNS) {
    const text = texts[column];
    if (text !== undefined && text !== "") cells[column] = text;
  }
  return cells;
}

/** A length as a text that needs no one to say its unit. */
function withUnit(text: LengthText, unit: Unit): string | undefined {
  if (text === undefined) return undefined;
  const written = String(text).trim();
  return /[\p{L}"'′″‘’“”]/u.test(written) ? written : `${written} ${unit}`;
}

/** A kind of frame by its name; null where a list cannot say it. */
function frameText(frame: WorkDocument["frame"]): string | null {
  if (frame === null) return UNFRAMED;
  const kind = typeof frame === "string" ? frame : frame?.kind;
  return kind === undefined || kind.trim().toLowerCase() === UNFRAMED ? null : kind;
}

const PRINT_KEPT = new Set(["width", "height", "image", "angle"]);
const DESIGN_KEPT = new Set(["unit", "graduation", "print", "window", "outer"]);

const fieldsOf = (path: string, value: object, kept: ReadonlySet<string>): string[] =>
  Object.entries(value).flatMap(([key, part]) =>
    part === undefined || kept.has(key) ? [] : [`${path}.${key}`],
  );

/** What of a work's frame its kind's name does not say. */
function lostOfFrame(frame: WorkDocument["frame"]): string[] {
  if (frame === undefined || frame === null) return [];
  if (frameText(frame) === null) return ["frame"];
  return typeof frame === "string" ? [] : fieldsOf("frame", frame, new Set(["kind"]));
}

/** Parts of a work that no column says. */
const NO_COLUMN = ["id", "light", "wall", "with", "hang", "framed"] as const;

function lostFields(work: WorkDocument): string[] {
  const { frame, record = {}, more = {}, design } = work;
  const { print = {}, window, outer } = design;
  return [
    ...NO_COLUMN.filter((field) => work[field] !== undefined),
    ...lostOfFrame(frame),
    ...fieldsOf("record", record, new Set(Object.keys(recordOfColumns(more) ?? {}))),
    ...fieldsOf("design", design, DESIGN_KEPT),
    ...fieldsOf("design.print", print, PRINT_KEPT),
    ...(window === undefined || window.show === "typed"
      ? []
      : fieldsOf("design.window", window, new Set(["show"]))),
    ...(outer === undefined || "width" in outer ? [] : fieldsOf("design.outer", outer, new Set())),
  ];
}
