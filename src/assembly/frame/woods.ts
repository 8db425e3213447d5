import type { Known } from "../hold/index.ts";

/** One wood, as far as published tables tell it. */
export interface Wood {
  readonly name: string;
  /** Specific gravity at 12 % moisture content; null: in no table here. */
  readonly gravity: number | null;
  readonly gravityKnown: Known;
  /** Change of width for each percent of moisture content: quarter-sawn, then flat-sawn. Null: in no table here. */
  readonly radial: number | null;
  readonly tangential: number | null;
}

const wood = (
  name: string,
  gravity: number | null,
  radial: number | null,
  tangential: number | null,
  gravityKnown: Known = "second-hand",
): Wood => ({ name, gravity, gravityKnown, radial, tangential });

/**
 * Dimensional change coefficients: USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190 (2010), table 13-5,
 * p. 13-16 (white fir's tangential one is from memory, beside the worked example on p. 13-15). Specific gravities of
 * hardwoods: the handbook's strength table as re-tabulated by others; of softwoods: US Army TM 5-852-4, table 2-2.
 * Eastern white pine, yellow-poplar and black walnut: from memory.
 */
export const WOODS = [
  wood("red alder", 0.41, 0.00151, 0.00256),
  wood("quaking aspen", 0.38, 0.00119, 0.00234),
  wood("white ash", 0.6, 0.00169, 0.00274),
  wood("basswood", 0.37, 0.0023, 0.0033),
  wood("beech", 0.64, 0.0019, 0.00431),
  wood("yellow birch", 0.62, 0.00256, 0.00338),
  wood("butternut", 0.38, 0.00116, 0.00223),
  wood("black cherry", 0.5, 0.00126, 0.00248),
  wood("chestnut", 0.43, 0.00116, 0.00234),
  wood("red maple", 0.54, 0.00137, 0.00289),
  wood("sugar maple", 0.63, 0.00165, 0.00353),
  wood("red oak", 0.63, 0.00158, 0.00369),
  wood("white oak", 0.68, 0.0018, 0.00365),
  wood("sweetgum", null, 0.00183, 0.00365),
  wood("sycamore", null, 0.00172, 0.00296),
  wood("black walnut", 0.55, 0.0019, 0.00274, "from memory"),
  wood("white fir", 0.37, 0.00112, 0.00245),
  wood("Douglas-fir", 0.48, null, null),
  wood("western hemlock", 0.48, null, null),
  wood("loblolly pine", 0.51, null, null),
  wood("lodgepole pine", 0.41, null, null),
  wood("ponderosa pine", 0.4, null, null),
  wood("eastern white pine", 0.35, null, null, "from memory"),
  wood("Sitka spruce", 0.4, null, null),
  wood("Engelmann spruce", 0.34, null, null),
  wood("yellow-poplar", 0.42, null, null, "from memory"),
] as const;

export const WOOD_NAMES = WOODS.map(({ name }) => name);

/** The wood of that name; null: in no table here. */
export const woodNamed = (name: string): Wood | null => WOODS.find((one) => one.name === name) ?? null;

/** The heaviest of the tables, which stands in where nothing is told: a load must not be reckoned too small. */
const HEAVIEST = Math.max(...WOODS.map(({ gravity }) => gravity ?? 0));

/**
 * Kilograms a cubic metre at 12 % moisture content: 1000 × specific gravity × 1.12 (the formula from memory; white ash
 * comes to 672, and a lexicon's 42 lb a cubic foot agrees).
 */
export const woodDensity = (gravity: number): number => 1000 * gravity * 1.12;

/** A wood's density where it is told, else that of the heaviest. */
export const densityOf = (of: Wood | null): { readonly density: number; readonly told: boolean } => ({
  density: woodDensity(of?.gravity ?? HEAVIEST),
  told: of !== null && of.gravity !== null,
});

/** Moisture contents, percent, within which the handbook's coefficients hold. */
export const COEFFICIENTS_HOLD = { from: 6, to: 14 } as const;

/** By how much a width changes between two moisture contents in percent: width × coefficient × (to - from) (Wood Handbook, equation 13-2). In the unit of `width`. */
export const widthChange = (width: number, coefficient: number, from: number, to: number): number =>
  width * coefficient * (to - from);

/**
 * The moisture content, percent, that wood comes to in air of this relative humidity, percent, and this temperature in
 * degrees Celsius (W. Simpson, FPL-RN-0268; its coefficients from memory, its examples within 0.2).
 */
export function equilibriumMoisture(humidity: number, celsius = 21.1): number {
  const t = (celsius * 9) / 5 + 32;
  const h = humidity / 100;
  const w = 330 + 0.452 * t + 0.00415 * t * t;
  const k = 0.791 + 4.63e-4 * t - 8.44e-7 * t * t;
  const k1 = 6.34 + 7.75e-4 * t - 9.35e-5 * t * t;
  const k2 = 1.09 + 2.84e-2 * t - 9.04e-5 * t * t;
  const kh = k * h;
  return (1800 / w) * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh));
}
