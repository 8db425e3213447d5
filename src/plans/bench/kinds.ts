import type { Length } from "../../lengths/index.ts";
import { at } from "../at.ts";
import { type BenchJob, inTurn, waitsOf } from "./job.ts";

/**
 * The batch with all alike taken together: mats with the same figures that wait for mats of the same
 * kinds can be cut at the very same moments, so one stands for all.
 */
export interface Kinds {
  /** Every figure of the batch, from the narrowest on; below they are named by their place here. */
  readonly figures: readonly Length[];
  /** For each kind its figures. */
  readonly own: readonly (readonly number[])[];
  /** For each kind the kinds it waits for, all of them earlier in this list. */
  readonly after: readonly (readonly number[])[];
  /** For each kind the kinds that wait for it. */
  readonly next: readonly (readonly number[])[];
  /** For each figure the kinds that have it. */
  readonly having: readonly (readonly number[])[];
  /** For each mat its kind. */
  readonly ofMat: readonly number[];
  /** For each mat the mats it waits for. */
  readonly waits: readonly (readonly number[])[];
}

export function kindsOf(job: BenchJob): Kinds {
  const figures = [...new Set(job.mats.flatMap(({ settings }) => settings))].toSorted((a, b) => a - b);
  const placeOf = new Map(figures.map((figure, place) => [figure, place]));
  const waits = waitsOf(job);
  const found = new Map<string, number>();
  const own: number[][] = [];
  const after: number[][] = [];
  const ofMat = job.mats.map(() => 0);
  for (const mat of inTurn(waits)) {
    const { settings } = at(job.mats, mat);
    const places = settings.map((figure) => placeOf.get(figure) ?? 0).toSorted((a, b) => a - b);
    const kindsBefore = [...new Set(at(waits, mat).map((other) => at(ofMat, other)))].toSorted(
      (a, b) => a - b,
    );
    const key = `${places.join(" ")}/${kindsBefore.join(" ")}`;
    const kind = found.get(key) ?? own.length;
    if (kind === own.length) {
      found.set(key, kind);
      own.push(places);
      after.push(kindsBefore);
    }
    ofMat[mat] = kind;
  }
  const next = own.map((): number[] => []);
  after.forEach((others, kind) => {
    for (const other of others) next[other]?.push(kind);
  });
  const having = figures.map((): number[] => []);
  own.forEach((places, kind) => {
    for (const place of places) having[place]?.push(kind);
  });
  return { figures, own, after, next, having, ofMat, waits };
}
