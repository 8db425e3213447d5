import * as z from "zod/mini";
import type { Unit } from "../lengths/index.ts";
import { type ListProblem, listToWorks, readTable } from "./lists/index.ts";
import { foundText, type Problem } from "./problem.ts";
import { rowOf, type RowWork, type ShowRead, showReadOf } from "./show-read.ts";
import { SHOW_VERSION, showDocument, type WorkDocument, workDocument } from "./schema.ts";
import { validate } from "./validate.ts";

/** Nothing could be read: one reason, either of a document or of a list. */
export type ShowFault =
  | { readonly kind: "document"; readonly problems: readonly Problem[] }
  | { readonly kind: "list"; readonly problem: ListProblem };

export type ShowResult =
  | { readonly ok: true; readonly show: ShowRead }
  | { readonly ok: false; readonly fault: ShowFault };

/**
 * Reads a show from a file's bytes: a document (JSON) or a list (CSV, XLSX), told apart by what they
 * hold. Works that cannot be read are left out and told by row; the others go on. `unit` is what a
 * bare number in a list means where neither its column nor its cell says, and what its works are
 * measured in; null: what the list itself mostly says, inches where it says nothing.
 */
export async function readShow(bytes: Uint8Array, fileName: string, unit: Unit | null): Promise<ShowResult> {
  return startsAsDocument(bytes)
    ? fromDocument(new TextDecoder().decode(bytes), fileName)
    : fromList(bytes, fileName, unit);
}

/** Whether the first sign that is no space or byte-order mark opens an object. */
function startsAsDocument(bytes: Uint8Array): boolean {
  const first = bytes.find((byte) => byte > 0x20 && byte !== 0xef && byte !== 0xbb && byte !== 0xbf);
  return first === "{".charCodeAt(0);
}

const outline = z.extend(showDocument, { works: z.array(z.unknown()).check(z.maxLength(100_000)) });

const refuse = (problem: Problem): ShowResult => ({
  ok: false,
  fault: { kind: "document", problems: [problem] },
});

function fromDocument(text: string, fileName: string): ShowResult {
  let json: unknown;
  try {
    json = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    return refuse({
      field: fileName,
      found: foundText(error instanceof Error ? error.message : String(error)),
      wanted: { kind: "json" },
    });
  }
  const whole = validate(outline, json);
  if (!whole.ok) return { ok: false, fault: { kind: "document", problems: whole.problems } };
  const { version, works } = whole.value;
  if (!(Number.isInteger(version) && version >= 1 && version <= SHOW_VERSION)) {
    return refuse({
      field: "version",
      found: String(version),
      wanted: { kind: "version", reads: SHOW_VERSION },
    });
  }
  const read: RowWork[] = [];
  const documentProblems: { row: number; problem: Problem }[] = [];
  for (const [index, given] of works.entries()) {
    const row = rowOf(index);
    const work = validate(workDocument, given);
    if (work.ok) read.push({ row, work: work.value });
    else documentProblems.push(...work.problems.map((problem) => ({ row, problem })));
  }
  const show = showReadOf({ ...whole.value, works: [] });
  return { ok: true, show: { ...show, works: read, documentProblems } };
}

async function fromList(bytes: Uint8Array, fileName: string, told: Unit | null): Promise<ShowResult> {
  const table = await readTable(bytes, fileName);
  if (!table.ok) return { ok: false, fault: { kind: "list", problem: table.problem } };
  const inInches = listToWorks(table.table, { unit: "in" });
  const unit = told ?? mostly(inInches.works.map(({ work }) => work));
  const list = unit === "in" ? inInches : listToWorks(table.table, { unit });
  return {
    ok: true,
    show: {
      name: fileName.replace(/^.*[/\\]/, "").replace(/\.[a-z]+$/i, ""),
      room: "",
      date: null,
      light: null,
      frames: [],
      walls: [],
      unit,
      practice: null,
      stock: null,
      cut: [],
      works: list.works.map(({ row, work }) => ({ row, work })),
      documentProblems: [],
      listProblems: list.problems,
      notes: [...list.notes, ...list.works.flatMap(({ notes }) => notes)],
      unknownColumns: list.unknownColumns,
    },
  };
}

/** The unit that most sheets of a list are written in; inches where neither leads. */
function mostly(works: readonly WorkDocument[]): Unit {
  const metric = works.filter(({ design }) => /[cm]m$/.test(String(design.print?.width ?? ""))).length;
  return 2 * metric > works.length ? "mm" : "in";
}
