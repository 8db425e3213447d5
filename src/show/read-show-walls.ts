import type { FramedWork, Hanging } from "../assembly/index.ts";
import type { Size } from "../geometry/index.ts";
import { fromReal, half, inch, type Length, mm, subtract, times, toGraduation } from "../lengths/index.ts";
import { HangReader, type HangRead, type HangRequest } from "./hang-request.ts";
import type { HangingHabitsDocument, WallDocument } from "./hang-schema.ts";
import type { Practice } from "./practice.ts";
import { readFitting } from "./read-fitting.ts";
import { readWallHabits, usualGraduation, type WallHabits, wallRequest, type WallWork } from "./read-wall.ts";
import type { PracticeDocument, WorkDocument } from "./schema.ts";

/** A work's frame as its wall needs it. */
export interface FrameOnWall extends Size {
  /** Kilograms; null where it is not known. */
  readonly mass: number | null;
  readonly depth: Length | null;
}

/** The frame that a work states as a fact; null where it states none. */
export function readStatedFrame(
  { framed, design }: WorkDocument,
  practice: Practice,
): HangRead<FrameOnWall | null> {
  const reader = new HangReader(design.unit ?? practice.ruler.unit);
  if (framed === undefined) return reader.done(null);
  return reader.done({
    width: reader.size("framed.width", framed.width),
    height: reader.size("framed.height", framed.height),
    mass: framed.weight === undefined ? null : reader.mass("framed.weight", framed.weight),
    depth: framed.depth === undefined ? null : reader.length("framed.depth", framed.depth),
  });
}

/** Rings or plates where a work does not say: a third of the way down (common practice, no source). */
const DOWN = 1 / 3;
/** From the frame's side to the middle of a ring where no moulding is known. Common practice, no source. */
const INSET = { in: inch(3, 8), mm: mm(10) } as const;
/** Rings above the middle, or the top leans out from the wall. */
const MOST_DOWN = 0.5;

/** A work in its frame, on what holds it: what it states itself, else the studio's fittings on a moulding `overall` wide (null: not known). */
export function framedOnWall(
  work: WorkDocument,
  frame: FrameOnWall,
  overall: Length | null,
  practice: Practice,
  document: PracticeDocument,
): HangRead<WallWork> {
  const reader = new HangReader(work.design.unit ?? practice.ruler.unit);
  const hanging =
    work.hang === undefined
      ? usualFitting(frame, overall, practice, document)
      : readFitting(reader, "hang", work.hang, frame.width);
  const framed: FramedWork = { title: work.title, ...frame, hanging };
  return reader.done({ framed, with: work.with });
}

function usualFitting(
  frame: FrameOnWall,
  overall: Length | null,
  { ruler }: Practice,
  { hanging = {}, unit = ruler.unit }: PracticeDocument,
): Hanging {
  const { kind = "rings", down = DOWN, inset } = hanging.fittings ?? {};
  const usual = overall === null ? INSET[ruler.unit] : half(overall, "nearest");
  const edge = new HangReader(unit).lengthOr("hanging.fittings.inset", inset, usual);
  const { graduation } = ruler;
  const apart = toGraduation(subtract(frame.width, times(edge, 2)), graduation, "down");
  return {
    kind,
    below: toGraduation(fromReal(frame.height * down, "nearest"), graduation, "nearest"),
    apart: apart > 0 ? apart : half(frame.width, "down"),
  };
}

/** How a studio hangs; every problem with its field in the practice. */
export function readHangingHabits({ hanging = {}, unit = "in" }: PracticeDocument): HangRead<WallHabits> {
  const reader = new HangReader(unit);
  const habits = readWallHabits(reader, hanging);
  checkFittings(reader, hanging);
  return reader.done(habits);
}

function checkFittings(reader: HangReader, { fittings = {} }: HangingHabitsDocument): void {
  const { down = DOWN, inset } = fittings;
  reader.number("hanging.fittings.down", down, 0, MOST_DOWN, "ratio");
  if (inset !== undefined) reader.length("hanging.fittings.inset", inset);
}

/** One wall of a show with the works that hang on it. */
export function readShowWall(
  document: WallDocument,
  name: string,
  works: readonly WallWork[],
  named: Pick<HangRequest, "studio" | "show">,
  practice: Practice,
  habits: WallHabits,
): HangRead<HangRequest> {
  const { ruler } = practice;
  const unit = document.unit ?? ruler.unit;
  const reader = new HangReader(unit);
  const { width, height, kind, fall, works: _, ...fields } = document;
  const face = {
    name,
    width,
    height,
    ...(kind === undefined ? {} : { kind }),
    ...(fall === undefined ? {} : { fall }),
  };
  const graduation = unit === ruler.unit ? ruler.graduation : usualGraduation(unit);
  return reader.done(
    wallRequest(reader, { ...fields, face, facePath: "" }, works, named, graduation, habits),
  );
}
