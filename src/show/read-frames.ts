import {
  type FrameHabits,
  type InFrame,
  type ReadyMat,
  type Seat,
  type TemperatureRange,
  USUAL_AIR,
  USUAL_FRAMING,
} from "../assembly/index.ts";
import type { Size } from "../geometry/index.ts";
import { type Length, subtract, toInches, toMillimetres, type Unit, ZERO } from "../lengths/index.ts";
import {
  type Glazing,
  type Layer,
  type Moulding,
  readBacking,
  readGlazing,
  readMoulding,
} from "./frame-habits.ts";
import type { FrameDocument, FramingDocument } from "./frame-schema.ts";
import { readMass } from "./mass.ts";
import type { Wanted } from "./problem.ts";
import { onceEachUnit } from "./each-unit.ts";
import { Reader } from "./reader.ts";
import type { PracticeDocument } from "./schema.ts";
import type { Read } from "./validate.ts";

/** A kind of frame with every choice made. */
export interface FrameKind {
  readonly name: string;
  readonly moulding: Moulding;
  /** The rabbet's opening of a frame that exists; null: it is made. */
  readonly opening: Size | null;
  /** How many there are; null: not said. */
  readonly copies: number | null;
  readonly mat: ReadyMat | null;
  readonly glazing: Glazing | null;
  readonly backing: Layer | null;
  readonly spacer: Length;
  readonly seat: Seat;
  readonly balance: Balance;
}

/** Whether the lift is judged by the package's borders or by what is seen of them under the lip. */
export type Balance = InFrame["balance"];

/** How a studio frames, whatever the kind. */
export interface Framing extends FrameHabits {
  readonly temperature: TemperatureRange;
}

/** What of a practice bears on frames. */
export interface FramePractice extends Shared {
  /** Kinds of frame that a work may name. */
  readonly frames: readonly FrameKind[];
  readonly framing: Framing;
}

/** What stands behind the mount, what stands before the mat, the frame: null where none is made. A kind of frame that does not say takes these. */
interface Shared {
  readonly backing: Layer | null;
  readonly glazing: Glazing | null;
  readonly moulding: Moulding | null;
}

/** What of a practice bears on frames, in the round figures of `unit` where it does not say. */
export function readFramePractice(
  reader: Reader,
  { backing, glazing, moulding, frames = [], framing = {} }: PracticeDocument,
  unit: Unit,
): FramePractice {
  const shared: Shared = {
    backing: backing === undefined ? null : readBacking(reader, "backing", backing, unit),
    glazing: glazing === undefined ? null : readGlazing(reader, "glazing", glazing, unit),
    moulding: moulding === undefined ? null : readMoulding(reader, "moulding", moulding, unit),
  };
  return {
    ...shared,
    frames: readFrames(reader, frames, shared, unit),
    framing: readFraming(reader, framing, unit),
  };
}

/** The same by itself, read once for each unit. */
export const framePracticeFor = onceEachUnit((document: PracticeDocument, unit): Read<FramePractice> => {
  const reader = new Reader(document.unit ?? unit);
  const value = readFramePractice(reader, document, unit);
  return reader.problems.length === 0 ? { ok: true, value } : { ok: false, problems: reader.problems };
});

/** The kinds of frame of a practice; of two with one name the first is taken. */
const readFrames = (
  reader: Reader,
  frames: readonly FrameDocument[],
  shared: Shared,
  unit: Unit,
): readonly FrameKind[] =>
  frames.flatMap((frame, index) => readFrame(reader, `frames.${index}`, frame, shared, unit) ?? []);

/** Of one kind, more frames than any studio has. */
const MOST_COPIES = 1000;

function readFrame(
  reader: Reader,
  field: string,
  frame: FrameDocument,
  shared: Shared,
  unit: Unit,
): FrameKind | null {
  const moulding =
    frame.moulding === undefined
      ? shared.moulding
      : readMoulding(reader, `${field}.moulding`, frame.moulding, unit);
  if (moulding === null) {
    reader.refuse(`${field}.moulding`, undefined, { kind: "type", expected: "object" });
    return null;
  }
  const { opening, mat, glazing, backing } = frame;
  const copies =
    frame.copies === undefined ? null : reader.count(`${field}.copies`, frame.copies, MOST_COPIES);
  return {
    name: frame.name,
    moulding,
    opening: opening === undefined ? null : readSize(reader, `${field}.opening`, opening),
    copies,
    mat: mat === undefined ? null : readMat(reader, `${field}.mat`, mat),
    glazing:
      glazing === undefined
        ? shared.glazing
        : glazing === null
          ? null
          : readGlazing(reader, `${field}.glazing`, glazing, unit),
    backing:
      backing === undefined
        ? shared.backing
        : backing === null
          ? null
          : readBacking(reader, `${field}.backing`, backing, unit),
    spacer: reader.lengthOr(`${field}.spacer`, frame.spacer, ZERO),
    seat: frame.seat ?? "foot",
    balance: frame.balance ?? "package",
  };
}

const readSize = (
  reader: Reader,
  field: string,
  size: { readonly width: string | number; readonly height: string | number },
): Size => ({
  width: reader.size(`${field}.width`, size.width),
  height: reader.size(`${field}.height`, size.height),
});

function readMat(reader: Reader, field: string, mat: NonNullable<FrameDocument["mat"]>): ReadyMat {
  const outer = readSize(reader, field, mat);
  const window = readSize(reader, `${field}.window`, mat.window);
  for (const side of ["width", "height"] as const)
    if (window[side] > outer[side])
      reader.refuse(`${field}.window.${side}`, mat.window[side], inUnit(reader, outer[side]));
  const head = mat.head === undefined ? null : reader.length(`${field}.head`, mat.head);
  const rest = subtract(outer.height, window.height);
  if (head !== null && rest >= 0 && head > rest)
    reader.refuse(`${field}.head`, mat.head, inUnit(reader, rest));
  return {
    ...outer,
    window,
    head,
    thickness: mat.thickness === undefined ? null : reader.size(`${field}.thickness`, mat.thickness),
    board: mat.board ?? null,
  };
}

const inUnit = ({ unit }: Reader, most: Length): Wanted => ({
  kind: "at-most",
  most: unit === "in" ? toInches(most) : toMillimetres(most),
});

/** Kilograms a cubic metre: no board is denser. */
const DENSEST = 3000;

/** How a studio frames, in the round figures of `unit` where it does not say. */
function readFraming(reader: Reader, document: FramingDocument, unit: Unit): Framing {
  const usual = USUAL_FRAMING[unit];
  const { boardDensity = usual.boardDensity, hardware } = document;
  const density = reader.number("framing.boardDensity", boardDensity, 0, DENSEST, "count");
  return {
    fittings: reader.lengthOr("framing.fittings", document.fittings, usual.fittings),
    offset: reader.lengthOr("framing.offset", document.offset, usual.offset),
    clear: reader.lengthOr("framing.clear", document.clear, usual.clear),
    mount: document.mount === undefined ? usual.mount : reader.size("framing.mount", document.mount),
    boardDensity: density,
    coverInset: reader.lengthOr("framing.coverInset", document.coverInset, usual.coverInset),
    bumper: reader.lengthOr("framing.bumper", document.bumper, usual.bumper),
    hardware: hardware === undefined ? usual.hardware : readHardware(reader, hardware),
    temperature:
      document.temperature === undefined
        ? USUAL_AIR.temperature
        : readTemperatures(reader, document.temperature),
  };
}

function readHardware(reader: Reader, written: string | number): number {
  if (Number(written) === 0) return 0;
  const mass = readMass(written, reader.unit);
  if (mass === null)
    reader.refuse("framing.hardware", written, { kind: "like", examples: ["0.1 kg", "4 oz"] });
  return mass ?? 0;
}

/** The colder first. */
const TEMPERATURES = [`{"from": "5 °C", "to": "35 °C"}`, `{"from": "41 °F", "to": "95 °F"}`];
const TEMPERATURE = /^([-−]?\d+(?:[.,]\d+)?) ?°? ?([cf])?$/i;

/** A temperature as people write it, in degrees Celsius; a bare number is in Fahrenheit beside inches. Null for anything else. */
export function readTemperature(written: string | number, unit: Unit): number | null {
  const match = TEMPERATURE.exec(String(written).trim());
  if (match === null) return null;
  const value = Number((match[1] ?? "").replace(",", ".").replace("−", "-"));
  const fahrenheit = (match[2] ?? (unit === "in" ? "f" : "c")).toLowerCase() === "f";
  const celsius = fahrenheit ? ((value - 32) * 5) / 9 : value;
  return celsius >= -60 && celsius <= 100 ? celsius : null;
}

function readTemperatures(
  reader: Reader,
  range: NonNullable<FramingDocument["temperature"]>,
): TemperatureRange {
  const [from, to] = [readTemperature(range.from, reader.unit), readTemperature(range.to, reader.unit)];
  if (from !== null && to !== null && from <= to) return { from, to };
  reader.refuse("framing.temperature", range, { kind: "like", examples: TEMPERATURES });
  return USUAL_AIR.temperature;
}
