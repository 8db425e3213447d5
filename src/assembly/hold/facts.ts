import type { Size } from "../../geometry/index.ts";
import { inch, type Length, mm, type Unit } from "../../lengths/index.ts";

/** What must never be done to a work, or come near it, in the words of the trade. */
export const NEVERS = [
  "paste",
  "hinges",
  "pockets",
  "strips",
  "press",
  "cut",
  "buffered",
  "glass",
  "acrylic",
] as const;
export type Never = (typeof NEVERS)[number];

/** A range of relative humidity, percent. */
export interface HumidityRange {
  readonly from: number;
  readonly to: number;
}

/** What is known of one sheet and of what comes near it, beside its measures. */
export interface HoldFacts {
  readonly never: readonly Never[];
  /** As it was told; empty where it was not. */
  readonly process: string;
  /** Grams a square metre; null: not known. */
  readonly grammage: number | null;
  /** Which way its fibres run as it hangs: it moves most across them. Null: not known. */
  readonly grain: "upright" | "across" | null;
  /** What the air may do where it will be; null: ordinary indoor swings. */
  readonly humidity: HumidityRange | null;
  /** Let into a sink or not; null: as its thickness asks. A float is always raised. */
  readonly bed: "flat" | "sink" | null;
  readonly use: "frame" | "storage";
  /** Whether the boards next to it have an alkaline buffer; null: not known. */
  readonly board: "buffered" | "unbuffered" | null;
  /** What it is glazed with; null: nothing, or not known. */
  readonly glazing: "glass" | "acrylic" | null;
}

/** How a studio makes what holds its works. */
export interface HoldHabits {
  /** A hinge's tab: along the sheet's edge by across it. */
  readonly tab: Size;
  /** How much of a tab is pasted behind the sheet. */
  readonly pasted: Length;
  /** Left without paste between the sheet's edge and the cross-piece: what tears first. */
  readonly bare: Length;
  /** From the sheet's corner to the first hinge. */
  readonly inset: Length;
  /** From the sheet's head down to the slit that a tab passes through. */
  readonly slit: Length;
  /** One layer of a sink's wall. */
  readonly layer: Length;
  /** Of what: as it is called in the rack; empty: the mount's own board. */
  readonly layerBoard: string;
  /** Round an object in its sink, each side. */
  readonly room: Length;
  /** A sheet thicker than this is let into a sink. */
  readonly sinkFrom: Length;
  /** How high a float is raised, and how far its riser stays in from the sheet's edge. */
  readonly riser: Length;
  readonly riserInset: Length;
  /** Between a float's face and what stands before it. */
  readonly clear: Length;
}

/** What no habit changes, in the round figures of each unit. */
export interface HoldFigures {
  /** A pocket is folded to a whole number of these, and no larger than `largestLeg`: a longer one only hides more paper. Common practice, no source. */
  readonly legStep: Length;
  readonly largestLeg: Length;
  /** Hinges stand no farther apart. */
  readonly apart: { readonly light: Length; readonly usual: Length; readonly heavy: Length };
  /** The most room round an object in a sink. */
  readonly mostRoom: Length;
  /** The narrowest wall of a sink that can be pasted square. Common practice, no source. */
  readonly leastWall: Length;
  /** A strip ends so far from the corners, which stay free. Common practice, no source. */
  readonly stripInset: Length;
  /** Gummed linen tape; the wider one from `wideFrom` on. */
  readonly tape: Length;
  readonly wideTape: Length;
  readonly wideFrom: Length;
  /** Between hinged boards. */
  readonly betweenBoards: Length;
  /** A V-hinge is too weak for a sheet longer than this. Common practice, no source. */
  readonly longestOnV: Length;
}

/**
 * Hinges about 1 × 1 1/2 in, at least two, 1 to 2 in from the corners, on large or heavy work one every 10
 * to 15 in (exhibit-preparation handbook, "Mounting artwork or documents"); 1/8 in without paste (C. A.
 * Paschke, The Artists Magazine, Jan/Feb 2014, who makes them 1 1/2 in wide and 1/2 in high: half an
 * inch is what is pasted behind the sheet here); 1/8 to 1/4 in round an object in its sink, about 1 mm between
 * boards and a hinge 1 to 2 in wide (Library of Congress Research Guide, Basic Sink Mat and Basic Storage
 * Mat). Riser, slit and clearance: common practice, no source.
 */
export const USUAL_HOLD: Readonly<Record<Unit, HoldHabits>> = {
  in: {
    tab: { width: inch(1), height: inch(3, 2) },
    pasted: inch(1, 2),
    bare: inch(1, 8),
    inset: inch(3, 2),
    slit: inch(1, 4),
    layer: inch(1, 16),
    layerBoard: "",
    room: inch(1, 8),
    sinkFrom: inch(1, 16),
    riser: inch(1, 8),
    riserInset: inch(1, 2),
    clear: inch(1, 8),
  },
  mm: {
    tab: { width: mm(25), height: mm(40) },
    pasted: mm(12),
    bare: mm(3),
    inset: mm(40),
    slit: mm(6),
    layer: mm(1.5),
    layerBoard: "",
    room: mm(3),
    sinkFrom: mm(1.5),
    riser: mm(3),
    riserInset: mm(12),
    clear: mm(3),
  },
};

export const HOLD_FIGURES: Readonly<Record<Unit, HoldFigures>> = {
  in: {
    legStep: inch(1, 4),
    largestLeg: inch(2),
    apart: { light: inch(15), usual: inch(12), heavy: inch(10) },
    mostRoom: inch(1, 4),
    leastWall: inch(1, 2),
    stripInset: inch(1),
    tape: inch(1),
    wideTape: inch(2),
    wideFrom: inch(24),
    betweenBoards: inch(1, 32),
    longestOnV: inch(22),
  },
  mm: {
    legStep: mm(5),
    largestLeg: mm(50),
    apart: { light: mm(380), usual: mm(300), heavy: mm(250) },
    mostRoom: mm(6),
    leastWall: mm(12),
    stripInset: mm(25),
    tape: mm(25),
    wideTape: mm(50),
    wideFrom: mm(600),
    betweenBoards: mm(1),
    longestOnV: mm(560),
  },
};

/** Nothing told, ordinary air, for a frame. */
export const NOTHING_KNOWN: HoldFacts = {
  never: [],
  process: "",
  grammage: null,
  grain: null,
  humidity: null,
  bed: null,
  use: "frame",
  board: null,
  glazing: null,
};
