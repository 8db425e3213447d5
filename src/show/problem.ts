import type { LengthFault } from "../lengths/index.ts";

/**
 * Something in a document that could not be taken: where it stands, what was found there, and what is
 * wanted, as a record. `words` says it.
 */
export interface Problem {
  /** The path in the document, `print.image.width`; empty for the document itself. */
  readonly field: string;
  readonly found: string;
  readonly wanted: Wanted;
}

export type Wanted =
  | { readonly kind: "length"; readonly fault: LengthFault }
  /** A length above nought. */
  | { readonly kind: "size" }
  | {
      readonly kind: "number";
      readonly above: number;
      readonly to: number;
      readonly what: "degrees" | "ratio" | "count";
    }
  | { readonly kind: "one-of"; readonly options: readonly string[] }
  | { readonly kind: "type"; readonly expected: string }
  /** One of the shapes that an outer size may take. */
  | { readonly kind: "outer-shape" }
  | { readonly kind: "size-list" }
  /** A rabbet narrower than its moulding. */
  | { readonly kind: "below-overall" }
  | { readonly kind: "print-or-window" }
  | { readonly kind: "outline"; readonly fault: "few-points" | "crosses-itself" }
  | { readonly kind: "at-most"; readonly most: number }
  | { readonly kind: "at-least"; readonly least: number }
  /** Limits in their order: a most that is not below its least, a lift between its own. */
  | { readonly kind: "between"; readonly what: "border" | "lift" }
  /** An ISO 8601 date, not before another where `after` names one. */
  | { readonly kind: "date"; readonly after: string | null }
  | { readonly kind: "illuminance" }
  | { readonly kind: "grammage" }
  /** Percent, the drier first. */
  | { readonly kind: "humidity" }
  /** Something written like one of these. */
  | { readonly kind: "like"; readonly examples: readonly string[] }
  /** Less than is left of a hinge's tab. */
  | { readonly kind: "below-tab" }
  | { readonly kind: "json" }
  | { readonly kind: "version"; readonly reads: number };

/** A text found is told up to so many signs. */
const MOST_SIGNS = 60;

/** What was found, short enough to be said. */
export function foundText(value: unknown): string {
  if (value === undefined) return "nothing";
  const text = typeof value === "string" ? value : (JSON.stringify(value) ?? String(value));
  const printable = text.replace(/[\p{Cc}\p{Cf}\p{Cs}]/gu, "\uFFFD");
  if (printable.length <= MOST_SIGNS) return printable;
  // Never half of a sign that takes two places.
  const cut = printable.slice(0, MOST_SIGNS - 3).replace(/[\uD800-\uDBFF]$/, "");
  return `${cut}…`;
}
