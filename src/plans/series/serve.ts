import { quarterTurned, type Sides, SIDES, type Size } from "../../geometry/index.ts";
import { absolute, larger, type Length, smaller, subtract, times } from "../../lengths/index.ts";
import type { SeriesLimits, SeriesSize, SeriesWork } from "./job.ts";
import type { Fit, Misfit } from "./plan.ts";

/** A way to lie in a size, or the border that is most in the way. */
export type Served =
  | { readonly fit: Fit; readonly least: Length }
  | { readonly fit: null; readonly fault: Omit<Misfit, "size">; readonly by: Length };

/**
 * How a size serves a work: of the ways up that keep the limits the one with the larger least border,
 * then the upright one; else what is in the way, where it comes nearest.
 */
export function serve(work: SeriesWork, size: SeriesSize, limits: SeriesLimits): Served {
  const own = { width: size.width, height: size.height };
  const upright = own.height >= own.width ? own : quarterTurned(own);
  const ways = !limits.turns ? [own] : own.width === own.height ? [own] : [upright, quarterTurned(upright)];
  return ways.map((outer) => lying(work, outer, limits)).reduce(better);
}

function better(a: Served, b: Served): Served {
  if (a.fit === null) return b.fit === null && a.by <= b.by ? a : b;
  return b.fit !== null && b.least > a.least ? b : a;
}

/** A size one way up. Left is half the rest, rounded down; the head is as near to the lift that is wanted as the limits let it be. */
function lying(work: SeriesWork, outer: Size, limits: SeriesLimits): Served {
  const { border, lift, graduation } = limits;
  const across = subtract(outer.width, work.window.width);
  const down = subtract(outer.height, work.window.height);
  const left = marks(across / 2, graduation);
  const headAt = (raised: Length): Length => marks((down - 2 * raised) / 2, graduation);
  const [lowest, highest] = [headAt(lift.most), headAt(lift.least)];
  // What borders and paper want of the head; where both cannot be, the foot gives way.
  const wants = larger(border.least, work.reach.head);
  const from = larger(wants, border.most === null ? wants : subtract(down, border.most));
  const foot = subtract(down, larger(border.least, work.reach.foot));
  const until = border.most === null ? foot : smaller(foot, border.most);
  const asked = smaller(larger(headAt(lift.by), marksUp(from, graduation)), marks(until, graduation));
  const head = smaller(larger(asked, lowest), highest);
  const borders: Sides = { head, left, right: subtract(across, left), foot: subtract(down, head) };
  const worst = worstOf(borders, work.reach, limits);
  if (worst !== null) return { fit: null, fault: { outer, ...worst.fault }, by: worst.by };
  return { fit: { outer, borders }, least: Math.min(...SIDES.map((side) => borders[side])) as Length };
}

const marks = (length: number, graduation: Length): Length =>
  times(graduation, Math.floor(length / graduation));
const marksUp = (length: number, graduation: Length): Length =>
  times(graduation, Math.ceil(length / graduation));

function worstOf(
  borders: Sides,
  reach: Sides,
  { border }: SeriesLimits,
): { readonly fault: Omit<Misfit, "size" | "outer">; readonly by: Length } | null {
  const faults = SIDES.flatMap((side): Omit<Misfit, "size" | "outer">[] => {
    const is = borders[side];
    const limit = larger(border.least, reach[side]);
    if (is < limit) {
      return [{ code: reach[side] > border.least ? "paper" : "narrow", side, border: is, limit }];
    }
    return border.most !== null && is > border.most
      ? [{ code: "wide", side, border: is, limit: border.most }]
      : [];
  });
  return faults
    .map((fault) => ({ fault, by: absolute(subtract(fault.border, fault.limit)) }))
    .reduce<ReturnType<typeof worstOf>>(
      (worst, one) => (worst === null || one.by > worst.by ? one : worst),
      null,
    );
}
