import * as z from "zod/mini";
import { MOST_SIZES, MOST_WORKS } from "../plans/index.ts";

/** A length as people write it, or a bare number in the document's unit. */
const length = z.union([z.string(), z.number()]);

const seriesSize = z.object({
  name: z.optional(z.string()),
  width: length,
  height: length,
  /** What one work of this size costs in board. */
  cost: z.number(),
});

const seriesWork = z.object({
  title: z.optional(z.string()),
  /** The window at the back of the lowest mat. */
  width: length,
  height: length,
  /** How many there are; 1 where absent. */
  n: z.optional(z.number()),
  /** How far the paper reaches past the window: no border may be narrower. */
  reach: z.optional(z.object({ head: length, left: length, right: length, foot: length })),
});

/** A show's windows and the outer sizes that can be had, as `margent series` reads them. */
export const seriesDocument = z.object({
  unit: z.optional(z.enum(["in", "mm"])),
  graduation: z.optional(length),
  /** What the four borders may be. */
  border: z.object({ least: length, most: z.optional(z.nullable(length)) }),
  /** How far the window is raised above the centre: what is wanted, and between which it may give way. */
  lift: z.optional(z.object({ by: length, least: z.optional(length), most: z.optional(length) })),
  /** Whether a size may stand either way up; true where absent. */
  turn: z.optional(z.boolean()),
  sizes: z.array(seriesSize).check(z.maxLength(MOST_SIZES)),
  /** Absent: the works come from a list. */
  works: z.optional(z.array(seriesWork).check(z.maxLength(MOST_WORKS))),
});

export type SeriesDocument = z.infer<typeof seriesDocument>;
