import { createInterface } from "node:readline";
import { isStopped } from "../assembly/index.ts";
import {
  composeFrom,
  composeResult,
  compositionJson,
  type PracticeDocument,
  practiceDocument,
  problemJson,
  validate,
} from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import { sayComposition } from "../words/composition.ts";
import { parseJson, readText, Unreadable } from "./input.ts";

export interface ComposeOptions {
  readonly json?: boolean;
  readonly lines?: boolean;
  readonly practice?: string;
}

/** `margent compose`: one document, or one a line. The result is the exit status. */
export async function runCompose(file: string | undefined, options: ComposeOptions): Promise<number> {
  const practice = readPracticeFile(options.practice);
  return options.lines === true ? composeLines(practice) : composeOne(file, practice, options.json === true);
}

/** The studio's habits from a file; none where no file is named. */
export function readPracticeFile(name: string | undefined): PracticeDocument {
  if (name === undefined) return {};
  const read = validate(practiceDocument, parseJson(readText(name), name));
  if (read.ok) return read.value;
  throw new Unreadable(
    read.problems
      .map(problemJson)
      .map(({ field, found, wanted }) => CLI.problem(`${name}: ${field}`, found, wanted))
      .join("\n"),
  );
}

function composeOne(file: string | undefined, practice: PracticeDocument, json: boolean): number {
  const composed = composeFrom(parseJson(readText(file), file ?? "standard input"), practice);
  if (!composed.ok) {
    throw new Unreadable(composed.problems.map(problemJson).map(CLI.say).join("\n"));
  }
  const language = practice.language ?? "en-US";
  const text = json
    ? JSON.stringify(compositionJson(composed.value, language), null, 2)
    : sayComposition(composed.value, { ruler: composed.value.design.ruler, language }).join("\n");
  process.stdout.write(`${text}\n`);
  return isStopped(composed.value) ? 1 : 0;
}

/** Written in pieces of this size, so that a long run neither waits on every line nor holds them all. */
const PIECE = 1 << 16;

async function composeLines(practice: PracticeDocument): Promise<number> {
  let status = 0;
  let piece = "";
  let seen = false;
  for await (const line of createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
    if (line.trim() === "") continue;
    seen = true;
    const { json, stopped } = composeLine(line, practice);
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

function composeLine(line: string, practice: PracticeDocument): { json: object; stopped: boolean } {
  let document: unknown;
  try {
    document = JSON.parse(line);
  } catch (error) {
    const found = error instanceof Error ? error.message : String(error);
    return { json: { error: { field: "", found, wanted: "one JSON document" } }, stopped: true };
  }
  return composeResult(document, practice);
}

const write = (text: string): Promise<void> =>
  new Promise((done, failed) => {
    process.stdout.write(text, (error) => (error ? failed(error) : done()));
  });
