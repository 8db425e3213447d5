import * as z from "zod/mini";
import { MOST_ENTRIES } from "../plans/index.ts";

/** A length as people write it, or a bare number in the job's unit. */
const length = z.union([z.string(), z.number()]);

/** The units of a cutting job: "tick" is for whole numbers of any unit. */
export const CUT_UNITS = ["in", "mm", "tick"] as const;

const stockSheet = z.object({
  name: z.optional(z.string()),
  w: length,
  h: length,
  /** In any money; 0 where absent. */
  cost: z.optional(z.number()),
  /** null or absent: as many as wanted. */
  copies: z.optional(z.nullable(z.number())),
  /** Off each edge; the job's where absent. */
  trim: z.optional(length),
});

const pieceWanted = z.object({
  name: z.optional(z.string()),
  w: length,
  h: length,
  /** How many; 1 where absent. */
  n: z.optional(z.number()),
  /** The usable board that falls out of its window. */
  window: z.optional(z.nullable(z.tuple([length, length]))),
  /** Whether it may lie turned by a quarter; the job's where absent, and the job's false wins. */
  rotate: z.optional(z.boolean()),
});

/** One material's cutting job, as `margent cut` reads it. */
export const cutDocument = z.object({
  unit: z.optional(z.enum(CUT_UNITS)),
  sheets: z.array(stockSheet).check(z.maxLength(MOST_ENTRIES)),
  pieces: z.array(pieceWanted).check(z.maxLength(MOST_ENTRIES)),
  rotate: z.optional(z.boolean()),
  dropouts: z.optional(z.boolean()),
  kerf: z.optional(length),
  trim: z.optional(length),
  /** A leftover at least this large, either way up, is kept. */
  least: z.optional(z.nullable(z.tuple([length, length]))),
  longestCut: z.optional(z.nullable(length)),
  /** How long the planner may take; 5 where absent. */
  seconds: z.optional(z.number()),
  seed: z.optional(z.number()),
});

export type CutDocument = z.infer<typeof cutDocument>;
