import type { RailMeasures, Size } from "../../geometry/index.ts";
import { inch, type Length, mm, type Unit, ZERO } from "../../lengths/index.ts";
import type { Air, GlazingKind } from "./glazings.ts";
import type { Wood } from "./woods.ts";

/** A moulding cut across. `overall` is also the width of its face, as it is seen from the front. */
export interface Profile extends RailMeasures {
  /** As it is called in the rack and in the shop. */
  readonly name: string;
  /** From the lip's underside to the back; null: not known. */
  readonly depth: Length | null;
  /** How thick the lip is, from the face to its underside. */
  readonly lip: Length;
  /** Null: of no wood that is named here, or not known. */
  readonly wood: Wood | null;
  /** Kilograms a metre, as weighed; null: reckoned from its section and its wood. */
  readonly massPerMetre: number | null;
}

/** A flat layer that is cut from sheets. */
export interface LayerFacts {
  readonly board: string;
  /** How much smaller than the package it is cut, each way. */
  readonly less: Length;
  readonly thickness: Length;
  /** Kilograms a square metre, as told; null: reckoned. */
  readonly massPerArea: number | null;
}

export interface GlazingFacts extends LayerFacts {
  readonly kind: GlazingKind;
}

/** How the package stands in the rabbet: on the foot rail, or shimmed so that the room is the same all round. */
export type Seat = "foot" | "shimmed";

/** Everything that one kind of frame is. */
export interface FrameFacts {
  readonly name: string;
  readonly profile: Profile;
  /** The rabbet's opening, of a frame that exists; null: it is made to the package. */
  readonly opening: Size | null;
  readonly seat: Seat;
  readonly glazing: GlazingFacts | null;
  /** Between glazing and mat, all round, out of sight; nought: none. */
  readonly spacer: Length;
  readonly backing: LayerFacts | null;
  readonly habits: FrameHabits;
  readonly air: Air;
}

/** How a studio frames. */
export interface FrameHabits {
  /** What fittings need behind the package, within the rabbet. */
  readonly fittings: Length;
  /** How far a package may stand out behind the frame on offset fittings. */
  readonly offset: Length;
  /** The least between glazing and print. */
  readonly clear: Length;
  /** How thick the mount is; null: as the lowest mat. */
  readonly mount: Length | null;
  /** Of mat board, kilograms a cubic metre. */
  readonly boardDensity: number;
  /** How far the dust cover stays in from the frame's edge. */
  readonly coverInset: Length;
  /** What bumpers hold the frame off the wall, so that air passes behind it. */
  readonly bumper: Length;
  /** Kilograms of rings, wire, points and bumpers. */
  readonly hardware: number;
}

/**
 * A window board of 1100 micrometres is the least (Fine Art Trade Guild framing standards, as reprinted on members'
 * sites), and so what keeps glazing off. 4-ply board weighs 650 to 750 kg/m³: from memory, the heavier here. All else:
 * common practice, no source.
 */
export const USUAL_FRAMING: Readonly<Record<Unit, FrameHabits>> = {
  in: {
    fittings: inch(1, 8),
    offset: inch(1, 2),
    clear: mm(1.1),
    mount: null,
    boardDensity: 750,
    coverInset: inch(1, 8),
    bumper: inch(1, 8),
    hardware: 0.1,
  },
  mm: {
    fittings: mm(3),
    offset: mm(12),
    clear: mm(1.1),
    mount: null,
    boardDensity: 750,
    coverInset: mm(3),
    bumper: mm(3),
    hardware: 0.1,
  },
};

/** From a cold store-room to a warm van. Common practice, no source. */
export const USUAL_AIR: Air = { temperature: { from: 5, to: 35 }, humidity: null };

/** What is taken where only a layer's name is told. */
export interface UsualLayers {
  readonly glass: Length;
  readonly acrylic: Length;
  readonly backing: Length;
  readonly lip: Length;
}

/**
 * Glass: 2 mm picture glass, 3/32 in (2.5 mm) single strength (glazier data pages). 1/8 in of acrylic and 3/16 in of backing:
 * university art-department teaching page quoting a framing guide. The lip: common practice, no source.
 */
export const USUAL_LAYERS: Readonly<Record<Unit, UsualLayers>> = {
  in: { glass: inch(3, 32), acrylic: inch(1, 8), backing: inch(3, 16), lip: inch(1, 4) },
  mm: { glass: mm(2), acrylic: mm(3), backing: mm(5), lip: mm(6) },
};

/** A frame of which nothing but its moulding is told. */
export const plainFrame = (profile: Profile, unit: Unit): FrameFacts => ({
  name: profile.name,
  profile,
  opening: null,
  seat: "foot",
  glazing: null,
  spacer: ZERO,
  backing: null,
  habits: USUAL_FRAMING[unit],
  air: USUAL_AIR,
});
