import type { Size } from "../../geometry/index.ts";
import {
  add,
  type Length,
  larger,
  subtract,
  sum,
  TICKS_PER_METRE,
  times,
  ZERO,
} from "../../lengths/index.ts";
import { CRATE_MATTER, type PackingHabits, type PackingJob, type Travelling } from "./job.ts";

/** A size with its depth. */
export interface Room extends Size {
  readonly depth: Length;
}

/** One work in a crate: place of its kind in the job, and which of its copies, from 0. */
export interface Packed {
  readonly work: number;
  readonly copy: number;
}

/** A crate with its works in the order in which they stand, the largest first; they stand upright, head up, face to back. */
export interface Crate {
  readonly works: readonly Packed[];
  readonly inner: Room;
  readonly outer: Room;
  /** Kilograms of the works, and of all of it; rounded nowhere. */
  readonly load: number;
  readonly mass: number;
}

export interface PackingPlan {
  readonly crates: readonly Crate[];
  /** No packing by these habits takes fewer crates. */
  readonly bound: number;
  /** Works that are alone deeper or heavier than a crate may hold: each has a crate of its own all the same. */
  readonly beyond: readonly number[];
}

const volume = ({ width, height, depth }: Room): number =>
  (width / TICKS_PER_METRE) * (height / TICKS_PER_METRE) * (depth / TICKS_PER_METRE);

const grown = ({ width, height, depth }: Room, by: Length): Room => ({
  width: add(width, times(by, 2)),
  height: add(height, times(by, 2)),
  depth: add(depth, times(by, 2)),
});

/** From front to back what works take that stand one behind the other. */
const depthOf = (depths: readonly Length[], between: Length): Length =>
  add(sum(depths), times(between, Math.max(0, depths.length - 1)));

/** The crate round some works: as large as the largest each way, foam all round, walls about that. */
function crateOf(job: PackingJob, works: readonly Packed[]): Crate {
  const { foam, between, wall } = job.habits;
  const own = works.map(({ work }) => travelling(job, work));
  const held: Room = {
    width: own.reduce((most, { width }) => larger(most, width), ZERO),
    height: own.reduce((most, { height }) => larger(most, height), ZERO),
    depth: depthOf(
      own.map(({ depth }) => depth),
      between,
    ),
  };
  const inner = grown(held, foam);
  const outer = grown(inner, wall);
  const load = own.reduce((all, { mass }) => all + mass, 0);
  const box = (volume(outer) - volume(inner)) * CRATE_MATTER.wall;
  return { works, inner, outer, load, mass: load + box + (volume(inner) - volume(held)) * CRATE_MATTER.foam };
}

function travelling(job: PackingJob, work: number): Travelling {
  const own = job.works[work];
  if (own === undefined) throw new RangeError(`no work ${work}`);
  return own;
}

/** Whether works may travel in one crate: neither too deep nor too heavy. */
const fits = ({ mass, inner }: Crate, { foam, mostDepth, mostMass }: PackingHabits): boolean =>
  subtract(inner.depth, times(foam, 2)) <= mostDepth && mass <= mostMass;

/**
 * Packs works into crates: the largest first, each into the first crate that takes it. A work that no crate takes
 * has one of its own, and is named.
 */
export function packCrates(job: PackingJob): PackingPlan {
  const all = job.works.flatMap(({ count }, work) =>
    Array.from({ length: count }, (_, copy): Packed => ({ work, copy })),
  );
  const area = ({ work }: Packed): number => {
    const { width, height } = travelling(job, work);
    return width * height;
  };
  const sorted = all.toSorted((a, b) => area(b) - area(a) || a.work - b.work || a.copy - b.copy);
  const crates: Crate[] = [];
  const beyond = new Set<number>();
  for (const one of sorted) {
    const at = crates.findIndex((crate) => fits(crateOf(job, [...crate.works, one]), job.habits));
    const into = crates[at];
    if (into !== undefined) {
      crates[at] = crateOf(job, [...into.works, one]);
      continue;
    }
    const alone = crateOf(job, [one]);
    if (!fits(alone, job.habits)) beyond.add(one.work);
    crates.push(alone);
  }
  return { crates, bound: fewest(job, beyond), beyond: [...beyond].toSorted((a, b) => a - b) };
}

/** Those beyond a crate's limits one each; the others by depth, and by weight without any crate: no packing can do with less. */
function fewest(
  { works, habits: { between, mostDepth, mostMass } }: PackingJob,
  beyond: ReadonlySet<number>,
): number {
  const alone = works.reduce((all, { count }, index) => (beyond.has(index) ? all + count : all), 0);
  const others = works.filter((_, index) => !beyond.has(index));
  const depth = others.reduce((all, work) => all + (work.depth + between) * work.count, 0);
  const mass = others.reduce((all, work) => all + work.mass * work.count, 0);
  return alone + Math.max(Math.ceil(depth / (mostDepth + between) - 1e-9), Math.ceil(mass / mostMass - 1e-9));
}
