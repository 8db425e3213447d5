import type { Box, Size } from "../../geometry/index.ts";
import { type Length, subtract, sum, ZERO } from "../../lengths/index.ts";
import type { Cut, PlannedSheet } from "../../plans/cutting/index.ts";

/** One setting of the fence: which cuts are made at it, what goes in and what comes off. */
export interface FenceSetting {
  readonly set: Length;
  /** Numbers of the cuts, from 1. */
  readonly cuts: readonly number[];
  /** Boards that lie ready before the fence is set, with how often each is cut at it; alike ones together. */
  readonly goesIn: readonly Counted<Size>[];
  readonly comesOff: ComesOff;
}

export interface Counted<T> {
  readonly what: T;
  readonly times: number;
}

export interface ComesOff {
  /** Places of the pieces that are free now. */
  readonly pieces: readonly number[];
  /** Boards that are cut again later. */
  readonly boards: readonly Counted<Size>[];
  readonly keep: readonly Counted<Size>[];
  /** How many parts are waste. */
  readonly waste: number;
}

/** The cuts of a sheet by the settings of the fence, in their order. */
export function fenceSettings(sheet: PlannedSheet): readonly FenceSetting[] {
  const settings: FenceSetting[] = [];
  let from = 0;
  while (from < sheet.cuts.length) {
    const set = sheet.cuts[from]?.setting;
    let to = from;
    while (to < sheet.cuts.length && sheet.cuts[to]?.setting === set) to++;
    if (set !== undefined) settings.push(settingOf(sheet, set, from, to));
    from = to;
  }
  return settings;
}

function settingOf(sheet: PlannedSheet, set: Length, from: number, to: number): FenceSetting {
  const cuts = sheet.cuts.slice(from, to);
  const made = cuts.flatMap((cut) => halvesOf(cut));
  const again = new Set(cuts.map((cut) => boxKey(cut.part)));
  const madeKeys = new Set(made.map(boxKey));
  const ready = cuts.filter((cut) => !madeKeys.has(boxKey(cut.part))).map(({ part }) => part);
  const off = made.filter((one) => !again.has(boxKey(one)));
  const pieces = sheet.placements.flatMap((lies, index) =>
    off.some((one) => same(one, lies)) ? [index] : [],
  );
  const later = new Set(sheet.cuts.slice(to).map((cut) => boxKey(cut.part)));
  const kept = sheet.left.filter(({ keep }) => keep);
  const isPiece = (one: Box): boolean => sheet.placements.some((lies) => same(lies, one));
  return {
    set,
    cuts: cuts.map((_, index) => from + index + 1),
    goesIn: counted(ready.map((part) => ({ size: part, times: cutsIn(part, cuts) }))),
    comesOff: {
      pieces,
      boards: counted(off.filter((one) => later.has(boxKey(one))).map((size) => ({ size, times: 1 }))),
      keep: counted(
        off.filter((one) => kept.some((left) => same(left, one))).map((size) => ({ size, times: 1 })),
      ),
      waste: off.filter(
        (one) => !later.has(boxKey(one)) && !isPiece(one) && !kept.some((left) => same(left, one)),
      ).length,
    },
  };
}

/** How many of the cuts lie in a board. */
const cutsIn = (part: Box, cuts: readonly Cut[]): number =>
  cuts.filter(
    ({ part: { left, top } }) =>
      left >= part.left && top >= part.top && left < part.left + part.width && top < part.top + part.height,
  ).length;

/** The two boards that a cut makes; fewer where it only trims. */
function halvesOf({ across, from, takes, part }: Cut): readonly Box[] {
  const upright = across === "x";
  const start = upright ? part.left : part.top;
  const whole = upright ? part.width : part.height;
  const before = subtract(upright ? from.x : from.y, start);
  const after = subtract(whole, sum([before, takes]));
  const first: Box = upright ? { ...part, width: before } : { ...part, height: before };
  const second: Box = upright
    ? { ...part, left: sum([start, before, takes]), width: after }
    : { ...part, top: sum([start, before, takes]), height: after };
  return [...(before > 0 ? [first] : []), ...(after > 0 ? [second] : [])];
}

const boxKey = ({ left, top, width, height }: Box): string => `${left} ${top} ${width} ${height}`;
const same = (a: Box, b: Box): boolean =>
  a.left === b.left && a.top === b.top && a.width === b.width && a.height === b.height;

/** Alike sizes together, in the order in which they first come. */
function counted(all: readonly { readonly size: Size; readonly times: number }[]): readonly Counted<Size>[] {
  const found = new Map<string, { what: Size; times: number }>();
  for (const {
    size: { width, height },
    times,
  } of all) {
    const key = `${width} ${height}`;
    const entry = found.get(key) ?? { what: { width, height }, times: 0 };
    entry.times += times;
    found.set(key, entry);
  }
  return [...found.values()];
}

/** The longest cut of a sheet. */
export const longestCutOf = (sheet: PlannedSheet): Length =>
  sheet.cuts.reduce<Length>((most, { from, to, across }) => {
    const length = across === "x" ? subtract(to.y, from.y) : subtract(to.x, from.x);
    return length > most ? length : most;
  }, ZERO);
