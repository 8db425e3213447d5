import { type RailMeasures, railLongPoint, railShortPoint, type Size } from "../../geometry/index.ts";
import { fromReal, type Length } from "../../lengths/index.ts";
import type { ChoppingJob, RailSide, RailWanted } from "./job.ts";

/** A frame that is wanted, `count` times: the size of the package that goes into it. */
export interface FrameToMake extends Size {
  readonly name: string;
  readonly count: number;
}

/**
 * The rails of frames: for each frame first the two along its width (head and foot), then the two
 * along its height (right and left), opposite rails equal. Long point = package + allowance + 2 ×
 * (overall - rabbet) (Fine Woodworking no. 275, 2019), short point = long point - 2 × overall.
 */
export const railsOfFrames = (
  frames: readonly FrameToMake[],
  moulding: RailMeasures,
): Pick<ChoppingJob, "rails" | "frames"> => ({
  rails: frames.flatMap(({ name, width, height, count }, kind) =>
    (
      [
        [width, ["head", "foot"]],
        [height, ["right", "left"]],
      ] as const
    ).map(([side, sides]) => ({
      name,
      length: railLongPoint(side, moulding),
      shortPoint: railShortPoint(side, moulding),
      count: 2 * count,
      frame: { kind, each: 2, sides },
    })),
  ),
  frames: frames.map(({ name }) => name),
});

/** What a saw of this thickness takes along the length, cutting at 45 degrees: thickness × √2, up to the next tick. */
export const mitreKerf = (saw: Length): Length => fromReal(saw * Math.SQRT2, "up");

/** Which frame a copy of a rail belongs to, and along which of its sides it lies; null: no frame. */
export interface PlaceInFrame {
  /** Its place in the job's `frames`. */
  readonly kind: number;
  /** Which of the frames of that kind, from 0. */
  readonly number: number;
  readonly side: RailSide | null;
}

export function placeInFrame({ frame }: RailWanted, copy: number): PlaceInFrame | null {
  if (frame === null) return null;
  const { kind, each, sides } = frame;
  return { kind, number: Math.floor(copy / each), side: sides[copy % each] ?? null };
}

/** One setting of the saw's stop. */
export interface SawStop {
  /** From long point to long point. */
  readonly longPoint: Length;
  /** null: not known, or not the same for all rails of this length. */
  readonly shortPoint: Length | null;
  /** The job's rails that are chopped at it. */
  readonly rails: readonly number[];
  /** How many rails in all. */
  readonly count: number;
}

/** The settings of the saw's stop, from the longest to the shortest. */
export function sawStops({ rails }: Pick<ChoppingJob, "rails">): SawStop[] {
  const stops = new Map<Length, SawStop>();
  rails.forEach(({ length, shortPoint, count }, rail) => {
    if (count === 0) return;
    const stop = stops.get(length);
    stops.set(length, {
      longPoint: length,
      shortPoint: stop === undefined || stop.shortPoint === shortPoint ? shortPoint : null,
      rails: [...(stop?.rails ?? []), rail],
      count: (stop?.count ?? 0) + count,
    });
  });
  return [...stops.values()].toSorted((a, b) => b.longPoint - a.longPoint);
}
