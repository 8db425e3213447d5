import type { Hand, HoldPlan, Stop } from "../../assembly/index.ts";
import type { Side } from "../../geometry/index.ts";
import {
  fromReal,
  type Length,
  smaller,
  type Ruler,
  ticks,
  TICKS_PER_INCH,
  TICKS_PER_MILLIMETRE,
} from "../../lengths/index.ts";
import type { Speech } from "../../words/index.ts";
import type { BenchSheetJob } from "../job.ts";
import type { Desk } from "../paper.ts";

/** What every part of one bench sheet is laid out with. */
export interface BenchDesk extends Desk {
  /** With every text already printable. */
  readonly job: BenchSheetJob;
  readonly speech: Speech;
  /** Null for a mat without a print. */
  readonly held: HoldPlan | null;
  /** Signs of the work's words that the type lacks. */
  readonly missing: number;
}

/** One cut, by its number in the order of the whole sheet. */
export interface NumberedCut {
  readonly number: number;
  readonly side: Side;
  readonly hand: Hand;
}

/** A setting of the stop with the numbers of its cuts. */
export interface NumberedStop {
  readonly number: number;
  readonly stop: Stop;
  readonly cuts: readonly NumberedCut[];
}

/** Stops and cuts in their order, numbers running on over all mats. */
export function numberedStops(stops: readonly Stop[]): readonly NumberedStop[] {
  let cut = 0;
  return stops.map((stop, index) => ({
    number: index + 1,
    stop,
    cuts: stop.edges.map((side, at) => {
      cut += 1;
      return { number: cut, side, hand: stop.hand[at] ?? "away" };
    }),
  }));
}

/** A whole number of the unit's own round lengths: `inch16` sixteenths where inches are marked, else `millimetres`. */
export const roundLength = (desk: BenchDesk, sixteenths: number, millimetres: number): Length =>
  desk.speech.ruler.unit === "in"
    ? ticks((TICKS_PER_INCH / 16) * sixteenths)
    : ticks(TICKS_PER_MILLIMETRE * millimetres);

/** Whether every length is a whole number of the ruler's marks, so that a printed sum of them is true. */
export const onTheMarks = (desk: BenchDesk, ...lengths: readonly Length[]): boolean =>
  lengths.every((length) => length % desk.speech.ruler.graduation === 0);

/** Finer than borders are marked: for what is measured on scrap or read off a scale, to 1/64 in or 0.1 mm. */
export const fineRuler = (desk: BenchDesk): Ruler => {
  const { unit, graduation } = desk.speech.ruler;
  const finest = unit === "in" ? ticks(TICKS_PER_INCH / 64) : ticks(TICKS_PER_MILLIMETRE / 10);
  return { unit, graduation: smaller(graduation, finest) };
};

/** A real place in ticks as a length. */
export const nearestTick = (real: number): Length => fromReal(real, "nearest");
