import { createHash } from "node:crypto";
import { compose } from "../assembly/index.ts";
import {
  type KeptShow,
  type KeptWork,
  type PracticeDocument,
  readDesign,
  type StockDocument,
} from "../show/index.ts";
import { heldText, soughtText } from "./sought.ts";
import type { Database, SheetTable, ShowTable, WorkTable } from "./tables.ts";

/** The show's own row, its works aside. */
export function showFields(show: KeptShow): Pick<ShowTable, "document" | "name" | "room" | "date"> {
  const { works: _, ...own } = show;
  return {
    document: JSON.stringify(own),
    name: heldText(show.name),
    room: heldText(show.room),
    date: show.date === undefined ? null : heldText(show.date),
  };
}

/** A work's row but for its place and version. */
export function workFields(
  work: KeptWork,
  practice: PracticeDocument | undefined,
): Pick<WorkTable, "document" | "title" | "maker" | "process" | "sought" | "level"> {
  const { title, maker, process } = work;
  return {
    document: JSON.stringify(work),
    title: heldText(title),
    maker: heldText(maker),
    process: heldText(process),
    sought: soughtText(title, maker, process),
    level: levelOf(work, practice),
  };
}

/** The heaviest check that stands against a work; notes do not. */
export function levelOf(work: KeptWork, practice: PracticeDocument | undefined): string | null {
  const read = readDesign(work.design, practice);
  if (!read.ok) return "unread";
  const level = compose(read.value).checks[0]?.level ?? null;
  return level === "note" ? null : level;
}

/** What lies in the rack, a row each. */
function sheetRows(show: string, stock: StockDocument | undefined): SheetTable[] {
  return (stock?.sheets ?? []).map((sheet, place) => ({
    show,
    place,
    name: heldText(sheet.name),
    board: heldText(sheet.board),
    width: heldText(String(sheet.width)),
    height: heldText(String(sheet.height)),
    copies: sheet.copies === undefined || sheet.copies === null ? null : Math.trunc(sheet.copies),
    sought: soughtText(sheet.name, sheet.board),
  }));
}

/** Rows that go into one statement: SQLite takes 32,766 values at once, PostgreSQL 65,535. */
const AT_ONCE = 1000;

export const portions = <Row>(rows: readonly Row[], size = AT_ONCE): Row[][] =>
  Array.from({ length: Math.ceil(rows.length / size) }, (_, index) =>
    rows.slice(index * size, (index + 1) * size),
  );

export async function writeSheets(db: Database, show: string, stock: StockDocument | undefined) {
  await db.deleteFrom("sheets").where("show", "=", show).execute();
  for (const rows of portions(sheetRows(show, stock))) await db.insertInto("sheets").values(rows).execute();
}

/** JSON with its keys in order, so that the same values give the same text. */
function orderedJson(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === "object" && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}

/** The fingerprint of a JSON value: SHA-256 in hexadecimal, whatever the order of its keys. */
export const fingerprint = (value: unknown): string =>
  createHash("sha256").update(orderedJson(value)).digest("hex");
