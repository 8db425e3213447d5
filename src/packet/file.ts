import { writeCsv } from "../show/index.ts";

/** One file of a packet. */
export interface PacketFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** The files of a packet by name, all of them together: for a short one. */
export async function filesByName(
  files: AsyncIterable<PacketFile>,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const all = new Map<string, Uint8Array>();
  for await (const { name, bytes } of files) all.set(name, bytes);
  return all;
}

/** A table as a list has it: a header and rows of texts. */
export interface TableOut {
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export const textFile = (name: string, text: string): PacketFile => ({
  name,
  bytes: new TextEncoder().encode(text),
});

/** For spreadsheets: with a byte-order mark, or some of them would garble every name that is not plain English. */
export const csvFile = (name: string, { header, rows }: TableOut): PacketFile =>
  textFile(name, writeCsv(header, rows, { bom: true }));
