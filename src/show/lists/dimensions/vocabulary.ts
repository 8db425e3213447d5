import type { Part } from "./records.ts";

/** What one word of a label says. */
export type LabelWord =
  | { readonly says: "part"; readonly part: Part }
  /** The support under the support: what a print lies on. */
  | { readonly says: "secondary" }
  | { readonly says: "each" }
  /** The figure is no exact measure of the whole edge. */
  | { readonly says: "not-exact" }
  /** The record itself is not sure which part this is. */
  | { readonly says: "not-sure" }
  | { readonly says: "nothing" };

const part = (name: Part): LabelWord => ({ says: "part", part: name });
const EACH: LabelWord = { says: "each" };
const NOT_EXACT: LabelWord = { says: "not-exact" };
const NOTHING: LabelWord = { says: "nothing" };

/** The words that stand before or behind a size in the records of museums. */
export const LABEL_WORDS: ReadonlyMap<string, LabelWord> = new Map([
  ["image", part("image")],
  ["images", part("image")],
  ["composition", part("image")],
  ["plate", part("plate")],
  ["plates", part("plate")],
  ["platemark", part("plate")],
  ["sheet", part("sheet")],
  ["sheets", part("sheet")],
  ["support", part("sheet")],
  ["supports", part("sheet")],
  ["paper", part("sheet")],
  ["mount", part("mount")],
  ["mounts", part("mount")],
  ["mat", part("mount")],
  ["frame", part("frame")],
  ["frames", part("frame")],
  ["framed", part("frame")],
  ["object", part("object")],
  ["overall", part("whole")],
  ["unframed", part("whole")],
  ["confirmed", part("whole")],
  ["unconfirmed", { says: "not-sure" }],
  ["secondary", { says: "secondary" }],
  ["each", EACH],
  ["irregular", NOT_EXACT],
  ["irreg", NOT_EXACT],
  ["approximately", NOT_EXACT],
  ["approximate", NOT_EXACT],
  ["approx", NOT_EXACT],
  ["about", NOT_EXACT],
  ["circa", NOT_EXACT],
  ["ca", NOT_EXACT],
  ["c", NOT_EXACT],
  ["maximum", NOT_EXACT],
  ["max", NOT_EXACT],
  ["dimensions", NOTHING],
  ["measurements", NOTHING],
  ["size", NOTHING],
  ["primary", NOTHING],
  ["of", NOTHING],
  ["the", NOTHING],
]);

export type Axis = "height" | "width" | "depth";

export const AXES: ReadonlyMap<string, Axis> = new Map([
  ["h", "height"],
  ["ht", "height"],
  ["height", "height"],
  ["high", "height"],
  ["tall", "height"],
  ["w", "width"],
  ["wd", "width"],
  ["width", "width"],
  ["wide", "width"],
  ["d", "depth"],
  ["dp", "depth"],
  ["depth", "depth"],
  ["deep", "depth"],
]);

/** A weight may stand beside a size and says nothing about it. */
export const WEIGHTS: ReadonlySet<string> = new Set(["kg", "g", "lb", "lbs", "oz"]);
