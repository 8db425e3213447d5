/** The part of the open document that the reference reads. Lengths are as people write them. */
export type Written = string | number;
export interface Size {
  readonly width: Written;
  readonly height: Written;
}
export type SizeList = "inch" | "metric" | "iso" | readonly Size[];

export type Window =
  | { readonly show: "overlap"; readonly overlap: Written }
  | { readonly show: "margins"; readonly top: Written; readonly side: Written; readonly foot: Written }
  | { readonly show: "sheet"; readonly gap: Written }
  | { readonly show: "typed"; readonly width: Written; readonly height: Written };

export type Outer =
  | Size
  | {
      readonly borders: { readonly head: Written; readonly side: Written; readonly foot: Written };
      readonly standard?: SizeList;
    }
  | { readonly smallest: SizeList; readonly border: Written };

export type Lift =
  | { readonly rule: "none" }
  | { readonly rule: "fixed"; readonly by: Written }
  | { readonly rule: "ratio"; readonly foot: number }
  | { readonly rule: "optical" };

export interface Mat {
  readonly thickness: Written;
  readonly bevel: number;
  readonly reveal?: Written;
}

export interface Print extends Size {
  readonly image?: Size & { readonly left: Written; readonly top: Written };
  readonly angle?: number;
  readonly sure?: Written;
  /** The rectangle of the sheet that is certainly paper; absent where that is all of it. */
  readonly paper?: Size & { readonly left: Written; readonly top: Written };
}

/** A design with nothing left to a practice's habits. */
export interface Design {
  readonly unit: "in" | "mm";
  readonly graduation: Written;
  readonly print?: Print;
  readonly window: Window;
  readonly hold: Written;
  readonly play: Written;
  readonly outer: Outer;
  readonly lift?: Lift;
  readonly mats: readonly Mat[];
}
