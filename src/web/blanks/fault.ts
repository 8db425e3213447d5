import { type Length, type LengthFault, readLength, type Unit } from "../../lengths/index.ts";
import type { Problem } from "../../show/index.ts";

/** Why a blank's text was not kept. */
export type BlankFault =
  | { readonly code: "length"; readonly fault: LengthFault; readonly typed: string }
  | { readonly code: "not-a-number"; readonly typed: string }
  /** It reads, and the design cannot take it. */
  | { readonly code: "refused"; readonly problem: Problem }
  /** It reads, and cannot be: what is wanted instead, in words. */
  | { readonly code: "wanted"; readonly wanted: string };

/** Lengths that may have been meant. */
export function meantBy(fault: BlankFault, unit: Unit): readonly Length[] {
  if (fault.code !== "length" || !("meant" in fault.fault)) return [];
  return fault.fault.meant.flatMap((text) => {
    const read = readLength(text, unit);
    return read.ok ? [read.length] : [];
  });
}
