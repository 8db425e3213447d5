export { seriesFaults, type SeriesFault } from "./check.ts";
export {
  DEAREST,
  MOST_SIZES,
  MOST_WORKS,
  type SeriesJob,
  type SeriesLimits,
  type SeriesSize,
  type SeriesWork,
} from "./job.ts";
export type { ChosenSize, Fit, Misfit, SeriesPlan, SeriesStep } from "./plan.ts";
export { planSeries } from "./planner.ts";
