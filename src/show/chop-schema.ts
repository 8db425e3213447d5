import * as z from "zod/mini";
import { MOST_ENTRIES } from "../plans/index.ts";
import { CUT_UNITS } from "./cut-schema.ts";

/** A length as people write it, or a bare number in the job's unit. */
const length = z.union([z.string(), z.number()]);

const stockLength = z.object({
  name: z.optional(z.string()),
  length,
  /** In any money; 0 where absent. */
  cost: z.optional(z.number()),
  /** null or absent: as many as wanted. */
  copies: z.optional(z.nullable(z.number())),
});

const railWanted = z.object({
  name: z.optional(z.string()),
  /** From long point to long point. */
  length,
  /** How many; 1 where absent. */
  n: z.optional(z.number()),
  /** All rails with one name here belong to one frame. */
  frame: z.optional(z.nullable(z.union([z.string(), z.number()]))),
});

const frameWanted = z.object({
  name: z.optional(z.string()),
  /** Of the package that goes into it. */
  width: length,
  height: length,
  /** How many; 1 where absent. */
  n: z.optional(z.number()),
});

const moulding = z.object({
  /** From the lip's sight edge to the outermost edge of the back. */
  overall: length,
  /** How far the rabbet reaches under the lip. */
  rabbet: length,
  /** The room between package and rabbet, both ends together; 1/8 in or 3 mm where absent, 0 in ticks. */
  allowance: z.optional(length),
});

/** One moulding's job, as `margent chop` reads it: rails, or frames with their moulding. */
export const chopDocument = z.object({
  unit: z.optional(z.enum(CUT_UNITS)),
  lengths: z.array(stockLength).check(z.maxLength(MOST_ENTRIES)),
  rails: z.optional(z.array(railWanted).check(z.maxLength(MOST_ENTRIES))),
  frames: z.optional(z.array(frameWanted).check(z.maxLength(MOST_ENTRIES / 2))),
  moulding: z.optional(moulding),
  /** Lost between two rails, along the length. */
  kerf: z.optional(length),
  /** The saw's thickness, from which the kerf of a cut at 45 degrees is reckoned. */
  saw: z.optional(length),
  /** Lost at each end of a length. */
  waste: z.optional(length),
  /** How long the planner may take; 5 where absent. */
  seconds: z.optional(z.number()),
  seed: z.optional(z.number()),
});

export type ChopDocument = z.infer<typeof chopDocument>;
