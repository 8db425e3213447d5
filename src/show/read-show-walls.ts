import type { FramedWork, Hanging } from "../assembly/index.ts";
import { fromReal, half, inch, type Length, mm, subtract, times, toGraduation } from "../lengths/index.ts";
import { HangReader, type HangRead, type HangRequest } from "./hang-request.ts";
import type { WallDocument } from "./hang-schema.ts";
import type { Practice } from "./practice.ts";
import { type FrameOnWall, readFitting, readFrameOnWall } from "./read-fitting.ts";
import { readWallHabits, usualGraduation, type WallHabits, wallRequest, type WallWork } from "./read-wall.ts";
import type { PracticeDocument, WorkDocument } from "./schema.ts";

/** The frame that a work states as a fact; null where it states none. */
export function readStatedFrame(
  { framed, design }: WorkDocument,
  practice: Practice,
): HangRead<FrameOnWall | null> {
  const reader = new HangReader(design.unit ?? practice.ruler.unit);
  return reader.done(framed === undefined ? null : readFrameOnWall(reader, "framed", framed));
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
  { fittings }: ShowHabits,
): HangRead<WallWork> {
  const reader = new HangReader(work.design.unit ?? practice.ruler.unit);
  const hanging =
    work.hang === undefined
      ? usualFitting(frame, overall, practice, fittings)
      : readFitting(reader, "hang", work.hang, frame.width);
  const framed: FramedWork = { title: work.title, ...frame, hanging };
  return reader.done({ framed, with: work.with });
}

function usualFitting(
  frame: FrameOnWall,
  overall: Length | null,
  { ruler }: Practice,
  { kind, down, inset }: UsualFittings,
): Hanging {
  const { graduation } = ruler;
  const edge = inset ?? (overall === null ? INSET[ruler.unit] : half(overall, "nearest"));
  const apart = toGraduation(subtract(frame.width, times(edge, 2)), graduation, "down");
  return {
    kind,
    below: toGraduation(fromReal(frame.height * down, "nearest"), graduation, "nearest"),
    apart: apart > 0 ? apart : half(frame.width, "down"),
  };
}

/** Where a studio's rings or plates go. */
interface UsualFittings {
  readonly kind: "rings" | "plates";
  /** A share of the frame's height, from its top. */
  readonly down: number;
  /** From the frame's side; null: in the middle of its moulding. */
  readonly inset: Length | null;
}

/** How a studio hangs the works of a show. */
export interface ShowHabits extends WallHabits {
  readonly fittings: UsualFittings;
}

/** How a studio hangs; every problem with its field in the practice. A bare number is in the practice's unit, else the show's. */
export function readHangingHabits(
  { hanging = {}, unit }: PracticeDocument,
  { ruler }: Practice,
): HangRead<ShowHabits> {
  const reader = new HangReader(unit ?? ruler.unit);
  const { kind = "rings", down = DOWN, inset } = hanging.fittings ?? {};
  return reader.done({
    ...readWallHabits(reader, hanging),
    fittings: {
      kind,
      down: reader.number("hanging.fittings.down", down, 0, MOST_DOWN, "ratio"),
      inset: inset === undefined ? null : reader.length("hanging.fittings.inset", inset),
    },
  });
}

/** One wall of a show with the works that hang on it. */
export function readShowWall(
  document: WallDocument,
  name: string,
  works: readonly WallWork[],
  named: Pick<HangRequest, "studio" | "show">,
  practice: Practice,
  habits: ShowHabits,
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
