import type { Sides, Size } from "../../geometry/index.ts";
import { add, half, type Length, scale, ZERO } from "../../lengths/index.ts";
import type { Holding } from "../design.ts";
import type { HoldFacts } from "./facts.ts";

/** How much a sheet may grow or shrink, each way, and what that was reckoned from. */
export interface Movement extends Size {
  /** Millionths of a size. */
  readonly rate: { readonly width: number; readonly height: number };
  /** Percent of relative humidity between driest and dampest; null: ordinary indoor swings by rule. */
  readonly swing: number | null;
}

/**
 * Millionths for ordinary indoor swings: 0.4 % across the fibres and 0.2 % along them, the upper values for
 * bond paper in C. Green's "Dimensional Stability" notes (as cited in a paper-chemistry teaching blog, 2011).
 * They do not say which swing of humidity belongs to them.
 */
export const ORDINARY = { across: 4000, along: 2000 };

/**
 * Millionths for each percent of relative humidity: at most 3 % across the fibres between 0 and 100 %, a tenth
 * of that along them (Conservation Science, ch. 3, p. 38; Book Arts list, June 2000, has ten times less too).
 * Taken as even over the range, which no paper quite is.
 */
export const EACH_PERCENT = { across: 300, along: 30 };

/** How much a sheet moves, rounded up to the tick. Where its fibres' way is not known, each way counts as across them. */
export function movementOf(
  sheet: Size,
  { grain, humidity }: Pick<HoldFacts, "grain" | "humidity">,
): Movement {
  const swing = humidity === null ? null : humidity.to - humidity.from;
  const { across, along } = swing === null ? ORDINARY : EACH_PERCENT;
  const times = swing ?? 1;
  const rate = {
    width: (grain === "across" ? along : across) * times,
    height: (grain === "upright" ? along : across) * times,
  };
  return { width: grown(sheet.width, rate.width), height: grown(sheet.height, rate.height), rate, swing };
}

/** To a millionth of a millionth, so that a swing of 12.5 % is exact. */
const grown = (length: Length, millionths: number): Length =>
  scale(length, BigInt(Math.round(millionths * 1e6)), 10n ** 12n, "up");

/** What each side's edge may move by: a hinged sheet hangs from its head, any other moves about its middle. */
export function edgesMoveBy({ width, height }: Size, holding: Holding): Sides {
  const side = half(width, "up");
  const end = half(height, "up");
  return holding === "hinges"
    ? { head: ZERO, left: side, right: side, foot: height }
    : { head: end, left: side, right: side, foot: end };
}

/** Across a corner both ways' halves count together. */
export const cornerMovesBy = ({ width, height }: Size): Length => half(add(width, height), "up");
