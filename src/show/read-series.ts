import type { Sides } from "../geometry/index.ts";
import { inch, mm, type Ruler, ZERO } from "../lengths/index.ts";
import { DEAREST, MOST_WORKS, type SeriesJob, type SeriesLimits, type SeriesWork } from "../plans/index.ts";
import { Reader } from "./reader.ts";
import { type SeriesDocument, seriesDocument } from "./series-schema.ts";
import { type Read, validate } from "./validate.ts";

/** A series as it was read, and what its figures are printed on. */
export interface SeriesRequest {
  readonly job: SeriesJob;
  readonly ruler: Ruler;
}

const NO_REACH: Sides = { head: ZERO, left: ZERO, right: ZERO, foot: ZERO };

/** Reads one series; every problem is told with its field. `works` stands in for the document's own where it comes from a list. */
export function readSeries(
  document: unknown,
  works: readonly SeriesWork[] | null = null,
): Read<SeriesRequest> {
  const valid = validate(seriesDocument, document);
  if (!valid.ok) return valid;
  const { unit = "in", graduation, sizes, works: own } = valid.value;
  const reader = new Reader(unit);
  const ruler: Ruler = {
    unit,
    graduation: reader.sizeOr("graduation", graduation, unit === "in" ? inch(1, 16) : mm(1)),
  };
  if (own === undefined && works === null)
    reader.refuse("works", undefined, { kind: "type", expected: "array" });
  const job: SeriesJob = {
    works: works ?? (own ?? []).map((work, index) => readWork(reader, `works.${index}`, work, index)),
    sizes: sizes.map(({ name, width, height, cost }, index) => {
      const field = `sizes.${index}`;
      if (cost < 0) reader.refuse(`${field}.cost`, cost, { kind: "at-least", least: 0 });
      if (cost > DEAREST) reader.refuse(`${field}.cost`, cost, { kind: "at-most", most: DEAREST });
      return {
        name: name ?? "",
        width: reader.size(`${field}.width`, width),
        height: reader.size(`${field}.height`, height),
        cost,
      };
    }),
    limits: readLimits(reader, valid.value, ruler),
  };
  const count = job.works.reduce((sum, work) => sum + work.count, 0);
  if (count > MOST_WORKS) reader.refuse("works", count, { kind: "at-most", most: MOST_WORKS });
  return reader.problems.length > 0
    ? { ok: false, problems: reader.problems }
    : { ok: true, value: { job, ruler } };
}

function readWork(
  reader: Reader,
  field: string,
  { title, width, height, n = 1, reach }: NonNullable<SeriesDocument["works"]>[number],
  index: number,
): SeriesWork {
  const count = reader.count(`${field}.n`, n, MOST_WORKS);
  const side = (name: keyof Sides) => reader.length(`${field}.reach.${name}`, reach?.[name] ?? 0);
  return {
    name: title ?? `work ${index + 1}`,
    window: { width: reader.size(`${field}.width`, width), height: reader.size(`${field}.height`, height) },
    count,
    reach:
      reach === undefined
        ? NO_REACH
        : { head: side("head"), left: side("left"), right: side("right"), foot: side("foot") },
  };
}

/** The limits, and what contradicts in them. Without a lift the window is centred. */
function readLimits(
  reader: Reader,
  { border, lift, turn = true }: SeriesDocument,
  { graduation }: Ruler,
): SeriesLimits {
  const least = reader.length("border.least", border.least);
  const most =
    border.most === undefined || border.most === null ? null : reader.length("border.most", border.most);
  const by = lift === undefined ? ZERO : reader.length("lift.by", lift.by);
  const lowest = reader.lengthOr("lift.least", lift?.least, by);
  const highest = reader.lengthOr("lift.most", lift?.most, by);
  if (most !== null && most < least)
    reader.refuse("border.most", border.most, { kind: "between", what: "border" });
  if (!(lowest <= by && by <= highest)) reader.refuse("lift.by", lift?.by, { kind: "between", what: "lift" });
  return { border: { least, most }, lift: { by, least: lowest, most: highest }, graduation, turns: turn };
}
