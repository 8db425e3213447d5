import { type Length, ZERO } from "../../lengths/index.ts";
import type { Composition } from "../composition.ts";
import type { HoldPlan } from "../hold/index.ts";
import { type PackageFacts, stackOf, stripWidth } from "./stack.ts";
import { layerMass } from "./weight.ts";

/** A closed package without a frame round it. */
export interface ClosedPackage {
  readonly depth: Length;
  /** Kilograms, rather too much than too little. */
  readonly mass: number;
}

/**
 * Mats, print, mount and whatever the print lies in, with glazing and backing where it has them, lying on each other as
 * they do in a frame. The spacers of a float are as wide as the mat hides: nothing narrower weighs more. `held` null: the
 * print lies flat, and what its sheet weighs is not known.
 */
export function closedPackage(
  composition: Composition,
  layers: Omit<PackageFacts, "spacer">,
  held: HoldPlan | null,
): ClosedPackage {
  const facts: PackageFacts = { ...layers, spacer: ZERO };
  const borders = composition.mats[0]?.borders;
  const strip = borders === undefined ? ZERO : stripWidth(borders, composition.design.ruler.graduation);
  const stack = stackOf(composition, facts, held?.bed, strip);
  const masses = stack.layers.map((layer) => layerMass(layer, facts, held?.grams ?? null).mass);
  return { depth: stack.depth, mass: masses.reduce((total, mass) => total + mass, 0) };
}
