import { createInterface } from "node:readline";
import { foundText } from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import { sayWanted } from "../words/index.ts";
import { Unreadable } from "./input.ts";

/** What one document comes to, and whether it is bad or cannot be made as asked. */
export interface Answer {
  readonly json: object;
  readonly stopped: boolean;
}

/** Written in pieces of this size, so that a long run neither waits on every line nor holds them all. */
const PIECE = 1 << 16;

/** One JSON document a line on standard input, one result a line on standard output, in order. The result is the exit status. */
export async function answerLines(answer: (document: unknown) => Answer): Promise<number> {
  let status = 0;
  let piece = "";
  let seen = false;
  for await (const line of createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
    if (line.trim() === "") continue;
    seen = true;
    const { json, stopped } = answerLine(line, answer);
    if (stopped) status = 1;
    piece += `${JSON.stringify(json)}\n`;
    if (piece.length < PIECE) continue;
    await write(piece);
    piece = "";
  }
  await write(piece);
  if (!seen) throw new Unreadable(CLI.noInput);
  return status;
}

function answerLine(line: string, answer: (document: unknown) => Answer): Answer {
  let document: unknown;
  try {
    document = JSON.parse(line);
  } catch (error) {
    const found = foundText(error instanceof Error ? error.message : String(error));
    return { json: { error: { field: "", found, wanted: sayWanted({ kind: "json" }) } }, stopped: true };
  }
  return answer(document);
}

const write = (text: string): Promise<void> =>
  new Promise((done, failed) => {
    process.stdout.write(text, (error) => (error ? failed(error) : done()));
  });
