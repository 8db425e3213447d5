import * as z from "zod/mini";
import { PER } from "../plans/index.ts";

/** A price as people write it, `11.50`, or a number; nought or more, six decimals at most. */
const price = z.union([z.string(), z.number()]);
const minutes = z.optional(z.number());

/** What a studio pays for and reckons by, beside the boards and mouldings of its stock. */
export const moneyHabits = z.object({
  /** The stock's where absent. */
  currency: z.optional(z.string()),
  /** The day on which these prices held, ISO 8601. */
  date: z.optional(z.string()),
  /** Of an hour's work. */
  hour: z.optional(price),
  /** By the studio's own log: minutes for each blank, window, print held, pane, frame, package closed, work hung. */
  minutes: z.optional(
    z.object({
      blank: minutes,
      window: minutes,
      hold: minutes,
      glaze: minutes,
      frame: minutes,
      close: minutes,
      hang: minutes,
    }),
  ),
  fittings: z.optional(
    z
      .array(
        z.object({
          name: z.string(),
          /** Of one, or of a pack. */
          cost: price,
          pack: z.optional(z.number()),
          /** How many for each; 1 where absent. */
          each: z.optional(z.number()),
          /** A frame where absent. */
          per: z.optional(z.enum(PER)),
        }),
      )
      .check(z.maxLength(100)),
  ),
  /** What having it done costs. */
  having: z.optional(
    z
      .array(z.object({ what: z.string(), cost: price, per: z.optional(z.enum(PER)) }))
      .check(z.maxLength(100)),
  ),
});

export type MoneyHabitsDocument = z.infer<typeof moneyHabits>;
