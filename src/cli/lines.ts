import { Pen } from "../lengths/index.ts";
import { foundText } from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import { sayWanted } from "../words/index.ts";
import { Unreadable } from "./input.ts";

/** How a command answers: as text, as one JSON document, or a line for a line. */
export interface AnswerOptions {
  readonly json?: boolean;
  readonly lines?: boolean;
}

/** Writes what one document comes to as JSON text. The result is whether it is bad or cannot be made as asked. */
export type Answer = (document: unknown) => boolean;

/** Bytes that are written at once, so that a long run neither waits on every line nor holds them all. */
const PIECE = 1 << 18;

/** One JSON document a line on standard input, one result a line on standard output, in order. The result is the exit status. */
export async function answerLines(answerWith: (pen: Pen) => Answer): Promise<number> {
  const pen = new Pen(2 * PIECE);
  const answer = answerWith(pen);
  let status = 0;
  let seen = false;
  for await (const lines of linesOf(process.stdin.setEncoding("utf8"))) {
    for (const line of lines) {
      if (line.trim() === "") continue;
      seen = true;
      if (answerLine(pen, line, answer)) status = 1;
      pen.text("\n");
      if (pen.length >= PIECE) await writeOut(pen);
    }
  }
  await writeOut(pen);
  if (!seen) throw new Unreadable(CLI.noInput);
  return status;
}

/** The same for answers that are made as JSON; "stopped" is whether one is bad or cannot be made as asked. */
export const answerJsonLines = (
  result: (document: unknown) => { readonly json: object; readonly stopped: boolean },
): Promise<number> =>
  answerLines((pen) => (document) => {
    const { json, stopped } = result(document);
    pen.text(JSON.stringify(json));
    return stopped;
  });

/** The lines of a text as they come in, those of one chunk together; the last one needs no end. */
async function* linesOf(chunks: AsyncIterable<string>): AsyncGenerator<readonly string[]> {
  let begun = "";
  for await (const chunk of chunks) {
    const lines = (begun + chunk).split("\n");
    begun = lines.pop() ?? "";
    yield lines;
  }
  yield [begun];
}

function answerLine(pen: Pen, line: string, answer: Answer): boolean {
  let document: unknown;
  try {
    document = JSON.parse(line);
  } catch (error) {
    const found = foundText(error instanceof Error ? error.message : String(error));
    const problem = { field: "", found, wanted: sayWanted({ kind: "json" }) };
    pen.text(JSON.stringify({ error: problem }));
    return true;
  }
  return answer(document);
}

/** Sends what has been written on its way, and begins anew once it has left. */
async function writeOut(pen: Pen): Promise<void> {
  await new Promise<void>((done, failed) => {
    process.stdout.write(pen.written(), (error) => (error ? failed(error) : done()));
  });
  pen.clear();
}
