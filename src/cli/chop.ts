import { chopFor, chopResult, cutProblemJson } from "../show/index.ts";
import { CLI } from "../words/cli.ts";
import type { CutOptions } from "./cut.ts";
import { parseJson, readText, Unreadable } from "./input.ts";
import { answerLines } from "./lines.ts";

const clock = (): number => performance.now();

/** `margent chop`: one moulding's job, or one a line. The result is the exit status. */
export async function runChop(file: string | undefined, options: CutOptions): Promise<number> {
  if (options.lines === true)
    return answerLines((pen) => (document) => {
      const { json, stopped } = chopResult(document, clock);
      pen.text(JSON.stringify(json));
      return stopped;
    });
  const planned = chopFor(parseJson(readText(file), file ?? "standard input"), clock);
  if (!planned.ok) throw new Unreadable(planned.problems.map(cutProblemJson).map(CLI.say).join("\n"));
  const { json, text, stopped } = planned.value;
  process.stdout.write(`${options.json === true ? JSON.stringify(json(), null, 2) : text().join("\n")}\n`);
  return stopped ? 1 : 0;
}
