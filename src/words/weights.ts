import { NBSP } from "./plain.ts";

/** Standard gravity, and kilograms to the pound: exact by definition. */
const KILOGRAM_FORCE = 9.80665;
const POUND = 0.45359237;

/** Up to so many decimals, since what holds a load must hold all of it; a double's own error is not a step more. */
export const roundedUp = (value: number, decimals: number): number =>
  Math.ceil(value * 10 ** decimals - 1e-6) / 10 ** decimals;

/** A mass as it stands in a sentence: to the tenth of a kilogram, and in pounds. */
export const sayMass = (kilograms: number): string =>
  `${roundedUp(kilograms, 1)} kg (${roundedUp(kilograms / POUND, 0)} lb)`;

/** The same where no line breaks within it. */
export const massWords = (mass: number): string => sayMass(mass).replaceAll(" ", NBSP);

/** A force as what it would weigh, with newtons beside it. */
export const sayForce = (newtons: number): string =>
  `${roundedUp(newtons / KILOGRAM_FORCE, 1)} kg (${roundedUp(newtons, 1)} N)`;

/** What a force would weigh, for a paper: always with its tenth. */
export const kilograms = (newtons: number): string =>
  `${roundedUp(newtons / KILOGRAM_FORCE, 1).toFixed(1)}${NBSP}kg`;

export const newtonsWords = (newtons: number): string => `${roundedUp(newtons, 1).toFixed(1)}${NBSP}N`;
