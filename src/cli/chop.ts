import { chopFor, chopResult, cutProblemJson } from "../show/index.ts";
import { documentIn, unreadable } from "./input.ts";
import { type AnswerOptions, answerJsonLines } from "./lines.ts";

const clock = (): number => performance.now();

/** `margent chop`: one moulding's job, or one a line. The result is the exit status. */
export async function runChop(file: string | undefined, options: AnswerOptions): Promise<number> {
  if (options.lines === true) return answerJsonLines((document) => chopResult(document, clock));
  const planned = chopFor(documentIn(file), clock);
  if (!planned.ok) throw unreadable(planned.problems.map(cutProblemJson));
  const { json, text, stopped } = planned.value;
  process.stdout.write(`${options.json === true ? JSON.stringify(json(), null, 2) : text().join("\n")}\n`);
  return stopped ? 1 : 0;
}
