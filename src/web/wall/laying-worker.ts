import { planWall, type WallJob } from "../../plans/index.ts";

// The entry of a worker of the page: a wall in, its plan out. What goes wrong ends as an error of the worker.
self.addEventListener(
  "message",
  ({ data }: MessageEvent<{ readonly job: WallJob; readonly seed: number }>) => {
    self.postMessage(planWall(data.job, data.seed), {});
  },
);
