import { cutResult, planFor, cutProblemJson } from "../show/index.ts";
import { integerSolver } from "../solver/index.ts";
import { sayCuttingPlan, sayCuttingProgress } from "../words/cut-text.ts";
import { documentIn, unreadable } from "./input.ts";
import { type AnswerOptions, answerJsonLines } from "./lines.ts";
import { statusOn } from "./status.ts";

const clock = (): number => performance.now();

/** `margent cut`: one material's job, or one a line. The result is the exit status. */
export async function runCut(file: string | undefined, options: AnswerOptions): Promise<number> {
  if (options.lines === true) {
    const solver = await integerSolver();
    return answerJsonLines((document) => cutResult(document, clock, { solver }));
  }
  const document = documentIn(file);
  const status = statusOn(process.stderr);
  const planned = planFor(document, clock, {
    solver: await integerSolver(),
    progress: (so) => status.show(sayCuttingProgress(so)),
  });
  status.show("");
  if (!planned.ok) throw unreadable(planned.problems.map(cutProblemJson));
  const { json, job, unit, plan, stopped } = planned.value;
  const text =
    options.json === true ? JSON.stringify(json(), null, 2) : sayCuttingPlan(plan, { job, unit }).join("\n");
  process.stdout.write(`${text}\n`);
  return stopped ? 1 : 0;
}
