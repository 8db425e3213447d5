import type { Length } from "../../lengths/index.ts";
import type { Options } from "../../words/page.ts";

/** What stands behind a blank of a document that is not a work's design: how it is read, and the document that it writes. */
export type DocumentField<Said, Next> =
  | {
      readonly kind: "length";
      readonly read: (said: Said) => Length;
      /** `text` is the length as a document keeps it. */
      readonly write: (said: Said, text: string, length: Length) => Next;
    }
  | {
      readonly kind: "number";
      readonly unit: string;
      readonly step: number;
      readonly read: (said: Said) => number;
      readonly write: (said: Said, value: number) => Next;
    }
  | {
      readonly kind: "choice";
      readonly options: (said: Said) => Options<string>;
      readonly read: (said: Said) => string;
      readonly write: (said: Said, key: string) => Next;
    }
  | {
      readonly kind: "text";
      readonly read: (said: Said) => string;
      readonly write: (said: Said, text: string) => Next;
    };
