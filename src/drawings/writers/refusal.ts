/** Why a writer does not write a drawing. A record, no sentence. */
export type WriterFault =
  /** A kind of mark that this writer does not know. */
  | { readonly code: "unknown-mark"; readonly kind: string }
  /** The file format has no form for it: a picture, a filled area. */
  | { readonly code: "cannot-write"; readonly kind: string; readonly fill: string | null }
  /** A picture whose name nobody resolves. */
  | { readonly code: "no-picture"; readonly source: string }
  /** A character that has no place in a text: `at` is its index. */
  | { readonly code: "control-character"; readonly text: string; readonly at: number };

/** Thrown by a writer instead of leaving something out: a drawing is written whole or not at all. */
export class WriterRefusal extends RangeError {
  readonly fault: WriterFault;

  constructor(fault: WriterFault) {
    super(`this drawing cannot be written: ${JSON.stringify(fault)}`);
    this.name = "WriterRefusal";
    this.fault = fault;
  }
}

// Controls, unpaired surrogates and the two code points that no XML may hold.
const NO_TEXT = /[\p{Cc}\p{Cs}\ufffe\uffff]/u;

/** The same text, or a refusal where it holds a control character. */
export function plainText(text: string): string {
  const at = text.search(NO_TEXT);
  if (at >= 0) throw new WriterRefusal({ code: "control-character", text, at });
  return text;
}
