import { at } from "../at.ts";
import type { Chance } from "../chance.ts";
import { type FrameGroup, framesOnBars, holds, looseOn, type Shared, takeFrom } from "./assemble.ts";
import type { Pattern, WholeChopping } from "./whole.ts";

/** Groups of lengths in a row without gain after which it ends: so many, and so many for each frame. */
const QUIET = 400;
const QUIET_EACH = 4;

/** One length as it is filled. */
interface Bar {
  readonly stock: number;
  readonly frames: readonly FrameGroup[];
  /** How many of each kind lie on it besides. */
  readonly loose: ReadonlyMap<number, number>;
}

/** What is put on a length as one: a whole frame, or a single rail. */
interface Lot {
  readonly frame: FrameGroup | null;
  readonly kinds: ReadonlyMap<number, number>;
  readonly weight: number;
}

/**
 * The same lengths with as many frames as can be found whole on one: those that hold the rails of a
 * parted frame are emptied, with one or two others, and filled again, frames as one lot each; what
 * parts no more frames than before is kept. Price and number of lengths stay.
 */
export function framesTogether(
  whole: WholeChopping,
  groups: readonly FrameGroup[],
  bars: readonly Pattern[],
  chance: Chance,
  timeIsUp: () => boolean,
): Shared {
  const start = framesOnBars(groups, bars);
  const loose = looseOn(start);
  const now = bars.map(({ stock }, index): Bar => {
    const frames = [...start.barOf].filter(([, bar]) => bar === index).map(([frame]) => frame);
    return { stock, frames, loose: at(loose, index) };
  });
  let parted = groups.filter((group) => !start.barOf.has(group));
  const quiet = QUIET + QUIET_EACH * groups.length;
  for (let turn = 0, last = 0; turn - last < quiet && parted.length > 0 && now.length > 1; turn++) {
    if (timeIsUp()) break;
    const picked = groupAround(at(parted, chance.below(parted.length)), now, chance);
    const own = picked.map((index) => at(now, index));
    const filled = sharedOut(whole, own, lotsOf(whole, own, parted, chance), chance);
    if (filled === null) continue;
    const before = own.flatMap(({ frames }) => frames);
    const after = new Set(filled.flatMap(({ frames }) => frames));
    if (after.size < before.length) continue;
    if (after.size > before.length) last = turn;
    picked.forEach((index, place) => (now[index] = at(filled, place)));
    parted = [...parted.filter((frame) => !after.has(frame)), ...before.filter((frame) => !after.has(frame))];
  }
  return {
    bars: now.map(patternOn),
    barOf: new Map(now.flatMap(({ frames }, bar) => frames.map((frame) => [frame, bar] as const))),
  };
}

function patternOn({ stock, frames, loose }: Bar): Pattern {
  const all = new Map(loose);
  for (const frame of frames) addTo(all, frame.kinds);
  const kinds = [...all.keys()].toSorted((a, b) => a - b);
  return { stock, kinds, counts: kinds.map((kind) => all.get(kind) ?? 0) };
}

function addTo(loose: Map<number, number>, kinds: ReadonlyMap<number, number>): void {
  for (const [kind, count] of kinds) loose.set(kind, (loose.get(kind) ?? 0) + count);
}

/** Lengths on which the rails of a frame lie loose, from a place by chance on, and one or two others. */
function groupAround(frame: FrameGroup, bars: readonly Bar[], chance: Chance): number[] {
  const picked = new Set<number>();
  const wanted = new Map(frame.kinds);
  const from = chance.below(bars.length);
  for (let step = 0; step < bars.length && wanted.size > 0; step++) {
    const index = (from + step) % bars.length;
    for (const [kind, count] of at(bars, index).loose) {
      const still = wanted.get(kind);
      if (still === undefined) continue;
      picked.add(index);
      if (still <= count) wanted.delete(kind);
      else wanted.set(kind, still - count);
    }
  }
  const size = Math.min(bars.length, picked.size + 1 + chance.below(2));
  while (picked.size < size) picked.add(chance.below(bars.length));
  return [...picked];
}

/** What lies on these lengths: whole frames, frames that can be made of what is loose there, and rails. */
function lotsOf(
  whole: WholeChopping,
  own: readonly Bar[],
  parted: readonly FrameGroup[],
  chance: Chance,
): Lot[] {
  const loose = new Map<number, number>();
  for (const bar of own) addTo(loose, bar.loose);
  const frames = own.flatMap((bar) => bar.frames);
  const from = chance.below(parted.length);
  parted.forEach((_, step) => {
    const frame = at(parted, (from + step) % parted.length);
    if (!holds(loose, frame.kinds)) return;
    takeFrom(loose, frame.kinds);
    frames.push(frame);
  });
  const rails = [...loose].flatMap(([kind, count]) =>
    Array.from({ length: count }, () => ({
      frame: null,
      kinds: new Map([[kind, 1]]),
      weight: at(whole.kinds, kind).weight,
    })),
  );
  return [...frames.map((frame) => ({ frame, kinds: frame.kinds, weight: frame.weight })), ...rails];
}

/**
 * The lots on the same lengths, the heaviest first, some out of turn, each where it leaves least room;
 * a frame that finds no room is parted. null where a rail finds none, or a length stays empty.
 */
function sharedOut(
  whole: WholeChopping,
  own: readonly Bar[],
  lots: readonly Lot[],
  chance: Chance,
): Bar[] | null {
  const rooms = own.map(({ stock }) => at(whole.stocks, stock).capacity);
  const out = own.map(({ stock }) => ({
    stock,
    frames: [] as FrameGroup[],
    loose: new Map<number, number>(),
  }));
  const waiting = lots
    .map((lot) => ({ lot, rank: lot.weight * (1 - 0.3 * chance.next() ** 2) }))
    .toSorted((a, b) => a.rank - b.rank)
    .map(({ lot }) => lot);
  for (let lot = waiting.pop(); lot !== undefined; lot = waiting.pop()) {
    const { weight, frame, kinds } = lot;
    let best = -1;
    rooms.forEach((room, index) => {
      if (room >= weight && (best < 0 || room < at(rooms, best))) best = index;
    });
    const into = out[best];
    if (into === undefined) {
      if (frame === null) return null;
      for (const [kind, count] of kinds)
        for (let copy = 0; copy < count; copy++)
          waiting.push({ frame: null, kinds: new Map([[kind, 1]]), weight: at(whole.kinds, kind).weight });
      continue;
    }
    rooms[best] = at(rooms, best) - weight;
    if (frame === null) addTo(into.loose, kinds);
    else into.frames.push(frame);
  }
  return out.some(({ frames, loose }) => frames.length === 0 && loose.size === 0) ? null : out;
}
