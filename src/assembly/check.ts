import type { Side, Size } from "../geometry/index.ts";
import type { Length } from "../lengths/index.ts";

/** "stop": it cannot be made as asked. "warn": it can, and someone will be sorry. "note": worth knowing. */
export type Level = "stop" | "warn" | "note";

const WEIGHT: Readonly<Record<Level, number>> = { stop: 0, warn: 1, note: 2 };

/** Checks with the stops first, then the warnings, else in their order. */
export const stopsFirst = <One extends { readonly level: Level }>(checks: readonly One[]): One[] =>
  checks.toSorted((a, b) => WEIGHT[a.level] - WEIGHT[b.level]);

/** A problem or a thing worth knowing, as a record. `words` turns it into a sentence; nothing here is text. */
export type Check = { readonly level: Level } & CheckBody;

type CheckBody =
  /** The window passes the paper's edge: bare mount would show. `by` is how far. `sheet` names the sheet of an edition. */
  | {
      readonly code: "paper-ends";
      readonly side: Side;
      readonly by: Length;
      readonly sheet: string | null;
      /** A sheet to hinge the print to that is held all round. */
      readonly carrier: Size | null;
    }
  /** The paper reaches under the mat by `cover`, less than `hold`. */
  | {
      readonly code: "hold-short";
      readonly side: Side;
      readonly cover: Length;
      readonly hold: Length;
      readonly sheet: string | null;
      /** A sheet to hinge the print to that is held all round. */
      readonly carrier: Size | null;
    }
  /** The window is wider or higher than the outer size. */
  | { readonly code: "border-negative"; readonly side: Side; readonly border: Length; readonly mat: number }
  | {
      readonly code: "border-small";
      readonly side: Side;
      readonly border: Length;
      readonly least: Length;
      readonly mat: number;
    }
  /** Left and right (or the rule's head and foot) do not halve on this ruler. The extra lies at the front's right. */
  | { readonly code: "border-uneven"; readonly left: Length; readonly right: Length }
  /** Nothing would be left of the window. */
  | { readonly code: "window-gone"; readonly direction: "width" | "height"; readonly size: Length }
  /** The upper mat would cover the strip of the lower. */
  | { readonly code: "reveal-gone"; readonly mat: number; readonly asked: Length; readonly cut: Length }
  | { readonly code: "reveal-off"; readonly mat: number; readonly asked: Length; readonly cut: Length }
  /** No listed size is large enough; `width` and `height` are the least that would serve. */
  | { readonly code: "no-size"; readonly width: Length; readonly height: Length }
  /** The sheet is larger than the package on that side: it would have to be trimmed. Of an edition the one that goes furthest; null where that is the first. */
  | {
      readonly code: "sheet-past-board";
      readonly side: Side;
      readonly by: Length;
      readonly sheet: string | null;
    }
  /** The image lies skew; the sheet is turned on the mount so that the image hangs level. */
  | { readonly code: "sheet-turned"; readonly angle: number }
  /** The image lies skew and stays so: the sheet's own edge hangs level. */
  | { readonly code: "image-skew"; readonly angle: number }
  /** The window hides this share of the image's own area, from 0 to 1. */
  | { readonly code: "image-hidden"; readonly share: number }
  | { readonly code: "pocket-small"; readonly leg: Length; readonly least: Length }
  /** The whole sheet is in sight: pockets or strips would be too. */
  | { readonly code: "holding-shows"; readonly holding: "pockets" | "strips" }
  | {
      readonly code: "edition-outlier";
      /** Null: the first sheet, whose measures the design gives. */
      readonly sheet: string | null;
      readonly direction: "width" | "height";
      readonly part: "sheet" | "image";
      readonly size: Length;
      readonly median: Length;
    };

export type CheckCode = Check["code"];
