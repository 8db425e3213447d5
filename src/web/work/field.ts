import type { Design } from "../../assembly/index.ts";
import type { Length } from "../../lengths/index.ts";
import type { ComposeDocument } from "../../show/index.ts";
import type { Language } from "../../words/index.ts";
import type { Options } from "../../words/page.ts";
import { Speller } from "./document-of.ts";

/**
 * What stands behind each blank: how its value is read from the design, and how a new one is written
 * into the document. A design has every choice made, so that a blank also shows what the practice
 * says; a document keeps only what somebody said, as text with its unit.
 */
export type Field =
  | {
      readonly kind: "length";
      readonly read: (design: Design) => Length;
      readonly write: (document: ComposeDocument, design: Design, length: Length) => ComposeDocument;
    }
  | {
      readonly kind: "number";
      readonly unit: string;
      readonly step: number;
      readonly read: (design: Design) => number;
      readonly write: (document: ComposeDocument, design: Design, value: number) => ComposeDocument;
    }
  | {
      readonly kind: "choice";
      readonly options: (design: Design, language: Language) => Options<string>;
      readonly read: (design: Design) => string;
      readonly write: (document: ComposeDocument, design: Design, key: string) => ComposeDocument;
    }
  | {
      readonly kind: "text";
      readonly read: (design: Design) => string;
      readonly write: (document: ComposeDocument, text: string) => ComposeDocument;
    }
  | { readonly kind: "dialog" };

export type LengthField = Extract<Field, { kind: "length" }>;
export type ChoiceField = Extract<Field, { kind: "choice" }>;

export const spellerOf = (design: Design): Speller => new Speller(design.ruler.unit);

/** The option that a control's value names. A control offers no other. */
export function keyIn<Key extends string>(options: Options<Key>, value: string): Key {
  const option = options.find(({ key }) => key === value);
  if (option === undefined) throw new RangeError(`${value} is none of the choices`);
  return option.key;
}

export const choice = (
  options: ChoiceField["options"],
  read: ChoiceField["read"],
  write: ChoiceField["write"],
): ChoiceField => ({ kind: "choice", options, read, write });
