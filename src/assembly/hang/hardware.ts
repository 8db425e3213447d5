import type { HangCheck } from "./hanging.ts";
import { type Loads, STANDARD_GRAVITY } from "./statics.ts";

/** What of a hanging work is bought by its rated load. */
export const FITTING_USES = ["hook", "ring", "wire"] as const;
export type FittingUse = (typeof FITTING_USES)[number];

/** A fitting as it is sold or lies in the drawer. */
export interface Hardware {
  readonly name: string;
  readonly use: FittingUse;
  /** Kilograms that its maker rates it for. */
  readonly rated: number;
}

/** Which fitting each part of a work takes; null where none of its use is strong enough, or none is listed. */
export type ChosenHardware = Readonly<Record<FittingUse, Hardware | null>>;

/**
 * Of each use the weakest that is rated for `safety` times its load, so that no more is drilled than must
 * be. A use that the list knows, but not strong enough, is told by a check.
 */
export function chooseHardware(
  loads: Loads | null,
  safety: number,
  all: readonly Hardware[],
): { readonly chosen: ChosenHardware; readonly checks: readonly HangCheck[] } {
  const checks: HangCheck[] = [];
  const pick = (use: FittingUse): Hardware | null => {
    const load = loads?.[use] ?? null;
    const known = all.filter((one) => one.use === use);
    if (load === null || known.length === 0) return null;
    const needs = (load * safety) / STANDARD_GRAVITY;
    const strong = known.filter(({ rated }) => rated >= needs).toSorted((a, b) => a.rated - b.rated);
    const [first = null] = strong;
    if (first === null) checks.push({ level: "warn", code: "no-hardware", use, needs });
    return first;
  };
  return { chosen: { hook: pick("hook"), ring: pick("ring"), wire: pick("wire") }, checks };
}
