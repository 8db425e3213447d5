import type { FrameFacts, HumidityRange, InFrame, Seat } from "../assembly/index.ts";
import { type Unit, ZERO } from "../lengths/index.ts";
import type { Glazing, Layer } from "./frame-habits.ts";
import { foundText, type Problem } from "./problem.ts";
import { inPractice } from "./read-design.ts";
import { type FrameKind, type FramePractice, framePracticeFor, type Framing } from "./read-frames.ts";
import type { PracticeDocument, WorkDocument } from "./schema.ts";
import type { Read } from "./validate.ts";

/** What one work is framed in, and what its package has beside mats and mount. */
export interface WorkFrame extends InFrame {
  readonly kind: FrameKind;
}

/** What of a work's package is cut from sheets beside mats and mount, and its frame; null where it has none. */
export interface Framed {
  readonly glazing: Glazing | null;
  readonly backing: Layer | null;
  readonly frame: WorkFrame | null;
}

const UNFRAMED: Framed = { glazing: null, backing: null, frame: null };

/**
 * The frame of a work: the kind that it names, else the practice's moulding, glazing and backing. A work whose frame is
 * null has none of them. A kind that is not there is a problem that names those that are.
 */
export function readWorkFrame(
  { frame: asked, design }: Pick<WorkDocument, "frame" | "design">,
  document: PracticeDocument,
  unit: Unit,
): Read<Framed> {
  if (asked === null) return { ok: true, value: UNFRAMED };
  const read = framePracticeFor(document, unit);
  if (!read.ok) return inPractice(read.problems);
  const practice = read.value;
  const { kind: name, seat, balance } = typeof asked === "string" ? { kind: asked } : (asked ?? {});
  const kind = name === undefined ? ownKind(practice) : practice.frames.find((one) => one.name === name);
  if (kind === undefined)
    return { ok: false, problems: [noSuchKind(name ?? "", typeof asked === "string", practice)] };
  if (kind === null) return { ok: true, value: { ...UNFRAMED, ...layersOf(practice) } };
  const humidity = design.held?.humidity ?? document.held?.humidity ?? null;
  return {
    ok: true,
    value: {
      ...layersOf(kind),
      frame: {
        kind,
        frame: factsOf(kind, practice.framing, humidity, seat ?? kind.seat),
        mat: kind.mat,
        balance: balance ?? kind.balance,
        around: design.outer === undefined,
      },
    },
  };
}

const layersOf = ({ glazing, backing }: Pick<FramePractice, "glazing" | "backing">) => ({ glazing, backing });

function factsOf(
  { name, moulding: profile, opening, glazing, spacer, backing }: FrameKind,
  { temperature, ...habits }: Framing,
  humidity: HumidityRange | null,
  seat: Seat,
): FrameFacts {
  // A range that is no range is told where the work's holding is read.
  const sound = humidity !== null && humidity.from <= humidity.to ? humidity : null;
  return {
    name,
    profile,
    opening,
    seat,
    glazing,
    spacer,
    backing,
    habits,
    air: { temperature, humidity: sound },
  };
}

function noSuchKind(name: string, alone: boolean, { frames }: FramePractice): Problem {
  const options = frames.map((kind) => kind.name);
  return options.length === 0
    ? { field: "practice.frames", found: foundText(undefined), wanted: { kind: "one-of", options: [name] } }
    : {
        field: alone ? "frame" : "frame.kind",
        found: foundText(name),
        wanted: { kind: "one-of", options: [...options, "null"] },
      };
}

/** The kind that a work has which names none: of the practice's moulding, glazing and backing. */
const ownKind = ({ moulding, glazing, backing }: FramePractice): FrameKind | null =>
  moulding === null
    ? null
    : {
        name: moulding.name,
        moulding,
        opening: null,
        copies: null,
        mat: null,
        glazing,
        backing,
        spacer: ZERO,
        seat: "foot",
        balance: "package",
      };
