import type { Point } from "../geometry/index.ts";
import type { Length } from "../lengths/index.ts";

/**
 * One neutral drawing: marks on a sheet, in lengths of the sheet itself (a drawing at 1 : 4 has its
 * geometry divided already). No colour, no file format: a line has a kind, an area a fill, a text a
 * size. Each writer turns every kind into its own form and refuses what it cannot write.
 */
export interface Drawing {
  readonly width: Length;
  readonly height: Length;
  readonly marks: readonly Mark[];
}

/** Line kinds after ISO 128: the name says what it is, the writer knows how it looks. */
export type LineKind =
  /** 0.7: edge of a board, sheet or frame. */
  | "outline"
  /** 0.5: visible edge, cut, mark to cut. */
  | "edge"
  /** 0.25: dimension, extension, leader, fold, thin part. */
  | "thin"
  /** 0.18: hatching. */
  | "hatch"
  /** 0.25, dashes 3, gaps 0.75: hidden edge. */
  | "hidden"
  /** 0.25, chain 6, 0.75, dot, 0.75: centre, eye and level line. */
  | "centre"
  /** 0.25, long dash and two dots: the paper, a neighbouring part. */
  | "phantom"
  /** 0.9: under a paper's name. */
  | "rule-strong"
  /** 0.5: between bands. */
  | "rule"
  /** 0.25: between rows. */
  | "rule-thin"
  /** 1.2: least cover. */
  | "heavy";

/** What fills an area. "ink" is solid; "paper" is the sheet's ground (a clear field); the rest name the thing pictured. */
export type Fill =
  | "none"
  | "ink"
  | "paper"
  | "mat"
  | "mat-lower"
  | "bevel-head"
  | "bevel-left"
  | "bevel-right"
  | "bevel-foot"
  | "print-paper"
  | "image"
  /** The shade that a mat throws on what lies below it; only over other fills. */
  | "shadow"
  | "wood"
  | "glazing"
  | "mount"
  | "backing"
  | "hatch-out"
  | "hatch-section"
  | "hatch-waste"
  | "hatch-floor";

export type Weight = "light" | "regular" | "semibold" | "bold" | "black" | "italic";
export type Anchor = "start" | "middle" | "end";

/**
 * One run of text, or a figure standing in the line. A figure without a numerator is a whole (or
 * decimal) one; with it, a stacked fraction. A figure is never text to be read again.
 */
export type Run =
  | { readonly kind: "text"; readonly text: string; readonly weight?: Weight; readonly size?: Length }
  | {
      readonly kind: "fraction";
      readonly whole: string;
      readonly numerator: string;
      readonly denominator: string;
      readonly weight?: Weight;
      readonly size?: Length;
    };

export type Mark =
  | { readonly kind: "line"; readonly from: Point; readonly to: Point; readonly line: LineKind }
  | { readonly kind: "polyline"; readonly points: readonly Point[]; readonly line: LineKind }
  /** A closed area; `holes` are left open. `line` null: no outline. */
  | {
      readonly kind: "area";
      readonly points: readonly Point[];
      readonly holes?: readonly (readonly Point[])[];
      readonly fill: Fill;
      readonly line: LineKind | null;
    }
  | {
      readonly kind: "circle";
      readonly centre: Point;
      readonly radius: Length;
      readonly fill: Fill;
      readonly line: LineKind | null;
    }
  /** A filled arrowhead, its tip at `at`, pointing along `degrees` (0 to the right, clockwise). */
  | { readonly kind: "arrowhead"; readonly at: Point; readonly degrees: number; readonly size: Length }
  /** Text on its baseline at `at`; `size` is the em. Turned only where `degrees` says so. `onInk` prints in the ground's colour. `halo` clears the ground behind it. */
  | {
      readonly kind: "text";
      readonly at: Point;
      readonly runs: readonly Run[];
      readonly size: Length;
      readonly weight: Weight;
      readonly anchor: Anchor;
      readonly degrees?: number;
      readonly onInk?: boolean;
      readonly halo?: boolean;
    }
  /**
   * A picture that fills a box; `degrees` turns it clockwise about the box's own centre. `clip`, in the
   * drawing's lengths and not turned with it, trims it. `source` is a name that the writer resolves.
   */
  | {
      readonly kind: "picture";
      readonly source: string;
      readonly left: Length;
      readonly top: Length;
      readonly width: Length;
      readonly height: Length;
      readonly degrees?: number;
      readonly clip?: readonly Point[];
    }
  /** Marks that belong together under a name: a layer in DXF, a `g` in SVG, nothing in PDF. */
  | { readonly kind: "group"; readonly name: string; readonly marks: readonly Mark[] };

/** How wide a run of text is; given by whoever owns the font. */
export type MeasureText = (text: string, weight: Weight, size: Length) => Length;

/** What a layout must know of its type before anything is drawn; given by whoever owns the font. */
export interface Typeface {
  readonly measure: MeasureText;
  /** Whether the type holds a sign for this character (one code point). */
  readonly has: (character: string) => boolean;
}
