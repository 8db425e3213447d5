import type { Size } from "../../geometry/index.ts";
import { add, type Length, TICKS_PER_METRE } from "../../lengths/index.ts";
import type { FrameFacts } from "./facts.ts";
import { GLAZING_MATTER, paneMass, TICKS_PER_SQUARE_METRE } from "./glazings.ts";
import type { FrameSizes } from "./opening.ts";
import type { PackageFacts, Stack, StackLayer } from "./stack.ts";
import { densityOf } from "./woods.ts";

/** What one part of a framed work weighs. */
export interface PartMass {
  readonly part: StackLayer["kind"] | "moulding" | "hardware";
  readonly mat: number | null;
  /** Kilograms. */
  readonly mass: number;
  /** "told": weighed or by a density with a source; "assumed": by one on the heavy side. */
  readonly by: "told" | "assumed";
}

export interface FrameMass {
  readonly parts: readonly PartMass[];
  /** Kilograms of the whole framed work. */
  readonly total: number;
}

/** Of paper, kilograms a cubic metre, where its weight is not told: on the heavy side, from memory. */
const PAPER = 1000;

/**
 * The framed work's whole weight, layer by layer, the moulding by its mass a metre along every rail from long point to long
 * point. Nothing is reckoned too light: what is not told has a density on the heavy side. `grams`: of the sheet; null: not known.
 */
export function massOf(frame: FrameFacts, sizes: FrameSizes, stack: Stack, grams: number | null): FrameMass {
  const parts = [
    ...stack.layers.map(
      (layer): PartMass => ({
        part: layer.kind,
        mat: layer.mat,
        ...layerMass(layer, frame, grams),
      }),
    ),
    { part: "moulding", mat: null, ...mouldingMass(frame, sizes, stack.depth) } as const,
    { part: "hardware", mat: null, mass: frame.habits.hardware, by: "assumed" } as const,
  ];
  return { parts, total: parts.reduce((total, { mass }) => total + mass, 0) };
}

const areaOf = ({ width, height }: Size): number => Math.max(0, width) * Math.max(0, height);

/** What one layer of a package weighs. `grams`: of the sheet; null: not known. */
export function layerMass(
  { kind, thickness, size, window }: StackLayer,
  { glazing, backing, habits }: PackageFacts,
  grams: number | null,
): Pick<PartMass, "mass" | "by"> {
  const area = areaOf(size) - (window === null ? 0 : Math.min(areaOf(size), areaOf(window)));
  const told = (perArea: number): Pick<PartMass, "mass" | "by"> => ({
    mass: (area / TICKS_PER_SQUARE_METRE) * perArea,
    by: "told",
  });
  const board: Pick<PartMass, "mass" | "by"> = {
    mass: paneMass(area, thickness, habits.boardDensity),
    by: "assumed",
  };
  switch (kind) {
    case "glazing":
      if (glazing === null) return board;
      return glazing.massPerArea === null
        ? { mass: paneMass(area, thickness, GLAZING_MATTER[glazing.kind].density), by: "told" }
        : told(glazing.massPerArea);
    case "backing":
      return backing === null || backing.massPerArea === null ? board : told(backing.massPerArea);
    case "print":
      return grams === null
        ? { mass: paneMass(area, thickness, PAPER), by: "assumed" }
        : { mass: grams / 1000, by: "told" };
    default:
      return board;
  }
}

/** Kilograms a metre of a moulding: as weighed, else its section's by its wood. `stack`: what its rabbet must take. */
export function massPerMetre(
  { profile, habits }: Pick<FrameFacts, "profile" | "habits">,
  stack: Length,
): Pick<PartMass, "mass" | "by"> {
  if (profile.massPerMetre !== null) return { mass: profile.massPerMetre, by: "told" };
  const { density, told } = densityOf(profile.wood);
  const depth = profile.depth ?? add(stack, habits.fittings);
  const section =
    areaOf({ width: profile.overall, height: add(depth, profile.lip) }) - profile.rabbet * depth;
  return {
    mass: (section / TICKS_PER_SQUARE_METRE) * density,
    by: told && profile.depth !== null ? "told" : "assumed",
  };
}

function mouldingMass(
  frame: FrameFacts,
  { outer }: FrameSizes,
  stack: Length,
): Pick<PartMass, "mass" | "by"> {
  const { mass, by } = massPerMetre(frame, stack);
  const metres = (2 * (outer.width + outer.height)) / TICKS_PER_METRE;
  return { mass: mass * metres, by };
}
