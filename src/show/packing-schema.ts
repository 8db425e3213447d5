import * as z from "zod/mini";

const length = z.optional(z.union([z.string(), z.number()]));

/** How a studio packs its works for the road, and stores its mats. */
export const packingHabits = z.object({
  /** Foam between works and crate, each side. */
  foam: length,
  /** Between one work and the next. */
  between: length,
  /** How thick the crate's walls are. */
  wall: length,
  /** From front to back, foam left out. */
  mostDepth: length,
  /** `45 kg`, `100 lb`: a crate, packed. */
  mostWeight: z.optional(z.union([z.string(), z.number()])),
  box: z.optional(z.object({ name: z.optional(z.string()), depth: length, room: length, interleaf: length })),
});

export type PackingHabitsDocument = z.infer<typeof packingHabits>;
