import { fromReal, type Length, TICKS_PER_METRE } from "../../lengths/index.ts";
import type { HumidityRange } from "../hold/index.ts";

export type GlazingKind = "glass" | "acrylic";

/** What a sheet of glazing is, as data pages have it. */
export interface GlazingMatter {
  /** Kilograms a cubic metre. */
  readonly density: number;
  /** Of its size, for each kelvin. */
  readonly warmth: number;
  /** Percent of its size by which it has grown at each relative humidity in percent, from dry on; empty: not at all. */
  readonly damp: readonly (readonly [humidity: number, percent: number])[];
}

/**
 * Soda-lime float glass: 2500 kg/m³ and 9e-6 a kelvin (EN 572-1, as data pages quote it). Acrylic: 1190 kg/m³
 * (plastics data pages), 0.000040 a degree Fahrenheit, which is 7.2e-5 a kelvin (ASTM D696), and with damp 0.2 % at
 * 60 %, 0.3 % at 80 % and 0.6 % at 100 % relative humidity (a maker's sheet, extruded); evenly between those: common
 * practice, no source.
 */
export const GLAZING_MATTER: Readonly<Record<GlazingKind, GlazingMatter>> = {
  glass: { density: 2500, warmth: 9e-6, damp: [] },
  acrylic: {
    density: 1190,
    warmth: 7.2e-5,
    damp: [
      [0, 0],
      [60, 0.2],
      [80, 0.3],
      [100, 0.6],
    ],
  },
};

/** Degrees Celsius, the colder first. */
export interface TemperatureRange {
  readonly from: number;
  readonly to: number;
}

/** What the air may do where a framed work hangs. */
export interface Air {
  readonly temperature: TemperatureRange;
  /** Null: not told, as indoors. */
  readonly humidity: HumidityRange | null;
}

/** Percent, where nothing is told. Common practice, no source. */
export const USUAL_HUMIDITY: HumidityRange = { from: 30, to: 60 };

/** By how much a sheet grows for so many kelvin. In the unit of `size`. */
export const grownByWarmth = (size: number, coefficient: number, kelvin: number): number =>
  size * coefficient * kelvin;

/** How much a sheet of glazing may grow or shrink between the coldest, driest air and the warmest, dampest; up to the next tick. */
export function glazingGrows(size: Length, kind: GlazingKind, { temperature, humidity }: Air): Length {
  const { warmth, damp } = GLAZING_MATTER[kind];
  const { from, to } = humidity ?? USUAL_HUMIDITY;
  const share = (dampShare(damp, to) - dampShare(damp, from)) / 100;
  return fromReal(grownByWarmth(size, warmth, temperature.to - temperature.from) + size * share, "up");
}

/** Percent at a humidity, evenly between two that are known. */
function dampShare(damp: GlazingMatter["damp"], humidity: number): number {
  for (const [index, [at, percent]] of damp.entries()) {
    if (humidity > at) continue;
    const [before, less] = damp[index - 1] ?? [at, percent];
    return at === before ? percent : less + ((percent - less) * (humidity - before)) / (at - before);
  }
  return damp.at(-1)?.[1] ?? 0;
}

/** Kilograms of a sheet, of its size in ticks and thickness, by its density. */
export const paneMass = (area: number, thickness: Length, density: number): number =>
  (area / TICKS_PER_SQUARE_METRE) * (thickness / TICKS_PER_METRE) * density;

export const TICKS_PER_SQUARE_METRE = TICKS_PER_METRE * TICKS_PER_METRE;
