import type { Box, Outline, Size } from "../geometry/index.ts";
import type { Length, Ruler } from "../lengths/index.ts";

/** What is to be made of one work: every choice taken, no default left open. The document form is in `show/`. */
export interface Design {
  readonly ruler: Ruler;
  /** Absent only beside a typed window: a mat without a print. */
  readonly print: Print | null;
  readonly window: WindowRule;
  /** The mat must lie on the paper by at least this much, every side; `print.sure` comes on top. */
  readonly hold: Length;
  /** Total slack of the sheet across a corner, taken once off a pocket. */
  readonly play: Length;
  readonly outer: OuterRule;
  readonly lift: LiftRule;
  readonly holding: Holding;
  /** The board that the print is mounted on, as it is called in the rack. */
  readonly mount: string;
  /** From the lowest (next to the print) up; at least one. */
  readonly mats: readonly MatRule[];
  /** A border narrower than this is warned about. */
  readonly leastBorder: Length;
  /** A pocket with a shorter leg than this does not hold: strips or hinges are advised. */
  readonly leastPocket: Length;
  /** Sheets of one edition whose sides differ from the median by more than this are named. */
  readonly editionSpread: Length;
  /** What this bench's cutter must read for a border to come out as set: setting + offset. Nought until test cuts are known. */
  readonly scaleOffset: Length;
}

/** A print on its sheet, in the sheet frame: origin the sheet's top-left corner, seen from the front. */
export interface Print {
  readonly sheet: Size;
  /** The image as it would lie at angle 0. */
  readonly image: Box;
  /** The image's own edge, as it lies; it wins over `image`. */
  readonly outline: Outline | null;
  /** The torn or deckled edge of the sheet, as it lies. */
  readonly sheetOutline: Outline | null;
  /** Degrees clockwise, seen from the front, that the image is turned about its own centre on the sheet. */
  readonly angle: number;
  /** Level the image (turning the sheet on the mount) or the sheet (leaving the image skew). A floated sheet is always level. */
  readonly level: "image" | "sheet";
  readonly thickness: Length;
  /** How sure the measures are; added to `hold`. */
  readonly sure: Length;
  /** Further sheets of an edition that share the design. The print itself is not among them. */
  readonly edition: readonly EditionSheet[];
}

export interface EditionSheet {
  readonly name: string;
  readonly sheet: Size;
  readonly image: Box;
}

export type WindowRule =
  | { readonly show: "overlap"; readonly overlap: Length }
  | { readonly show: "margins"; readonly top: Length; readonly side: Length; readonly foot: Length }
  | { readonly show: "sheet"; readonly gap: Length }
  | { readonly show: "typed"; readonly width: Length; readonly height: Length };

export interface BordersAsked {
  readonly head: Length;
  readonly side: Length;
  readonly foot: Length;
}

export type OuterRule =
  | { readonly kind: "size"; readonly width: Length; readonly height: Length }
  | { readonly kind: "borders"; readonly borders: BordersAsked; readonly standard: readonly Size[] | null }
  | {
      readonly kind: "smallest";
      readonly sizes: readonly Size[];
      readonly border: Length;
      /** Whether the whole sheet must lie within the package too, not only the borders be wide enough. */
      readonly holdsSheet: boolean;
    };

/** A ratio is held exactly: foot / head = over / under. */
export interface Ratio {
  readonly over: bigint;
  readonly under: bigint;
}

export type LiftRule =
  | { readonly rule: "none" }
  | { readonly rule: "fixed"; readonly by: Length }
  | { readonly rule: "ratio"; readonly foot: Ratio }
  | { readonly rule: "optical" };

export interface MatRule {
  readonly thickness: Length;
  /** Degrees between the cut and the board's face, above 0 and at most 90 (a square cut). */
  readonly bevel: number;
  /** The flat strip of the mat below that this mat leaves in sight; nought for the lowest. */
  readonly reveal: Length;
  /** What it is cut from, as it is called in the rack: "4-ply white rag". */
  readonly board: string;
}

/** What holds the print on its mount. */
export type Holding = "pockets" | "hinges" | "strips";
