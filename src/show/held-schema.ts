import * as z from "zod/mini";
import { NEVERS } from "../assembly/index.ts";

/** A length as people write it, or a bare number in the document's unit. */
const length = z.union([z.string(), z.number()]);
/** Relative humidity, percent: the driest and the dampest that it may be. */
const humidity = z.object({ from: z.number(), to: z.number() });
const USES = ["frame", "storage"] as const;
const BOARDS = ["buffered", "unbuffered"] as const;

/** What is known of a sheet for its holding, and what must never be done to it. */
export const heldDocument = z.object({
  never: z.optional(z.array(z.enum(NEVERS)).check(z.maxLength(NEVERS.length))),
  /** `300 gsm`, `140 lb` (a ream of 500 sheets of 22 × 30 in); a bare number is grams a square metre. */
  grammage: z.optional(z.union([z.string(), z.number()])),
  /** Which way the fibres run as it hangs. */
  grain: z.optional(z.enum(["upright", "across"])),
  humidity: z.optional(humidity),
  /** A float is always raised. */
  bed: z.optional(z.enum(["flat", "sink"])),
  use: z.optional(z.enum(USES)),
  /** Whether the boards next to it have an alkaline buffer. */
  board: z.optional(z.enum(BOARDS)),
});

/** How a studio makes what holds its works. */
export const heldHabits = z.object({
  humidity: z.optional(humidity),
  use: z.optional(z.enum(USES)),
  board: z.optional(z.enum(BOARDS)),
  hinge: z.optional(
    z.object({
      width: z.optional(length),
      height: z.optional(length),
      pasted: z.optional(length),
      bare: z.optional(length),
      inset: z.optional(length),
      slit: z.optional(length),
    }),
  ),
  sink: z.optional(
    z.object({
      board: z.optional(z.string()),
      /** Of one layer. */
      thickness: z.optional(length),
      /** Round the object, each side. */
      room: z.optional(length),
      /** Thicker than this a sheet is let in. */
      from: z.optional(length),
    }),
  ),
  riser: z.optional(
    z.object({ height: z.optional(length), inset: z.optional(length), clear: z.optional(length) }),
  ),
});

export type HeldDocument = z.infer<typeof heldDocument>;
export type HeldHabitsDocument = z.infer<typeof heldHabits>;
