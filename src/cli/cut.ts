import { cutResult, planFor, cutProblemJson } from "../show/index.ts";
import { integerSolver } from "../solver/index.ts";
import { CLI } from "../words/cli.ts";
import { sayCuttingPlan, sayCuttingProgress } from "../words/cut-text.ts";
import { parseJson, readText, Unreadable } from "./input.ts";
import { answerLines } from "./lines.ts";
import { statusOn } from "./status.ts";

const clock = (): number => performance.now();

export interface CutOptions {
  readonly json?: boolean;
  readonly lines?: boolean;
}

/** `margent cut`: one material's job, or one a line. The result is the exit status. */
export async function runCut(file: string | undefined, options: CutOptions): Promise<number> {
  const solver = await integerSolver();
  if (options.lines === true)
    return answerLines((pen) => (document) => {
      const { json, stopped } = cutResult(document, clock, { solver });
      pen.text(JSON.stringify(json));
      return stopped;
    });
  const status = statusOn(process.stderr);
  const planned = planFor(parseJson(readText(file), file ?? "standard input"), clock, {
    solver,
    progress: (so) => status.show(sayCuttingProgress(so)),
  });
  status.show("");
  if (!planned.ok) throw new Unreadable(planned.problems.map(cutProblemJson).map(CLI.say).join("\n"));
  const { json, job, unit, plan, stopped } = planned.value;
  const text =
    options.json === true ? JSON.stringify(json(), null, 2) : sayCuttingPlan(plan, { job, unit }).join("\n");
  process.stdout.write(`${text}\n`);
  return stopped ? 1 : 0;
}
