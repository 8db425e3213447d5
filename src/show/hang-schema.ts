import * as z from "zod/mini";
import { FITTING_USES, WALL_KINDS } from "../assembly/index.ts";
import { LARGEST_AT } from "../plans/index.ts";

/** A length as people write it, or a bare number in the document's unit. */
const length = z.union([z.string(), z.number()]);
/** A weight as people write it; a bare number is kilograms beside millimetres, pounds beside inches. */
const mass = z.union([z.string(), z.number()]);

/** More frames than any wall takes. */
export const MOST_FRAMES = 500;

/** What is fixed to the back of a frame. */
export const fittingDocument = z.discriminatedUnion("kind", [
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
  hang: fittingDocument,
});

const rule = z.union([
  z.object({
    row: z.enum(["gap", "spread", "group"]),
    gap: z.optional(length),
    /** The middle of the group, from the wall's left corner; the wall's own where absent. */
    centre: z.optional(length),
  }),
  z.object({
    rows: z.object({
      count: z.number(),
      gap: length,
      rowGap: z.optional(length),
      centre: z.optional(length),
    }),
  }),
  z.object({
    grid: z.object({
      columns: z.number(),
      gap: length,
      rowGap: z.optional(length),
      centre: z.optional(length),
    }),
  }),
  z.object({
    cluster: z.object({
      gap: length,
      centre: z.optional(length),
      /** Where the largest works are asked for; absent: in the middle. */
      largest: z.optional(z.enum(LARGEST_AT)),
    }),
  }),
]);

const obstacle = z.object({
  name: z.optional(z.string()),
  x: length,
  y: length,
  width: length,
  height: length,
});

/** What can be bought or lies in the drawer, by what it is rated for. */
const hardware = z.object({ name: z.string(), use: z.enum(FITTING_USES), rated: mass });

const hardwareList = z.array(hardware).check(z.maxLength(200));

/** The wall's own measures, as it stands. */
const face = {
  name: z.optional(z.string()),
  width: length,
  height: length,
  /** What it is made of. */
  kind: z.optional(z.enum(WALL_KINDS)),
  /** How much lower the floor, or the line that heights are measured from, lies at the right corner than at the left. */
  fall: z.optional(length),
};

/** How a wall is hung, apart from its measures. */
const manner = {
  unit: z.optional(z.enum(["in", "mm"])),
  graduation: z.optional(length),
  avoid: z.optional(z.array(obstacle).check(z.maxLength(MOST_FRAMES))),
  /** Where people sit or lie at the wall. */
  seats: z.optional(
    z
      .array(z.object({ name: z.optional(z.string()), x: length, width: length }))
      .check(z.maxLength(MOST_FRAMES)),
  ),
  /** 57 in or 1,450 mm above the floor where absent. */
  eyeLine: z.optional(length),
  rule: z.optional(rule),
  /** From where the hook bears up to its nail. */
  hookDrop: z.optional(length),
  /** How many times its load a fitting must be rated for; 4 where absent. */
  safety: z.optional(z.number()),
  /** Where the level line is above the floor, when heights are counted from it. */
  levelLine: z.optional(length),
  /** Whether people pass close by, so that the rule for public ways holds. */
  publicWay: z.optional(z.boolean()),
  /** Whether the ground shakes where it stands. */
  shakes: z.optional(z.boolean()),
  /** How much too much a tape reads over a span, since it sags. */
  tape: z.optional(z.object({ span: length, over: length })),
  hardware: z.optional(hardwareList),
  seed: z.optional(z.number()),
};

/** One wall, as `margent hang` reads it. */
export const hangDocument = z.object({
  ...manner,
  /** Whose sheet it is, as it stands at the head of the paper. */
  studio: z.optional(z.string()),
  show: z.optional(z.string()),
  wall: z.object(face),
  works: z.array(work).check(z.maxLength(MOST_FRAMES)),
});

/** One wall of a show: the same, and which of the show's works hang on it. */
export const wallDocument = z.object({
  ...face,
  ...manner,
  /** Titles in their order, or all works that no wall names. Absent: the works that name this wall. */
  works: z.optional(z.union([z.literal("rest"), z.array(z.string()).check(z.maxLength(MOST_FRAMES))])),
});

/** A work's frame where it is known as a fact. */
export const framedDocument = z.object({
  width: length,
  height: length,
  weight: z.optional(mass),
  /** From the wall to the front of the frame. */
  depth: z.optional(length),
});

/** How a studio hangs. */
export const hangingHabits = z.object({
  safety: z.optional(z.number()),
  hookDrop: z.optional(length),
  tape: manner.tape,
  hardware: z.optional(hardwareList),
  /** Where its rings or plates go when a work does not say: a share of the frame's height down, so far in from each side. */
  fittings: z.optional(
    z.object({
      kind: z.optional(z.enum(["rings", "plates"])),
      down: z.optional(z.number()),
      inset: z.optional(length),
    }),
  ),
});

export type HangDocument = z.infer<typeof hangDocument>;
export type WallDocument = z.infer<typeof wallDocument>;
export type FittingDocument = z.infer<typeof fittingDocument>;
export type FramedDocument = z.infer<typeof framedDocument>;
export type HangingHabitsDocument = z.infer<typeof hangingHabits>;
