import { foundText } from "../problem.ts";
import { BOUNDS } from "./bounds.ts";
import { decode } from "./decode.ts";
import { recordsOf, separatorOf, SEPARATORS } from "./delimited.ts";
import { columnsNamed, findHeader } from "./header.ts";
import type { FileFault, ListNote, ListWanted, TableRead } from "./records.ts";
import { isBlank, RecordRefused, type RawRecord, tableOf, withoutControl } from "./rows.ts";

/**
 * Reads a list as texts. CSV may be parted by comma, semicolon or tab, in UTF-8, UTF-16 or Windows-1252, with
 * or without a byte-order mark; of a workbook (XLSX) the first visible worksheet with a column of titles is
 * read, else the first that holds anything. Nothing throws: a file that is no list is one problem, a row that
 * cannot be taken apart is among the table's problems. `name` is the file's name and only said: the bytes
 * decide what the file is.
 */
export async function readTable(bytes: Uint8Array, name: string): Promise<TableRead> {
  const refuse = (wanted: ListWanted): TableRead => ({
    ok: false,
    problem: { row: null, column: null, found: foundText(name), wanted },
  });
  if (bytes.length > BOUNDS.bytes) return refuse({ kind: "bound", what: "bytes", most: BOUNDS.bytes });
  const decoded = decode(bytes);
  if (decoded.kind === "fault") return refuse({ kind: "list-file", fault: decoded.fault });
  const read = decoded.kind === "text" ? fromText(decoded.text) : await fromWorkbook(bytes);
  if ("wanted" in read) return refuse(read.wanted);
  if (decoded.kind === "text" && decoded.encoding !== "utf-8") {
    read.notes.unshift({
      level: level(decoded.encoding),
      row: null,
      column: null,
      code: "encoding",
      encoding: decoded.encoding,
    });
  }
  const table = tableOf(read);
  return table instanceof RecordRefused ? refuse(table.wanted) : { ok: true, table };
}

/** A file without a mark of its encoding was guessed, and someone should look at the names. */
const level = (encoding: "utf-16" | "windows-1252"): "warn" | "note" =>
  encoding === "utf-16" ? "note" : "warn";

interface Read {
  readonly records: Iterable<RawRecord>;
  readonly from: "text" | "workbook";
  readonly notes: ListNote[];
}

function fromText(decoded: string): Read {
  const { text, dropped } = withoutControl(decoded.replace(/^\ufeff/, "").replace(/\r\n?/g, "\n"));
  const notes: ListNote[] =
    dropped === 0
      ? []
      : [{ level: "warn", row: null, column: null, code: "control-characters", count: dropped }];
  // Some spreadsheet programs write the separator into a first line of their own; it is no row.
  const said = /^sep=(.)\n/i.exec(text);
  const body = said === null ? text : text.slice(said[0].length);
  const separator = SEPARATORS.find((each) => each === said?.[1]) ?? separatorOf(body, columnsNamed);
  return { records: recordsOf(body, separator), from: "text", notes };
}

async function fromWorkbook(bytes: Uint8Array): Promise<Read | { wanted: ListWanted }> {
  // Only who opens a workbook loads what reads one.
  const { readWorkbook } = await import("./workbook.ts");
  const workbook = await readWorkbook(bytes);
  if (!workbook.ok) {
    return "fault" in workbook
      ? notAList(workbook.fault)
      : { wanted: { kind: "bound", what: workbook.bound, most: BOUNDS[workbook.bound] } };
  }
  if (workbook.sheets.length === 0) return notAList("no-sheet");
  const filled = workbook.sheets.filter(({ rows }) => rows.some((row) => !isBlank(row)));
  const sheet = filled.find(({ rows }) => findHeader(rows).titled) ?? filled[0];
  if (sheet === undefined) return notAList("blank");
  const others = filled.filter((each) => each !== sheet).map((each) => each.name);
  const notes: ListNote[] =
    others.length === 0
      ? []
      : [{ level: "note", row: null, column: null, code: "sheet-read", name: sheet.name, others }];
  return { records: sheet.rows.map((cells) => ({ cells, broken: false })), from: "workbook", notes };
}

const notAList = (fault: FileFault): { wanted: ListWanted } => ({ wanted: { kind: "list-file", fault } });
