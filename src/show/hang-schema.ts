import * as z from "zod/mini";

/** A length as people write it, or a bare number in the document's unit. */
const length = z.union([z.string(), z.number()]);
/** A weight as people write it; a bare number is kilograms beside millimetres, pounds beside inches. */
const mass = z.union([z.string(), z.number()]);

/** More frames than any wall takes. */
const MOST_FRAMES = 500;

const hanging = z.discriminatedUnion("kind", [
  z.object({
    kind: z.literal("wire"),
    /** From the top of the frame down to the rings. */
    below: length,
    /** From ring to ring. */
    apart: length,
    /** Of the wire, from ring to ring; or `drop`, how far it rises above the rings when taut. */
    length: z.optional(length),
    drop: z.optional(length),
    hooks: z.optional(z.union([z.literal(1), z.literal(2)])),
    hooksApart: z.optional(length),
  }),
  z.object({ kind: z.literal("rings"), below: length, apart: length }),
  z.object({ kind: z.literal("plates"), below: length, apart: length }),
  z.object({
    kind: z.literal("cleat"),
    below: length,
    /** Between the outermost screws of the wall rail; half the frame's width where absent. */
    apart: z.optional(length),
    /** 2 where absent. */
    screws: z.optional(z.number()),
    /** From where it bears down to the screws; 0 where absent. */
    down: z.optional(length),
  }),
]);

const work = z.object({
  title: z.optional(z.string()),
  /** Of the frame, outside. */
  width: length,
  height: length,
  weight: z.optional(z.nullable(mass)),
  /** From the wall to the front of the frame. */
  depth: z.optional(length),
  /** The title of a work that it hangs beside, or a name that a set shares. */
  with: z.optional(z.string()),
  hang: hanging,
});

const rule = z.union([
  z.object({
    row: z.enum(["gap", "spread", "group"]),
    gap: z.optional(length),
    /** The middle of the group, from the wall's left corner; the wall's own where absent. */
    centre: z.optional(length),
  }),
  z.object({
    grid: z.object({
      columns: z.number(),
      gap: length,
      rowGap: z.optional(length),
      centre: z.optional(length),
    }),
  }),
  z.object({ cluster: z.object({ gap: length, centre: z.optional(length) }) }),
]);

/** One wall, as `margent hang` reads it. */
export const hangDocument = z.object({
  unit: z.optional(z.enum(["in", "mm"])),
  graduation: z.optional(length),
  /** Whose sheet it is, as it stands at the head of the paper. */
  studio: z.optional(z.string()),
  show: z.optional(z.string()),
  wall: z.object({ name: z.optional(z.string()), width: length, height: length }),
  avoid: z.optional(
    z
      .array(z.object({ name: z.optional(z.string()), x: length, y: length, width: length, height: length }))
      .check(z.maxLength(MOST_FRAMES)),
  ),
  /** 57 in or 1,450 mm where absent. */
  eyeLine: z.optional(length),
  rule: z.optional(rule),
  works: z.array(work).check(z.maxLength(MOST_FRAMES)),
  /** From where the hook bears up to its nail. */
  hookDrop: z.optional(length),
  /** How many times its load a fitting must be rated for; 4 where absent. */
  safety: z.optional(z.number()),
  /** Where the level line is above the floor, when heights are counted from it. */
  levelLine: z.optional(length),
  /** Whether people pass close by, so that the rule for public ways holds. */
  publicWay: z.optional(z.boolean()),
  seed: z.optional(z.number()),
});

export type HangDocument = z.infer<typeof hangDocument>;
