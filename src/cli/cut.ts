import { parentPort, Worker, workerData } from "node:worker_threads";
import { cutProblemJson, cutResult, type PlanAids, planFor } from "../show/index.ts";
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
  const order: Order = { document: documentIn(file), json: options.json === true, stop: null };
  const status = statusOn(process.stderr);
  const answer = process.stderr.isTTY
    ? await answeredApart(order, status.show)
    : answered(order, { solver: await integerSolver() });
  status.show("");
  if ("problems" in answer) throw unreadable(answer.problems);
  process.stdout.write(`${answer.text}\n`);
  return answer.stopped ? 1 : 0;
}

interface Order {
  readonly document: unknown;
  readonly json: boolean;
  /** Set to 1 it ends the work; null: it cannot be ended. */
  readonly stop: Int32Array<SharedArrayBuffer> | null;
}

type Answer =
  | { readonly problems: readonly ReturnType<typeof cutProblemJson>[] }
  | { readonly text: string; readonly stopped: boolean };

function answered({ document, json: asJson }: Order, aids: PlanAids): Answer {
  const planned = planFor(document, clock, aids);
  if (!planned.ok) return { problems: planned.problems.map(cutProblemJson) };
  const { json, job, unit, plan, stopped } = planned.value;
  const text = asJson ? JSON.stringify(json(), null, 2) : sayCuttingPlan(plan, { job, unit }).join("\n");
  return { text, stopped };
}

/**
 * The answer made in a thread of its own, which leaves this one free to hear the interrupt from the
 * keyboard: the first ends the work and keeps the best plan so far, the second ends the program.
 */
function answeredApart(order: Order, show: (text: string) => void): Promise<Answer> {
  const stop = new Int32Array(new SharedArrayBuffer(4));
  process.once("SIGINT", () => void Atomics.store(stop, 0, 1));
  const code = `import(${JSON.stringify(import.meta.url)}).then((part) => part.answerApart())`;
  const worker = new Worker(code, { eval: true, workerData: { ...order, stop } });
  return new Promise((done, failed) => {
    worker.on("error", failed);
    worker.on("message", (word: string | Answer) => {
      if (typeof word === "string") show(word);
      else done(word);
    });
  });
}

/** What the thread does that `answeredApart` has made. */
export async function answerApart(): Promise<void> {
  const order: Order = workerData;
  const { stop } = order;
  const answer = answered(order, {
    solver: await integerSolver(),
    stop: () => stop !== null && Atomics.load(stop, 0) !== 0,
    progress: (so) => parentPort?.postMessage(sayCuttingProgress(so), []),
  });
  parentPort?.postMessage(answer, []);
}
