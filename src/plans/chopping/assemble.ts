import type { Length } from "../../lengths/index.ts";
import { at } from "../at.ts";
import { placeInFrame } from "./frames.ts";
import type { ChoppingJob } from "./job.ts";
import type { PlacedRail, Stick } from "./plan.ts";
import type { Pattern, WholeChopping } from "./whole.ts";

/** One rail of a job. */
interface One {
  readonly rail: number;
  readonly copy: number;
}

/** The rails of one frame that are in the plan's kinds. */
export interface FrameGroup {
  readonly key: string;
  readonly rails: readonly One[];
  /** How many of each kind it has. */
  readonly kinds: ReadonlyMap<number, number>;
  readonly weight: number;
}

/** All frames of a job whose rails all fit some length, the heaviest first. */
export function frameGroups(job: ChoppingJob, whole: WholeChopping): FrameGroup[] {
  const kindOf = kindsOfRails(whole);
  const spoilt = new Set<string>();
  const groups = new Map<string, One[]>();
  job.rails.forEach((wanted, rail) => {
    for (let copy = 0; copy < wanted.count; copy++) {
      const key = frameKey(job, { rail, copy });
      if (key === null) continue;
      if (!kindOf.has(rail)) spoilt.add(key);
      const group = groups.get(key) ?? [];
      group.push({ rail, copy });
      groups.set(key, group);
    }
  });
  return [...groups]
    .filter(([key]) => !spoilt.has(key))
    .map(([key, rails]) => {
      const kinds = new Map<number, number>();
      for (const { rail } of rails) {
        const kind = kindOf.get(rail) ?? -1;
        kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
      }
      let weight = 0;
      for (const [kind, count] of kinds) weight += at(whole.kinds, kind).weight * count;
      return { key, rails, kinds, weight };
    })
    .toSorted((a, b) => b.weight - a.weight);
}

const kindsOfRails = (whole: WholeChopping): ReadonlyMap<number, number> =>
  new Map(whole.kinds.flatMap(({ rails }, kind) => rails.map((rail) => [rail, kind] as const)));

/** Names the frame that a rail belongs to; null: none. */
export function frameKey(job: ChoppingJob, { rail, copy }: One): string | null {
  const place = placeInFrame(at(job.rails, rail), copy);
  return place === null ? null : `${place.kind} ${place.number}`;
}

/** Bars with the frames that have all their rails on one of them. */
export interface Shared {
  readonly bars: readonly Pattern[];
  readonly barOf: ReadonlyMap<FrameGroup, number>;
}

/** Frames that happen to find all their rails on one bar, the heaviest first. */
export function framesOnBars(groups: readonly FrameGroup[], bars: readonly Pattern[]): Shared {
  const loose = looseOn({ bars, barOf: new Map() });
  const barOf = new Map<FrameGroup, number>();
  for (const group of groups) {
    const bar = loose.findIndex((slots) => holds(slots, group.kinds));
    if (bar < 0) continue;
    barOf.set(group, bar);
    takeFrom(at(loose, bar), group.kinds);
  }
  return { bars, barOf };
}

/** What lies on each bar besides whole frames: how many of each kind. */
export function looseOn({ bars, barOf }: Shared): Map<number, number>[] {
  const loose = bars.map(
    ({ kinds, counts }) => new Map(kinds.map((kind, index) => [kind, at(counts, index)] as const)),
  );
  for (const [{ kinds }, bar] of barOf) takeFrom(at(loose, bar), kinds);
  return loose;
}

/** Whether so many of each kind are there. */
export function holds(loose: ReadonlyMap<number, number>, kinds: ReadonlyMap<number, number>): boolean {
  for (const [kind, count] of kinds) if ((loose.get(kind) ?? 0) < count) return false;
  return true;
}

export function takeFrom(loose: Map<number, number>, kinds: ReadonlyMap<number, number>): void {
  for (const [kind, count] of kinds) {
    const left = (loose.get(kind) ?? 0) - count;
    if (left === 0) loose.delete(kind);
    else loose.set(kind, left);
  }
}

/** The sticks of a plan: which rail of which frame is chopped where. */
export function assembleSticks(job: ChoppingJob, whole: WholeChopping, shared: Shared): Stick[] {
  const { bars, barOf } = shared;
  const rails: One[][] = bars.map(() => []);
  const loose = looseOn(shared);
  const given = new Set<string>();
  for (const [group, bar] of barOf) {
    for (const one of group.rails) {
      at(rails, bar).push(one);
      given.add(`${one.rail} ${one.copy}`);
    }
  }
  const where = whole.kinds.map((): { bar: number; count: number }[] => []);
  loose.forEach((slots, bar) => {
    for (const [kind, count] of slots) at(where, kind).push({ bar, count });
  });
  whole.kinds.forEach((kind, index) => {
    const open = kind.rails
      .flatMap((rail) => Array.from({ length: at(job.rails, rail).count }, (_, copy) => ({ rail, copy })))
      .filter(({ rail, copy }) => !given.has(`${rail} ${copy}`));
    let next = 0;
    for (const { bar, count } of at(where, index)) {
      at(rails, bar).push(...open.slice(next, next + count));
      next += count;
    }
  });
  return bars
    .map(({ stock }, bar) => stickOf(job, stock, at(rails, bar)))
    .toSorted((a, b) => a.length - b.length || a.left - b.left);
}

function stickOf(job: ChoppingJob, length: number, rails: readonly One[]): Stick {
  let along = job.waste as number;
  const placed: PlacedRail[] = ordered(job, rails).map((one) => {
    const place = { ...one, at: along as Length };
    along += at(job.rails, one.rail).length + job.kerf;
    return place;
  });
  const used = (along - job.kerf + job.waste) as Length;
  return { length, rails: placed, used, left: (at(job.lengths, length).length - used) as Length };
}

const SIDES = ["head", "right", "foot", "left"];

/** Rails of one frame follow one another, round the frame; the frame with the longest rail first. */
function ordered(job: ChoppingJob, rails: readonly One[]): One[] {
  const groups = new Map<string, One[]>();
  for (const one of rails) {
    const key = frameKey(job, one) ?? `loose ${one.rail} ${one.copy}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  const lengthOf = ({ rail }: One): number => at(job.rails, rail).length;
  const sideOf = ({ rail, copy }: One): number =>
    SIDES.indexOf(placeInFrame(at(job.rails, rail), copy)?.side ?? "head");
  const inFrame = [...groups.values()].map((group) =>
    group.toSorted(
      (a, b) => sideOf(a) - sideOf(b) || lengthOf(b) - lengthOf(a) || a.rail - b.rail || a.copy - b.copy,
    ),
  );
  const longest = (group: readonly One[]): number => Math.max(...group.map(lengthOf));
  return inFrame.toSorted((a, b) => longest(b) - longest(a) || b.length - a.length).flat();
}
