import type { Box, Size } from "../../geometry/index.ts";
import { type Length, subtract, sum, ZERO } from "../../lengths/index.ts";
import type { Cut, PlannedSheet } from "../../plans/cutting/index.ts";

/** One setting of the fence: which cuts are made at it, what goes in and what comes off. */
export interface FenceSetting {
  readonly set: Length;
  /** Numbers of the cuts, from 1. */
  readonly cuts: readonly number[];
  /** Beside the cuts: the letter of the board that goes in. */
  readonly into: readonly (string | null)[];
  /** Boards that lie ready before the fence is set, with how often each is cut at it; alike ones together. */
  readonly goesIn: readonly Boards[];
  readonly comesOff: ComesOff;
}

/** Boards of one size. */
export interface Boards {
  readonly size: Size;
  /** What each is called until it is cut up; the sheet itself and what is never cut again have no letter. */
  readonly letters: readonly string[];
  /** How often they are cut, or how many come off. */
  readonly times: number;
}

export interface ComesOff {
  /** Places of the pieces that are free now. */
  readonly pieces: readonly number[];
  /** Boards that are cut again later. */
  readonly boards: readonly Boards[];
  readonly keep: readonly Boards[];
  /** How many parts are waste. */
  readonly waste: number;
}

/** The cuts of a sheet by the settings of the fence, in their order; what is cut again at a later setting is lettered as it comes off. */
export function fenceSettings(sheet: PlannedSheet): readonly FenceSetting[] {
  const settings: FenceSetting[] = [];
  const letters = new Map<string, string>();
  let from = 0;
  while (from < sheet.cuts.length) {
    const set = sheet.cuts[from]?.setting;
    let to = from;
    while (to < sheet.cuts.length && sheet.cuts[to]?.setting === set) to++;
    if (set !== undefined) settings.push(settingOf(sheet, set, from, to, letters));
    from = to;
  }
  return settings;
}

/** `letters` are those of the boards that lie ready, by their boxes; those that come off are added. */
function settingOf(
  sheet: PlannedSheet,
  set: Length,
  from: number,
  to: number,
  letters: Map<string, string>,
): FenceSetting {
  const cuts = sheet.cuts.slice(from, to);
  const made = cuts.flatMap((cut) => halvesOf(cut));
  const again = new Set(cuts.map((cut) => boxKey(cut.part)));
  const madeKeys = new Set(made.map(boxKey));
  const ready = cuts.filter((cut) => !madeKeys.has(boxKey(cut.part))).map(({ part }) => part);
  const into = cuts.map((cut) => letters.get(boxKey(ready.find((part) => lies(cut, part)) ?? cut.part)));
  const goesIn = gathered(
    ready.map((part) => ({
      size: part,
      letter: letters.get(boxKey(part)),
      times: cuts.filter((cut) => lies(cut, part)).length,
    })),
  );
  const off = made.filter((one) => !again.has(boxKey(one)));
  const pieces = sheet.placements.flatMap((placement, index) =>
    off.some((one) => same(one, placement)) ? [index] : [],
  );
  const later = new Set(sheet.cuts.slice(to).map((cut) => boxKey(cut.part)));
  const kept = sheet.left.filter(({ keep }) => keep);
  const isPiece = (one: Box): boolean => sheet.placements.some((placement) => same(placement, one));
  const boards = off.filter((one) => later.has(boxKey(one)));
  for (const board of boards) letters.set(boxKey(board), letterOf(letters.size));
  return {
    set,
    cuts: cuts.map((_, index) => from + index + 1),
    into: into.map((letter) => letter ?? null),
    goesIn,
    comesOff: {
      pieces,
      boards: gathered(boards.map((size) => ({ size, letter: letters.get(boxKey(size)), times: 1 }))),
      keep: gathered(
        off
          .filter((one) => kept.some((left) => same(left, one)))
          .map((size) => ({ size, letter: undefined, times: 1 })),
      ),
      waste: off.filter(
        (one) => !later.has(boxKey(one)) && !isPiece(one) && !kept.some((left) => same(left, one)),
      ).length,
    },
  };
}

/** Without I and O, which read as figures. */
const LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

/** A, B … Z, then AA, AB …. */
function letterOf(index: number): string {
  const last = LETTERS.charAt(index % LETTERS.length);
  return index < LETTERS.length ? last : `${letterOf(Math.floor(index / LETTERS.length) - 1)}${last}`;
}

/** Whether a cut is made in a board, or in what has come off it at the same setting. */
const lies = ({ part: { left, top } }: Cut, board: Box): boolean =>
  left >= board.left && top >= board.top && left < board.left + board.width && top < board.top + board.height;

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
function gathered(
  all: readonly { readonly size: Size; readonly letter: string | undefined; readonly times: number }[],
): readonly Boards[] {
  const found = new Map<string, { size: Size; letters: string[]; times: number }>();
  for (const { size, letter, times } of all) {
    const { width, height } = size;
    const key = `${width} ${height}`;
    const entry = found.get(key) ?? { size: { width, height }, letters: [], times: 0 };
    entry.times += times;
    if (letter !== undefined) entry.letters.push(letter);
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
