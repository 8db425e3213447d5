import { parentPort } from "node:worker_threads";
import { integerSolver } from "./highs.ts";
import { type PlanningOrder, planOrdered } from "./planning.ts";

// The entry of a worker of Node: an order in, words out. What goes wrong ends the worker, which tells its owner.
parentPort?.on("message", async (order: PlanningOrder) => {
  const solver = await integerSolver();
  planOrdered(
    order,
    solver,
    () => performance.now(),
    (word) => parentPort?.postMessage(word, []),
  );
});
