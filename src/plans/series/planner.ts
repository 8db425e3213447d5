import { at } from "../at.ts";
import { seriesFaults } from "./check.ts";
import { type Choice, fewestSizes, type Row } from "./choice.ts";
import { choose } from "./choose.ts";
import { requireSoundSeries, type SeriesJob } from "./job.ts";
import type { ChosenSize, Fit, Misfit, SeriesPlan, SeriesStep } from "./plan.ts";
import { serve, type Served } from "./serve.ts";

/** Prices are whole numbers of this part of the money's unit. */
const PARTS = 1e4;
/** Branches for one number of sizes, and for the fewest that serve all; real series take far fewer. */
const STEPS = 4000;
const COVER_STEPS = 200_000;

/**
 * For every number of sizes from the fewest that serve all works, the sizes that serve them at the least
 * cost, until a further size saves nothing. Solved exactly, by branch and bound; where a series is so large
 * that its branches run out, `bound` says what surely no choice goes below. The same job gives the same plan.
 * Works that no size serves are named with the border that is most in the way where it comes nearest.
 * Every plan is passed through the checker. Throws RangeError for a job that is not sound.
 */
export function planSeries(job: SeriesJob): SeriesPlan {
  requireSoundSeries(job);
  const fits = job.works.map((work) => job.sizes.map((size) => serve(work, size, job.limits)));
  const served = [...job.works.keys()].filter((work) => at(fits, work).some(({ fit }) => fit !== null));
  const unserved = [...job.works.keys()]
    .filter((work) => !served.includes(work))
    .map((work) => ({ work, why: nearest(at(fits, work)) }));
  const { choice, unit } = choiceOf(job, fits, served);
  const steps: SeriesStep[] = [];
  const cover = fewestSizes(choice, COVER_STEPS);
  let before = cover.chosen;
  let values: Float64Array | undefined;
  const ideal = choice.rows.reduce(
    (sum, { servedBy, weight }) => sum + weight * at(choice.prices, servedBy[0] ?? 0),
    0,
  );
  for (let most = cover.chosen.length; served.length > 0; most++) {
    const found = choose(choice, most, before, STEPS, values);
    const { sizes, cost, bound } = found;
    before = sizes;
    values = found.values;
    const last = steps.at(-1);
    const money = (cost * unit) / PARTS;
    steps.push({
      sizes: chosenSizes(job, fits, served, sizes),
      cost: money,
      bound: (bound * unit) / PARTS,
      proven: bound === cost,
      saving: last === undefined ? null : Math.round((last.cost - money) * PARTS) / PARTS,
    });
    if (cost === ideal) break;
  }
  const plan: SeriesPlan = { steps, fewest: cover.atLeast, unserved };
  const faults = seriesFaults(job, plan);
  if (faults.length > 0)
    throw new Error(`the planner made a series that does not hold: ${JSON.stringify(faults[0])}`);
  return plan;
}

/** The works alike in what serves them taken together, and prices in their greatest common part. */
function choiceOf(
  job: SeriesJob,
  fits: readonly (readonly Served[])[],
  served: readonly number[],
): { readonly choice: Choice; readonly unit: number } {
  const whole = job.sizes.map(({ cost }) => Math.round(cost * PARTS));
  const unit = whole.reduce(commonPart, 0) || 1;
  const prices = whole.map((price) => price / unit);
  const rows = new Map<string, { servedBy: readonly number[]; weight: number }>();
  for (const work of served) {
    const servedBy = [...job.sizes.keys()]
      .filter((size) => fits[work]?.[size]?.fit != null)
      .toSorted((a, b) => at(prices, a) - at(prices, b) || a - b);
    const key = servedBy.join(" ");
    const { weight } = rows.get(key) ?? { weight: 0 };
    rows.set(key, { servedBy, weight: weight + at(job.works, work).count });
  }
  return { choice: { prices, rows: [...rows.values()] satisfies Row[] }, unit };
}

const commonPart = (a: number, b: number): number => (b === 0 ? a : commonPart(b, a % b));

/** Each work in the cheapest of the sizes; of equally cheap ones in that which leaves it the larger least border. */
function chosenSizes(
  job: SeriesJob,
  fits: readonly (readonly Served[])[],
  served: readonly number[],
  sizes: readonly number[],
): readonly ChosenSize[] {
  const works = new Map(sizes.map((size): [number, { work: number; fit: Fit }[]] => [size, []]));
  for (const work of served) {
    const ways = sizes.flatMap((size) => {
      const one = fits[work]?.[size];
      return one === undefined || one.fit === null ? [] : [{ size, fit: one.fit, least: one.least }];
    });
    const best = ways.reduce((a, b) => {
      const dearer = at(job.sizes, b.size).cost - at(job.sizes, a.size).cost;
      return dearer < 0 || (dearer === 0 && b.least > a.least) ? b : a;
    });
    works.get(best.size)?.push({ work, fit: best.fit });
  }
  return [...works]
    .map(([size, own]) => ({ size, works: own }))
    .toSorted((a, b) => at(job.sizes, a.size).cost - at(job.sizes, b.size).cost || a.size - b.size);
}

function nearest(ways: readonly Served[]): Misfit | null {
  let best: { readonly why: Misfit; readonly by: number } | null = null;
  for (const [size, one] of ways.entries()) {
    if (one.fit === null && (best === null || one.by < best.by))
      best = { why: { size, ...one.fault }, by: one.by };
  }
  return best?.why ?? null;
}
