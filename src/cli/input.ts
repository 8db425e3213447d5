import { readFileSync } from "node:fs";
import { type ProblemJson, problemJson, validate } from "../show/index.ts";
import { CLI } from "../words/cli.ts";

const UNREADABLE = "Unreadable";

/** Ends the command with status 2: nothing could be read. */
export class Unreadable extends Error {
  override readonly name = UNREADABLE;
}

/** Each command is a bundle with a class of its own, so the name says it. */
export const isUnreadable = (error: unknown): error is Unreadable =>
  error instanceof Error && error.name === UNREADABLE;

/** Every problem of a document on a line of its own, as what ends the command. */
export const unreadable = (problems: readonly ProblemJson[]): Unreadable =>
  new Unreadable(problems.map(CLI.say).join("\n"));

/** A file's bytes, or a sentence about why there are none. */
export function readBytes(name: string): Uint8Array {
  try {
    return readFileSync(name);
  } catch (error) {
    throw new Unreadable(CLI.cannotRead(name, reasonOf(error)), { cause: error });
  }
}

/** A text file, or standard input where no name is given. */
function readText(name: string | undefined): string {
  if (name !== undefined) return new TextDecoder().decode(readBytes(name));
  if (process.stdin.isTTY) throw new Unreadable(CLI.noInput);
  return readFileSync(0, "utf8");
}

/** The document of a command: a file, or standard input where no name is given. */
export const documentIn = (name: string | undefined): unknown =>
  parseJson(readText(name), name ?? "standard input");

/** One JSON value; what stands there instead is said, with where it stops making sense. */
function parseJson(text: string, name: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    throw new Unreadable(
      CLI.problem(name, text.trim() === "" ? "nothing" : reasonOf(error), "one JSON document"),
      { cause: error },
    );
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file",
  EACCES: "permission is refused",
  EISDIR: "it is a folder",
};

function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const code = "code" in error ? String(error.code) : "";
  return REASONS[code] ?? error.message;
}

/** A document from a file, checked against its schema; what cannot be taken is said with the file's name before its field. */
export function readDocument<T extends Parameters<typeof validate>[0]>(schema: T, name: string) {
  const read = validate(schema, parseJson(readText(name), name));
  if (read.ok) return read.value;
  throw new Unreadable(
    read.problems
      .map(problemJson)
      .map((problem) => CLI.say({ ...problem, field: `${name}: ${problem.field}` }))
      .join("\n"),
  );
}
