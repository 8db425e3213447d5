/**
 * Forces on a hanging work, in newtons, from lengths in any one unit. A wire is a string without
 * stretch or friction, its hooks are points: a real wire sags a little more and pulls a little less.
 */

/** Standard gravity, metres per second squared: exact by definition (3rd CGPM, 1901). */
export const STANDARD_GRAVITY = 9.80665;

/** Kilograms to the pound, exactly (international yard and pound agreement, 1959). */
export const KILOGRAMS_PER_POUND = 0.45359237;

/** A taut wire seen from behind: half of it, from a ring up to its hook. */
export interface WireTriangle {
  /** Along the wire from a ring to its hook. */
  readonly slope: number;
  /** From a ring in towards its hook, level. */
  readonly run: number;
  /** From the rings up to the wire. */
  readonly rise: number;
}

/**
 * The triangle of a wire of length `wire` between rings `apart`, on hooks `hooksApart` (0: one hook).
 * Null where the wire is no longer than the way between the rings: it would never be taut.
 */
export function triangleOfLength(wire: number, apart: number, hooksApart: number): WireTriangle | null {
  const slope = (wire - hooksApart) / 2;
  const run = (apart - hooksApart) / 2;
  if (!(wire > apart && slope > Math.abs(run))) return null;
  // (slope - run)(slope + run) keeps its digits where the two are nearly alike.
  return { slope, run, rise: Math.sqrt((slope - run) * (slope + run)) };
}

/** The triangle of a wire that rises by `rise` when taut. The rise must be above nought. */
export function triangleOfRise(rise: number, apart: number, hooksApart: number): WireTriangle {
  const run = (apart - hooksApart) / 2;
  return { slope: Math.hypot(rise, run), run, rise };
}

/** The wire from ring to ring. */
export const wireOf = ({ slope }: WireTriangle, hooksApart: number): number => 2 * slope + hooksApart;

/** From the level up to the wire, degrees. */
export const angleOf = ({ rise, run }: WireTriangle): number => (Math.atan2(rise, run) * 180) / Math.PI;

/** What a weight does to its hooks, rings and wire; newtons. */
export interface Loads {
  /** Straight down on each hook. */
  readonly hook: number;
  /** On each ring and its screws. */
  readonly ring: number;
  /** Along the wire; null where there is none. */
  readonly wire: number | null;
  /** What pulls each side rail towards the other. */
  readonly inward: number;
  /** What pulls each hook towards the other; nought for one hook. */
  readonly sideways: number;
}

/** Tension in each of two ropes that carry `weight` at `angle` degrees from the level. Without limit as the angle goes to nought. */
export const tensionAt = (weight: number, angle: number): number =>
  weight / 2 / Math.sin((angle * Math.PI) / 180);

/** A weight on a wire over one hook or two. */
export function wireLoads(weight: number, triangle: WireTriangle, hooks: 1 | 2): Loads {
  const { slope, run, rise } = triangle;
  const tension = (weight / 2) * (slope / rise);
  const inward = tension * (run / slope);
  return {
    hook: weight / hooks,
    ring: tension,
    wire: tension,
    inward,
    sideways: hooks === 1 ? 0 : tension - inward,
  };
}

/** A weight straight on so many fixings, each taking an equal share. */
export const sharedLoads = (weight: number, fixings: number): Loads => ({
  hook: weight / fixings,
  ring: weight / fixings,
  wire: null,
  inward: 0,
  sideways: 0,
});
