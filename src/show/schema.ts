import * as z from "zod/mini";
import { GUIDANCE_NAMES, SENSITIVITIES } from "../assembly/index.ts";
import {
  backingDocument,
  framesDocument,
  framingDocument,
  glazingDocument,
  mouldingDocument,
  workFrameDocument,
} from "./frame-schema.ts";
import { fittingDocument, framedDocument, hangingHabits, wallDocument } from "./hang-schema.ts";
import { heldDocument, heldHabits } from "./held-schema.ts";
import { moneyHabits } from "./money-schema.ts";
import { packingHabits } from "./packing-schema.ts";
import { recordDocument } from "./record-schema.ts";

/**
 * The open file format: one schema for the command line, the server, the page and the JSON Schema
 * that is published from it. It knows shapes only; what a text means as a length is read in
 * `reading.ts`, where the document's unit is known.
 */

/** A length as people write it, or a bare number in the document's unit. */
const length = z.union([z.string(), z.number()]);
const point = z.tuple([length, length]);
const size = z.object({ width: length, height: length });
const image = z.object({ left: length, top: length, width: length, height: length });
const editionSheet = z.object({
  name: z.optional(z.string()),
  width: length,
  height: length,
  image: z.optional(image),
});

const UNITS = ["in", "mm"] as const;
const SIZE_LISTS = ["inch", "metric", "iso"] as const;
const HOLDINGS = ["pockets", "hinges", "strips"] as const;

const sizeList = z.union([
  z.enum(SIZE_LISTS),
  z.array(z.union([z.string(), z.tuple([length, length]), size])).check(z.minLength(1), z.maxLength(1000)),
]);

const print = z.object({
  width: z.optional(length),
  height: z.optional(length),
  image: z.optional(image),
  outline: z.optional(z.array(point).check(z.maxLength(20_000))),
  sheetOutline: z.optional(z.array(point).check(z.maxLength(20_000))),
  angle: z.optional(z.number()),
  level: z.optional(z.enum(["image", "sheet"])),
  thickness: z.optional(length),
  process: z.optional(z.string()),
  sure: z.optional(length),
  edition: z.optional(z.array(editionSheet).check(z.maxLength(1000))),
});

const window = z.discriminatedUnion("show", [
  z.object({ show: z.literal("overlap"), overlap: z.optional(length) }),
  z.object({
    show: z.literal("margins"),
    top: z.optional(length),
    side: z.optional(length),
    foot: z.optional(length),
  }),
  z.object({ show: z.literal("sheet"), gap: z.optional(length) }),
  z.object({ show: z.literal("typed"), width: length, height: length }),
]);

const borders = z.object({ head: length, side: length, foot: length });
const outer = z.union([
  z.object({ width: length, height: length }),
  z.object({ borders, standard: z.optional(sizeList) }),
  z.object({
    smallest: sizeList,
    border: z.optional(length),
    /** Only a size that the whole sheet lies within; false where absent. */
    holdsSheet: z.optional(z.boolean()),
  }),
]);

const lift = z.discriminatedUnion("rule", [
  z.object({ rule: z.literal("none") }),
  z.object({ rule: z.literal("fixed"), by: z.optional(length) }),
  z.object({ rule: z.literal("ratio"), foot: z.number() }),
  z.object({ rule: z.literal("optical") }),
]);

const mat = z.object({
  thickness: z.optional(length),
  bevel: z.optional(z.number()),
  reveal: z.optional(length),
  board: z.optional(z.string()),
});

/** One work's design, as `margent compose` reads it. All but a print or a typed window has a default in the practice. */
export const composeDocument = z.object({
  unit: z.optional(z.enum(UNITS)),
  graduation: z.optional(length),
  print: z.optional(print),
  window: z.optional(window),
  hold: z.optional(length),
  play: z.optional(length),
  holding: z.optional(z.enum(HOLDINGS)),
  /** What is known for its holding; with it, a composed work says how it is held. */
  held: z.optional(heldDocument),
  /** The board that the print is mounted on; the practice's, else that of the lowest mat. */
  mount: z.optional(z.string()),
  outer: z.optional(outer),
  lift: z.optional(lift),
  mats: z.optional(z.array(mat).check(z.minLength(1), z.maxLength(8))),
});

/** Days in the light: from and to, ISO 8601 and both counted, open so many hours a day on so many days a week. */
const litDays = z.object({
  from: z.string(),
  to: z.string(),
  /** `50`, `50 lx` or `5 fc`. */
  lux: z.union([z.string(), z.number()]),
  hours: z.number(),
  days: z.optional(z.number()),
});

const workLight = z.object({
  sensitivity: z.optional(z.enum(SENSITIVITIES)),
  /** What the work hung in before, in whatever frame. */
  before: z.optional(z.array(litDays).check(z.maxLength(1000))),
});

const hangingLight = z.extend(litDays, {
  /** Absent: from the show's date. */
  from: z.optional(z.string()),
  /** Microwatts a lumen, as measured on the wall. */
  ultraviolet: z.optional(z.number()),
});

/** A work: what it is, and its design. */
export const workDocument = z.object({
  id: z.optional(z.string()),
  title: z.string(),
  maker: z.optional(z.string()),
  year: z.optional(z.string()),
  process: z.optional(z.string()),
  /** "4 / 12", as it is written on the sheet. */
  edition: z.optional(z.string()),
  quantity: z.optional(z.number()),
  /** A file name beside the show's document, or an address the page can load. */
  picture: z.optional(z.string()),
  notes: z.optional(z.string()),
  /** Columns of a list that this format has no place for, kept as they came. */
  more: z.optional(z.record(z.string(), z.string())),
  light: z.optional(workLight),
  record: z.optional(recordDocument),
  frame: z.optional(workFrameDocument),
  /** The name of the wall that it hangs on. */
  wall: z.optional(z.string()),
  /** The title of a work that it hangs beside, or a name that a set shares. */
  with: z.optional(z.string()),
  hang: z.optional(fittingDocument),
  framed: z.optional(framedDocument),
  design: composeDocument,
});

/** A studio's own habits: every default that a design may leave open. */
export const practiceDocument = z.object({
  unit: z.optional(z.enum(UNITS)),
  graduation: z.optional(length),
  overlap: z.optional(length),
  margins: z.optional(z.object({ top: length, side: length, foot: length })),
  gap: z.optional(length),
  hold: z.optional(length),
  play: z.optional(length),
  holding: z.optional(z.enum(HOLDINGS)),
  held: z.optional(heldHabits),
  lift: z.optional(lift),
  outer: z.optional(outer),
  mats: z.optional(z.array(mat).check(z.minLength(1), z.maxLength(8))),
  printThickness: z.optional(length),
  leastBorder: z.optional(length),
  leastPocket: z.optional(length),
  editionSpread: z.optional(length),
  scaleOffset: z.optional(length),
  scaleTested: z.optional(z.string()),
  hand: z.optional(z.enum(["right", "left"])),
  overrun: z.optional(length),
  squaringTrim: z.optional(length),
  /** The board that prints are mounted on; absent: each on the board of its lowest mat. */
  mount: z.optional(z.string()),
  /** What stands behind the mount, what stands before the mat, and the frame; absent: none is planned. */
  backing: z.optional(backingDocument),
  glazing: z.optional(glazingDocument),
  moulding: z.optional(mouldingDocument),
  /** Kinds of frame that a work may name, and how all of them are made. */
  frames: z.optional(framesDocument),
  framing: z.optional(framingDocument),
  /** Prices of small parts and of work, and minutes; absent: none is reckoned. */
  money: z.optional(moneyHabits),
  /** Crates for the road, boxes for the store. */
  packing: z.optional(packingHabits),
  /** How its works are hung. */
  hanging: z.optional(hangingHabits),
  /** Whose limits of light are kept. */
  lightGuidance: z.optional(z.enum(GUIDANCE_NAMES)),
  paper: z.optional(z.enum(["a4", "letter"])),
  language: z.optional(z.enum(["en-US", "en-GB"])),
  studio: z.optional(z.string()),
});

const stockSheet = z.object({
  name: z.string(),
  width: length,
  height: length,
  cost: z.optional(z.number()),
  copies: z.optional(z.nullable(z.number())),
  trim: z.optional(length),
  /** The board it is a sheet of. Absent: bought sheets serve for any board, the few of a rack for the practice's own. */
  board: z.optional(z.string()),
  /** Sold in packs too, or in packs only where it has no cost of its own. */
  pack: z.optional(z.object({ of: z.number(), cost: z.number() })),
});

const stockLength = z.object({
  name: z.string(),
  length,
  cost: z.optional(z.number()),
  copies: z.optional(z.nullable(z.number())),
  /** The moulding it is a length of; absent: the practice's. */
  moulding: z.optional(z.string()),
});

/** What lies in the rack and what can be bought. */
export const stockDocument = z.object({
  unit: z.optional(z.enum(UNITS)),
  currency: z.optional(z.string()),
  /** The day on which its prices held, ISO 8601. */
  date: z.optional(z.string()),
  sheets: z.array(stockSheet).check(z.maxLength(10_000)),
  /** Moulding. */
  lengths: z.optional(z.array(stockLength).check(z.maxLength(1000))),
  least: z.optional(z.tuple([length, length])),
  longestCut: z.optional(length),
});

/** Blanks that are cut already: they are not planned again. */
const cutBlank = z.object({
  /** The id of the work that they are for, or its title where it has none. */
  work: z.string(),
  board: z.string(),
  width: length,
  height: length,
  /** How many; 1 where absent. */
  count: z.optional(z.number()),
});

export const SHOW_VERSION = 1;

/** A whole show: the document people keep. */
export const showDocument = z.object({
  format: z.literal("margent-show"),
  version: z.number(),
  name: z.string(),
  room: z.optional(z.string()),
  /** The hanging date, ISO 8601. */
  date: z.optional(z.string()),
  /** The light that it hangs in. */
  light: z.optional(hangingLight),
  /** Kinds of frame of this show; they win over the practice's of the same name. */
  frames: z.optional(framesDocument),
  walls: z.optional(z.array(wallDocument).check(z.maxLength(200))),
  practice: z.optional(practiceDocument),
  stock: z.optional(stockDocument),
  cut: z.optional(z.array(cutBlank).check(z.maxLength(100_000))),
  works: z.array(workDocument).check(z.maxLength(100_000)),
});

export type ComposeDocument = z.infer<typeof composeDocument>;
export type WorkDocument = z.infer<typeof workDocument>;
export type PracticeDocument = z.infer<typeof practiceDocument>;
export type StockDocument = z.infer<typeof stockDocument>;
export type CutBlankDocument = z.infer<typeof cutBlank>;
export type WorkLightDocument = z.infer<typeof workLight>;
export type HangingLightDocument = z.infer<typeof hangingLight>;
export type ShowDocument = z.infer<typeof showDocument>;

/** The JSON Schema of a document, made from the code that validates it. */
export const jsonSchemaOf = (schema: z.ZodMiniType): object =>
  z.toJSONSchema(schema, { target: "draft-2020-12" });
