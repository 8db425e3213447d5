import { integerSolver, type PlanningOrder, planOrdered } from "../solver/index.ts";

// The entry of a worker of the page: an order in, words out. What goes wrong ends as an error of the worker.
self.addEventListener("message", async ({ data }: MessageEvent<PlanningOrder>) => {
  const solver = await integerSolver();
  planOrdered(
    data,
    solver,
    () => performance.now(),
    (word) => self.postMessage(word, {}),
  );
});
