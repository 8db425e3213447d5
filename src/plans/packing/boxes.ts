import type { Size } from "../../geometry/index.ts";
import { add, inch, larger, type Length, mm, subtract, type Unit, ZERO } from "../../lengths/index.ts";

/** The boxes that a studio stores its mats in. */
export interface BoxHabits {
  readonly name: string;
  /** From its floor to its lid, inside. */
  readonly depth: Length;
  /** Left free, so that a hand can lift the topmost. */
  readonly room: Length;
  /** Laid between one mat and the next: permanent paper, so thick. */
  readonly interleaf: Length;
}

/** A shallow clamshell box of a print room: common practice, no source. */
export const USUAL_BOX: Readonly<Record<Unit, BoxHabits>> = {
  in: { name: "print box, 3 in", depth: inch(3), room: inch(1, 4), interleaf: mm(0.1) },
  mm: { name: "print box, 80 mm", depth: mm(80), room: mm(6), interleaf: mm(0.1) },
};

/** Mats of one outer size, how thick each is, closed, and how many there are. */
export interface Stored extends Size {
  readonly titles: readonly string[];
  readonly thicknesses: readonly Length[];
}

/** How mats of one size lie in boxes. */
export interface Boxed extends Size {
  readonly count: number;
  /** The thickest of them, with its interleaf. */
  readonly each: Length;
  /** How many of that one a box takes; nought: it is thicker than the box. */
  readonly fit: number;
  readonly boxes: number;
}

/** How many mats so thick a box's depth takes; none where the first does not fit. */
export const fitIn = (each: Length, { depth, room }: BoxHabits): number =>
  Math.max(0, Math.floor(subtract(depth, room) / each));

/** Mats into boxes of their own outer size: every box is reckoned by the thickest, since none must be pressed. */
export function boxMats(all: readonly Stored[], habits: BoxHabits): readonly Boxed[] {
  return all.map(({ width, height, thicknesses }): Boxed => {
    const each = add(thicknesses.reduce(larger, ZERO), habits.interleaf);
    const fit = fitIn(each, habits);
    const count = thicknesses.length;
    return { width, height, count, each, fit, boxes: fit === 0 ? 0 : Math.ceil(count / fit) };
  });
}
