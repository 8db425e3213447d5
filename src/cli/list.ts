import { writeFileSync } from "node:fs";
import { problemJson, readShow, worksToTable, writeCsv, writeXlsx } from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import { sayListProblem } from "../words/lists.ts";
import { readBytes, Unreadable } from "./input.ts";
import { sayFault } from "./packet.ts";

export interface ListOptions {
  readonly out: string;
}

/** `margent list`: a show as a list that a spreadsheet opens. What the columns cannot hold is said. The result is the exit status. */
export async function runList(showName: string, { out }: ListOptions): Promise<number> {
  const ending = /\.(csv|xlsx)$/i.exec(out)?.[1]?.toLowerCase();
  if (ending === undefined)
    throw new Unreadable(CLI.problem("--out", out, "a file name that ends in .csv or .xlsx"));
  const read = await readShow(readBytes(showName), showName, null);
  if (!read.ok) throw new Unreadable(sayFault(read.fault));
  const { show } = read;
  const table = worksToTable(
    show.works.map(({ work }) => work),
    show.unit,
  );
  const bytes =
    ending === "csv"
      ? new TextEncoder().encode(writeCsv(table.header, table.rows, { bom: true }))
      : await writeXlsx([{ name: CLI.list.sheet, header: table.header, rows: table.rows }]);
  writeFileSync(out, bytes);
  const problems = [
    ...show.listProblems.map(sayListProblem),
    ...show.documentProblems.map(({ row, problem }) =>
      CLI.say({ ...problemJson(problem), field: `row ${row}, ${problem.field}` }),
    ),
  ];
  const lost = table.lost.map(({ row, fields }) => CLI.list.lost(row, fields.join(", ")));
  for (const line of [...problems, ...lost]) process.stderr.write(`${line}\n`);
  return problems.length > 0 ? 1 : 0;
}
