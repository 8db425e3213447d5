import type { HoldPlan } from "../assembly/index.ts";
import type { Typeface } from "../drawings/index.ts";
import type { Practice, ShowRead } from "../show/index.ts";
import {
  benchSheet,
  type BenchSheetJob,
  type House,
  type Page,
  type PaperSize,
  type PlanWords,
  type WorkWords,
} from "../papers/index.ts";
import type { Blanks } from "./blanks.ts";
import type { ComposedWork } from "./works.ts";

/** What all bench sheets of one packet share. */
export interface Packeted {
  readonly practice: Practice;
  readonly house: House;
  readonly plan: PlanWords;
  /** Whether the bytes of a picture are at hand: a paper names no picture that cannot be had. */
  readonly hasPicture: (address: string) => boolean;
}

/** The job of one work's bench sheet. `blanks` null: no cut plan has given it any. */
export function benchSheetJob(
  one: ComposedWork,
  blanks: Blanks["ofWork"][number],
  shared: Packeted,
  held: HoldPlan | null = null,
): BenchSheetJob {
  const { work, composition } = one;
  const { practice } = shared;
  const { picture } = work;
  return {
    composition,
    ...(held === null ? {} : { held }),
    frameStops: one.frameStops,
    work: workWords(one),
    house: shared.house,
    plan: shared.plan,
    bench: {
      hand: practice.hand,
      scaleTested: practice.scaleTested,
      overrun: practice.overrun,
      squaringTrim: practice.squaringTrim,
    },
    blanks,
    picture: picture !== undefined && shared.hasPicture(picture) ? picture : null,
    language: practice.language,
  };
}

/** What a work is called, empty where nothing is known. */
export const workWords = ({ work, quantity }: ComposedWork): WorkWords => ({
  title: work.title,
  maker: work.maker ?? "",
  year: work.year ?? "",
  process: work.process ?? "",
  edition: work.edition ?? "",
  quantity,
});

/** The pages of every work's bench sheet, one work after the other, made as they are asked for. */
export function* benchSheetPages(
  works: readonly ComposedWork[],
  blanks: Blanks,
  shared: Packeted,
  size: PaperSize,
  typeface: Typeface,
  holds: readonly (HoldPlan | null)[],
  told: (done: number) => void,
): Generator<Page> {
  for (const [index, work] of works.entries()) {
    // A mat that is there already has nothing to be set or cut.
    if (work.ready && !work.stopped) continue;
    yield* benchSheet(
      benchSheetJob(work, blanks.ofWork[index] ?? null, shared, holds[index] ?? null),
      size,
      typeface,
    );
    told(index + 1);
  }
}

/** Whose papers they are: the show's own room, else the studio. */
export const houseOf = (
  { room, name }: Pick<ShowRead, "room" | "name">,
  { studio }: Pick<Practice, "studio">,
): House => ({ studio: room === "" ? studio : room, show: name });

/** The number under which a work is kept; empty where it has none. */
export const inventoryMark = ({ work }: Pick<ComposedWork, "work">): string =>
  work.record?.inventoryNumber ?? "";
