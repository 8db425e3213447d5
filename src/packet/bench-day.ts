import type { Stop } from "../assembly/index.ts";
import type { Length } from "../lengths/index.ts";
import { type BenchPlan, planBench } from "../plans/index.ts";
import type { Blank, Blanks } from "./blanks.ts";
import type { ComposedWork } from "./works.ts";

/** One mat of the day: a blank with the settings that its window is cut at. */
export interface MatOfDay {
  readonly blank: Blank;
  readonly mat: number;
  readonly stops: readonly Stop[];
  /** Places of the mats of its own copy of the work, itself included. */
  readonly copy: readonly number[];
}

/** The batch of a day in its order. The plan names the mats by their place in `mats`. */
export interface BenchDay {
  readonly mats: readonly MatOfDay[];
  readonly plan: BenchPlan;
  /** For each blank those that come out of its window, whatever they are for. */
  readonly hosted: ReadonlyMap<number, readonly Blank[]>;
  /** How often the stop is set when each work is cut by itself, in the order of the list. */
  readonly oneByOne: number;
}

/** Every mat that has a blank, in the order that moves the stop least. */
export function benchDay(works: readonly ComposedWork[], blanks: Blanks): BenchDay {
  const found = blanks.all.flatMap((blank) =>
    blank.use.mat === null ? [] : [{ blank, mat: blank.use.mat, work: blank.use.work }],
  );
  const placeOf = new Map(found.map(({ blank }, place) => [blank.number, place]));
  const mats = found.map(({ blank, mat, work }): MatOfDay => {
    const ofWork = blanks.ofWork[work]?.mats ?? [];
    const number = ofWork[mat]?.indexOf(blank.number) ?? -1;
    return {
      blank,
      mat,
      stops: blank.work.composition.stops.filter((stop) => stop.mat === mat),
      copy: ofWork.flatMap((numbers) => placeOf.get(numbers[number] ?? -1) ?? []),
    };
  });
  const plan = planBench({
    mats: mats.map((own) => {
      const host = own.blank.host === null ? undefined : placeOf.get(own.blank.host);
      const above = own.copy.filter((place) => (mats[place]?.mat ?? -1) > own.mat);
      return {
        settings: own.stops.map(({ scale }) => scale),
        after: [...above, ...(host === undefined ? [] : (mats[host]?.copy ?? []))],
        dries: false,
      };
    }),
  });
  const hosted = new Map<number, Blank[]>();
  for (const blank of blanks.all) {
    if (blank.host === null) continue;
    hosted.set(blank.host, [...(hosted.get(blank.host) ?? []), blank]);
  }
  return { mats, plan, hosted, oneByOne: setOneByOne(works) };
}

/** The stop's moves when the works are cut one after another, alike ones together. */
function setOneByOne(works: readonly ComposedWork[]): number {
  let moves = 0;
  let standsAt: Length | null = null;
  for (const { composition, stopped, ready } of works) {
    if (stopped || ready) continue;
    for (const { scale } of composition.stops) {
      if (scale !== standsAt) moves += 1;
      standsAt = scale;
    }
  }
  return moves;
}
