import { foundText } from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import { sayWanted } from "../words/index.ts";
import { Unreadable } from "./input.ts";

/** What one document comes to, as JSON text, and whether it is bad or cannot be made as asked. */
export interface Answer {
  readonly text: string;
  readonly stopped: boolean;
}

/** Written in pieces of this size, so that a long run neither waits on every line nor holds them all. */
const PIECE = 1 << 16;

/** One JSON document a line on standard input, one result a line on standard output, in order. The result is the exit status. */
export async function answerLines(answer: (document: unknown) => Answer): Promise<number> {
  let status = 0;
  let piece = "";
  let seen = false;
  for await (const lines of linesOf(process.stdin.setEncoding("utf8"))) {
    for (const line of lines) {
      if (line.trim() === "") continue;
      seen = true;
      const { text, stopped } = answerLine(line, answer);
      if (stopped) status = 1;
      piece += `${text}\n`;
      if (piece.length < PIECE) continue;
      await write(piece);
      piece = "";
    }
  }
  await write(piece);
  if (!seen) throw new Unreadable(CLI.noInput);
  return status;
}

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

function answerLine(line: string, answer: (document: unknown) => Answer): Answer {
  let document: unknown;
  try {
    document = JSON.parse(line);
  } catch (error) {
    const found = foundText(error instanceof Error ? error.message : String(error));
    const problem = { field: "", found, wanted: sayWanted({ kind: "json" }) };
    return { text: JSON.stringify({ error: problem }), stopped: true };
  }
  return answer(document);
}

const write = (text: string): Promise<void> =>
  new Promise((done, failed) => {
    process.stdout.write(text, (error) => (error ? failed(error) : done()));
  });
