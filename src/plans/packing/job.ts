import type { Size } from "../../geometry/index.ts";
import { inch, type Length, mm, type Unit } from "../../lengths/index.ts";

/** A work as it travels: its outer size as it hangs, how deep it is, and what it weighs. */
export interface Travelling extends Size {
  readonly title: string;
  readonly depth: Length;
  /** Kilograms of one, rather too much than too little. */
  readonly mass: number;
  readonly count: number;
}

/** How a studio packs. */
export interface PackingHabits {
  /** Foam between the works and the crate, each side. */
  readonly foam: Length;
  /** Between one work and the next. */
  readonly between: Length;
  /** How thick the crate's walls are. */
  readonly wall: Length;
  /** The most that may stand in a crate from its front to its back, foam left out. */
  readonly mostDepth: Length;
  /** Kilograms that a crate may weigh, packed. */
  readonly mostMass: number;
}

/**
 * Foam, walls and what a crate may hold: common practice, no source. Above 50 lb of frame the Earthquake Country
 * Alliance calls for professional help on the wall; two people carry twice that here.
 */
export const USUAL_PACKING: Readonly<Record<Unit, PackingHabits>> = {
  in: { foam: inch(2), between: inch(1, 4), wall: inch(1, 2), mostDepth: inch(16), mostMass: 45 },
  mm: { foam: mm(50), between: mm(6), wall: mm(12), mostDepth: mm(400), mostMass: 45 },
};

/** Kilograms a cubic metre, on the heavy side, from memory: plywood, and packing foam. */
export const CRATE_MATTER = { wall: 700, foam: 35 } as const;

export interface PackingJob {
  readonly works: readonly Travelling[];
  readonly habits: PackingHabits;
}
