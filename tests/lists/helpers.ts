import {
  type ListOptions,
  type ListRead,
  listToWorks,
  readTable,
  type Table,
  type TableRead,
} from "../../src/show/lists/index.ts";

export const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

export const read = (text: string): Promise<TableRead> => readTable(bytesOf(text), "list.csv");

/** The table of a list that must be one. */
export async function tableOf(list: string | Uint8Array): Promise<Table> {
  const result = await readTable(typeof list === "string" ? bytesOf(list) : list, "list");
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.problem)}`);
  return result.table;
}

export const worksOf = async (
  list: string | Uint8Array,
  options: ListOptions = { unit: "in" },
): Promise<ListRead> => listToWorks(await tableOf(list), options);

const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** The one row of a list of one row, under these columns. */
export async function rowOf(
  columns: Readonly<Record<string, string>>,
  options: ListOptions = { unit: "in" },
): Promise<ListRead> {
  const lines = [Object.keys(columns), Object.values(columns)].map((cells) => cells.map(quoted).join(","));
  return worksOf(`${lines.join("\n")}\n`, options);
}

/** The problems of a list, short: `7 image width length`. */
export const problemsOf = ({ problems }: Pick<ListRead, "problems">): string[] =>
  problems.map(({ row, column, wanted }) => `${row} ${column} ${wanted.kind}`);
